// Spelling, compared with the SCOWL word lists (en_US, en_GB-ise, en_AU, en_CA, wordlist.sourceforge.net) as Hunspell dictionaries.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import australian from 'dictionary-en-au';
import british from 'dictionary-en-gb';
import canadian from 'dictionary-en-ca';
import american from 'dictionary-en';
import nspell from 'nspell';
import { expect, test } from 'vitest';
import type { Language } from '../../../../shared/country/language.ts';
import { asWritten } from '../../../../shared/country/written.ts';
import { translationIn } from '../../../../src/source/translations.ts';

const BOOKS = 'content/books';
/** A word of these fields is a name, an id or what people type. */
const NO_TEXT = /^\s*(?:also|id|sources?|uk|us|figures?|cell|title-in|url|where|who|work|kind|follows|place):?.*$/gm;

/** Every word of the texts in American English, with one file that has it. */
function wordsOfBooks(): Map<string, string> {
  const words = new Map<string, string>();
  for (const book of ['common', 'north', 'us', 'us-oh'])
    for (const path of readdirSync(join(BOOKS, book), { recursive: true, encoding: 'utf8' }))
      if (path.endsWith('.mdx') && translationIn(path) === null) {
        const text = readFileSync(join(BOOKS, book, path), 'utf8')
          .replace(/^---\n[\s\S]*?\n---\n/, '')
          .replace(NO_TEXT, '');
        for (const [word] of text.replace(/\]\([^)]*\)|="[^"]*"|<[^>]*>/g, ' ').matchAll(/(?<![\p{L}-])\p{Ll}+(?![\p{L}-])/gu))
          words.set(word, `${book}/${path}`);
      }
  return words;
}

const WORDS = wordsOfBooks();
const DICTIONARIES: readonly [Language, Parameters<typeof nspell>[0]][] = [
  ['en-GB', british],
  ['en-NZ', british],
  ['en-AU', australian],
  ['en-CA', canadian],
];
const us = nspell(american);

test.each(DICTIONARIES)('every American word of the books is a word of %s', (language, dictionary) => {
  const there = nspell(dictionary);
  expect(WORDS.size).toBeGreaterThan(2500);
  const wrong = [...WORDS].filter(([word]) => us.correct(word) && !there.correct(asWritten(word, language)));
  expect(wrong.map(([word, file]) => `${file}: "${word}" is "${asWritten(word, language)}" in ${language}`)).toEqual([]);
});

test('the wide books are in American English', () => {
  const gb = nspell(british);
  expect([...WORDS].filter(([word]) => !us.correct(word) && gb.correct(word))).toEqual([]);
});

test.each([
  [
    "Colors of neighbors' hives; centered combs",
    "Colours of neighbours' hives; centred combs",
    "Colours of neighbours' hives; centred combs",
  ],
  ['discolored, crystallized and fertilized', 'discoloured, crystallised and fertilised', 'discoloured, crystallized and fertilized'],
  [
    'a laboratory in Colorado, literature, an honorary gray',
    'a laboratory in Colorado, literature, an honorary grey',
    'a laboratory in Colorado, literature, an honorary grey',
  ],
  // A season, and what mites and caps do.
  [
    'In fall, feed. The fall flow. Mites fall off and the caps fall in.',
    'In autumn, feed. The autumn flow. Mites fall off and the caps fall in.',
    'In fall, feed. The fall flow. Mites fall off and the caps fall in.',
  ],
  ['the mite fall of a day', 'the mite fall of a day', 'the mite fall of a day'],
])('%s', (text, inBritain, inCanada) => {
  assert.equal(asWritten(text, 'en-US'), text);
  assert.equal(asWritten(text, 'en-GB'), inBritain);
  assert.equal(asWritten(text, 'en-CA'), inCanada);
});

// Unicode CLDR: long dates of en-US and en-CA begin with the month, the others with the day.
test.each([
  ['from October 5 to 15', 'from 5 to 15 October'],
  ['opened November 29, 2026', 'opened 29 November 2026'],
  ['put in on April 20: look', 'put in on 20 April: look'],
  ['in May 2026, 12 of May', 'in May 2026, 12 of May'],
])('days of a book: %s', (text, dayFirst) => {
  for (const language of ['en-US', 'en-CA'] as const) assert.equal(asWritten(text, language), text);
  for (const language of ['en-GB', 'en-NZ', 'en-AU', 'en-IE', 'en-ZA'] as const) assert.equal(asWritten(text, language), dayFirst);
});

test('where a text of the books still says "fall" to Britain, something falls', () => {
  const left: string[] = [];
  for (const book of ['common', 'north'])
    for (const path of readdirSync(join(BOOKS, book), { recursive: true, encoding: 'utf8' })) {
      if (!path.endsWith('.mdx')) continue;
      const body = readFileSync(join(BOOKS, book, path), 'utf8')
        .replace(/^---\n[\s\S]*?\n---\n/, '')
        .replace(/\]\([^)]*\)|"[^"]*"/g, '|');
      // The words of a cell, a link or a line, as the page's tree has them.
      for (const text of body.split(/[|[\]*#\n]+/).map((each) => asWritten(each.trim(), 'en-GB')))
        if (/\bfall\b/i.test(text) && !FALLS.test(text)) left.push(`${path}: ${text}`);
    }
  expect(left).toEqual([]);
});

const FALLS =
  /\b(?:fall (?:off|in|on|from|below|into|to|ill|through)|(?:mite|natural|daily|a) fall|(?:mites|drops|or) fall|fall is|the fall does)\b/i;
