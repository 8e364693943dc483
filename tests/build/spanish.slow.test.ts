/*
 * A club that speaks Spanish. What the program says is in Spanish on every page. Text of a book that is not translated yet says that it is
 * in English, so that a reader is told and a screen reader changes its voice.
 */
import assert from 'node:assert/strict';
import type { Element, Root, RootContent } from 'hast';
import { fromHtml } from 'hast-util-from-html';
import { beforeAll, test } from 'vitest';
import { builtFixture, type Built } from '../setup/built-site.ts';

/** Common words of English that are no words of Spanish. */
const ENGLISH = /\b(?:the|of|and|with|your|you|this|that|these|from|which|are|were|when|what|have|has|each|every|not|for)\b/i;
const READ = ['ariaLabel', 'title', 'alt', 'placeholder', 'ariaDescription'];

/** Where titles of entries and rows of figures stand inside the words of the page, they are not marked yet. */
const NOT_YET = /^(?:search|signs|reading|treatments|pests|card|sheets|about|work-it-out|es)\//;

let site: Built;
beforeAll(async () => {
  site = await builtFixture('spanish');
}, 300_000);

/** What people read or hear on the page outside elements in English. */
function inSpanish(node: Root | RootContent, tongue = 'es'): string[] {
  // Addresses of pages hold English names.
  if (node.type === 'text') return tongue.startsWith('es') ? [node.value.replace(/\/[\w./#-]+/g, '')] : [];
  if (node.type !== 'root' && node.type !== 'element') return [];
  const { tagName = '', properties = {} } = node as Partial<Element>;
  if (['script', 'style', 'code', 'head'].includes(tagName)) return [];
  const here = typeof properties.lang === 'string' ? properties.lang : tongue;
  const heard = READ.map((name) => properties[name]).filter((value) => typeof value === 'string');
  return [...(here.startsWith('es') ? heard : []), ...node.children.flatMap((each) => inSpanish(each, here))];
}

test('no page has an English sentence that is not marked as English', { tags: ['slow'] }, () => {
  const found = new Map<string, string[]>();
  for (const page of site.pages.filter((each) => !NOT_YET.test(each.slice(site.base.length)))) {
    const path = page.slice(site.base.length).replace(/\/?$/, (end) => (page.endsWith('.html') ? '' : end || '/'));
    const html = site.read(page.endsWith('.html') ? path : `${path === '/' ? '' : path}index.html`);
    for (const words of inSpanish(fromHtml(html)))
      if (ENGLISH.test(words)) found.set(words.trim().replace(/\s+/g, ' '), [...(found.get(words.trim()) ?? []), page]);
  }
  assert.deepEqual(
    [...found].map(([words, pages]) => `${words} (${pages.length} pages, ${pages[0]})`),
    [],
  );
});

test('what a page says of its language is the club’s, and numbers and days are written as there', { tags: ['slow'] }, () => {
  assert.match(site.read('index.html'), /<html lang="es"/);
  assert.match(site.read('meetings/index.html'), /\d+\u00a0de\u00a0[a-z]+|\d+ de [a-z]+/);
});
