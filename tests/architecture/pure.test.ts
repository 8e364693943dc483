// shared/ uses no clock, network or page. Only the reader's page and some commands read the clock.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import ts from 'typescript';
import { codeOf, files, isCode } from './tree.ts';

const outside = new Set(
  'Date performance process window document navigator location history localStorage sessionStorage globalThis self fetch XMLHttpRequest WebSocket setTimeout setInterval setImmediate requestAnimationFrame queueMicrotask crypto console alert confirm prompt require Buffer Temporal'.split(
    ' ',
  ),
);

/** Globals that the code uses as values without declaring them, and random numbers. */
function reachesOut(path: string, code = codeOf(path)): string[] {
  const source = ts.createSourceFile(path, code, ts.ScriptTarget.Latest, true);
  const own = new Set<string>();
  const used: string[] = [];
  const walk = (node: ts.Node): void => {
    if (ts.isTypeNode(node) || ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node)) return;
    if (
      (ts.isVariableDeclaration(node) || ts.isParameter(node) || ts.isBindingElement(node) || ts.isFunctionDeclaration(node)) &&
      node.name &&
      ts.isIdentifier(node.name)
    )
      own.add(node.name.text);
    if (ts.isIdentifier(node) && outside.has(node.text) && !isNameOnly(node)) used.push(node.text);
    if (ts.isPropertyAccessExpression(node) && node.getText() === 'Math.random') used.push('Math.random');
    ts.forEachChild(node, walk);
  };
  walk(source);
  return [...new Set(used)].filter((name) => !own.has(name));
}

/** The name of a field or property is not a global. */
function isNameOnly(node: ts.Identifier): boolean {
  const { parent } = node;
  return (
    (ts.isPropertyAccessExpression(parent) && parent.name === node) ||
    (ts.isPropertyAssignment(parent) && parent.name === node) ||
    ts.isPropertySignature(parent)
  );
}

/** Reads of the clock: `new Date()`, `Date.now()`, `Date()`, `performance.now()`. */
function asksTheClock(path: string, code = codeOf(path)): string[] {
  const source = ts.createSourceFile(path, code, ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const walk = (node: ts.Node): void => {
    if (ts.isNewExpression(node) && node.expression.getText() === 'Date' && !node.arguments?.length) found.push(node.getText());
    if (ts.isCallExpression(node) && /^(Date|Date\.now|Temporal\.Now\..+)$/.test(node.expression.getText())) found.push(node.getText());
    ts.forEachChild(node, walk);
  };
  walk(source);
  return found;
}

test('shared/ uses no global of the outside world', () => {
  const shared = files('shared').filter(isCode);
  assert.ok(shared.length > 30);
  assert.deepEqual(
    shared.flatMap((path) => reachesOut(path).map((name) => `${path}: ${name}`)),
    [],
  );
});

test('only the client, the service worker and the commands that list what is due, withdraw or compare today, begin a club, or measure read the clock', () => {
  const may = (path: string): boolean =>
    /^src\/(calculators|client|service-worker)\//.test(path) ||
    [
      'src/cli/base.ts',
      'src/cli/new.ts',
      'src/cli/overview.ts',
      'src/cli/review.ts',
      'src/cli/withdraw.ts',
      'tests/bench/bench.ts',
      'tests/engines/results.ts',
    ].includes(path);
  assert.deepEqual(
    files()
      .filter((path) => isCode(path) && !may(path))
      .flatMap((path) => asksTheClock(path).map((call) => `${path}: ${call}`)),
    [],
  );
});

test('the test detects each of these', () => {
  for (const [code, name] of [
    ['const today = new Date(2026, 1, 1);', 'Date'],
    ['export const x = () => fetch("/a");', 'fetch'],
    ['if (process.env.A) throw 1;', 'process'],
    ['const a = Math.random();', 'Math.random'],
    ['console.log(1);', 'console'],
  ] as const)
    assert.deepEqual(reachesOut('shared/x.ts', code), [name]);
  assert.deepEqual(reachesOut('shared/x.ts', 'export function later(window: Window, d: Date) { return window.from; }'), []);
  assert.deepEqual(asksTheClock('src/x.ts', 'const a = new Date(); const b = Date.now(); const c = new Date(0);'), [
    'new Date()',
    'Date.now()',
  ]);
});
