/* A club and its books: what each says of itself and of the other, in exactly these sentences. */
import assert from 'node:assert/strict';
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'vitest';
import { checkFolder } from '../../../src/checks/check.ts';
import { summaryLines } from '../../../src/checks/summary.ts';
import { formatDiagnostic } from '../../../src/source/diagnostic.ts';
import { readFolder } from '../../../src/source/folder.ts';
import { bookYaml, faultsOfBook } from '../source/book-alone.ts';
import { books, edit, withClub } from '../source/layered.ts';

const faults = (files: Record<string, string>, over = books): string[] =>
  withClub('US-OH', files, (directory) => checkFolder(readFolder(directory)).map(formatDiagnostic), over);

for (const [what, files, found] of [
  ['an id like its folder', { 'trial/book.yaml': bookYaml('trial') }, []],
  [
    'an id unlike its folder',
    { 'trial/book.yaml': bookYaml('trail') },
    ['book.yaml:1:5 book: id: found "trail", while its folder is called "trial"; write "trial"'],
  ],
  [
    'the id of another book',
    { 'trial/book.yaml': bookYaml('other'), 'other/book.yaml': bookYaml('other') },
    ['book.yaml:1:5 book: id: found "other", which books/other has too; write "trial"'],
  ],
] as const)
  test(`a book by itself: ${what}`, () => assert.deepEqual(faultsOfBook(files), found));

for (const [what, id, found] of [
  ['unlike its folder', 'american', 'found "american", while its folder is called "us"'],
  ['of another book', 'common', 'found "common", which books/common has too'],
] as const)
  test(`a club over a book with an id ${what}`, () => {
    const over = mkdtempSync(join(tmpdir(), 'books-'));
    try {
      cpSync(books, over, { recursive: true });
      edit(over, 'us/book.yaml', 'id: us', `id: ${id}`);
      assert.deepEqual(faults({}, over), [`books/us/book.yaml:1:5 book: id: ${found}; write "us"`]);
    } finally {
      rmSync(over, { recursive: true, force: true });
    }
  });

const REVIEW = 'checked: 2026-05-01\nnext-check: 2027-05-01\nby: mentor\n';
const WITHDRAWN = 'withdrawn: 2026-05-14, it can mislead';
const whole = `---\ntitle: Comb\nsummary: Ours.\nsubject: brood\nyard: false\nsources: [leaflet]\ncertainty: likely\nask: mentor\n${REVIEW}---\nOurs.\n`;

for (const [what, files, found] of [
  [
    'a caution that is left out',
    { 'club.yaml': 'leaves-out: [cautions/stings]\n' },
    /^club\.yaml:51:14 book: leaves-out 1: found "cautions\/stings", which the pages of the books need; write nothing; to change a caution, write your own under the same name$/,
  ],
  [
    'all cautions that are left out',
    { 'club.yaml': 'leaves-out: [words, cautions]\n' },
    /^club\.yaml:51:21 book: leaves-out 2: found "cautions", which the pages of the books need; write nothing; /,
  ],
  [
    'somebody who stands in for a duty that is held',
    { 'club.yaml': 'stands-in: { mentor: inspector }\n' },
    /^club\.yaml:51:22 book: stands-in, mentor: found "mentor", a duty that a contact has; write nothing, or a duty that nobody has$/,
  ],
  [
    'the withdrawal of an entry that has another name now',
    { 'articles/comb.mdx': `---\n${WITHDRAWN}\n---\n` },
    /^articles\/comb\.mdx:1:1 book: the file: found the withdrawal of articles\/comb, which is called articles\/old-comb now; write the file as articles\/old-comb\.mdx$/,
  ],
  [
    'a choice among the rows of a figure that is in no book',
    { 'figures/swarm-hour.yaml': 'follows: hand-book\nbecause: It fits us.\n' },
    /^figures\/swarm-hour\.yaml:1:1 book: the file: found a choice of rows of figures\/swarm-hour, which no book of this club has; write the file as figures\/swarm-hours\.yaml, if that is meant$/,
  ],
  [
    'words added to a page that no name is near',
    { 'articles/of-the-moon.add.mdx': `---\n${REVIEW}---\nOurs.\n` },
    /^articles\/of-the-moon\.add\.mdx:1:1 book: the file: found words added to articles\/of-the-moon, which no book of this club has; write a whole entry, or take the file away$/,
  ],
  [
    'a page that was written over one of another name now',
    { 'articles/comb.mdx': whole, '.base/articles/comb.mdx': whole },
    /^articles\/comb\.mdx:1:1 book: the file: found what was written over articles\/comb, which is called articles\/old-comb now; write the file as articles\/old-comb\.mdx, and \.base\/articles\/comb\.mdx with it$/,
  ],
  [
    'a claim for an entry that has another name now',
    { 'claims.csv': 'what,day,by,hash\narticles/comb,2026-05-20,mentor,sha256:0\n' },
    /^claims\.csv:2:1 book: rows 1, what: found "articles\/comb", which is no entry of this almanac; write "articles\/old-comb", once it has been compared again$/,
  ],
  [
    'a book that no name is near',
    { 'club.yaml': 'books: [of-the-moon, us]\n' },
    /^club\.yaml:51:9 book: books 1: found "of-the-moon", a book that does not exist; write one of: common, nz, south, us, us-oh$/,
  ],
  [
    "an entry of the club's own that is left out",
    { 'club.yaml': 'leaves-out: [articles/stings]\n' },
    /^club\.yaml:51:14 book: leaves-out 1: found "articles\/stings", a file of the club's own; write nothing, or take articles\/stings\.mdx away$/,
  ],
  [
    'an entry that is left out and that no name is near',
    { 'club.yaml': 'leaves-out: [articles/of-the-moon]\n' },
    /^club\.yaml:51:14 book: leaves-out 1: found "articles\/of-the-moon", which is in no book of this club; write the name of an entry of a book$/,
  ],
  [
    'somebody who stands in and whom no name is near',
    { 'club.yaml': 'stands-in: { swarm-line: treasurer }\n' },
    /^club\.yaml:51:26 book: stands-in, swarm-line: found "treasurer", a duty that no contact in club\.yaml has; write one of: inspector, mentor$/,
  ],
  [
    'a claim for an entry that is nowhere',
    { 'claims.csv': 'what,day,by,hash\narticles/of-the-moon,2026-05-20,mentor,sha256:0\n' },
    /^claims\.csv:2:1 book: rows 1, what: found "articles\/of-the-moon", which is no entry of this almanac; write nothing in its place: take the line away$/,
  ],
] as const)
  test(`${what} is a fault`, () => {
    const [fault, ...others] = faults(files);
    assert.match(fault ?? 'no fault', found);
    assert.deepEqual(others, []);
  });

for (const [what, files] of [
  ["a caution of the club's own under the name of the book's", { 'cautions/stings.yaml': readCaution() }],
  ['somebody who stands in for a duty that nobody has', { 'club.yaml': 'stands-in: { swarm-line: mentor }\n' }],
  ['the withdrawal under the name of now', { 'articles/old-comb.mdx': `---\n${WITHDRAWN}\n---\n` }],
  ['a page over one of the same name', { 'articles/old-comb.mdx': whole, '.base/articles/old-comb.mdx': whole }],
] as const)
  test(`${what} is none`, () => assert.deepEqual(faults(files), []));

test('a club over books has an inspector, or somebody who stands in', () => {
  const faultsWith = (more: string): string[] =>
    withClub('US-OH', { 'club.yaml': more }, (directory) => {
      edit(directory, 'club.yaml', 'duty: inspector', 'duty: extension');
      return checkFolder(readFolder(directory)).flatMap((fault) => (fault.rule === 'book' ? [formatDiagnostic(fault)] : []));
    });
  assert.deepEqual(faultsWith(''), [
    'club.yaml:37:3 book: contacts: found no contact with the duty "inspector"; write one: the pages on notifiable diseases tell members to call that office',
  ]);
  assert.deepEqual(faultsWith('stands-in: { inspector: extension }\n'), []);
});

test('a book never says which library lends, nor what members saw', () => {
  const review = REVIEW.replace('mentor', 'book editor');
  const book = { 'trial/book.yaml': bookYaml('trial') };
  const reading = `title: A year\nauthor: Somebody\nyear: 2019\nkind: starter\nlevel: first year\nworth: Short.\n`;
  const plant = `title: Linden\nbotanical: Tilia\nworth: A flow.\ngives: [nectar]\n`;
  const seen = 'observed:\n  - year: 2024\n    first: 2024-06-20\n';
  assert.deepEqual(faultsOfBook({ ...book, 'trial/reading/year.yaml': reading + review, 'trial/forage/linden.yaml': plant + review }), []);
  assert.deepEqual(faultsOfBook({ ...book, 'trial/reading/year.yaml': `${reading}lends: A library\n${review}` }), [
    "reading/year.yaml:7:8 book: lends: found which library lends it, in a book; write it in a club's own file",
  ]);
  assert.deepEqual(faultsOfBook({ ...book, 'trial/forage/linden.yaml': plant + seen + review }), [
    "forage/linden.yaml:6:3 book: observed: found what members saw, in a book; write it in a club's own file",
  ]);
});

test('a figure that is nowhere is a fault of its book, and a gap of a club over that book', () => {
  const over = mkdtempSync(join(tmpdir(), 'books-'));
  try {
    cpSync(books, over, { recursive: true });
    edit(over, 'common/articles/swarms.mdx', 'Figure id="swarm-hours"', 'Figure id="swarm-hour"');
    withClub(
      'US-OH',
      {},
      (directory) => {
        assert.deepEqual(checkFolder(readFolder(join(over, 'common'))).map(formatDiagnostic), [
          'articles/swarms.mdx:17:10 reference: Figure, id: found "swarm-hour", which is not in figures/; write "swarm-hours"',
        ]);
        const folder = readFolder(directory);
        assert.deepEqual(checkFolder(folder), []);
        assert.deepEqual(folder.gaps, ['figure swarm-hour', 'figure swarm-weight', 'swarm-line']);
        assert.match(summaryLines(folder, '2026-06-01').at(-1)!, /Gaps: 3 \(figure swarm-hour, figure swarm-weight, swarm-line\)\.$/);
      },
      over,
    );
  } finally {
    rmSync(over, { recursive: true, force: true });
  }
});

/** The club says that it is no demonstration. What the good club invents is a fault of each of its files, and so is what a book invents. */
const inventedFiles = (files: Record<string, string>): string[] =>
  withClub('US-OH', files, (directory) => {
    edit(directory, 'club.yaml', 'demonstration: true', 'demonstration: false');
    const found = checkFolder(readFolder(directory)).filter(({ rule }) => rule === 'invented');
    return [...new Set(found.map(({ path }) => path))];
  });
const ITS_OWN = ['club.yaml', 'reading/quiet-year.yaml', 'sources/leaflet.yaml', 'sources/number-plan.yaml'];

test('without a demonstration nothing in fields is invented; a withdrawal and words may say it', () => {
  assert.deepEqual(inventedFiles({}), ITS_OWN);
  const sheet = (who: string, more = ''): string => `who: ${who}\nyear: 2010\nkind: paper\nseen: itself\n${more}`;
  assert.deepEqual(inventedFiles({ 'sources/sheet.yaml': sheet('A made-up club') }), [
    ...ITS_OWN.slice(0, 3),
    'sources/number-plan.yaml',
    'sources/sheet.yaml',
  ]);
  assert.deepEqual(inventedFiles({ 'sources/sheet.yaml': sheet('A club') }), ITS_OWN);
  assert.deepEqual(inventedFiles({ 'words/skep.yaml': 'withdrawn: 2026-05-14, it was invented\n' }), ITS_OWN);
  assert.deepEqual(inventedFiles({ 'articles/hives.mdx': whole.replace('Ours.\n', 'The box was invented in 1851.\n') }), ITS_OWN);
});

/** The good club's caution, in other words. */
function readCaution(): string {
  return `heading: "Take care: bees sting"\ncalls: Take care\nline: Wear a veil at every hive.\nsays:\n  - Wear a veil.\n  - Scrape stings out.\ndefers: [doctor]\ngravity: 3\nsources: [leaflet]\n${REVIEW}`;
}
