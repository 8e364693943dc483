import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { addDays, daysBetween, dayOfYear, parseDay, weekday } from '../../../../shared/days/day.ts';
import { formatDay, formatDayRange, formatDayWithWeekday } from '../../../../shared/days/show-day.ts';
import { readTypedDay } from '../../../../shared/days/typed-day.ts';
import {
  addMonthDays,
  dayInYear,
  dayOfCommonYear,
  formatMonthDay,
  halfMonthName,
  isWithinSpan,
  monthDayAt,
  monthDayOf,
  parseMonthDay,
} from '../../../../shared/days/month-day.ts';
import { todayIn } from '../../../../shared/days/today.ts';
import { rows } from '../../../rows.ts';
import { ranges, sums, typed, weekdayRows } from '../../../tables/days.ts';
import { aDay, aMonthDay } from '../../../days.ts';

rows('sum of days', sums, ({ day, days }, expect) => assert.equal(addDays(aDay(day), days), expect.day));
rows('weekday', weekdayRows, ({ day }, expect) => assert.equal(weekday(aDay(day)), expect.weekday));
rows('run of days in words', ranges, ({ first, last }, expect) => assert.equal(formatDayRange(aDay(first), aDay(last)), expect.words));
rows('typed date', typed, ({ text }, expect) => {
  const read = readTypedDay(text);
  assert.deepEqual(read.ok ? { day: read.value } : { reason: read.reason }, expect);
});

test('strict text accepts only a valid ISO day', () => {
  for (const text of ['2026-4-18', '2026-04-18 ', '2026-04-18T00:00', '18-04-2026', '', '2026-00-10', '2026-13-01', '2025-02-29']) {
    assert.equal(parseDay(text).ok, false, text);
  }
  assert.deepEqual(parseDay('1899-12-31'), { ok: false, reason: 'year-out-of-range' });
});

test('days are written in words', () => {
  assert.equal(formatDay(aDay('2026-04-18')), '18 April 2026');
  assert.equal(formatDayWithWeekday(aDay('2026-04-18')), 'Saturday 18 April 2026');
  assert.throws(() => formatDayRange(aDay('2026-05-02'), aDay('2026-05-01')), /formatDayRange: needs the earlier day first/);
});

/** The calendar of the language runtime, in UTC, as an independent check. */
const anyDay = fc
  .date({ min: new Date('1900-01-01'), max: new Date('2199-12-31'), noInvalidDate: true })
  .map((date) => aDay(date.toISOString().slice(0, 10)));

test('sums agree with the runtime calendar and can be reversed', () => {
  fc.assert(
    fc.property(anyDay, fc.integer({ min: -40_000, max: 40_000 }), (day, days) => {
      const moved = addDays(day, days);
      assert.equal(moved, new Date(Date.parse(day) + days * 86_400_000).toISOString().slice(0, 10));
      assert.equal(daysBetween(day, moved), days);
      assert.equal(addDays(moved, -days), day);
    }),
  );
});

test('weekday and day of the year agree with the runtime calendar', () => {
  fc.assert(
    fc.property(anyDay, (day) => {
      const date = new Date(day);
      assert.equal(weekday(day), date.toLocaleDateString('en-GB', { weekday: 'long', timeZone: 'UTC' }));
      assert.equal(dayOfYear(day), 1 + (Date.parse(day) - Date.parse(`${day.slice(0, 4)}-01-01`)) / 86_400_000);
    }),
  );
});

test('every formatted day parses to itself, day first or month first', () => {
  fc.assert(
    fc.property(anyDay, (day) => {
      const [date, month, year] = formatDay(day).split(' ');
      for (const text of [
        day,
        formatDay(day),
        formatDayWithWeekday(day),
        `${month} ${date}, ${year}`,
        `${date} ${month?.slice(0, 3)} ${year}`,
      ]) {
        assert.deepEqual(readTypedDay(text), { ok: true, value: day }, text);
      }
    }),
  );
});

test('no text makes the date parser throw or return an impossible day', () => {
  const pieces = fc.array(fc.constantFrom('1', '18', '31', '2026', '26', ' ', '/', '-', '.', ',', 'th', 'may', 'April', 'sat', 'x'), {
    maxLength: 8,
  });
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string(),
        pieces.map((parts) => parts.join('')),
      ),
      (text) => {
        const read = readTypedDay(text);
        if (read.ok) assert.deepEqual(parseDay(read.value), read);
        if (/^[\d/]+$/.test(text)) assert.equal(read.ok, false);
      },
    ),
    { numRuns: 2000 },
  );
});

test('today is the day in the club, not in the browser', () => {
  const instant = new Date('2026-05-01T03:30:00Z');
  assert.equal(todayIn('America/New_York', instant), '2026-04-30');
  assert.equal(todayIn('Europe/London', instant), '2026-05-01');
  assert.equal(todayIn('Asia/Tokyo', new Date('2026-04-30T15:00:00Z')), '2026-05-01');
  assert.equal(todayIn('Australia/Sydney', new Date('2026-12-31T13:30:00Z')), '2027-01-01');
  assert.throws(() => todayIn('Nowhere/Atall', instant), RangeError);
});

const monthDay = (text: string) => aMonthDay(text);

test('days of every year', () => {
  assert.deepEqual(parseMonthDay('02-29'), { ok: true, value: '02-29' });
  assert.deepEqual(parseMonthDay('02-30'), { ok: false, reason: 'impossible-date' });
  assert.deepEqual(parseMonthDay('2-3'), { ok: false, reason: 'not-a-month-day' });
  assert.equal(monthDayOf(aDay('2026-05-03')), '05-03');
  assert.equal(dayInYear(monthDay('02-29'), 2026), '2026-02-28');
  assert.equal(dayInYear(monthDay('02-29'), 2028), '2028-02-29');
  assert.equal(dayOfCommonYear(monthDay('07-01')), 182);
  assert.equal(addMonthDays(monthDay('12-25'), 10), '01-04');
  assert.equal(formatMonthDay(monthDay('05-03')), '3 May');
  assert.equal(halfMonthName(monthDay('05-15')), 'First half of May');
  assert.equal(halfMonthName(monthDay('05-16')), 'Second half of May');
  assert.equal(isWithinSpan(monthDay('01-05'), monthDay('11-01'), monthDay('02-15')), true);
  assert.equal(isWithinSpan(monthDay('06-05'), monthDay('11-01'), monthDay('02-15')), false);
  assert.equal(isWithinSpan(monthDay('05-31'), monthDay('05-01'), monthDay('05-31')), true);
  assert.equal(isWithinSpan(monthDay('06-01'), monthDay('05-01'), monthDay('05-31')), false);
  assert.equal(isWithinSpan(monthDay('04-30'), monthDay('05-01'), monthDay('05-31')), false);
  assert.equal(isWithinSpan(monthDay('11-01'), monthDay('11-01'), monthDay('02-15')), true);
});

test('the 365 days of a common year are all different and have their own numbers', () => {
  const days = Array.from({ length: 365 }, (_, index) => monthDayAt(index + 1));
  assert.equal(new Set(days).size, 365);
  days.forEach((day, index) => assert.equal(dayOfCommonYear(day), index + 1));
  assert.equal(monthDayAt(0), '12-31');
  assert.equal(monthDayAt(366), '01-01');
});
