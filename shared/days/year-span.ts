/**
 * A day of any year compared with a span that returns every year, and both in words. The file leaves out the sums of month-day.ts, so
 * that the script of every page stays small. Month and day as `MM-DD`. 29 February is an ordinary day here.
 */
import { isMonthFirst, tongueOf, type Language } from '../country/language.ts';
import type { Day } from './day.ts';
import type { MonthDay } from './month-day.ts';
import { shownMonth } from './month-names.ts';

export function monthDayOf(day: Day): MonthDay {
  return monthDayIn(day.slice(5));
}

/** The month and day of a text that this program wrote itself, such as an attribute of a page. Another text gives nonsense: parseMonthDay reads those. */
export function monthDayIn(text: string): MonthDay {
  return monthDay(Number(text.slice(0, 2)), Number(text.slice(3)));
}

/** Includes both ends. A span may cross New Year (`11-01` to `02-15`). */
export function isWithinSpan(monthDay: MonthDay, first: MonthDay, last: MonthDay): boolean {
  if (first <= last) return first <= monthDay && monthDay <= last;
  return monthDay >= first || monthDay <= last;
}

/** "April 18", "18 April" or "18 de abril", without a line break inside. */
export function formatMonthDay(monthDay: MonthDay, language: Language): string {
  const { month, date } = numbersOf(monthDay);
  const name = shownMonth(month, language);
  if (tongueOf(language) === 'es') return `${date}\u00a0de\u00a0${name}`;
  return isMonthFirst(language) ? `${name}\u00a0${date}` : `${date}\u00a0${name}`;
}

/** What stands between the two ends of a span: in a sentence, and in a row or table. */
export type Joint = ' to ' | '–';

/** The joint in the reader's language: "3 al 17 de mayo". */
export const jointIn = (language: Language, joint: Joint = ' to '): string =>
  joint === ' to ' && tongueOf(language) === 'es' ? ' al ' : joint;

/**
 * "May 3 to 17", "3 to 17 May" or "3 al 17 de mayo", "May 20 to June 4" or "20 May to 4 June"; in a row "May 3–17", "May 20 – June 4". A span may cross New
 * Year.
 */
export function formatMonthDays(first: MonthDay, last: MonthDay, language: Language, joint: Joint = ' to '): string {
  const [from, to] = [formatMonthDay(first, language), formatMonthDay(last, language)];
  if (first === last) return from;
  const between = jointIn(language, joint);
  if (first.slice(0, 2) === last.slice(0, 2) && first < last)
    return isMonthFirst(language) ? from + between + numbersOf(last).date : numbersOf(first).date + between + to;
  return from + (joint === '–' ? '\u00a0– ' : between) + to;
}

/** "First half of May" up to the 15th, "Second half of May" from the 16th. */
export function halfMonthName(monthDay: MonthDay, language: Language): string {
  const { month, date } = numbersOf(monthDay);
  const name = shownMonth(month, language);
  if (tongueOf(language) === 'es') return `${date <= 15 ? 'Primera' : 'Segunda'} mitad de ${name}`;
  return `${date <= 15 ? 'First' : 'Second'} half of ${name}`;
}

/** The one constructor: two numbers that are known to be a day of some year. */
export function monthDay(month: number, date: number): MonthDay {
  const two = (number: number) => String(number).padStart(2, '0');
  return `${two(month)}-${two(date)}` as MonthDay;
}

export function numbersOf(monthDay: MonthDay): { month: number; date: number } {
  return { month: Number(monthDay.slice(0, 2)), date: Number(monthDay.slice(3)) };
}
