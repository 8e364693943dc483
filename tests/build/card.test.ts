// The pocket card: each of its numbers is the number of the page it is from.
import assert from 'node:assert/strict';
import { beforeAll, expect, test } from 'vitest';
import type { Element, Root } from 'hast';
import { fromHtml } from 'hast-util-from-html';
import { all, wordsOf } from '../../src/paper/find.ts';
import { builtDemo, type Built } from '../setup/built-site.ts';

let built: Built;
beforeAll(async () => {
  built = await builtDemo();
});

const text = (element: Element): string => wordsOf([element]);
const page = (path: string): Root => fromHtml(built.read(`${path}index.html`));
const side = (number: number): Element => all(page('card/'), ({ properties }) => properties.dataSide === String(number))[0]!;
const rowsOf = (tree: Root | Element): string[] =>
  all(tree, ({ tagName }) => tagName === 'tbody').flatMap((body) =>
    all(body, ({ tagName }) => tagName === 'tr').map((row) =>
      all(row, ({ tagName }) => /^t[dh]$/.test(tagName))
        .map((cell) => text(cell).trim())
        .join(' | '),
    ),
  );

test.each([
  [5, 'work-it-out/mite-count/', 10],
  [6, 'work-it-out/syrup/', 5],
])('side %i has the table of %s', (number, path, many) => {
  const rows = rowsOf(side(number));
  assert.equal(rows.length, many);
  const there = rowsOf(page(path));
  expect(rows.filter((row) => !there.includes(row))).toEqual([]);
});

test('its emergency lines are those of the page of contacts, and so is every number that needs no consent', () => {
  const linesOf = (tree: Root | Element): string[] =>
    all(tree, ({ properties }) => /^tel:/.test(String(properties.href))).map((link) => String(link.properties.href));
  const contacts = linesOf(page('who-to-ask/'));
  const own = [...linesOf(side(1)), ...linesOf(side(3))];
  assert.ok(own.includes('tel:911') && own.includes('tel:18002221222') && own.length > 4, own.join());
  expect(own.filter((number) => !contacts.includes(number))).toEqual([]);
});

test('its first aid is the caution of the pages, in the same words', () => {
  const list = page('lists/package-arrival/');
  const [box] = all(list, ({ properties }) => properties.dataHazard === 'allergy');
  const sentences = all(box!, ({ tagName }) => tagName === 'li').map(text);
  assert.ok(sentences.length >= 5);
  assert.deepEqual(all(side(2), ({ tagName }) => tagName === 'li').map(text), sentences);
});

test('it names the troubles that the law wants reported, and what is taken for them', () => {
  const words = text(side(7));
  assert.match(words, /American foulbrood – report it/);
  assert.match(words, /European foulbrood – report it/);
  assert.match(words, /Sacbrood/);
});
