// tests/CONFORMANCE.md names every criterion of WCAG 2.2, and every proof in it is an existing test. The page for readers agrees.
import assert from 'node:assert/strict';
import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { test } from 'vitest';
import ts from 'typescript';
import { projectFolder } from '../../src/cli/paths.ts';
import { criteria } from '../../src/pages/about/_access.en.ts';
import { CRITERIA } from '../tables/wcag.ts';
import { importsOf, read } from './tree.ts';

const RESULTS = ['met', 'does not apply', 'not met'];
const rows = read('tests/CONFORMANCE.md')
  .split('\n')
  .filter((line) => /^\| \d/.test(line))
  .map((line) => {
    const [criterion, level, result, why, proof] = line
      .slice(1, -1)
      .split(' | ')
      .map((cell) => cell.trim()) as [string, string, string, string, string];
    return {
      number: criterion.split(' ')[0]!,
      name: criterion.replace(/^\S+ /, ''),
      level,
      result,
      why,
      proofs: (proof ?? '')
        .split('<br>')
        .map((each) => each.trim())
        .filter(Boolean),
    };
  });

test('the list of criteria is complete: 31 of level A, 24 of AA, 31 of AAA', () => {
  const count = (level: string): number => CRITERIA.filter((each) => each.level === level).length;
  assert.deepEqual([count('A'), count('AA'), count('AAA')], [31, 24, 31]);
  assert.deepEqual(
    rows.map(({ number, level, name }) => ({ number, level, name })),
    [...CRITERIA],
  );
});

test('numbers and levels are those in the rules of axe', () => {
  const { getRules } = createRequire(createRequire(import.meta.url).resolve('@axe-core/playwright'))('axe-core') as {
    getRules: () => { tags: string[] }[];
  };
  let seen = 0;
  for (const { tags } of getRules()) {
    const level = tags
      .find((tag) => /^wcag2\d?a+$/.test(tag))
      ?.replace(/^wcag2\d?/, '')
      .toUpperCase();
    // A rule may concern several criteria. Its level is that of the strictest.
    const numbers = tags.flatMap((tag) => /^wcag(\d)(\d)(\d+)$/.exec(tag)?.slice(1).join('.') ?? []);
    const levels = numbers.map((number) => CRITERIA.find((each) => each.number === number)?.level ?? number);
    if (!level || numbers.includes('4.1.1')) continue;
    seen += 1;
    assert.ok(levels.includes(level as 'A'), `${numbers.join(', ')}: axe says ${level}`);
  }
  assert.ok(seen > 60, `${seen} rules`);
});

test('each criterion is met or does not apply, with a proof, or is not met, with a reason; A and AA are met in full', () => {
  for (const { number, level, result, why, proofs } of rows) {
    assert.ok(RESULTS.includes(result), `${number}: ${result}`);
    assert.ok(why.length > 4, `${number} says nothing`);
    assert.equal(proofs.length > 0, result !== 'not met', `${number}: ${proofs.length} proofs`);
    if (level !== 'AAA') assert.notEqual(result, 'not met', number);
  }
});

/** Strings in a test file and in the helpers that it imports, which include the names of tests. */
function piecesOf(path: string, seen = new Set<string>()): Set<string> {
  const pieces = new Set<string>();
  if (seen.has(path)) return pieces;
  seen.add(path);
  const walk = (node: ts.Node): void => {
    if (ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddle(node) || ts.isTemplateTail(node))
      pieces.add(node.text.trim());
    ts.forEachChild(node, walk);
  };
  walk(ts.createSourceFile(path, read(path), ts.ScriptTarget.Latest, true));
  for (const { to } of importsOf(path)) if (to.startsWith('tests/')) for (const piece of piecesOf(to, seen)) pieces.add(piece);
  return pieces;
}

function faultOf(proof: string): string | null {
  if (/^looked at by hand on \d{4}-\d\d-\d\d$/.test(proof)) return null;
  const [, name, words] = /^([a-z-]+) “(.+)”$/.exec(proof) ?? [];
  if (!name) return 'names no test';
  const path = [
    `tests/e2e/${name}.spec.ts`,
    `tests/e2e/${name}.slow.spec.ts`,
    `tests/build/${name}.test.ts`,
    `tests/build/${name}.slow.test.ts`,
  ].find((each) => existsSync(join(projectFolder, each)));
  if (!path) return `tests/e2e/${name}.spec.ts is not there`;
  return piecesOf(path).has(words!) ? null : `${path} has no such test`;
}

test('every proof in the table exists', () => {
  assert.deepEqual(
    rows.flatMap(({ number, proofs }) => proofs.flatMap((proof) => (faultOf(proof) ? [`${number}: ${proof}: ${faultOf(proof)}`] : []))),
    [],
  );
  assert.equal(faultOf('looks “axe finds all”'), 'tests/e2e/looks.spec.ts has no such test');
  assert.equal(faultOf('nowhere “axe finds all”'), 'tests/e2e/nowhere.spec.ts is not there');
  assert.equal(faultOf('trust us'), 'names no test');
});

test('the page for readers gives the same counts and names the criteria that are not met', () => {
  const page = read('src/pages/about/access.astro');
  assert.deepEqual(
    Object.keys(criteria),
    rows.filter(({ result }) => result === 'not met').map(({ number }) => number),
  );
  for (const level of ['A', 'AA', 'AAA']) {
    const [, cells] = new RegExp(`\\b${level}: \\[([\\d, ]+)\\]`).exec(page)!;
    const counts = cells!.split(', ').map(Number);
    assert.deepEqual(
      counts,
      RESULTS.map((result) => rows.filter((row) => row.level === level && row.result === result).length),
      level,
    );
  }
});
