// Best answers of the demo club on members' questions: the right page for each that shows, and nothing for what they do not answer.
import assert from 'node:assert/strict';
import { join } from 'node:path';
import { test } from 'vitest';
import { neededTerms } from '../../../shared/words/phrases.ts';
import { termOf, wordsIn } from '../../../shared/words/terms.ts';
import { validEntries } from '../../../src/checks/fields.ts';
import { readAnswers } from '../../../src/client/search/best-answer.ts';
import { projectFolder } from '../../../src/cli/paths.ts';
import { readFolder } from '../../../src/source/folder.ts';
import { known, last } from '../../tables/more-questions.ts';
import { questions } from '../../tables/questions.ts';

const folder = readFolder(join(projectFolder, 'content', 'demo-club'));
const answers = validEntries(folder).of.answers;
const bestAnswer = readAnswers(answers.map(({ data }) => [data.title, ...data.asks].map((way) => neededTerms(way).join(' '))));
/** The words of the pages, as search has them. */
const words = new Set(folder.entries.flatMap(({ body }) => wordsIn(body)).map(termOf));
const answerTo = (typed: string) => answers[bestAnswer(typed, (word) => words.has(termOf(word)))];
const pageOf = (typed: string): string => answerTo(typed)?.data.page.slice(1) ?? '';

test('questions of which a mistake is dear have the right page and section', () => {
  for (const [typed, page] of [
    ['sunken caps', 'pests/american-foulbrood/'],
    ['someone stung', 'know-how/stings/'],
    ['child stung', 'know-how/stings/'],
    ['swarm in my garden', 'know-how/swarm-on-a-tree/'],
    ['queen dead package', 'lists/package-arrival/#the-queen-is-dead'],
    ['next meeting', 'meetings/'],
    ['honey', 'know-how/when-to-take-honey/'],
    ['bees not flying', 'signs/'],
  ] as const)
    assert.equal(pageOf(typed), page, typed);
});

test('word endings, order, small slips and ways to deny make no difference', () => {
  for (const [typed, id] of [
    ['cappings are sunken', 'sunken-caps'],
    ['my kids were stung by bees', 'someone-stung'],
    ['a swarm hangs in our gardn', 'swarm-in-my-garden'],
    ['package: dead queen!', 'queen-dead-package'],
    ["bees aren't flying", 'bees-not-flying'],
    ['robing', 'robbing'],
    ['SWARM, in: the “yard”', 'swarm-in-my-garden'],
  ])
    assert.equal(answerTo(typed!)?.id, id, typed);
});

test('one word that many questions have, odd input and other questions show none', () => {
  for (const typed of [
    '',
    ' ',
    'q',
    '🐝',
    'bees',
    'hive',
    'queen',
    '"',
    '<script>alert(1)</script>',
    'x'.repeat(500),
    'queen excluder',
    'swarm cell',
    'treat wax',
  ])
    assert.equal(answerTo(typed), undefined, typed);
});

test('a right word of the pages is not corrected to another', () => {
  const best = readAnswers([[neededTerms('package dropped').join(' ')]]);
  assert.equal(best('dripping package'), 0);
  assert.equal(
    best('dripping package', (word) => word === 'drip'),
    -1,
  );
});

test('of the questions in the tables, each best answer that shows leads to a page that answers', () => {
  const all = [...questions, ...known, ...last];
  const shown = all.filter(({ typed }) => answerTo(typed));
  const wrong = shown.filter(({ typed, pages }) => !pages.includes(pageOf(typed).replace(/#.*/, '')));
  assert.deepEqual(
    wrong.map(({ typed }) => `"${typed}" shows ${answerTo(typed)!.id}`),
    [],
  );
  assert.ok(shown.length >= 70, `${shown.length} of ${all.length} show one`);
});
