/* A club of answers alone in New Zealand builds: no dead link, no empty page, no half sentence, its own seasons, and no other land's numbers. */
import assert from 'node:assert/strict';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, test } from 'vitest';
import { parse } from 'yaml';
import { projectFolder } from '../../src/cli/paths.ts';
import { linksOf } from '../e2e/links.ts';
import { writeNewClub } from '../fixtures/new-club.ts';
import { servedFolder, type Site } from '../setup/built-site.ts';

const slow = { tags: ['slow'] };
const books = join(projectFolder, 'content', 'books');
const club = mkdtempSync(join(tmpdir(), 'waikato-'));
let site: Site;
afterAll(async () => {
  await site?.close();
  rmSync(club, { recursive: true, force: true });
});

const fileOf = (page: string): string => (page.endsWith('/') ? `${page}index.html` : page).slice(1);
const INLINE = /<\/?(?:a|abbr|b|strong|em|i|span|sup|sub|time|data|output|code|small|cite|q|mark|button|label)(?:\s[^>]*)?>/g;
/** The words of a page's main part. Each block is a line. */
const linesOf = (html: string): string =>
  (/<main[\s\S]*<\/main>/.exec(html)?.[0] ?? html)
    .replace(/<(script|style|svg|template)\b[\s\S]*?<\/\1>/g, '')
    .replace(INLINE, '')
    .replace(/<[^>]*>/g, '\n')
    .replace(/&#39;|&quot;/g, "'")
    .replace(/[ \t]+/g, ' ')
    .replace(/ ?\n[ \n]*/g, '\n');
const wordsOf = (html: string): string =>
  html
    .replace(/<[^>]*>/g, ' ')
    .replace(/&#39;/g, "'")
    .replace(/\s+/g, ' ');
const pages = (read = wordsOf): [path: string, words: string][] => site.pages.map((page) => [page, read(site.read(fileOf(page)))]);

test('it builds, and its own numbers are on its pages', slow, async () => {
  writeNewClub(club, 'waikato');
  site = await servedFolder(club, 'waikato');
  assert.ok(site.pages.length > 150, `${site.pages.length} pages`);
  for (const [page, number] of [
    ['/', '111'],
    ['/know-how/stings/', '0800 764 766'],
  ] as const)
    assert.ok(site.read(fileOf(page)).includes(number), number);
});

test('every link leads to a page', slow, async () => assert.deepEqual((await linksOf(site)).faults, []));

test('no page is empty', slow, () => {
  const short = pages(linesOf).filter(([page, words]) => words.split(/\s+/).length < 20 && !/404|offline/.test(page));
  assert.deepEqual(short, []);
  for (const room of ['/forage/', '/notices/', '/counts/']) assert.ok(!site.pages.includes(room), room);
  // The books of its place bring public documents to read. No other land's come with them, and nothing invented.
  const reading = site.read(fileOf('/reading/'));
  assert.match(reading, /mpi\.govt\.nz/);
  assert.doesNotMatch(reading, /ohio\.gov|gov\.uk|nvented/);
});

/** What is left of a sentence whose figure, contact or word is missing. */
const BROKEN = /.{0,50}(?:undefined|NaN|\[object|\(\s*\)|\S ,(?= )|\S \.(?=\s|$)|[,;:] ?\.(?=\s|$)|,,|&lt;[A-Z]).{0,20}/gm;

test('no sentence is broken', slow, () => {
  assert.equal('Call . Then wait ( ). It takes , days.'.match(BROKEN)?.length, 1);
  const found = pages(linesOf).flatMap(([page, words]) => [...words.matchAll(BROKEN)].map(([part]) => `${page}: ${part}`));
  assert.deepEqual(found, []);
});

/** The sun is lowest on 21 June south of the equator, and highest on 21 December. The months are those in which each work begins. */
const BEGINS = {
  'Winter rest': 'April|May|June',
  'The first full look in spring': 'August|September',
  'The weekly look in swarm season': 'September|October',
  'The flow and the honey boxes': 'November|December',
  'The late-summer mite decision': 'February',
  'Autumn feeding and stores': 'March|April',
};

test('the year of the south is on its page of the year', slow, () => {
  const text = linesOf(site.read('year/index.html'));
  assert.ok(Object.keys(BEGINS).length > 0);
  for (const [title, months] of Object.entries(BEGINS))
    assert.match(text, new RegExp(`${title}\\s+\\d+\\s(?:${months})\\s(?:to|–)\\s`), title);
});

test('no page names a number to call of another land', slow, () => {
  const found = pages().flatMap(
    ([path, text]) => /(?<!\d)(?:911|1-800-222-1222)(?!\d)/.exec(text)?.map((number) => `${path}: ${number}`) ?? [],
  );
  assert.deepEqual(found, []);
});

/** Names of publishers in the books' sources, which readers see wherever a figure of theirs is. */
const publishers = ['common', 'nz'].flatMap((book) =>
  readdirSync(join(books, book, 'sources')).flatMap((file) => {
    const { who, publisher, title, where } = parse(readFileSync(join(books, book, 'sources', file), 'utf8')) as Record<string, unknown>;
    return [who, publisher, title, where].filter((words) => typeof words === 'string').filter((words) => words.includes('Ohio'));
  }),
);

/** Where a figure was published: behind its publisher as a sentence of its own, before its value, or in words that name the country. */
const ELSEWHERE = /[.;,] Ohio[.:]|(?:One US state's agency|A state association of the US) \(Ohio/g;

test('Ohio is only where a figure comes from', slow, () => {
  assert.ok(publishers.length >= 3, `${publishers.length} publishers`);
  const found = pages().flatMap(([path, text]) => {
    const rest = publishers.reduce((words, name) => words.replaceAll(name, ''), text).replace(ELSEWHERE, '');
    return [...rest.matchAll(/.{0,40}\bOhio.{0,40}/g)].map(([words]) => `${path}: ${words}`);
  });
  assert.deepEqual(found, []);
});
