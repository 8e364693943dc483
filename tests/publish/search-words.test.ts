// What the search is handed at build, and what its list makes of it: names, spellings, ratios, small words, marks.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { piecesOf } from '../../src/islands/search/excerpt.ts';
import { readLexicon } from '../../src/islands/search/lexicon.ts';
import { termsOf, wordsNamed } from '../../src/islands/search/query.ts';
import type { BuiltPage } from '../../src/publish/built-pages.ts';
import type { Word } from '../../src/publish/handed-over.ts';
import { forIndex, ratiosOf } from '../../src/publish/search-index.ts';
import { searchWords } from '../../src/publish/search-words.ts';
import { rows, type Row } from '../rows.ts';

const page = (place: string, main: string, kind = 'know-how'): BuiltPage => ({
  file: `${place}index.html`,
  place,
  html: `<html><body><p>outside</p><main id="text" data-pagefind-body="" data-pagefind-filter="kind:${kind}"><h1>Title</h1>${main}<aside class="margin"><p>marginal</p></aside></main></body></html>`,
});
const words: Word[] = [
  { id: 'varroa', names: ['varroa', 'verroa', 'red ticks'], more: '/pests/varroa/' },
  { id: 'powdered-sugar-roll', names: ['powdered-sugar roll', 'sugar shake'], more: '/lists/mite-count-day/' },
  { id: 'syrup', names: ['syrup', 'suger water', 'sirup'] },
];
const pages = [
  page('a/', '<h2>Temperature of the chimney</h2><p>sugar entrance beginner beetles syrup clusters cluster</p>'),
  page('b/', '<p>sugar entrances recipe tongue temperature register beetle drain</p><script>secret()</script>'),
];
const lexicon = readLexicon(searchWords(words, pages));

test('the words that are fetched are those that were written', () => assert.deepEqual(lexicon.words, words.map(({ id, names }) => ({ id, names }))));

test('only words of the main text are spelled out, one form of each', () => {
  const { spelled } = searchWords([], pages);
  const all = [...spelled.matchAll(/(\d)([a-z]*)/g)].reduce<string[]>((list, [, shared, rest]) => [...list, (list.at(-1) ?? '').slice(0, Number(shared)) + rest], []);
  assert.deepEqual(all, ['beetle', 'beginner', 'chimney', 'cluster', 'drain', 'entrance', 'recipe', 'register', 'sugar', 'syrup', 'temperature', 'title', 'tongue']);
});

const spellings: Row<string, string | null>[] = [
  ['suger', 'sugar'], ['recipie', 'recipe'], ['temprature', 'temperature'], ['begginer', 'beginner'], ['tounges', 'tongue'], ['enterance', 'entrance'], ['chimny', 'chimney'], ['regester', 'register'], ['beatles', 'beetle'], ['sirup', 'syrup'],
  // Right as they are, in any form, or begun.
  ['sugar', null], ['clustering', null], ['entrances', null], ['temp', null],
  // Names from the word list are known, and led to a word only where one vowel is wrong.
  ['verroa', 'varroa'], ['shake', null],
  // Far from all.
  ['xylophone', null], ['zz', null],
].map(([given, expect]) => ({ case: `${given}`, given: given as string, expect: expect as string | null, from: 'as typed' }));
rows('meant', spellings, (given, expect) => assert.equal(lexicon.meant(given), expect));

const queries: Row<string, string[]>[] = [
  { case: 'small words go', given: 'how many is to many', expect: ['many'], from: 'as typed' },
  { case: 'where all are small, all stay', given: 'what to do', expect: ['what', 'to', 'do'], from: 'as typed' },
  { case: 'a ratio stays whole', given: '2:1 syrup', expect: ['2to1', 'syrup'], from: 'as typed' },
  { case: 'so it does in words', given: '2 to 1 syrup', expect: ['2to1', 'syrup'], from: 'as typed' },
  { case: 'an apostrophe parts no word', given: "can't find the keeper’s queen", expect: ['find', 'keepers', 'queen'], from: 'as typed' },
  { case: 'accents and capitals count for nothing', given: 'VARROA Réine', expect: ['varroa', 'reine'], from: 'as typed' },
  { case: 'a decimal stays whole', given: '2.5 gallons', expect: ['2.5', 'gallons'], from: 'as typed' },
  { case: 'a unit is no small word', given: '3 lb', expect: ['3', 'lb'], from: 'as typed' },
  { case: 'degrees keep their sign', given: '57 °F', expect: ['57', '°f'], from: 'as typed' },
  { case: 'signs alone are nothing', given: '?!  <>', expect: [], from: 'as typed' },
  { case: 'a word typed twice is one', given: 'mites mites', expect: ['mites'], from: 'as typed' },
];
rows('looked for', queries, (given, expect) => assert.deepEqual(termsOf(given, lexicon).map(({ typed }) => typed), expect));

test('named: by any name, whole words only, the longest first', () => {
  const named = (typed: string): string[] => wordsNamed(typed, lexicon).map(({ id }) => id);
  assert.deepEqual(named('red ticks and syrup'), ['varroa', 'syrup']);
  assert.deepEqual(named('Powdered sugar roll?'), ['powdered-sugar-roll']);
  assert.deepEqual(named('syrups'), []);
  assert.deepEqual(named(''), []);
});

test('ratios of a page; a time of day is none', () => assert.deepEqual(ratiosOf('2:1 by weight, 1:1, 2:1, 18:30, 5:3 and 10:00'), ['2to1', '1to1', '5to3']));

test('a page carries the names under which people look for it, where only the index reads them', () => {
  const varroa = forIndex(page('pests/varroa/', '<p>2:1</p>', 'pest or disease'), words);
  assert.match(varroa, /<main data-also-sought="varroa; verroa; red ticks; 2to1" data-pagefind-meta="also\[data-also-sought\]" id="text"/);
  assert.match(forIndex(page('pests/other/', ''), words), /<main id="text"/);
});

test('a meeting carries its day and its names together, with all their commas', () => {
  const meeting = page('meetings/x/', '<p><time datetime="2026-05-16">Saturday 16 May 2026, 10:00 to 12:30</time></p>', 'meeting');
  assert.match(forIndex(meeting, [{ id: 'yard', names: ['yard "day"'], more: '/meetings/x/' }]), /<main data-also-sought="yard &quot;day&quot;" data-when-sought="Saturday 16 May 2026, 10:00 to 12:30" data-pagefind-meta="also\[data-also-sought\], when\[data-when-sought\]" id/);
});

test('what stands apart on the page stands apart in the index', () => assert.match(forIndex(page('a/', '<table><tr><td>3</td><td>12</td></tr></table>one<br>two'), []), /<td>3 <\/td><td>12 <\/td><\/tr><\/table>one <br>two/));

test('the words of a step are read', () => assert.match(forIndex(page('a/', '<label><input type="checkbox"><span>Mix 2:1</span></label>'), []), /<div><input type="checkbox"><span>Mix 2:1<\/span><\/div>/));

test('the list of meetings is found; pages that gather others count less', () => {
  const meetings = forIndex({ ...page('meetings/', ''), html: '<main id="text"><h1>Meetings</h1></main>' }, []);
  assert.match(meetings, /data-pagefind-weight="0.2" data-pagefind-body data-kind="meeting" data-pagefind-filter="kind\[data-kind\]" data-also-sought="next meeting;/);
  assert.match(forIndex(page('year/', ''), []), /data-pagefind-weight="0.2" data-also-sought="what to do this month; January /);
});

const excerpts: Row<string, [string, boolean][]>[] = [
  { case: 'marks', given: 'feed <mark>2:1</mark> or 2~3 L', expect: [['feed ', false], ['2:1', true], [' or 2~3 L', false]], from: 'the engine' },
  { case: 'a mark first and two in a row', given: '<mark>57</mark> <mark>°F</mark>', expect: [['', false], ['57', true], [' ', false], ['°F', true], ['', false]], from: 'the engine' },
  { case: 'signs of the page', given: 'at &lt;3 mites &gt; 2 &amp; "so"', expect: [['at <3 mites > 2 &amp; "so"', false]], from: 'the engine escapes < and > only' },
  { case: 'a tag in the page is text', given: '&lt;img src=x onerror=alert(1)&gt;', expect: [['<img src=x onerror=alert(1)>', false]], from: 'the engine escapes < and > only' },
];
rows('excerpt', excerpts, (given, expect) => assert.deepEqual(piecesOf(given).map(({ text, marked }) => [text, marked]), expect));
