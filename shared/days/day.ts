/**
 * A calendar day as ISO text (`2026-04-18`) in a branded type, with sums of days. A day is not an instant: it has no hour and no time
 * zone, so no clock change can move it. Gregorian calendar throughout. A parsed day must lie in 1900 to 2199, but a sum may go beyond
 * that. Source of the leap-year rule: ISO 8601-1:2019, the Gregorian calendar (every 4th year, not the 100th, but the 400th).
 */
import { ok, err, type Result } from '../result.ts';
import { dayOf, type Day } from './make-day.ts';

export { dayOf, type Day };

export const firstYear = 1900;
export const lastYear = 2199;

export const weekdays = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const;
export type Weekday = (typeof weekdays)[number];

export type DayReason = 'not-a-date' | 'impossible-date' | 'year-out-of-range';

const daysBeforeMonth = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];

/** Accepts strict ISO text only: `2026-04-18`. */
export function parseDay(text: string): Result<Day, DayReason> {
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (!found) return err('not-a-date');
  return dayFrom(Number(found[1]), Number(found[2]), Number(found[3]));
}

/** Whether the text is a day in ISO form that exists, from 1900 to 2199. */
export function isDay(text: string): text is Day {
  return parseDay(text).ok;
}

/** A day from its three numbers. Months count from 1. */
export function dayFrom(year: number, month: number, date: number): Result<Day, DayReason> {
  if (year < firstYear || year > lastYear) return err('year-out-of-range');
  if (month < 1 || month > 12 || date < 1 || date > daysInMonth(year, month)) {
    return err('impossible-date');
  }
  return ok(dayOf(year, month, date));
}

export function partsOf(day: Day): { year: number; month: number; date: number } {
  return { year: Number(day.slice(0, 4)), month: Number(day.slice(5, 7)), date: Number(day.slice(8)) };
}

export function addDays(day: Day, days: number): Day {
  if (!Number.isInteger(days)) throw new RangeError(`addDays: needs whole days, got ${days}`);
  return fromCount(toCount(day) + days);
}

/** Days from the first day to the second, negative when the second is earlier. */
export function daysBetween(from: Day, to: Day): number {
  return toCount(to) - toCount(from);
}

export function weekday(day: Day): Weekday {
  return weekdays[(toCount(day) + 6) % 7] as Weekday;
}

/** 1 for 1 January, 365 or 366 for 31 December. */
export function dayOfYear(day: Day): number {
  const { year, month, date } = partsOf(day);
  return daysBefore(year, month) + date;
}

export function isLeapYear(year: number): boolean {
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
}

export function daysInMonth(year: number, month: number): number {
  const next = month === 12 ? 365 + (isLeapYear(year) ? 1 : 0) : daysBefore(year, month + 1);
  return next - daysBefore(year, month);
}

function daysBefore(year: number, month: number): number {
  const plain = daysBeforeMonth[month - 1];
  if (plain === undefined) throw new RangeError(`daysBefore: needs a month from 1 to 12, got ${month}`);
  return plain + (month > 2 && isLeapYear(year) ? 1 : 0);
}

/** Day 1 is 1 January of year 1, a Monday in the Gregorian calendar extended backward. */
function toCount(day: Day): number {
  return daysBeforeYear(partsOf(day).year) + dayOfYear(day);
}

function fromCount(count: number): Day {
  let year = Math.floor(count / 365.2425) + 1;
  while (daysBeforeYear(year) >= count) year -= 1;
  while (daysBeforeYear(year + 1) < count) year += 1;
  if (year < 1 || year > 9999) throw new RangeError(`addDays: needs a day in years 1 to 9999`);
  const inYear = count - daysBeforeYear(year);
  let month = 12;
  while (daysBefore(year, month) >= inYear) month -= 1;
  return dayOf(year, month, inYear - daysBefore(year, month));
}

function daysBeforeYear(year: number): number {
  const past = year - 1;
  return past * 365 + Math.floor(past / 4) - Math.floor(past / 100) + Math.floor(past / 400);
}
