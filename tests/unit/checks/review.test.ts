import assert from 'node:assert/strict';
import { test } from 'vitest';
import type { Day } from '../../../shared/days/day.ts';
import { check } from '../../../src/checks/check.ts';
import { validEntries } from '../../../src/checks/fields.ts';
import { dueLines, dueOn, overdueFaults } from '../../../src/checks/review.ts';
import { unopenedLines } from '../../../src/checks/sources.ts';
import { formatDiagnostic } from '../../../src/source/diagnostic.ts';
import { readFolder } from '../../../src/source/folder.ts';
import { goodClub, withChanges } from '../../fixtures/invalid/cases.ts';
import { aDay } from '../../days.ts';

const STINGS = { file: 'articles/stings.mdx', insteadOf: 'next-check: 2027-02-01', write: 'next-check: 2026-12-01' };
const club = withChanges([STINGS], (directory) => validEntries(readFolder(directory)));
const day = (text: string): Day => aDay(text);

test('nothing is due early in the year', () => {
  assert.deepEqual(dueLines(dueOn(club, day('2026-06-01')), day('2026-06-01'), 'en-GB'), [
    'Nothing is due on 1 June 2026 or in the 60 days after it.',
  ]);
});

test('items are listed from 60 days before, by duty', () => {
  assert.deepEqual(dueOn(club, day('2026-10-01')), []);
  assert.deepEqual(dueLines(dueOn(club, day('2026-10-02')), day('2026-10-02'), 'en-GB'), [
    'education officer:',
    '  2026-12-01  in 60 days  articles/stings.mdx:11  next-check',
    '',
    '0 past and 1 coming up on 2 October 2026.',
  ]);
});

test('an item is due on its day and overdue on the day after', () => {
  assert.match(dueLines(dueOn(club, day('2026-12-01')), day('2026-12-01'), 'en-GB')[1]!, /2026-12-01 {2}today/);
  assert.match(dueLines(dueOn(club, day('2026-12-02')), day('2026-12-02'), 'en-GB').join('\n'), /2026-12-01 {2}1 day past/);
});

test('the season, a treatment row and a consent become due as well', () => {
  const found = dueOn(club, day('2027-03-02'));
  assert.deepEqual(
    found.filter(({ path }) => path === 'club.yaml').map(({ what, day: when }) => `${what} ${when}`),
    ['contact mentor, until 2027-02-01', 'next-check 2027-03-01'],
  );
  assert.ok(found.some(({ what }) => what === 'row trickled, check-by'));
});

test('a date that has passed is a fault only in a strict check', () => {
  assert.deepEqual(check(goodClub), []);
  assert.deepEqual(overdueFaults(club, day('2026-12-01')), []);
  assert.deepEqual(overdueFaults(club, day('2026-12-02')).map(formatDiagnostic), [
    'articles/stings.mdx:11:13 overdue: next-check: found 2026-12-01, which is past on 2026-12-02; write a new day once it has been checked again',
  ]);
});

test('a meeting is due until the day it is held, and never after it', () => {
  const soon = { file: 'meetings/2026-06-13-yard-day.mdx', insteadOf: 'next-check: 2026-12-01', write: 'next-check: 2026-06-12' };
  withChanges([soon], (directory) => {
    const meeting = validEntries(readFolder(directory));
    assert.deepEqual(
      dueOn(meeting, day('2026-06-13')).map(({ path, daysLeft }) => [path, daysLeft]),
      [['meetings/2026-06-13-yard-day.mdx', -1]],
    );
    assert.deepEqual(dueOn(meeting, day('2026-06-14')), []);
  });
});

test('a meeting needs no review, and then nothing of it is due', () => {
  const none = {
    file: 'meetings/2026-06-13-yard-day.mdx',
    insteadOf: 'checked: 2026-03-01\nnext-check: 2026-12-01\nby: education officer',
    write: 'history:\n  - changed: 2026-03-02\n    what: Moved by a week.\n  - changed: 2026-02-28\n    what: A new hall.',
  };
  withChanges([none], (directory) => {
    const read = readFolder(directory);
    assert.deepEqual(check(directory).map(formatDiagnostic), [
      'meetings/2026-06-13-yard-day.mdx:18:14 history: history 2, changed: found 2026-02-28 below 2026-03-02; write the lines in order, the newest last',
    ]);
    assert.deepEqual(
      dueOn(validEntries(read), day('2026-06-13'), 5000).filter(({ path }) => path === none.file),
      [],
    );
  });
});

test('a draft is not due', () => {
  const drafted = { ...STINGS, write: 'next-check: 2026-12-01\ndraft: true' };
  assert.deepEqual(
    withChanges([drafted], (directory) => dueOn(validEntries(readFolder(directory)), day('2026-12-02'))),
    [],
  );
});

test('figures of mites, treatments, diseases or people whose source nobody can open are listed in one line', () => {
  const figure = (id: string, source: string, subject = 'mites') => ({
    id,
    data: {
      subject,
      follows: 'a',
      rows: [
        { id: 'a', source },
        { id: 'b', source: 'habit' },
      ],
    },
  });
  const sources = [
    { id: 'habit', data: { seen: 'memory' } },
    { id: 'law', data: { seen: 'memory', url: 'https://example.org/law' } },
    { id: 'paper', data: { seen: 'itself' } },
  ];
  const of = (...figures: unknown[]) => unopenedLines({ of: { figures, sources } } as unknown as Parameters<typeof unopenedLines>[0]);
  assert.deepEqual(of(figure('level', 'paper'), figure('limit', 'law'), figure('syrup', 'habit', 'feeding')), []);
  assert.deepEqual(of(figure('level', 'habit'), figure('dose', 'habit', 'treatments')), [
    '2 figures of mites, treatments, diseases or people follow a source without an address that nobody opened: dose, level.',
  ]);
});
