/**
 * Formats a day or a range of days in words, as the club's country writes them: "April 18, 2026" or "18 April 2026". The month is in
 * letters, so that no reader can confuse it with the day. No line breaks inside a date. Spanish: "18 de abril de 2026", Unicode CLDR, es.
 */
import { isMonthFirst, tongueOf, type Language } from '../country/language.ts';
import { dayOf, daysBetween, partsOf, type Day } from './day.ts';
import { formatMonthDay, jointIn, monthDayOf } from './year-span.ts';

export function formatDay(day: Day, language: Language): string {
  return formatMonthDay(monthDayOf(day), language) + yearMark(language) + partsOf(day).year;
}

/** "Saturday, April 18, 2026", "Saturday 18 April 2026" or "sábado, 18 de abril de 2026". */
export function formatDayWithWeekday(day: Day, language: Language): string {
  return `${weekdayIn(day, language)} ${formatDay(day, language)}`;
}

/** Writes the month and the year once where both ends share them: "May 3 to 17, 2026" or "3 to 17 May 2026". */
export function formatDayRange(first: Day, last: Day, language: Language): string {
  if (daysBetween(first, last) < 0) {
    throw new RangeError(`formatDayRange: needs the earlier day first, got ${first} and ${last}`);
  }
  if (first === last) return formatDay(first, language);
  const start = partsOf(first);
  const end = partsOf(last);
  const to = jointIn(language);
  if (start.year !== end.year) return formatDay(first, language) + to + formatDay(last, language);
  if (start.month !== end.month) return formatMonthDay(monthDayOf(first), language) + to + formatDay(last, language);
  return isMonthFirst(language)
    ? formatMonthDay(monthDayOf(first), language) + to + end.date + yearMark(language) + end.year
    : start.date + to + formatDay(last, language);
}

/** "Tuesday, April 21 to Friday, April 24, 2026" or "Tuesday 21 to Friday 24 April 2026". */
export function formatDaysWithWeekdays(first: Day, last: Day, language: Language): string {
  const end = formatDayWithWeekday(last, language);
  if (first === last) return end;
  const to = jointIn(language) + end;
  if (first.slice(0, 4) !== last.slice(0, 4)) return formatDayWithWeekday(first, language) + to;
  const inFull = isMonthFirst(language) || first.slice(0, 7) !== last.slice(0, 7);
  return `${weekdayIn(first, language)} ${inFull ? formatMonthDay(monthDayOf(first), language) : partsOf(first).date}${to}`;
}

const yearMark = (language: Language): string =>
  tongueOf(language) === 'es' ? '\u00a0de\u00a0' : isMonthFirst(language) ? ',\u00a0' : '\u00a0';

/** "Saturday", "sábado": the name alone. */
export const shownWeekday = (day: Day, language: Language): string =>
  new Intl.DateTimeFormat(language, { weekday: 'long', timeZone: 'UTC' }).format(daysBetween(dayOf(1970, 1, 1), day) * 86_400_000);

const weekdayIn = (day: Day, language: Language): string =>
  shownWeekday(day, language) + (isMonthFirst(language) || tongueOf(language) === 'es' ? ',' : '');

/** The same words with plain spaces: for a box, a file or a terminal. */
export const withPlainSpaces = (words: string): string => words.replaceAll('\u00a0', ' ');
