// Dated steps of a checklist: the short date line, and the week in which a step stands. Weekdays: the calendar of 2026, in which
// 1 January is a Thursday (ISO 8601), so 18 April is a Saturday.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { unwrap } from '../../../shared/result.ts';
import { parseDay, type Day } from '../../../shared/days/day.ts';
import { groupOf, spanWords } from '../../../src/client/checklist/own-days.ts';

const day = (text: string): Day => unwrap(parseDay(text));
const span = (from: string, to: string) => ({ from: day(from), to: day(to) });

for (const [from, to, today, days, status, isDue] of [
  ['2026-04-19', '2026-04-22', '2026-04-18', 'Sun 19 – Wed 22 Apr', 'starts tomorrow', false],
  ['2026-04-29', '2026-05-02', '2026-04-18', 'Wed 29 Apr – Sat 2 May', 'starts in 11 days', false],
  ['2026-04-19', '2026-04-22', '2026-04-19', 'Sun 19 – Wed 22 Apr', 'due now', true],
  ['2026-04-19', '2026-04-22', '2026-04-22', 'Sun 19 – Wed 22 Apr', 'due today', true],
  ['2026-04-19', '2026-04-22', '2026-04-24', 'Sun 19 – Wed 22 Apr', '2 days late', true],
  ['2026-04-22', '2026-04-22', '2026-04-21', 'Wed 22 Apr', 'tomorrow', false],
  ['2026-04-22', '2026-04-22', '2026-04-22', 'Wed 22 Apr', 'today', true],
] as const)
  test(`${from} to ${to}, on ${today}: ${days}, ${status}`, () => {
    const shown = spanWords(span(from, to), day(today), false, 'en-GB');
    assert.deepEqual({ ...shown, days: shown.days.replaceAll('\u00a0', ' ') }, { days, status, isDue });
    assert.doesNotMatch(shown.days, / /, 'no line breaks inside the dates');
    assert.deepEqual(spanWords(span(from, to), day(today), true, 'en-GB'), { days: shown.days, status: '', isDue: false });
  });

test('the date line follows the country: month first in the United States', () => {
  const shown = spanWords(span('2026-04-29', '2026-05-02'), day('2026-04-18'), false, 'en-US');
  assert.equal(shown.days.replaceAll('\u00a0', ' '), 'Wed, Apr 29 – Sat, May 2');
});

test('on a Spanish page the line is in Spanish', () => {
  const shown = spanWords(span('2026-04-19', '2026-04-22'), day('2026-04-24'), false, 'es');
  assert.deepEqual([shown.days.replaceAll('\u00a0', ' '), shown.status], ['dom 19 – mié 22 abr', '2 días de atraso']);
});

test('a step stands in the week in which it begins, or in what is past', () => {
  // Saturday 18 April; the week ends on Sunday 19.
  const on = (from: string, to: string, done = false) => groupOf(span(from, to), day('2026-04-18'), done);
  assert.equal(on('2026-04-10', '2026-04-17'), 'past-due');
  assert.equal(on('2026-04-10', '2026-04-17', true), 'earlier');
  assert.equal(on('2026-04-10', '2026-04-18'), 'this-week');
  assert.equal(on('2026-04-10', '2026-04-18', true), 'this-week');
  assert.equal(on('2026-04-19', '2026-04-30'), 'this-week');
  assert.equal(on('2026-04-20', '2026-04-20'), 'next-week');
  assert.equal(on('2026-04-26', '2026-04-30'), 'next-week');
  assert.equal(on('2026-04-27', '2026-04-30'), 'later');
  assert.equal(groupOf(null, day('2026-04-18'), false), 'later');
});
