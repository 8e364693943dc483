/*
 * Two mistakes of different kinds in one file: check reports both. For every file of the good club and every pair of rules, two cases of
 * tests/fixtures/invalid are planted together. A mistake may hide another only on its own line.
 */
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, test } from 'vitest';
import { checkFolder } from '../../../src/checks/check.ts';
import { formatDiagnostic, type Diagnostic } from '../../../src/source/diagnostic.ts';
import { readFolder, readText, type Folder } from '../../../src/source/folder.ts';
import { cases, goodClub, type Case } from '../../fixtures/invalid/cases.ts';

process.env.ALMANAC_BOOKS = fileURLToPath(new URL('../../fixtures/books', import.meta.url));

/** A case that changes one part of a file, and whose faults are all in it. */
type Planted = { name: string; rule: string; file: string; from: number; to: number; write: string; found: string[] };

const good = readFolder(goodClub);

function plantedIn({ name, changes: [change, ...more], found }: Case): Planted[] {
  if (!change || more.length > 0 || change.insteadOf === undefined || change.savedAs !== undefined) return [];
  const from = readFileSync(join(goodClub, change.file), 'utf8').indexOf(change.insteadOf);
  const heads = found.split('\n').filter((line) => line !== '' && !line.startsWith('    '));
  const rule = /^[^ ]+ ([a-z-]+):/.exec(heads[0] ?? '')?.[1];
  if (rule === undefined || from < 0 || heads.some((line) => !line.startsWith(`${change.file}:`))) return [];
  return [
    { name, rule, file: change.file, from, to: from + change.insteadOf.length, write: change.write ?? '', found: heads.map(withoutLine) },
  ];
}

/** The other mistake moves lines. */
const withoutLine = (line: string): string => line.replace(/^([^:]+):\d+:/, '$1:');

const checked = (file: string, text: string): string[] => {
  const faults: Diagnostic[] = [];
  const club: Folder = { ...good, faults };
  if (file === 'club.yaml') club.club = readText(file, 'club', 'club', text, faults);
  else
    club.entries = good.entries.flatMap((entry) => {
      if (entry.path !== file) return [entry];
      const read = readText(file, entry.collection, entry.id, text, faults);
      return read ? [{ ...read, ...(entry.collection === 'drawings' ? { body: entry.body } : {}) }] : [];
    });
  return checkFolder(club).map(formatDiagnostic).map(headOf).map(withoutLine);
};

const headOf = (lines: string): string => lines.split('\n')[0]!;

function together(one: Planted, other: Planted): string {
  let text = readFileSync(join(goodClub, one.file), 'utf8');
  for (const { from, to, write } of [one, other].sort((a, b) => b.from - a.from)) text = text.slice(0, from) + write + text.slice(to);
  return text;
}

/** Beginnings of the names of cases that are about one matter, so that the one changes or mends the other. */
const TIED: readonly (readonly [string, string])[] = [
  ['club-contact-of-no-district', 'club-contact-twice'],
  // A contact more moves the numbers of those below it.
  ['club-contact-twice', 'club-contact-until-'],
  ['agreed-in-the-future', 'club-contact-twice'],
  ['curly-quotes-round-true', 'work-missing-in-the-yard'],
  ['history-later-than-checked', 'history-not-in-order'],
  // A withdrawn page is not reviewed.
  ['next-check-too-far', 'withdrawn-'],
  ['work-missing-in-the-yard', 'work-opens-a-hive-outside-the-yard'],
  // What follows the second file's head is not of this one.
  ['fields-of-two-files-in-one', 'more-to-'],
  ['fields-of-two-files-in-one', 'next-check-too-far-for-words'],
];
const areTied = (one: Planted, other: Planted): boolean =>
  TIED.some(([a, b]) => [one, other].some(({ name }) => name.startsWith(a)) && [one, other].some(({ name }) => name.startsWith(b)));

/** They are in different lines, so that neither changes what the other is about. */
function apart(one: Planted, other: Planted): boolean {
  const text = readFileSync(join(goodClub, one.file), 'utf8');
  const [first, second] = one.from < other.from ? [one, other] : [other, one];
  return first.to <= second.from && (text.slice(first.from, second.from).includes('\n') || first.write.endsWith('\n'));
}

const all = cases()
  .flatMap(plantedIn)
  // Each is found alone by this way of checking.
  .filter((each) => {
    const found = checked(each.file, together(each, { ...each, from: each.to, to: each.to, write: '' }));
    return each.found.every((line) => found.includes(line));
  });

const files = [...new Set(all.map(({ file }) => file))];

for (const file of files) {
  const here = all.filter((each) => each.file === file);
  const rules = [...new Set(here.map(({ rule }) => rule))];
  const pairs = rules.flatMap((one, index) =>
    rules.slice(index).flatMap((other) => {
      const firsts = here.filter(({ rule }) => rule === one);
      const seconds = here.filter(({ rule }) => rule === other);
      const pair = firsts.flatMap((a) => seconds.filter((b) => a !== b && apart(a, b) && !areTied(a, b)).map((b) => [a, b] as const))[0];
      return pair ? [pair] : [];
    }),
  );
  if (pairs.length > 0)
    describe(file, () => {
      test(`${pairs.length} pairs`, () => {
        const hidden = pairs.flatMap(([one, other]) => {
          const found = checked(file, together(one, other));
          const lost = [...one.found, ...other.found].filter((line) => !found.includes(line));
          return lost.length > 0 ? [`${one.name} + ${other.name}: ${lost.join('\n')}\nnot among\n${found.join('\n')}`] : [];
        });
        assert.equal(hidden.join('\n\n'), '');
      });
    });
}
