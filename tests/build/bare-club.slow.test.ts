/* A club of a club.yaml alone in another land builds. It names no number to call of another land, and no other place but where a figure was published. */
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'vitest';
import { parse } from 'yaml';
import { projectFolder } from '../../src/cli/paths.ts';
import { bareClubs, writeBareClub } from '../fixtures/bare-club.ts';
import { filesIn, openWorkshop } from './workshop.ts';

const { folder, build } = openWorkshop();
const club = join(folder, 'waikato');
const out = join(folder, 'site', 'out');
const books = join(projectFolder, 'content', 'books');

const slow = { tags: ['slow'] };
const wordsOf = (html: string): string =>
  html
    .replace(/<[^>]*>/g, ' ')
    .replace(/&#39;/g, "'")
    .replace(/\s+/g, ' ');
const pages = (): [path: string, words: string][] =>
  filesIn(out).flatMap((path) => (path.endsWith('.html') ? [[path, wordsOf(readFileSync(join(out, path), 'utf8'))]] : []));

test('it builds, and its own numbers are on its pages', slow, async () => {
  writeBareClub(club, bareClubs.waikato);
  const ran = await build(club, out);
  assert.equal(ran.code, 0, ran.output);
  assert.match(ran.output, /^From the books \(common, south, nz\): /m);
  assert.ok(pages().length > 150, `${pages().length} pages`);
  for (const [page, number] of [
    ['index.html', '111'],
    ['know-how/stings/index.html', '0800 764 766'],
  ] as const)
    assert.ok(readFileSync(join(out, page), 'utf8').includes(number), number);
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
    const { who, title, where } = parse(readFileSync(join(books, book, 'sources', file), 'utf8')) as Record<string, unknown>;
    return [who, title, where].filter((words) => typeof words === 'string').filter((words) => words.includes('Ohio'));
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
