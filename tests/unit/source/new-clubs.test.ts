/* A club of answers alone, in three lands: the books carry it without a fault, and give it nothing of another land. */
import assert from 'node:assert/strict';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, test } from 'vitest';
import { checkFolder } from '../../../src/checks/check.ts';
import { isPageKind } from '../../../src/checks/summary.ts';
import { stationsOf } from '../../../src/cli/new/land.ts';
import { formatDiagnostic } from '../../../src/source/diagnostic.ts';
import { readFolder, type Entry, type Folder } from '../../../src/source/folder.ts';
import { nameOf } from '../../../src/source/layers.ts';
import { plainText } from '../../../src/source/prose.ts';
import { newClubs, writeNewClub, type NewClub } from '../../fixtures/new-club.ts';

delete process.env.ALMANAC_BOOKS;
const made = mkdtempSync(join(tmpdir(), 'bare-'));
afterAll(() => rmSync(made, { recursive: true, force: true }));

/** Duties that nobody has in a new club. */
const DUTIES = 'education-officer extension fire-office meetings-line pesticide-office supplier swarm-line wildlife-office'.split(' ');
/** Texts of the place that the books have for no land, but for parts of one. */
const EVERYWHERE = ['bees-from-elsewhere', 'town-rules'];

/** What each club is given, and which texts of its place nobody has written. Places are codes of ISO 3166 and the halves of the world. */
const expected = {
  kentucky: {
    places: ['anywhere', 'north', 'US', 'US-KY'],
    books: ['common', 'north', 'us'],
    locals: ['foulbrood-confirmed', 'inspectors-visit', 'registering-hives', 'reportable-diseases'],
    figures: [],
    days: [],
  },
  waikato: {
    places: ['anywhere', 'south', 'NZ', 'NZ-WKO'],
    books: ['common', 'south', 'nz'],
    locals: ['hornets-here', 'registration-number', 'reporting-a-poisoning', 'unregistered-products'],
    // The levels were all set in the north, and the limit of the air is US law.
    figures: ['mite-action-level', 'mite-emergency-level', 'oxalic-air-limit'],
    // It has no normals.
    days: ['last-syrup'],
  },
  devon: {
    places: ['anywhere', 'north', 'GB', 'GB-DEV'],
    books: ['common', 'north', 'uk'],
    locals: ['antibiotics', 'hornets-here', 'unregistered-products'],
    figures: ['oxalic-air-limit'],
    days: [],
  },
} as const satisfies Record<NewClub, unknown>;

const fieldsOf = ({ fields }: Entry): Record<string, unknown> => (fields.value ?? {}) as Record<string, unknown>;

/** The words of a page; a figure and a text of the place are tags there, and have no words. */
const wordsOf = (entry: Entry): string => {
  const { title, summary, why } = fieldsOf(entry);
  return [title, summary, why, entry.tree ? plainText(entry.tree) : ''].join('\n');
};

/** Two figures of Ohio are told as those of another place, and the sentence says in which country that is. */
const ABROAD = /(?:One US state's agency|A state association of the US) \(Ohio/g;

/**
 * How many entries of each kind a new club gets from the books, at least. The numbers are those of November 2026, rounded down,
 * so that a book may lose an entry and a lost book is seen.
 */
const LEAST = {
  kentucky: {
    answers: 60,
    articles: 85,
    bulletins: 20,
    cautions: 14,
    checklists: 15,
    drawings: 20,
    figures: 200,
    local: 12,
    reading: 5,
    sheets: 5,
    signs: 70,
    sources: 210,
    treatments: 10,
    words: 175,
  },
  waikato: {
    answers: 60,
    articles: 85,
    bulletins: 20,
    cautions: 14,
    checklists: 15,
    drawings: 20,
    figures: 200,
    local: 13,
    reading: 5,
    sheets: 5,
    signs: 70,
    sources: 205,
    treatments: 8,
    words: 175,
  },
  devon: {
    answers: 60,
    articles: 85,
    bulletins: 20,
    cautions: 14,
    checklists: 15,
    drawings: 20,
    figures: 200,
    local: 13,
    reading: 5,
    sheets: 5,
    signs: 70,
    sources: 210,
    treatments: 8,
    words: 175,
  },
} as const satisfies Record<NewClub, Record<string, number>>;

let former: Folder | undefined;

for (const name of newClubs) {
  const { places, books, locals, figures, days } = expected[name];
  writeNewClub(join(made, name), name);
  // The books are parsed once for the three.
  const folder = (former = readFolder(join(made, name), former));

  test(`${name}: no fault, and the books of its land`, () => {
    assert.deepEqual(checkFolder(folder).map(formatDiagnostic), []);
    assert.deepEqual(
      folder.books.map(({ id }) => id),
      books,
    );
    assert.ok(folder.entries.length > 500, `${folder.entries.length} entries`);
  });

  test(`${name}: entries of every kind from the books`, () => {
    const ofBooks = folder.entries.filter(({ book }) => book !== undefined);
    const found = Object.groupBy(ofBooks, ({ collection }) => collection);
    const least = LEAST[name];
    for (const [collection, count] of Object.entries(least))
      assert.ok((found[collection]?.length ?? 0) >= count, `${collection}: ${found[collection]?.length ?? 0} of ${count}`);
    assert.deepEqual(Object.keys(found).sort(), Object.keys(least));
  });

  test(`${name}: every entry holds there`, () => {
    const others = folder.entries.filter((entry) => {
      const held = [fieldsOf(entry).for ?? 'anywhere'].flat();
      return !held.some((place) => (places as readonly unknown[]).includes(place));
    });
    assert.deepEqual(others.map(nameOf), []);
  });

  test(`${name}: no page names Ohio as its own place`, () => {
    const pages = folder.entries.filter((entry) => isPageKind(entry) || entry.tree !== null);
    assert.ok(pages.length > 100, `${pages.length} pages`);
    assert.deepEqual(pages.filter((entry) => /Ohio/.test(wordsOf(entry).replace(ABROAD, ''))).map(nameOf), []);
  });

  test(`${name}: the gaps are its missing duties, the texts of its place and the figures of other lands`, () =>
    assert.deepEqual(
      folder.gaps,
      [...DUTIES, ...EVERYWHERE, ...locals, ...figures.map((id) => `figure ${id}`), ...days.map((id) => `day ${id}`)].sort(),
    ));
}

test(
  'each station of the tables gives a club without a fault, with the parts of its year in order',
  { tags: ['slow'], timeout: 300_000 },
  () => {
    for (const [name, land] of [
      ['kentucky', 'US-KY'],
      ['devon', 'GB-DEV'],
    ] as const)
      for (const { id } of stationsOf(land)) {
        writeNewClub(join(made, id), name, { climate: id });
        assert.deepEqual(checkFolder(readFolder(join(made, id), former)).map(formatDiagnostic), [], id);
      }
  },
);
