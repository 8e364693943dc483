/**
 * Parses a date as people type it: `April 18`, `18 Apr 2026`, `4/18/2026`, `18.4.26`, `2026-04-18`, `today`, `last Saturday`. In numbers
 * alone, where both readings are days (4/5/2026), the country decides. A weekday that does not match the date is refused. Sources: ISO
 * 8601-1:2019 for year-first dates; Unicode CLDR for the order of day and month.
 */
import { isMonthFirst, type Language } from '../country/language.ts';
import { err, ok, type Result } from '../result.ts';
import { addDays, dayFrom, daysBetween, firstYear, lastYear, partsOf, weekday, weekdays, type Day, type DayReason } from './day.ts';
import { monthNames } from './month-names.ts';

export type TypedDayReason = DayReason | 'empty' | 'wrong-weekday';

/** `today` is the day in the club. It decides what "yesterday" is, and the year where none is typed. */
export function readTypedDay(text: string, language: Language, today: Day): Result<Day, TypedDayReason> {
  const typed = text.trim().replace(/\s+/gu, ' ').toLowerCase();
  if (typed === '') return err('empty');
  const near = nearDay(typed, today);
  if (near) return ok(near);
  const { named, rest } = takeWeekday(typed);
  const read = readNumbers(rest, language, today) ?? readWords(rest, today) ?? err('not-a-date');
  if (!read.ok || named === undefined) return read;
  return weekday(read.value) === named ? read : err('wrong-weekday');
}

/** "today", "yesterday", "tomorrow", and "last Saturday", which is the nearest one before today. */
function nearDay(typed: string, today: Day): Day | undefined {
  const away = ['yesterday', 'today', 'tomorrow'].indexOf(typed) - 1;
  if (away > -2) return addDays(today, away);
  const named = typed.startsWith('last ') ? weekdayNamed(typed.slice(5)) : undefined;
  return [1, 2, 3, 4, 5, 6, 7].map((days) => addDays(today, -days)).find((day) => weekday(day) === named);
}

/** Numbers with slashes, dots, hyphens or blanks between them. Undefined for any other text. */
function readNumbers(typed: string, language: Language, today: Day): Result<Day, DayReason> | undefined {
  const compact = /^(\d{4})(\d\d)(\d\d)$/.exec(typed);
  const numbers = compact?.slice(1) ?? typed.replace(/\.$/, '').split(/ ?[/.-] ?| /);
  if (numbers.length < 2 || numbers.length > 3 || !numbers.every((part) => /^\d{1,4}$/.test(part))) return undefined;
  const [a, b, c] = numbers as [string, string, string?];
  if (a.length > 2) return c === undefined ? err('not-a-date') : withYear(a, Number(b), Number(c), today);
  const [first, second] = [Number(a), Number(b)];
  const monthFirst = second > 12 || (first <= 12 && isMonthFirst(language));
  return monthFirst ? withYear(c, first, second, today) : withYear(c, second, first, today);
}

/** A month in letters, before or after the day of the month. */
function readWords(words: string, today: Day): Result<Day, DayReason> | undefined {
  const dayFirst = /^(?:the )?(\d{1,2})(st|nd|rd|th)?[ ,.-]*(?:of )?([a-z]+)[ ,.-]*(?:'?(\d+))?$/.exec(words);
  const monthFirst = /^([a-z]+)[ ,.-]*(?:the )?(\d{1,2})(st|nd|rd|th)?(?:[ ,.-]+'?(\d+))?$/.exec(words);
  const date = Number(dayFirst?.[1] ?? monthFirst?.[2]);
  const ordinal = dayFirst?.[2] ?? monthFirst?.[3];
  const month = monthNames.findIndex((name) => isShortOf(dayFirst?.[3] ?? monthFirst?.[1] ?? '', name)) + 1;
  if (month === 0 || (ordinal !== undefined && ordinal !== ordinalOf(date))) return undefined;
  return withYear(dayFirst?.[4] ?? monthFirst?.[4], month, date, today);
}

/**
 * A missing year is the one that puts the date nearest to today, and of two equally near the one to come. A year of two figures is of
 * this century.
 */
function withYear(year: string | undefined, month: number, date: number, today: Day): Result<Day, DayReason> {
  const now = partsOf(today).year;
  if (year !== undefined) {
    if (year.length !== 2 && year.length !== 4) return err(year.length > 4 ? 'year-out-of-range' : 'not-a-date');
    return dayFrom(year.length === 2 ? now - (now % 100) + Number(year) : Number(year), month, date);
  }
  // A leap day may be eight years away.
  const near = [];
  for (let each = Math.min(now + 8, lastYear); each >= Math.max(now - 8, firstYear); each -= 1) {
    const read = dayFrom(each, month, date);
    if (read.ok) near.push(read.value);
  }
  const away = (day: Day): number => Math.abs(daysBetween(today, day));
  const [nearest] = near.sort((a, b) => away(a) - away(b));
  return nearest ? ok(nearest) : err('impossible-date');
}

function takeWeekday(typed: string): { named: string | undefined; rest: string } {
  const found = /^([a-z]+)\.?,? (.+)$/.exec(typed);
  const named = weekdayNamed(found?.[1] ?? '');
  return named && found?.[2] ? { named, rest: found[2] } : { named: undefined, rest: typed };
}

const weekdayNamed = (word: string): string | undefined => weekdays.find((name) => isShortOf(word, name));

/** Accepts `sep`, `sept` and `september`, but never fewer than three letters. */
function isShortOf(word: string, name: string): boolean {
  const full = name.toLowerCase();
  return word.length >= 3 && (word === full || (word.length <= 5 && full.startsWith(word)));
}

function ordinalOf(date: number): string {
  if (date >= 11 && date <= 13) return 'th';
  return ['th', 'st', 'nd', 'rd'][date % 10] ?? 'th';
}
