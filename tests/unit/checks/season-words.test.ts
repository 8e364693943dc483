/* Bare seasons in the words of a page are hints with positions. Names of phases are not. */
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { validEntries } from '../../../src/checks/fields.ts';
import { seasonWordHints } from '../../../src/checks/season-words.ts';
import { readFolder } from '../../../src/source/folder.ts';
import { withChanges } from '../../fixtures/invalid/cases.ts';

const hints = (words: string): string[] =>
  withChanges([{ file: 'bulletins/varroa.mdx', insteadOf: 'Write the count down.', write: words }], (directory) =>
    seasonWordHints(validEntries(readFolder(directory))).map(({ path, line, column, found }) => `${path}:${line}:${column} ${found}`),
  );

const cases: [string, string[]][] = [
  [
    'Count in early spring and again by late summer.',
    ['bulletins/varroa.mdx:32:7 "in early spring"', 'bulletins/varroa.mdx:32:33 "by late summer"'],
  ],
  ['Wait until the fall.', ['bulletins/varroa.mdx:32:6 "until the fall"']],
  ['Count in winter rest, before fall flow and after fall preparation.', []],
  ['Winter bees live longer; spring is near. They fall in.', []],
  ['> Count in spring, he said.', []],
  ['Count in swarming, and from 1 May to 3 June.', []],
];
for (const [words, expected] of cases) test(words, () => assert.deepEqual(hints(words), expected));
