/**
 * Parses a date as people type it: `April 18`, `18 Apr 2026`, `4/18/2026`, `18.4.26`, `2026-04-18`, `today`, `last Saturday`, and in a Spanish
 * club `18 de abril`, `hoy`, `el sábado pasado`. In numbers alone, where both readings are days (4/5/2026), the country decides. A weekday that does not match the date is refused. Sources: ISO
 * 8601-1:2019 for year-first dates; Unicode CLDR for the order of day and month.
 */
import { isMonthFirst, tongueOf, type Language, type Tongue } from '../country/language.ts';
import { err, ok, type Result } from '../result.ts';
import { addDays, dayFrom, daysBetween, firstYear, lastYear, partsOf, weekday, weekdays, type Day, type DayReason } from './day.ts';
import { monthNames, shownMonth } from './month-names.ts';

type Names = readonly string[];
type Said = { near: Names; last: RegExp; dayFirst: RegExp; weekdays: Names; months: Names };

const SAID: Record<Tongue, Said> = {
  en: {
    near: ['yesterday', 'today', 'tomorrow'],
    last: /^last (.+)$/,
    dayFirst: /^(?:the )?(\d{1,2})(st|nd|rd|th)?[ ,.-]*(?:of )?([a-z]+)[ ,.-]*(?:'?(\d+))?$/,
    weekdays: weekdays.map((name) => name.toLowerCase()),
    months: monthNames.map((name) => name.toLowerCase()),
  },
  // Without accents, which many people leave out.
  es: {
    near: ['ayer', 'hoy', 'manana'],
    last: /^(?:el )?(?:ultimo )?([a-z]+)(?: pasado)?$/,
    dayFirst: /^(?:el )?(\d{1,2})()[ ,.-]*(?:de )?([a-z]+)[ ,.-]*(?:del? )?(?:'?(\d+))?$/,
    weekdays: ['lunes', 'martes', 'miercoles', 'jueves', 'viernes', 'sabado', 'domingo'],
    months: monthNames.map((_, month) => shownMonth(month + 1, 'es')),
  },
};

export type TypedDayReason = DayReason | 'empty' | 'wrong-weekday';

/** `today` is the day in the club. It decides what "yesterday" is, and the year where none is typed. */
export function readTypedDay(text: string, language: Language, today: Day): Result<Day, TypedDayReason> {
  const typed = text.trim().replace(/\s+/gu, ' ').toLowerCase().normalize('NFD').replace(/\p{M}/gu, '');
  const said = SAID[tongueOf(language)];
  if (typed === '') return err('empty');
  const near = nearDay(typed, said, today);
  if (near) return ok(near);
  const { named, rest } = takeWeekday(typed, said);
  const read = readNumbers(rest, language, today) ?? readWords(rest, said, today) ?? err('not-a-date');
  if (!read.ok || named === undefined) return read;
  return weekday(read.value) === named ? read : err('wrong-weekday');
}

/** "today", "yesterday", "tomorrow", and "last Saturday", which is the nearest one before today. */
function nearDay(typed: string, said: Said, today: Day): Day | undefined {
  const away = said.near.indexOf(typed) - 1;
  if (away > -2) return addDays(today, away);
  const named = weekdayNamed(said.last.exec(typed)?.[1] ?? '', said);
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
function readWords(words: string, said: Said, today: Day): Result<Day, DayReason> | undefined {
  const dayFirst = said.dayFirst.exec(words);
  const monthFirst = /^([a-z]+)[ ,.-]*(?:the )?(\d{1,2})(st|nd|rd|th)?(?:[ ,.-]+'?(\d+))?$/.exec(words);
  const date = Number(dayFirst?.[1] ?? monthFirst?.[2]);
  const ordinal = (dayFirst?.[2] ?? monthFirst?.[3]) || undefined;
  const month = said.months.findIndex((name) => isShortOf(dayFirst?.[3] ?? monthFirst?.[1] ?? '', name)) + 1;
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

function takeWeekday(typed: string, said: Said): { named: string | undefined; rest: string } {
  const found = /^(?:el )?([a-z]+)\.?,? (.+)$/.exec(typed);
  const named = weekdayNamed(found?.[1] ?? '', said);
  return named && found?.[2] ? { named, rest: found[2] } : { named: undefined, rest: typed };
}

const weekdayNamed = (word: string, said: Said): string | undefined => weekdays[said.weekdays.findIndex((name) => isShortOf(word, name))];

/** Accepts `sep`, `sept` and `september`, but never fewer than three letters. */
function isShortOf(word: string, name: string): boolean {
  return word.length >= 3 && (word === name || (word.length <= 5 && name.startsWith(word)));
}

function ordinalOf(date: number): string {
  if (date >= 11 && date <= 13) return 'th';
  return ['th', 'st', 'nd', 'rd'][date % 10] ?? 'th';
}
