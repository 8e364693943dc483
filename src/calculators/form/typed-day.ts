/* A day that a member typed on this page, and the sentence for what cannot be read. Shared by calculators and checklists. */
import type { Language } from '../../../shared/country/language.ts';
import type { Day } from '../../../shared/days/day.ts';
import { formatDay, formatDayWithWeekday, withPlainSpaces } from '../../../shared/days/show-day.ts';
import { readTypedDay, type TypedDayReason } from '../../../shared/days/typed-day.ts';
import { formatMonthDay, monthDay } from '../../../shared/days/year-span.ts';
import type { Result } from '../../../shared/result.ts';
import { languageHere } from '../../../shared/country/language-here.ts';
import { todayHere } from './today.ts';
import * as text from './typed-day.en.ts';

export const readDayIn = (language: Language, typed: string): Result<Day, TypedDayReason> => readTypedDay(typed, language, todayHere());

export const readDay = (typed: string): Result<Day, TypedDayReason> => readDayIn(languageHere(), typed);

/** As a box holds it. */
export const boxDay = (day: Day): string => withPlainSpaces(formatDay(day, languageHere()));

/** The whole day with its weekday, as it is shown back. */
export const dayInFull = (day: Day): string => formatDayWithWeekday(day, languageHere());

const example = (): string => formatMonthDay(monthDay(4, 18), languageHere());

/** `what` as in "Write the day of the install." */
export function dayFaultWords(reason: string, typed: string, what: string): string {
  const found = typed.trim();
  switch (reason) {
    case 'empty':
      return text.write(what, example());
    case 'wrong-weekday':
      return text.wrongWeekday(found);
    case 'impossible-date':
      return text.notInCalendar(found);
    case 'year-out-of-range':
      return text.yearOutOfRange(found);
    default:
      return text.notADate(found, example());
  }
}
