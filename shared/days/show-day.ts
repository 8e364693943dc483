/**
 * Formats a day or a range of days in words: "18 April 2026", "Saturday 18 April 2026", "3 to 17 May 2026". The day comes before the
 * month and the month is in letters, so that no reader can confuse the two. English only.
 */
import { daysBetween, partsOf, weekday, type Day } from './day.ts';
import { monthName } from './month-names.ts';

export function formatDay(day: Day): string {
  const { year, month, date } = partsOf(day);
  return `${date} ${monthName(month)} ${year}`;
}

export function formatDayWithWeekday(day: Day): string {
  return `${weekday(day)} ${formatDay(day)}`;
}

/** Writes the month and the year once where both ends share them. */
export function formatDayRange(first: Day, last: Day): string {
  if (daysBetween(first, last) < 0) {
    throw new RangeError(`formatDayRange: needs the earlier day first, got ${first} and ${last}`);
  }
  if (first === last) return formatDay(first);
  const start = partsOf(first);
  const end = partsOf(last);
  if (start.year !== end.year) return `${formatDay(first)} to ${formatDay(last)}`;
  const startWords = start.month === end.month ? start.date : `${start.date} ${monthName(start.month)}`;
  return `${startWords} to ${formatDay(last)}`;
}
