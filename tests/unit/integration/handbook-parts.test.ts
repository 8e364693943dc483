// Parts of the book: link targets, stable names, printable text, numbers of sources.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { toHtml } from 'hast-util-to-html';
import { builtPage, type BuiltPage } from '../../../src/integration/built-pages.ts';
import { leadsTo, type Led } from '../../../src/paper/links.ts';
import { onPaper } from '../../../src/paper/on-paper.ts';
import { inOrder, partsOf } from '../../../src/integration/book/order.ts';
import { namedUuid } from '../../../src/integration/book/named-uuid.ts';
import { settleSources, Sources } from '../../../src/integration/book/sources.ts';
import { classesIn } from '../../../src/paper/plain.ts';
import { rows } from '../../rows.ts';

const root = 'https://club.example/bees/';
const shelf = {
  base: '/bees/',
  held: (place: string) =>
    ({ '': new Set<string>(), 'pests/varroa/': new Set(['field-test']), 'work-it-out/syrup/': new Set<string>() })[place],
};

rows<{ href: string; root: string | null }, Led>(
  'where a link leads',
  [
    {
      case: 'a page of the book',
      given: { href: '/bees/pests/varroa/', root: null },
      expect: { kind: 'inside', place: 'pests/varroa/', id: '' },
      from: 'links.ts',
    },
    {
      case: 'a place on it',
      given: { href: '/bees/pests/varroa/#field-test', root: null },
      expect: { kind: 'inside', place: 'pests/varroa/', id: 'field-test' },
      from: 'links.ts',
    },
    {
      case: 'a place that is gone: the page',
      given: { href: '/bees/pests/varroa/#gone', root: null },
      expect: { kind: 'inside', place: 'pests/varroa/', id: '' },
      from: 'links.ts',
    },
    {
      case: 'beside the page itself',
      given: { href: '../varroa/', root: null },
      expect: { kind: 'inside', place: 'pests/varroa/', id: '' },
      from: 'RFC 3986, 5.4',
    },
    {
      case: 'a filled form, address unknown: words, and the page near by',
      given: { href: '/bees/work-it-out/syrup/#amount=25', root: null },
      expect: { kind: 'nowhere', near: 'work-it-out/syrup/' },
      from: 'links.ts',
    },
    {
      case: 'a filled form, address known',
      given: { href: '/bees/work-it-out/syrup/#amount=25', root },
      expect: { kind: 'outside', address: `${root}work-it-out/syrup/#amount=25` },
      from: 'links.ts',
    },
    {
      case: 'the search',
      given: { href: '/bees/search/?q=mites', root },
      expect: { kind: 'outside', address: `${root}search/?q=mites` },
      from: 'links.ts',
    },
    {
      case: 'a file of the site, address unknown: words',
      given: { href: '/bees/club.ics', root: null },
      expect: { kind: 'nowhere' },
      from: 'links.ts',
    },
    { case: 'a number to ring', given: { href: 'tel:911', root: null }, expect: { kind: 'outside', address: 'tel:911' }, from: 'RFC 3966' },
  ],
  ({ href, root: known }, expect) => assert.deepEqual(leadsTo(href, 'pests/wax-moth/', { ...shelf, root: known }), expect),
);

test('a name gives one UUID of version 5 (RFC 9562, A.4)', () =>
  assert.equal(namedUuid('www.example.com', '6ba7b810-9dad-11d1-80b4-00c04fd430c8'), '2ed6657d-e927-568b-95e1-2665a8aea6a2'));

const paper = (main: string): string =>
  toHtml(
    onPaper(builtPage('index.html', `<main id="text">${main}</main>`).main, { names: new Map([['hill', 'the hill']]), language: 'en-US' }),
  );

rows<string, string>(
  'on paper',
  [
    {
      case: 'a box to tick is an empty one',
      given:
        '<li class="step"><label><input type="checkbox" checked data-tick="a"><span class="step-words"><b>Look</b></span></label></li>',
      expect: '<li class="step"><span class="tick">☐</span><span class="step-words"><b>Look</b></span></li>',
      from: 'on-paper.ts',
    },
    {
      case: 'what is hidden, pressed or filled in goes',
      given: '<p hidden>a</p><form class="asks"><p>b</p></form><button>c</button><p class="actions">d</p><script>e()</script><p>f</p>',
      expect: '<p>f</p>',
      from: 'on-paper.ts',
    },
    {
      case: 'what was folded lies open',
      given: '<details><summary>More</summary><p>words</p></details>',
      expect: '<div><p class="unfolded">More</p><p>words</p></div>',
      from: 'on-paper.ts',
    },
    {
      case: 'who to call within the text is one line',
      given: '<p><span class="call-row"><span><b>Mentors</b><small>Evenings</small></span><a href="tel:911">911</a></span></p>',
      expect: '<p><b>Mentors</b>, <small>Evenings</small>, <a href="tel:911">911</a></p>',
      from: 'on-paper.ts',
    },
    {
      case: 'days of another district',
      given: '<span data-windows="valley 05-03 05-17;hill 05-12 06-01">3 to 17 May</span>',
      expect: '3 to 17 May (the hill: May 12 to June 1)',
      from: 'on-paper.ts',
    },
    {
      case: 'the same days are not said twice',
      given: '<span data-windows="valley 05-03 05-17;hill 05-03 05-17">3 to 17 May</span>',
      expect: '3 to 17 May',
      from: 'on-paper.ts',
    },
    {
      case: 'a photograph is its words',
      given: '<p><picture><source srcset="a.webp"><img src="a.jpg" alt="Mites on white"></picture></p>',
      expect: '<p>[Photograph: Mites on white]</p>',
      from: 'on-paper.ts',
    },
    {
      case: 'a frame that holds nothing goes',
      given: '<section><h2> </h2><ul></ul></section><p>a</p>',
      expect: '<p>a</p>',
      from: 'on-paper.ts',
    },
  ],
  (given, expect) => assert.equal(paper(given), expect),
);

const leaf = (place: string, part: string, main = '', opens = false): BuiltPage =>
  builtPage(
    `${place}index.html`,
    `<main id="text"><h1>${place || 'first'}</h1>${main}</main><nav class="bottom-nav" aria-label="x">${['Now', 'Lists'].map((name) => `<a href="/"${name === part ? ` aria-current="${opens ? 'page' : 'true'}"` : ''}>${name}</a>`).join('')}</nav>`,
  );

test('parts in the order of the navigation, pages in the order of their lists; no search, withdrawn or 404 page', () => {
  const withdrawn = leaf('lists/gone/', 'Lists');
  const pages = [
    leaf('lists/', 'Lists', '<a href="/lists/b/">b</a><a href="/lists/a/">a</a>', true),
    leaf('', 'Now', '<a href="/year/">y</a>', true),
    leaf('lists/a/', 'Lists'),
    leaf('lists/b/', 'Lists'),
    leaf('lists/b/more/', 'Lists'),
    leaf('search/', 'Now'),
    leaf('year/', 'Now'),
    builtPage(withdrawn.file, withdrawn.html.replace('<main ', '<main data-withdrawn ')),
    { ...leaf('', 'Now'), place: '404.html' },
  ];
  assert.deepEqual(
    partsOf(pages, '/').map(({ name, leaves }) => [name, inOrder(leaves).map(({ page }) => page.place)]),
    [
      ['Now', ['', 'year/']],
      ['Lists', ['lists/', 'lists/b/', 'lists/b/more/', 'lists/a/']],
    ],
  );
  assert.throws(() => partsOf([...pages, leaf('stray/', 'Elsewhere')], '/'), { message: 'the book has no part for stray/index.html' });
});

test('a publication in several notes is listed in full once', () => {
  const sources = new Sources([{ words: 'Somebody and others 2010, A journal of bees 103:1039', url: 'https://example.org/a' }]);
  const note = (words: string): number => sources.numberOf(`Somebody and others 2010, A journal of bees 103:1039. ${words}`);
  assert.deepEqual([note('Ohio. Likely.'), note('Ohio. Likely.'), note('Anywhere.'), sources.numberOf('Common practice.')], [2, 2, 3, 4]);
  assert.deepEqual(sources.all, [
    { words: 'Somebody and others 2010, A journal of bees 103:1039', url: 'https://example.org/a' },
    { as: 1, words: 'Ohio. Likely.' },
    { as: 1, words: 'Anywhere.' },
    { words: 'Common practice.' },
  ]);
});

test('a mark without its note stops the build', () => {
  const page = builtPage(
    'index.html',
    '<main id="text"><p>8<sup class="mark"><a href="#note-1">1</a></sup></p><aside class="sidebar"></aside></main>',
  );
  const tree = onPaper(page.main, { names: new Map(), language: 'en-US' });
  assert.throws(() => settleSources(tree, 'lists/a/', new Sources([])), {
    message: 'lists/a/ names a source that it does not have: #note-1',
  });
});

test('classes of a style sheet, and nothing that only looks like one', () =>
  assert.deepEqual([...classesIn('.a,.b-c > li{margin:.5em 1.5rem}@media print{.d{font:9pt a.b}}')], ['a', 'b-c', 'd']));
