// The reading level of pages, compared with counts made by hand and the formula of Kincaid and others (1975).
import assert from 'node:assert/strict';
import { unified } from 'unified';
import remarkParse from 'remark-parse';
import { test } from 'vitest';
import { levelOf, readingLevels, readingLines } from '../../../src/checks/reading-level.ts';

const treeOf = (words: string) => unified().use(remarkParse).parse(words);
const page = (path: string, words: string) => ({ path, tree: treeOf(words) });
const times = (sentence: string, many: number): string => Array.from({ length: many }, () => sentence).join(' ');

test('the grade is the formula of 1975 on the words of the page', () => {
  // Eight words of one syllable in each of ten sentences: 0.39 × 8 + 11.8 × 1 − 15.59.
  assert.equal(levelOf(page('a', times('The bees fly out to the red rose.', 10)))!.grade, -0.7);
  // Five words and eleven syllables, counted by hand (in-spec-tors, nor-mal-ly, ex-am-ine): 0.39 × 5 + 11.8 × 11 / 5 − 15.59.
  assert.equal(levelOf(page('a', times('Inspectors normally examine old comb.', 20)))!.grade, 12.3);
});

test('headings, tables and few words do not count, and a long sentence is named', () => {
  assert.equal(levelOf(page('a', '# A heading of extraordinarily complicated considerations\n\nShort.')), null);
  const long = `${times('bees', 21)}.`;
  const level = levelOf(page('a', `## Extraordinarily\n\n${times('The bees fly out to the red rose.', 10)}\n\n- ${long}`))!;
  assert.deepEqual(level.long, [long]);
});

test('the hardest page comes first in the report', () => {
  const entries = [
    page('easy', times('The bees fly out to the red rose.', 10)),
    page('hard', times('Inspectors normally examine old comb.', 20)),
  ];
  const levels = readingLevels({ entries: entries as never });
  assert.deepEqual(
    levels.map(({ path }) => path),
    ['hard', 'easy'],
  );
  assert.match(readingLines(levels)[1]!, /^hard: grade 12\.3, age 17, 0 sentences/);
});
