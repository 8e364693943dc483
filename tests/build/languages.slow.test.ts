/*
 * A club that speaks Spanish. What the program says is in Spanish on every page. Text of a book that is not translated yet says that it is
 * in English, so that a reader is told and a screen reader changes its voice.
 */
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Element, Root, RootContent } from 'hast';
import { fromHtml } from 'hast-util-from-html';
import { beforeAll, test } from 'vitest';
import { parse } from 'yaml';
import type { Tongue } from '../../shared/country/language.ts';
import { projectFolder } from '../../src/cli/paths.ts';
import { builtDemo, builtFixture, type Built } from '../setup/built-site.ts';

/** Common words of English that are no words of Spanish, and the words that stand beside a figure or make a day. */
const ENGLISH =
  /(?<!\p{L})(?:the|of|and|with|law|call|see|your|you|this|that|these|from|which|are|were|when|what|have|has|each|every|not|for|to|per|after|days?|weeks?|months?|years?|hours?|minutes?|bees?|mites?|January|February|March|April|June|July|August|September|October|November|December)(?!\p{L})/iu;
/** Common words of Spanish that are no words of English. */
const SPANISH =
  /(?<!\p{L})(?:el|las|una|que|con|para|por|del|abejas?|colmenas?|semanas?|días?|usted|hasta|cada|primer|otra|después|hoja|cría|vea|llamar|quién)(?!\p{L})/iu;
const READ = ['ariaLabel', 'title', 'alt', 'placeholder', 'ariaDescription'];

/** Names of publishers and authors stay as they are, as WCAG 3.1.2 has it for names. */
const NAMES = ['sources', 'reading']
  .map((room) => join(projectFolder, 'content', 'books', 'common', room))
  .flatMap((folder) => readdirSync(folder).map((file) => parse(readFileSync(join(folder, file), 'utf8')) as Record<string, unknown>))
  .flatMap(({ who, publisher, author }) => [who, publisher, author])
  .filter((name) => typeof name === 'string')
  .sort((a, b) => b.length - a.length);

let site: Built;
beforeAll(async () => {
  site = await builtFixture('spanish');
}, 300_000);

/** What people read or hear in the elements of one language. `tongue`: that of the element around them. */
function wordsIn(wanted: Tongue, node: Root | RootContent, tongue: string = wanted): string[] {
  // Addresses of pages hold English names.
  if (node.type === 'text') return tongue.startsWith(wanted) ? [node.value.replace(/\/[\w./#-]+/g, '')] : [];
  if (node.type !== 'root' && node.type !== 'element') return [];
  const { tagName = '', properties = {} } = node as Partial<Element>;
  if (['script', 'style', 'code', 'head'].includes(tagName)) return [];
  const here = typeof properties.lang === 'string' ? properties.lang : tongue;
  const heard = READ.map((name) => properties[name]).filter((value) => typeof value === 'string');
  return [...(here.startsWith(wanted) ? heard : []), ...node.children.flatMap((each) => wordsIn(wanted, each, here))];
}

const withoutNames = (words: string): string => NAMES.reduce((rest, name) => rest.replaceAll(name, ''), words);

/** Words of the other language in what is said to be Spanish or English, with the pages that have them. */
function foreignOn({ base, read }: Built, pages: readonly string[], wanted: Tongue = 'es'): string[] {
  const foreign = { es: ENGLISH, en: SPANISH }[wanted];
  const found = new Map<string, string[]>();
  for (const page of pages) {
    const path = page.slice(base.length).replace(/\/?$/, (end) => (page.endsWith('.html') ? '' : end || '/'));
    const html = read(page.endsWith('.html') ? path : `${path === '/' ? '' : path}index.html`);
    for (const words of wordsIn(wanted, fromHtml(html)))
      if (foreign.test(words) && foreign.test(withoutNames(words)))
        found.set(words.trim().replace(/\s+/g, ' '), [...(found.get(words.trim()) ?? []), page]);
  }
  return [...found].map(([words, on]) => `${words} (${on.length} pages, ${on[0]})`);
}

test('no page has an English sentence that is not marked as English', { tags: ['slow'] }, () => {
  assert.ok(site.pages.length > 100);
  assert.deepEqual(foreignOn(site, site.pages), []);
});

test('nor has a Spanish page of an English club', { timeout: 300_000, tags: ['slow'] }, async () => {
  const demo = await builtDemo();
  const pages = demo.pages.filter((page) => page.startsWith(`${demo.base}es/`));
  assert.ok(pages.length > 40, `${pages.length} pages`);
  assert.deepEqual(foreignOn(demo, pages), []);
});

test('nor is Spanish on a page of an English club said to be English', { timeout: 300_000, tags: ['slow'] }, async () => {
  const demo = await builtDemo();
  assert.deepEqual(foreignOn(demo, demo.pages, 'en'), []);
});

test('what a page says of its language is the club’s, and numbers and days are written as there', { tags: ['slow'] }, () => {
  assert.match(site.read('index.html'), /<html lang="es"/);
  assert.match(site.read('meetings/index.html'), /\d+\u00a0de\u00a0[a-z]+|\d+ de [a-z]+/);
});
