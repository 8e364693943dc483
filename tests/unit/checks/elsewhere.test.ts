/* Law, labels, names and figures of another land in a club and in the book of a land: each is found, and a place clears it. */
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { checkFolder, hintsOf } from '../../../src/checks/check.ts';
import { formatDiagnostic } from '../../../src/source/diagnostic.ts';
import { readFolder } from '../../../src/source/folder.ts';
import { bookYaml, faultsOfBook } from '../source/book-alone.ts';
import { withClub } from '../source/layered.ts';

const REVIEW = 'checked: 2026-05-01\nnext-check: 2027-05-01\nby: mentor\n';
const law = (who: string, more = ''): string => `who: ${who}\nyear: 2010\nkind: law\nseen: itself\n${more}`;
const article = (words: string, { sources = 'leaflet', more = '' } = {}): string =>
  `---\ntitle: Hives here\nsummary: Ours.\nsubject: law\n${more}yard: false\nsources: [${sources}]\ncertainty: likely\nask: mentor\n${REVIEW}---\n${words}\n`;

const faults = (land: string, files: Record<string, string>): string[] =>
  withClub(land, files, (directory) => checkFolder(readFolder(directory)).map(formatDiagnostic));
const hints = (land: string, files: Record<string, string>): string[] =>
  withClub(land, files, (directory) => hintsOf(readFolder(directory)).map(formatDiagnostic));

test('a law that names another land is a fault of a club, and its place clears it', () => {
  const path = 'sources/hive-law.yaml';
  assert.deepEqual(faults('NZ', { [path]: law('State of Ohio') }), [
    `${path}:3:7 place: kind: found a law that names "Ohio", where NZ is meant; write "for:" with the place where it holds`,
  ]);
  for (const [land, text] of [
    ['NZ', law('State of Ohio', 'for: US-OH\n')],
    ['NZ', law('Parliament of New Zealand')],
    ['US-KY', law('State of Ohio')],
    ['NZ', law('State of Ohio').replace('law', 'paper')],
  ] as const)
    assert.deepEqual(faults(land, { [path]: text }), []);
});

test('what rests on a law of another land is a fault', () => {
  const files = { 'sources/hive-law.yaml': law('State of Ohio', 'for: US-OH\n') };
  const path = 'articles/hives.mdx';
  const page = article('Register them.', { sources: 'leaflet, hive-law' });
  assert.deepEqual(faults('NZ', { ...files, [path]: page }), [
    `${path}:6:20 place: sources 2: found "hive-law", a source that does not hold here; write a source that does, or "for:" here too, with the place of the source`,
  ]);
  assert.deepEqual(faults('US-OH', { ...files, [path]: page }), []);
  assert.deepEqual(faults('NZ', { ...files, [path]: page.replace('yard:', 'for: US-OH\nyard:') }), []);
});

test("another land's office is a hint in a club, and a fault in the book of a land", () => {
  const path = 'articles/hives.mdx';
  const page = article('The USDA has a list.');
  const found = `${path}:13:5 place: for: found "USDA" on a page without a place; write "for:" with the place, such as US or US-OH, or "for: anywhere" where it holds all the same`;
  assert.deepEqual(hints('NZ', { [path]: page }), [found]);
  assert.deepEqual(faults('NZ', { [path]: page }), []);
  assert.deepEqual(hints('US-OH', { [path]: page }), []);
  assert.deepEqual(hints('NZ', { [path]: page.replace('yard:', 'for: NZ\nyard:') }), []);
  const inBook = (place: string): string[] =>
    faultsOfBook({
      'trial/book.yaml': bookYaml('trial', place),
      'trial/sources/leaflet.yaml': law('A body').replace('law', 'paper'),
      [`trial/${path}`]: page.replace('by: mentor', 'by: book editor'),
    });
  assert.deepEqual(inBook('NZ'), [found]);
  assert.deepEqual(inBook('US'), []);
});

test('a figure in the words of a club has a row that holds here, whether the page is its own or one that it added to', () => {
  const sentence = 'Figure: found "swarm-hours", a figure without a row that holds here; write a row of your own for it, or no figure';
  const words = 'They hang <Figure id="swarm-hours" row="us-count" />.';
  const files = {
    'articles/hives.mdx': article(words),
    'articles/swarms.add.mdx': `---\n${REVIEW}---\n${words}\n`,
    'figures/swarm-hours.yaml': `rows:\n  - id: us-count\n    value: 24\n    source: leaflet\n    place: the United States\n    from: 2020-01-01\n    certainty: likely\n    for: US\n${REVIEW}`,
  };
  assert.deepEqual(faults('NZ', files), [`articles/hives.mdx:13:11 place: ${sentence}`, `articles/swarms.add.mdx:6:11 place: ${sentence}`]);
  assert.deepEqual(faults('US-OH', files), []);
});

test('a duty that nobody has is a fault in the words that a club added, and a gap in those of the book', () => {
  const files = { 'articles/swarms.add.mdx': `---\n${REVIEW}---\nCall <Contact duty="swarm-line" />.\n` };
  const [fault, ...others] = faults('US-OH', files);
  assert.match(
    fault!,
    /^articles\/swarms\.add\.mdx:6:6 contact: Contact, duty: found "swarm-line", a duty that no contact in club\.yaml has; /,
  );
  assert.deepEqual(others, []);
});
