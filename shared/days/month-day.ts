/**
 * A day of any year as `MM-DD` (`05-03`), for seasons, normals and dates that return every year. A normal year has 365 days. 29 February
 * counts as 28 February in day numbers and in common years.
 */
import { ok, err, type Result } from '../result.ts';
import { dayFrom, dayOfYear, daysInMonth, type Day } from './day.ts';
import { monthName } from './month-names.ts';
import { monthDay, numbersOf } from './year-span.ts';

export { formatMonthDay, formatMonthDays, halfMonthName, isWithinSpan, monthDay, monthDayOf, type Joint } from './year-span.ts';

declare const monthDayMark: unique symbol;
export type MonthDay = string & { readonly [monthDayMark]: true };

const leapYear = 2000;
const commonYear = 2001;

export function parseMonthDay(text: string): Result<MonthDay, 'not-a-month-day' | 'impossible-date'> {
  const found = /^(\d{2})-(\d{2})$/.exec(text);
  if (!found) return err('not-a-month-day');
  const read = dayFrom(leapYear, Number(found[1]), Number(found[2]));
  return read.ok ? ok(monthDay(Number(found[1]), Number(found[2]))) : err('impossible-date');
}

/** Whether the text is a day of some year as `MM-DD`; 29 February is one. */
export function isMonthDay(text: string): text is MonthDay {
  return parseMonthDay(text).ok;
}

/** "1 October": the one form in files of content, whatever the club's country. */
export function writtenMonthDay(monthDay: MonthDay): string {
  const { month, date } = numbersOf(monthDay);
  return `${date} ${monthName(month)}`;
}

/** 1 January, the first day that a sum of a year counts. */
export const newYear = monthDay(1, 1);

/** The day on which it falls in a given year. */
export function dayInYear(monthDay: MonthDay, year: number): Day {
  const { month, date } = numbersOf(monthDay);
  const read = dayFrom(year, month, Math.min(date, daysInMonth(year, month)));
  if (!read.ok) throw new RangeError(`dayInYear: needs a year from 1900 to 2199, got ${year}`);
  return read.value;
}

/** 1 to 365. */
export function dayOfCommonYear(monthDay: MonthDay): number {
  return dayOfYear(dayInYear(monthDay, commonYear));
}

/** The inverse of `dayOfCommonYear`. Takes any whole number and wraps it into the year: 366 is 1 January again. */
export function monthDayAt(dayNumber: number): MonthDay {
  if (!Number.isInteger(dayNumber)) throw new RangeError(`monthDayAt: needs a whole day, got ${dayNumber}`);
  let left = ((((dayNumber - 1) % 365) + 365) % 365) + 1;
  let month = 1;
  while (left > daysInMonth(commonYear, month)) {
    left -= daysInMonth(commonYear, month);
    month += 1;
  }
  return monthDay(month, left);
}

export function addMonthDays(monthDay: MonthDay, days: number): MonthDay {
  return monthDayAt(dayOfCommonYear(monthDay) + days);
}
