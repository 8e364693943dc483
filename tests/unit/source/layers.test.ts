/* A club's folder over the books it stands on: the nearest file counts, what is changed keeps the rest, and what does not hold here is not there. */
import assert from 'node:assert/strict';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'vitest';
import { check, checkFolder } from '../../../src/checks/check.ts';
import { formatDiagnostic } from '../../../src/source/diagnostic.ts';
import { readFolder, withoutDrafts, type Entry, type Folder } from '../../../src/source/folder.ts';
import { plainText } from '../../../src/source/prose.ts';
import { originOf } from '../../../src/source/origins.ts';
import { books, withClub } from './layered.ts';

const read = (land: string, files: Record<string, string> = {}): Folder => withClub(land, files, (directory) => readFolder(directory));
const faults = (land: string, files: Record<string, string>): string[] =>
  withClub(land, files, (directory) => checkFolder(readFolder(directory)).map(formatDiagnostic));
const found = (folder: Folder, name: string): Entry | undefined =>
  folder.entries.find(({ collection, id }) => `${collection}/${id}` === name);
const pathOf = (folder: Folder, name: string): string | undefined => found(folder, name)?.path;
const wordsOf = (folder: Folder, name: string): string => plainText(found(folder, name)!.tree!);
const REVIEW = 'checked: 2026-05-01\nnext-check: 2027-05-01\nby: mentor\n';

for (const book of readdirSync(books))
  test(`the book ${book} has no fault by itself`, () => {
    process.env.ALMANAC_BOOKS = books;
    assert.deepEqual(check(join(books, book)).map(formatDiagnostic), []);
    delete process.env.ALMANAC_BOOKS;
  });

test('the books follow from the land, the widest first', () => {
  assert.deepEqual(
    read('US-OH').books.map(({ id }) => id),
    ['common', 'us', 'us-oh'],
  );
  assert.deepEqual(
    read('US-KY').books.map(({ id }) => id),
    ['common', 'us'],
  );
  assert.deepEqual(
    read('NZ').books.map(({ id }) => id),
    ['common', 'south', 'nz'],
  );
  assert.deepEqual(
    read('GB-DEV').books.map(({ id }) => id),
    ['common'],
  );
});

test('named books are taken in the order of their names in the list', () =>
  assert.deepEqual(
    read('US-OH', { 'club.yaml': 'books: [common, us-oh]\n' }).books.map(({ id }) => id),
    ['common', 'us-oh'],
  ));

test('a club over books has no fault, wherever it lies', () => {
  for (const land of ['US-OH', 'US-KY', 'NZ', 'GB-DEV']) assert.deepEqual(faults(land, {}), [], land);
});

test('of one name the nearest file counts, and it keeps the path of its book', () => {
  assert.equal(pathOf(read('US-OH'), 'local/registering-hives'), 'books/us-oh/local/registering-hives.mdx');
  assert.equal(pathOf(read('US-KY'), 'local/registering-hives'), 'books/us/local/registering-hives.mdx');
  const own = read('US-OH', { 'words/skep.yaml': `word: skep\nmeaning: A basket.\n${REVIEW}` });
  assert.equal(pathOf(own, 'words/skep'), 'words/skep.yaml');
  assert.equal(found(own, 'words/skep')!.over!.path, 'books/common/words/skep.yaml');
});

test('a book whose place does not hold the club gives it nothing of its own place', () => {
  const folder = read('US-KY', { 'club.yaml': 'books: [common, us, us-oh]\n' });
  assert.equal(pathOf(folder, 'articles/inspection'), undefined);
  assert.equal(folder.elsewhere.entries, 3);
  assert.equal(pathOf(folder, 'articles/swarms'), 'books/common/articles/swarms.mdx');
});

test('rows of a figure keep the place for which they hold', () => {
  assert.deepEqual(read('GB-DEV').elsewhere, { entries: 0, rows: 2 });
  assert.deepEqual(read('NZ').elsewhere, { entries: 0, rows: 0 });
});

test('a book that only chooses a row keeps the rows below it, and its own hold in its place', () => {
  const figure = found(read('US-OH'), 'figures/swarm-hours')!.fields.value as Record<string, unknown> & { rows: Record<string, unknown>[] };
  assert.equal(figure.title, 'Hours that a swarm hangs');
  assert.equal(figure.follows, 'us-count');
  assert.equal(figure.because, 'It was counted in this country.');
  assert.deepEqual(
    figure.rows.map((row) => [row.id, row.for]),
    [
      ['hand-book', undefined],
      ['us-count', 'US'],
    ],
  );
});

test("the club's own choice lies over that of the book, and its mistake is said of its own file", () => {
  const files = { 'figures/swarm-hours.yaml': `follows: hand-bock\nbecause: It fits us.\n` };
  assert.deepEqual(faults('US-OH', files), [
    'figures/swarm-hours.yaml:1:10 figure: follows: found "hand-bock", which is not the id of a row; write "hand-book"',
  ]);
  const figure = found(read('US-OH', { 'figures/swarm-hours.yaml': 'follows: hand-book\nbecause: It fits us.\n' }), 'figures/swarm-hours')!;
  assert.equal((figure.fields.value as { follows: string }).follows, 'hand-book');
  assert.equal(figure.path, 'books/common/figures/swarm-hours.yaml');
});

const ADDED = `---\n${REVIEW}work: [climb]\n---\nOurs hang in the lindens. See [nothing](/know-how/nothing/).\n`;

test('added words stand below those of the book under a heading, and their mistakes are said of their own file', () => {
  const folder = read('US-OH', { 'articles/swarms.add.mdx': ADDED });
  assert.match(wordsOf(folder, 'articles/swarms'), /Leave it alone\.[\s\S]*In our clubOurs hang in the lindens/);
  assert.deepEqual((found(folder, 'articles/swarms')!.fields.value as { work: string[] }).work, ['climb']);
  assert.equal(originOf(folder, found(folder, 'articles/swarms')!).isAddedTo, true);
  const said = faults('US-OH', { 'articles/swarms.add.mdx': ADDED });
  assert.equal(said.length, 1);
  assert.match(said[0]!, /^articles\/swarms\.add\.mdx:7:31 link: a link: found "\/know-how\/nothing\/"/);
});

test('the club may choose the heading', () => {
  const folder = read('US-OH', { 'articles/swarms.add.mdx': ADDED.replace('---\n', '---\nheading: In the valley\n') });
  assert.match(wordsOf(folder, 'articles/swarms'), /In the valleyOurs hang/);
});

test('a withdrawal takes the page of the book down', () => {
  const folder = read('US-OH', { 'articles/old-comb.mdx': '---\nwithdrawn: 2026-05-14, it can mislead\n---\n' });
  const { title, withdrawn } = found(folder, 'articles/old-comb')!.fields.value as { title: string; withdrawn: string };
  assert.deepEqual([title, withdrawn], ['Old comb', '2026-05-14, it can mislead']);
});

test('a draft leaves what is below it as it was', () => {
  const page = `---\ntitle: Swarms\ndraft: true\n---\nNot yet.\n`;
  const folder = read('US-OH', { 'articles/swarms.mdx': page, 'articles/old-comb.add.mdx': ADDED.replace('work', 'draft: true\nwork') });
  assert.equal(pathOf(folder, 'articles/swarms'), 'articles/swarms.mdx');
  const published = withoutDrafts(folder);
  assert.equal(pathOf(published, 'articles/swarms'), 'books/common/articles/swarms.mdx');
  assert.doesNotMatch(wordsOf(published, 'articles/old-comb'), /lindens/);
});

test('a page that leads to a text of a book is right while a draft lies over that text, and wrong where there is nothing below', () => {
  const draft = '---\ntitle: Draft\ndraft: true\n---\nNot yet.\n';
  const word = (to: string): string => `word: bees\nmeaning: Bees.\nmore: /know-how/${to}/\n${REVIEW}`;
  const linesOf = (id: string): string[] => {
    const files = { [`articles/${id}.mdx`]: draft, 'words/bees.yaml': word(id) };
    return faults('US-OH', files).filter((line) => line.startsWith('words/'));
  };
  assert.deepEqual(linesOf('swarms'), []);
  assert.match(
    linesOf('ours').join('\n'),
    /^words\/bees\.yaml:\d+:\d+ link: more: found "\/know-how\/ours\/", a draft, which readers cannot open/,
  );
});

test('below a draft, what readers see has no sentence with a gap, and the gap is told', () => {
  const page = `---\ntitle: Swarms\ndraft: true\n---\nNot yet.\n`;
  const drafts: Record<string, string>[] = [
    { 'articles/swarms.mdx': page },
    { 'articles/swarms.add.mdx': ADDED.replace('work', 'draft: true\nwork') },
    { 'articles/swarms.mdx': page, 'articles/swarms.add.mdx': ADDED },
  ];
  for (const files of drafts) {
    const folder = read('US-OH', files);
    assert.deepEqual(folder.gaps, ['figure swarm-weight', 'swarm-line']);
    const words = wordsOf(withoutDrafts(folder), 'articles/swarms');
    assert.match(words, /^A swarm hangs still\. Leave it alone\./);
    assert.doesNotMatch(words, /For a swarm call|at once|Not yet|lindens/);
  }
});

test('a text of the place that is a draft is a gap until readers see it', () =>
  assert.deepEqual(
    read('GB-DEV', { 'local/registering-hives.mdx': '---\ntitle: Registering hives\ndraft: true\n---\nNot yet.\n' }).gaps,
    read('GB-DEV').gaps,
  ));

test('what is left out is not there: a kind, or one entry', () => {
  const folder = read('US-OH', { 'club.yaml': 'leaves-out: [treatments, articles/swarms]\n' });
  assert.deepEqual([pathOf(folder, 'treatments/thymol'), pathOf(folder, 'articles/swarms')], [undefined, undefined]);
  assert.equal(pathOf(folder, 'treatments/oxalic-acid'), 'treatments/oxalic-acid.yaml');
  assert.deepEqual(faults('US-OH', { 'club.yaml': 'leaves-out: [treatments, articles/swarms]\n' }), []);
});

test('sentences that name a duty or a figure that is not here are left out whole, and told as gaps', () => {
  const folder = read('US-OH');
  assert.deepEqual(folder.gaps, ['figure swarm-weight', 'swarm-line']);
  const words = wordsOf(folder, 'articles/swarms');
  assert.match(words, /^A swarm hangs still\. Leave it alone\./);
  assert.match(words, /It stays \.$|It stays \./);
  assert.doesNotMatch(words, /It weighs|at once/);
  assert.match(words, /Stand back/);
  const lists = found(folder, 'articles/swarms')!.tree!.children.filter(({ type }) => type === 'list');
  assert.equal(lists[0]!.type === 'list' && lists[0].children.length, 1);
});

test('another duty may stand in', () => {
  const folder = read('US-OH', { 'club.yaml': 'stands-in: { swarm-line: mentor }\n' });
  assert.deepEqual(folder.gaps, ['figure swarm-weight']);
  assert.match(wordsOf(folder, 'articles/swarms'), /For a swarm call/);
});

test('a text of the place that nobody has written is a gap', () =>
  assert.deepEqual(read('GB-DEV').gaps, ['figure swarm-weight', 'registering-hives', 'swarm-line']));

for (const [what, files, sentence] of [
  [
    'a book that does not exist',
    { 'club.yaml': 'books: [comon, us]\n' },
    'club.yaml:51:9 book: books 1: found "comon", a book that does not exist; write "common"',
  ],
  ['a book twice', { 'club.yaml': 'books: [common, common]\n' }, 'club.yaml:51:17 book: books 2: found "common" twice; write it once'],
  [
    'words added to a page that has another name now',
    { 'articles/comb.add.mdx': ADDED },
    'articles/comb.add.mdx:1:1 book: the file: found words added to articles/comb, which is called articles/old-comb now; write the file as articles/old-comb.add.mdx',
  ],
  [
    'a withdrawal of nothing',
    { 'articles/swarm.mdx': '---\nwithdrawn: 2026-05-14, it can mislead\n---\n' },
    'articles/swarm.mdx:1:1 book: the file: found the withdrawal of articles/swarm, which no book of this club has; write the file as articles/swarms.mdx, if that is meant',
  ],
  [
    'an entry that is left out and is in no book',
    { 'club.yaml': 'leaves-out: [articles/swarm]\n' },
    'club.yaml:51:14 book: leaves-out 1: found "articles/swarm", which is in no book of this club; write "articles/swarms"',
  ],
  [
    'somebody who stands in and is not there',
    { 'club.yaml': 'stands-in: { swarm-line: menter }\n' },
    'club.yaml:51:26 book: stands-in, swarm-line: found "menter", a duty that no contact in club.yaml has; write "mentor"',
  ],
] as const)
  test(`faulty: ${what}`, () => assert.deepEqual(faults('US-OH', files), [sentence]));
