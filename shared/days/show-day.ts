/**
 * Formats a day or a range of days in words, as the club's country writes them: "April 18, 2026" or "18 April 2026". The month is in
 * letters, so that no reader can confuse it with the day. No line breaks inside a date. English only.
 */
import { isMonthFirst, type Language } from '../country/language.ts';
import { daysBetween, partsOf, weekday, type Day } from './day.ts';
import { formatMonthDay, monthDayOf } from './year-span.ts';

export function formatDay(day: Day, language: Language): string {
  return `${formatMonthDay(monthDayOf(day), language)}${isMonthFirst(language) ? ',' : ''}\u00a0${partsOf(day).year}`;
}

/** "Saturday, April 18, 2026" or "Saturday 18 April 2026". */
export function formatDayWithWeekday(day: Day, language: Language): string {
  return `${weekday(day)}${isMonthFirst(language) ? ',' : ''} ${formatDay(day, language)}`;
}

/** Writes the month and the year once where both ends share them: "May 3 to 17, 2026" or "3 to 17 May 2026". */
export function formatDayRange(first: Day, last: Day, language: Language): string {
  if (daysBetween(first, last) < 0) {
    throw new RangeError(`formatDayRange: needs the earlier day first, got ${first} and ${last}`);
  }
  if (first === last) return formatDay(first, language);
  const start = partsOf(first);
  const end = partsOf(last);
  if (start.year !== end.year) return `${formatDay(first, language)} to ${formatDay(last, language)}`;
  if (start.month !== end.month) return `${formatMonthDay(monthDayOf(first), language)} to ${formatDay(last, language)}`;
  return isMonthFirst(language)
    ? `${formatMonthDay(monthDayOf(first), language)} to ${end.date},\u00a0${end.year}`
    : `${start.date} to ${formatDay(last, language)}`;
}

/** "Tuesday, April 21 to Friday, April 24, 2026" or "Tuesday 21 to Friday 24 April 2026". */
export function formatDaysWithWeekdays(first: Day, last: Day, language: Language): string {
  const to = formatDayWithWeekday(last, language);
  if (first === last) return to;
  if (first.slice(0, 4) !== last.slice(0, 4)) return `${formatDayWithWeekday(first, language)} to ${to}`;
  const start = monthDayOf(first);
  if (isMonthFirst(language)) return `${weekday(first)}, ${formatMonthDay(start, language)} to ${to}`;
  return `${weekday(first)} ${first.slice(0, 7) === last.slice(0, 7) ? partsOf(first).date : formatMonthDay(start, language)} to ${to}`;
}

/** The same words with plain spaces: for a box, a file or a terminal. */
export const withPlainSpaces = (words: string): string => words.replaceAll('\u00a0', ' ');
