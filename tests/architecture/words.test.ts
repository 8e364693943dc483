/*
 * What readers see is in `*.en.ts`, and in `*.es.ts` beside it. No other file of the site has a sentence of its own, and both languages
 * have the same words.
 */
import assert from 'node:assert/strict';
import { existsSync } from 'node:fs';
import { parseForESLint } from 'astro-eslint-parser';
import ts from 'typescript';
import { test } from 'vitest';
import { files, read } from './tree.ts';

/** What a reader meets. Messages for webmasters (checks, commands, schemas, the preview) are in English. */
const ROOMS = /^(?:src\/(?:calculators|client|components|layouts|lib|pages|paper|service-worker)\/|src\/integration\/book\/)/;
/** Rooms whose words are in their own files. */
const DONE = [
  /^src\/client\//,
  /^src\/components\/Cautions/,
  /^src\/components\/(?:DueRows|Fold|Footer|Notice|OnThisPage|PrintButton|Sidebar|SourceMark)\./,
  /^src\/components\/charts\//,
  /^src\/components\/checklist\//,
  /^src\/components\/mdx\//,
  /^src\/components\/(?:Anchor|Book|Cited|ContactNumber|CountsTable|DateRange|Evidence|Figure|Forms|Icon|Label|Meeting|MiniRing|NextSteps|Origins|PageDays|PestCard|Phases|Row|Sentence|SideBySide|Sign|YearSheet)/,
  /^src\/(?:integration\/book|paper)\//,
  /^src\/lib\/(?!tongues|weight-rules)/,
  /^src\/pages\//,
  /^src\/components\/(?:Calculator\.|form\/)/,
  /^src\/calculators\//,
  /^src\/layouts\//,
  /^src\/service-worker\//,
];
const NOT_FOR_READERS =
  /^src\/client\/layout\/preview|^src\/integration\/book\/sizes|^src\/pages\/(?:robots|open\/)|^src\/calculators\/form\/(?:typed-)?units\./;
/** Two words with a blank between them. */
const SENTENCE = /\p{L}{2,}[,;:]? \p{L}/u;
/** Attributes that people read or hear. */
const READ =
  /^(?:alt|aria-(?:label|description|roledescription)|title|placeholder|label|hint|lead|words|heading|name|summary|caption|data-(?!tick|figure|part|for|output)[\w-]+)$/;
/** Attributes of ours that are no words, though they may hold a blank. */
const CODE = /^(?:class|kind|class:list|style|d|points|viewBox|sizes|srcset|content|rel|autocomplete|transform|allow|http-equiv)$/;

type Node = { type: string; value?: unknown; name?: { name: string }; loc: { start: { line: number } } } & Record<string, unknown>;

function wordsOfPage(path: string): string[] {
  const { ast } = parseForESLint(read(path), { parser: '@typescript-eslint/parser' });
  const found: string[] = [];
  const say = (node: Node, words: string): void => void found.push(`${path}:${node.loc.start.line}: ${words.trim().slice(0, 60)}`);
  const walk = (node: Node, inside: string): void => {
    if (node.type === 'JSXAttribute') {
      const name = String((node.name as unknown as { name: string }).name);
      const value = node.value as Node | null;
      if (
        value?.type === 'Literal' &&
        READ.test(name) &&
        /\p{L}{2}/u.test(String(value.value)) &&
        !/^[a-z][\w-]*$/.test(String(value.value))
      )
        return say(node, String(value.value));
      if (CODE.test(name)) return;
    }
    if ((node.type === 'JSXElement' && /^(?:style|script)$/.test(nameOf(node))) || node.type === 'ImportDeclaration') return;
    if (node.type === 'JSXText' && /\p{L}{2}/u.test(String(node.value).replace(/&\w+;/g, ''))) return say(node, String(node.value));
    if (isThrown(node)) return;
    if (node.type === 'Literal' && typeof node.value === 'string' && SENTENCE.test(node.value) && !isCode(node.value))
      return say(node, node.value);
    if (node.type === 'TemplateElement' && SENTENCE.test(String((node.value as { raw: string }).raw)))
      return say(node, String((node.value as { raw: string }).raw));
    for (const [key, child] of Object.entries(node))
      if (key !== 'parent' && key !== 'tokens' && key !== 'comments')
        for (const each of Array.isArray(child) ? child : [child])
          if (each && typeof each === 'object' && typeof (each as Node).type === 'string') walk(each as Node, inside);
  };
  walk(ast as unknown as Node, '');
  return found;
}

const nameOf = (node: Node): string => String(((node.openingElement as Node).name as { name?: string }).name);
const isThrown = (node: Node): boolean => node.type === 'NewExpression' && /Error$/.test(String((node.callee as { name?: string }).name));

function wordsOfCode(path: string): string[] {
  const source = ts.createSourceFile(path, read(path), ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const walk = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isLiteralTypeNode(node)) return;
    // A value of a field is compared, not shown.
    if (ts.isStringLiteral(node) && ts.isBinaryExpression(node.parent) && /^[!=]==$/.test(node.parent.operatorToken.getText())) return;
    if (ts.isNewExpression(node) && /Error$/.test(node.expression.getText())) return;
    if (
      (ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node)) &&
      SENTENCE.test(node.text) &&
      !isCode(node.text)
    )
      found.push(`${path}:${source.getLineAndCharacterOfPosition(node.getStart()).line + 1}: ${node.text.trim().slice(0, 60)}`);
    ts.forEachChild(node, walk);
  };
  walk(source);
  return found;
}

/** Names of classes with a blank between them, keys of what a browser stores, and columns of a table of ours. */
const NAMES =
  /^(?:case-now|opens|part-count) | (?:set aside|home screen)$| set aside |^the first$|^due (?:from|by)$|^again always |^(?:pest or disease|new edition|hall screen|hall-bar no-print|li, i|details ul)$/;
/** Markup, selectors and styles. */
const isCode = (text: string): boolean =>
  NAMES.test(text) ||
  /^[\s\S]*[<>{}\[\]]|^(?:button|main|html|input|fault|mark|notice|no-print|visually-hidden|actions|small|p ul|\((?:min-width|display-mode)|[.#])/.test(
    text,
  );

const readers = files('src').filter((path) => ROOMS.test(path) && !NOT_FOR_READERS.test(path) && /\.(ts|astro)$/.test(path));

test('no sentence for readers stands outside the files of words', () => {
  const outside = readers
    .filter(
      (path) =>
        (process.env.ROOM ? path.startsWith(process.env.ROOM) : DONE.some((room) => room.test(path))) && !/\.(?:en|es)\.ts$/.test(path),
    )
    .flatMap((path) => (path.endsWith('.astro') ? wordsOfPage(path) : wordsOfCode(path)));
  assert.deepEqual(outside, []);
});

test('no style sheet puts words on a page', () => {
  const words = /content:[^;]*(['"])(?:(?!\1).)*\p{L}{2}/u;
  const outside = files('src')
    .filter((path) => /\.(?:css|astro)$/.test(path))
    .flatMap((path) =>
      read(path)
        .split('\n')
        .flatMap((line, index) => (words.test(line) ? [`${path}:${index + 1}: ${line.trim()}`] : [])),
    );
  assert.deepEqual(outside, []);
  assert.ok(words.test("    content: 'Next';") && words.test(`content: 'Sheet ' counter(page)`) && !words.test("content: '·';"));
});

test('both languages have the same words, and take the same values', async () => {
  for (const english of files().filter((path) => /^(?:src|shared)\/.*\.en\.ts$/.test(path))) {
    const spanish = english.replace(/\.en\.ts$/, '.es.ts');
    assert.ok(existsSync(spanish), `${spanish} is missing`);
    const [en, es] = (await Promise.all([english, spanish].map((path) => import(`../../${path}`)))) as Record<string, unknown>[];
    assert.deepEqual(shapeOf(es), shapeOf(en), spanish);
  }
});

/** The names of a module or table, and how many values each function takes. */
function shapeOf(value: unknown): unknown {
  if (typeof value === 'function') return value.length;
  if (Array.isArray(value)) return value.map(shapeOf);
  if (value === null || typeof value !== 'object' || value instanceof RegExp) return typeof value;
  return Object.fromEntries(
    Object.entries(value)
      .sort()
      .map(([name, each]) => [name, shapeOf(each)]),
  );
}
