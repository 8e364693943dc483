// Search records of a page, and answers of the index: names, list entries, unsearched parts, content of a record.
import assert from 'node:assert/strict';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, test } from 'vitest';
import { serve, type Served } from '../../../src/cli/serve.ts';
import { explainError } from '../../../src/cli/explain-error.ts';
import type { Engine } from '../../../src/client/search/engine.ts';
import { lookUp } from '../../../src/client/search/look-up.ts';
import { builtPage, type BuiltPage } from '../../../src/integration/built-pages.ts';
import { editionName, type Edition } from '../../../src/lib/edition-name.ts';
import { contentsOf } from '../../build/workshop.ts';
import type { SearchContent, SearchWord } from '../../../src/lib/search-content.ts';
import { writeSearch } from '../../../src/integration/search-index.ts';
import { foundOn } from '../../../src/integration/search-pages.ts';
import { openSearch, placesFor, recordsIn, TODAY } from '../../e2e/search-engine.ts';

const page = (place: string, main: string, kind = 'know-how', title = 'Title'): BuiltPage =>
  builtPage(
    `${place}index.html`,
    `<html><body><p>outside</p><main id="text" data-found-as="${kind}"><div class="text"><h1>${title}</h1>${main}</div><aside class="sidebar"><p>marginal</p></aside></main></body></html>`,
  );
const found = (main: string, kind?: string, place = 'a/b/') => foundOn(page(place, main, kind))[0]!;

test('title, summary, headings and text are separate', () => {
  const { title, lead, headings, text } = found('<p class="lead">In short.</p><h2>Why</h2><p>Because.</p>');
  assert.deepEqual([title, lead, headings.trim(), text], ['Title', 'In short.', 'Why', 'In short. Why. Because.']);
});

test('separate blocks of the page are separate in the text, and end as a sentence', () => {
  assert.equal(
    found('<table><tr><th>Mix</th><th>Sugar</th></tr><tr><td>2:1</td><td>7.4 lb</td></tr></table><ul><li>one</li><li>two.</li></ul>a<br>b')
      .text,
    'Mix; Sugar. 2:1; 7.4 lb. one. two. a b.',
  );
  assert.equal(found('<p>at 50&nbsp;°F (10&nbsp;°C)</p>').text, 'at 50\u00a0°F (10\u00a0°C).');
});

test('source marks, forms, drawings, boxes, hidden text and the sidebar are not searched; a law box is', () => {
  const read = found(
    '<p>57<sup class="mark"><a>3</a></sup> °F</p><form>f<label>l</label></form><svg><text>s</text></svg><section class="box">box</section><p hidden>h</p><span class="print-only">p</span><span class="visually-hidden">o</span><a data-unfound>u</a><script>x()</script><section class="box law">law</section>',
  ).text;
  assert.equal(read, '57 °F. law.');
});

test('the description of a picture is searched', () =>
  assert.equal(
    found('<figure><img src="x.jpg" alt="A queen cell on a comb"><figcaption>Seen in May</figcaption></figure>').text,
    'A queen cell on a comb Seen in May.',
  ));

test('a step is searched, and pages in the footer of a bulletin are not', () => {
  assert.equal(found('<label><input type="checkbox"><span>Mix 2:1</span></label>').text, 'Mix 2:1.');
  assert.equal(found('<p>own</p><ul class="rows"><li>other</li></ul>', 'pest or disease').text, 'own.');
  assert.equal(found('<ul class="rows"><li>Package night</li></ul>', 'meeting', 'meetings/').text, 'Package night.');
});

test('a page without a kind is not found; a list entry is found by itself, and only once', () => {
  assert.deepEqual(foundOn(builtPage('x/index.html', '<main id="text"><h1>T</h1></main>')), []);
  const [list, entry, ...more] = foundOn(
    page(
      'words/',
      '<p class="lead">All.</p><dl><div id="brood" data-found-as="word"><dt><b>brood</b></dt><dd>The young. <a data-unfound>More</a></dd></div></dl>',
      'word',
      'Words',
    ),
  );
  assert.equal(list!.text, 'All.');
  assert.deepEqual([entry!.place, entry!.kind, entry!.title, entry!.text], ['words/#brood', 'word', 'brood', 'The young.']);
  assert.equal(more.length, 0);
});

test('a meeting has its day in words', () => {
  assert.equal(
    found('<p><time datetime="2026-05-16">Saturday 16 May 2026, 10:00 to 12:30</time></p>', 'meeting').when,
    'Saturday 16 May 2026, 10:00 to 12:30',
  );
});

const words: SearchWord[] = [
  { id: 'varroa', names: ['varroa', 'verroa', 'red ticks'], more: '/pests/varroa/' },
  { id: 'sugar-roll', names: ['powdered-sugar roll', 'sugar shake'], more: '/lists/count/' },
];
const pages = [
  page(
    'pests/varroa/',
    '<p class="lead">A mite on bees.</p><p>Count 1/2 cup of bees. Above 3 per 100, act.</p>',
    'pest or disease',
    'Varroa',
  ),
  page('lists/count/', '<p>Roll the bees in sugar, count mites, 55 to 64 % of them.</p>', 'checklist', 'Mite count day'),
  page('know-how/label/', '<p>Read the box.</p>', 'know-how', 'Find the active ingredient'),
  page('know-how/mold/', '<p>Moldy comb. See beetles? Mites are no cause of the chimney.</p>', 'know-how', 'Gray fuzz'),
  page('work-it-out/syrup/', '<p>2:1 by weight, two pounds a quart.</p>', 'calculator', 'Syrup'),
];
/** The search page lists all others. It is no record. */
const searchPage = {
  ...page(
    'search/',
    '<form data-search-page></form><ul data-search-pages><li><a href="/lists/count/">Mite count day</a></li><li><a href="/pests/varroa/">Varroa</a></li></ul>',
  ),
  main: undefined,
};
const opened: { folder: string; served: Served }[] = [];
const contentOf = (named: readonly SearchWord[], windows = {}): SearchContent => ({
  words: [...named],
  windows,
  law: ['pests/varroa/'],
});

const edition: Edition = { day: '2026-04-18' as Edition['day'], fingerprint: '3f2a1c5d' };
const searched = (site: string, of: readonly BuiltPage[], content: SearchContent) => ({
  site,
  pages: of,
  base: '/',
  own: { tongue: 'en' as const, content },
  others: [],
  edition,
});

/** The search of a few pages, written and served. */
async function made(of: readonly BuiltPage[], named: readonly SearchWord[], windows = {}): Promise<{ folder: string; engine: Engine }> {
  const folder = mkdtempSync(join(tmpdir(), 'almanac-search-'));
  await writeSearch(searched(folder, [...of, searchPage], contentOf(named, windows)));
  const served = await serve({ folder, port: 0 });
  opened.push({ folder, served });
  return { folder, engine: await openSearch(folder, served.address) };
}
let folder: string;
let engine: Engine;
beforeAll(async () => {
  ({ folder, engine } = await made(pages, words, { 'pests/varroa/': 'valley 03-14 11-15' }));
});
afterAll(async () => {
  for (const each of opened) {
    await each.served.close();
    rmSync(each.folder, { recursive: true });
  }
});
const places = (typed: string): Promise<string[]> => placesFor(typed, engine);

test('one record per page contains its title and text unchanged', async () => {
  assert.deepEqual(
    recordsIn(folder).map(({ place }) => place),
    ['know-how/label/', 'know-how/mold/', 'lists/count/', 'pests/varroa/', 'work-it-out/syrup/'],
  );
  const odd = page(
    'a/',
    '<p>Prose: &lt;3, {name}, 2~3, 5\'10" &amp; é ¶ 1,000 at 45.9 %. 2:1. “Why?”</p>',
    'know-how',
    'Of &lt;b&gt; &amp; 1:1.',
  );
  const [record] = recordsIn((await made([odd, ...pages], words)).folder);
  assert.deepEqual([record!.title, record!.text], ['Of <b> & 1:1.', 'Prose: <3, {name}, 2~3, 5\'10" & é 1,000 at 45.9 %. 2:1. “Why?”.']);
});

test('pages are found by their names, and by all glossary names that lead to them', async () => {
  for (const typed of ['varroa', 'verroa', 'red ticks', 'Varoa']) assert.equal((await places(typed))[0], 'pests/varroa/', typed);
  assert.equal((await places('sugar shake'))[0], 'lists/count/');
  assert.equal((await places('powder suger roll'))[0], 'lists/count/');
});

test('a ratio, a fraction and a unit are found in every spelling', async () => {
  for (const typed of ['2:1', '2 to 1 syrup', '2 lbs a qt']) assert.equal((await places(typed))[0], 'work-it-out/syrup/', typed);
  assert.equal((await places('½ cup'))[0], 'pests/varroa/');
});

test('a misspelt word finds the right word, and the correction is reported', async () => {
  const { hits, corrected } = await lookUp('beatles', engine, TODAY);
  assert.equal((await engine.shownOf(hits[0]!.entry)).url, '/know-how/mold/');
  assert.deepEqual(corrected, ['beetles']);
  assert.deepEqual((await lookUp('beetle chimneys', engine, TODAY)).corrected, [], 'another ending is no mistake');
});

test('words written apart or together are found the other way', async () => {
  assert.equal((await places('mitecount'))[0], 'lists/count/');
  assert.equal((await places('chim ney'))[0], 'know-how/mold/');
});

test('stop words, punctuation and an empty query find nothing; unknown words find nothing', async () => {
  for (const typed of ['', 'what do I', '?!', 'qqqqzz']) assert.deepEqual(await places(typed), [], typed);
});

test('a result has the days, the kind and the text of its page', async () => {
  const [first] = (await lookUp('varroa', engine, TODAY)).hits;
  assert.deepEqual(first!.entry, { at: first!.entry.at, kind: 'pest or disease', windows: 'valley 03-14 11-15', law: true, listed: 1 });
  assert.deepEqual(await engine.shownOf(first!.entry), {
    title: 'Varroa',
    text: 'A mite on bees. Count 1/2 cup of bees. Above 3 per 100, act.',
    when: '',
    url: '/pests/varroa/',
    sections: [],
  });
});

test('a result has the headings of its page that a link can lead to', async () => {
  const of = page('a/', '<p>Rope.</p><h2 id="rope-test">Rope test</h2><p>A match.</p><h2>No id</h2><h3 id="why">Why?</h3><p>So.</p>');
  const headed = await made([of, ...pages], words);
  const all = await Promise.all(headed.engine.entries.map((each) => headed.engine.shownOf(each)));
  assert.deepEqual(
    all.find(({ url }) => url === '/a/')!.sections.map(({ id, text }) => [id, text]),
    [
      ['rope-test', 'Rope test'],
      ['why', 'Why?'],
    ],
  );
});

test('the next meeting ranks above others, and those that are over sink', async () => {
  const day = (on: string): BuiltPage => page(`meetings/${on}/`, '<p>A meeting of the club.</p>', 'meeting', 'Club meeting');
  const days = ['2026-03-12', '2026-04-18', '2026-05-16'];
  const met = await made([...days.map(day), ...pages], words, Object.fromEntries(days.map((on) => [`meetings/${on}/`, `${on} ${on}`])));
  const order = (today: string): Promise<string[]> => placesFor('meeting', met.engine, 3, today);
  assert.deepEqual(await order('2026-04-18'), ['meetings/2026-04-18/', 'meetings/2026-05-16/', 'meetings/2026-03-12/']);
  assert.equal((await order('2026-04-19'))[0], 'meetings/2026-05-16/');
});

test('words side by side on a page rank it above one where they are apart', async () => {
  const apart = 'The queen is here. A hive stands there, and far from it, on the other side of the yard, a cell of wax was seen.';
  const beside = 'The hive is here. A queen cell of wax was seen, and far from it, on the other side of the yard, there stands one.';
  const near = await made([page('a/', `<p>${apart}</p>`), page('b/', `<p>${beside}</p>`), ...pages], words);
  assert.deepEqual((await placesFor('queen cell', near.engine)).slice(0, 2), ['b/', 'a/']);
});

// Invented names that nobody sells.
for (const typed of [
  'Zorbomite strips',
  'my box says Queltor',
  'quelltorix pad dose',
  'brand Frebbex for mites',
  'treat with Yttriplom gel',
]) {
  test(`a product name is a strange word: ${typed}`, async () => assert.ok((await lookUp(typed, engine, TODAY)).strange));
}
for (const typed of ['verroa', 'mites', 'sugar roll for mites'])
  test(`a known word is not: ${typed}`, async () => assert.ok(!(await lookUp(typed, engine, TODAY)).strange));

test('a file that failed to load is requested again', async () => {
  const { engine: flaky } = await made(pages, words);
  const { fetch } = globalThis;
  globalThis.fetch = (address) => (/pf_index/.test(String(address)) ? Promise.reject(new Error('no signal')) : fetch(address));
  try {
    await assert.rejects(lookUp('varroa', flaky, TODAY), /did not come/);
  } finally {
    globalThis.fetch = fetch;
  }
  assert.equal((await placesFor('varroa', flaky))[0], 'pests/varroa/');
});

test('an edition with another mark and the same words leaves every file of the search as it is', async () => {
  const filesOf = async (fingerprint: string): Promise<Map<string, string>> => {
    const site = mkdtempSync(join(tmpdir(), 'almanac-search-'));
    const about = page('about/', `<p class="lead">Edition of ${editionName({ ...edition, fingerprint })}, by the club.</p>`);
    await writeSearch({ ...searched(site, [...pages, about, searchPage], contentOf(words)), edition: { ...edition, fingerprint } });
    const files = contentsOf(site);
    rmSync(site, { recursive: true });
    return files;
  };
  const one = await filesOf('3f2a1c5d');
  assert.ok(one.size > 3);
  assert.deepEqual(await filesOf('0b9e7a11'), one);
});

test('a machine without a Pagefind program gets a sentence', async () => {
  const { npm_config_arch: before } = process.env;
  process.env.npm_config_arch = 'mips';
  try {
    await assert.rejects(writeSearch(searched(folder, pages, contentOf(words))), (error: Error) => {
      assert.match(explainError(error), /^the search is made by Pagefind, whose program for \w+ on mips is missing\. .+\.$/);
      return true;
    });
  } finally {
    if (before === undefined) delete process.env.npm_config_arch;
    else process.env.npm_config_arch = before;
  }
});
