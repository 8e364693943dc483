import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { addDays, daysBetween, dayOfYear, parseDay, weekday } from '../../../../shared/days/day.ts';
import { formatClock, formatClocks, withClocks } from '../../../../shared/country/clock.ts';
import { languages } from '../../../../shared/country/language.ts';
import {
  formatDay,
  formatDayRange,
  formatDaysWithWeekdays,
  formatDayWithWeekday,
  withPlainSpaces,
} from '../../../../shared/days/show-day.ts';
import { readTypedDay } from '../../../../shared/days/typed-day.ts';
import {
  addMonthDays,
  dayInYear,
  dayOfCommonYear,
  formatMonthDay,
  formatMonthDays,
  halfMonthName,
  isWithinSpan,
  monthDayAt,
  monthDayOf,
  parseMonthDay,
} from '../../../../shared/days/month-day.ts';
import { todayIn } from '../../../../shared/days/today.ts';
import { rows } from '../../../rows.ts';
import { clocks, ranges, spans, sums, typed, weekdayRows } from '../../../tables/days.ts';
import { aDay, aMonthDay } from '../../../days.ts';

rows('sum of days', sums, ({ day, days }, expect) => assert.equal(addDays(aDay(day), days), expect.day));
rows('weekday', weekdayRows, ({ day }, expect) => assert.equal(weekday(aDay(day)), expect.weekday));
rows('run of days in words', ranges, ({ first, last, language }, expect) =>
  assert.equal(withPlainSpaces(formatDayRange(aDay(first), aDay(last), language)), expect.words),
);
rows('span of every year in words', spans, ({ first, last, language }, expect) => {
  const [from, to] = [aMonthDay(first), aMonthDay(last)];
  assert.equal(withPlainSpaces(formatMonthDays(from, to, language)), expect.words);
  assert.equal(withPlainSpaces(formatMonthDays(from, to, language, '–')), expect.row);
});
rows('hours in words', clocks, ({ start, finish, language }, expect) => {
  assert.equal(withPlainSpaces(formatClocks(start, finish, language)), expect.words);
  assert.equal(withPlainSpaces(formatClocks(start, finish, language, '–')), expect.row);
  assert.equal(withPlainSpaces(withClocks(`Monday, ${start} to ${finish}.`, language)), `Monday, ${expect.words}.`);
});
rows('typed date', typed, ({ text, language = 'en-US' }, expect) => {
  const read = readTypedDay(text, language, aDay('2026-11-29'));
  assert.deepEqual(read.ok ? { day: read.value } : { reason: read.reason }, expect);
});

test('strict text accepts only a valid ISO day', () => {
  for (const text of ['2026-4-18', '2026-04-18 ', '2026-04-18T00:00', '18-04-2026', '', '2026-00-10', '2026-13-01', '2025-02-29']) {
    assert.equal(parseDay(text).ok, false, text);
  }
  assert.deepEqual(parseDay('1899-12-31'), { ok: false, reason: 'year-out-of-range' });
});

test('days are written in words, and no line breaks inside a date', () => {
  assert.equal(formatDay(aDay('2026-04-18'), 'en-US'), 'April\u00a018,\u00a02026');
  assert.equal(formatDay(aDay('2026-04-18'), 'en-GB'), '18\u00a0April\u00a02026');
  assert.equal(withPlainSpaces(formatDayWithWeekday(aDay('2026-04-18'), 'en-US')), 'Saturday, April 18, 2026');
  assert.equal(withPlainSpaces(formatDayWithWeekday(aDay('2026-04-18'), 'en-NZ')), 'Saturday 18 April 2026');
  assert.throws(() => formatDayRange(aDay('2026-05-02'), aDay('2026-05-01'), 'en-GB'), /formatDayRange: needs the earlier day first/);
  const days = [aDay('2026-04-21'), aDay('2026-04-24')] as const;
  assert.equal(withPlainSpaces(formatDaysWithWeekdays(...days, 'en-US')), 'Tuesday, April 21 to Friday, April 24, 2026');
  assert.equal(withPlainSpaces(formatDaysWithWeekdays(...days, 'en-GB')), 'Tuesday 21 to Friday 24 April 2026');
  assert.equal(
    withPlainSpaces(formatDaysWithWeekdays(aDay('2026-12-31'), aDay('2027-01-02'), 'en-IE')),
    'Thursday 31 December 2026 to Saturday 2 January 2027',
  );
  assert.equal(withPlainSpaces(formatDaysWithWeekdays(...days, 'es')), 'martes, 21 al viernes, 24 de abril de 2026');
  assert.equal(withPlainSpaces(formatDayRange(aDay('2026-05-20'), aDay('2026-06-04'), 'es')), '20 de mayo al 4 de junio de 2026');
});

test('a Spanish club reads the days that people type in Spanish', () => {
  const today = aDay('2026-11-29');
  for (const [typed, day] of [
    ['hoy', '2026-11-29'],
    ['mañana', '2026-11-30'],
    ['Ayer', '2026-11-28'],
    ['el sábado pasado', '2026-11-28'],
    ['18 abr', '2027-04-18'],
    ['el 18 de abril del 2026', '2026-04-18'],
    ['miercoles 15 de abril de 2026', '2026-04-15'],
    ['4/5/2026', '2026-05-04'],
  ] as const)
    for (const language of ['es', 'es-US', 'es-MX'] as const)
      assert.deepEqual(readTypedDay(typed, language, today), { ok: true, value: day }, `${language}: ${typed}`);
  assert.deepEqual(readTypedDay('lunes 15 de abril de 2026', 'es', today), { ok: false, reason: 'wrong-weekday' });
  assert.deepEqual(readTypedDay('31 de abril', 'es', today), { ok: false, reason: 'impossible-date' });
});

test('days are written as the runtime\u2019s copy of CLDR writes them; its comma after a weekday and its 01 are left out', () => {
  for (const language of languages)
    for (const day of ['2026-04-18', '2027-01-01', '2028-02-29']) {
      const inCldr = (style: 'long' | 'full') =>
        new Intl.DateTimeFormat(language, { dateStyle: style, timeZone: 'UTC' }).format(new Date(day));
      assert.equal(withPlainSpaces(formatDay(aDay(day), language)), inCldr('long').replace(/^0/, ''), language);
      const full = withPlainSpaces(formatDayWithWeekday(aDay(day), language));
      assert.ok([full, full.replace(' ', ', ')].includes(inCldr('full').replace(' 0', ' ')), `${language}: ${full}, ${inCldr('full')}`);
    }
});

test('a clock has twelve hours where CLDR or the public offices say so', () => {
  for (const language of languages) {
    const { hour12 } = new Intl.DateTimeFormat(language, { hour: 'numeric' }).resolvedOptions();
    const isTwelve = formatClock('18:30', language) !== '18:30';
    // CLDR has 24 hours for Britain and Ireland, whose public offices print 12.
    assert.equal(isTwelve, hour12 || ['en-GB', 'en-IE'].includes(language), language);
  }
  assert.equal(formatClock('18:30', 'en-US'), '6:30\u00a0pm');
  assert.equal(withPlainSpaces(formatClocks('10:00', '12:30', 'es-MX')), '10 a. m. a 12:30 p. m.');
  assert.equal(
    withPlainSpaces(withClocks('Monday to Friday, 08:00-16:30; else 9:00 and 30:00', 'en-US')),
    'Monday to Friday, 8 am–4:30 pm; else 9:00 and 30:00',
  );
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

test('every formatted day parses to itself in every country', () => {
  fc.assert(
    fc.property(anyDay, (day) => {
      const [year, month, date] = day.split('-').map(Number);
      for (const language of languages)
        for (const text of [
          day,
          formatDay(day, language),
          formatDayWithWeekday(day, language),
          new Intl.DateTimeFormat(language, { dateStyle: 'medium', timeZone: 'UTC' }).format(new Date(day)),
          language === 'en-US' ? `${month}/${date}/${year}` : language === 'en-CA' ? day : `${date}/${month}/${year}`,
        ]) {
          assert.deepEqual(readTypedDay(text, language, aDay('2026-11-29')), { ok: true, value: day }, `${language}: ${text}`);
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
        const read = readTypedDay(text, 'en-US', aDay('2026-11-29'));
        if (read.ok) assert.deepEqual(parseDay(read.value), read);
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
  assert.equal(formatMonthDay(monthDay('05-03'), 'en-US'), 'May\u00a03');
  assert.equal(formatMonthDay(monthDay('05-03'), 'en-GB'), '3\u00a0May');
  assert.equal(halfMonthName(monthDay('05-15'), 'en-US'), 'First half of May');
  assert.equal(halfMonthName(monthDay('05-16'), 'es-MX'), 'Segunda mitad de mayo');
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
