/**
 * Parses a date as a member types it: `2026-04-18`, `18 April 2026`, `April 18 2026`. Months may be abbreviated. A comma, an ordinal
 * (`18th`) and a weekday are allowed, but a weekday that does not match the date is refused. A date in numbers alone (`4/5/26`,
 * `4.5.2026`) is refused, because it means different days in different countries.
 */
import { err, type Result } from '../result.ts';
import { dayFrom, parseDay, weekday, weekdays, type Day, type DayReason } from './day.ts';
import { monthNames } from './month-names.ts';

export type TypedDayReason = DayReason | 'empty' | 'slash-date' | 'no-year' | 'short-year' | 'wrong-weekday';

export function readTypedDay(text: string): Result<Day, TypedDayReason> {
  const typed = text.trim().replace(/\s+/gu, ' ').toLowerCase();
  if (typed === '') return err('empty');
  if (/^\d{4}-\d{2}-\d{2}$/.test(typed)) return parseDay(typed);
  if (/^\d{1,4} ?[/.-] ?\d{1,2}( ?[/.-] ?\d{1,4})?\.?$/.test(typed)) return err('slash-date');
  const { named, rest } = takeWeekday(typed);
  const read = readWords(rest);
  if (!read.ok || named === undefined) return read;
  return weekday(read.value) === named ? read : err('wrong-weekday');
}

function readWords(words: string): Result<Day, TypedDayReason> {
  const dayFirst = /^(\d{1,2})(st|nd|rd|th)?,? ([a-z]+)\.?(?:,? (\d+))?$/.exec(words);
  const monthFirst = /^([a-z]+)\.? (\d{1,2})(st|nd|rd|th)?(?:,? (\d+))?$/.exec(words);
  const date = dayFirst?.[1] ?? monthFirst?.[2];
  const ordinal = dayFirst?.[2] ?? monthFirst?.[3];
  const month = monthNumber(dayFirst?.[3] ?? monthFirst?.[1] ?? '');
  const year = dayFirst?.[4] ?? monthFirst?.[4];
  if (date === undefined || month === 0) return err('not-a-date');
  if (ordinal !== undefined && ordinal !== ordinalOf(Number(date))) return err('not-a-date');
  if (year === undefined) return err('no-year');
  if (year.length !== 4) return err(year.length < 4 ? 'short-year' : 'year-out-of-range');
  return dayFrom(Number(year), month, Number(date));
}

function takeWeekday(typed: string): { named: string | undefined; rest: string } {
  const found = /^([a-z]+)\.?,? (.+)$/.exec(typed);
  const named = weekdays.find((name) => isShortOf(found?.[1] ?? '', name));
  return named && found?.[2] ? { named, rest: found[2] } : { named: undefined, rest: typed };
}

function monthNumber(word: string): number {
  return monthNames.findIndex((name) => isShortOf(word, name)) + 1;
}

/** Accepts `sep`, `sept` and `september`, but never fewer than three letters. */
function isShortOf(word: string, name: string): boolean {
  const full = name.toLowerCase();
  return word.length >= 3 && (word === full || (word.length <= 5 && full.startsWith(word)));
}

function ordinalOf(date: number): string {
  if (date >= 11 && date <= 13) return 'th';
  return ['th', 'st', 'nd', 'rd'][date % 10] ?? 'th';
}
