/* Days and hours as the club's country writes them, for the pages of one build. The rules are in shared/country and shared/days. */
import * as clock from '../../shared/country/clock.ts';
import * as written from '../../shared/country/written.ts';
import { tongueOf, type Language, type Tongue } from '../../shared/country/language.ts';
import { languageHere } from '../../shared/country/language-here.ts';
import type { Day } from '../../shared/days/day.ts';
import type { MonthDay } from '../../shared/days/month-day.ts';
import * as words from '../../shared/days/show-day.ts';
import * as span from '../../shared/days/year-span.ts';

export { languageHere };

const languageOf = (tongue?: Tongue): Language => (tongue === 'es' && tongueOf(languageHere()) !== 'es' ? 'es' : languageHere());

/** `tongue`: of the page, where it speaks another language than the club. */
export const formatDay = (day: Day, tongue?: Tongue): string => words.formatDay(day, languageOf(tongue));
export const formatDayWithWeekday = (day: Day): string => words.formatDayWithWeekday(day, languageHere());
export const formatDayRange = (first: Day, last: Day): string => words.formatDayRange(first, last, languageHere());
export const formatMonthDay = (day: MonthDay): string => span.formatMonthDay(day, languageHere());
export const formatMonthDays = (first: MonthDay, last: MonthDay, joint?: span.Joint): string =>
  span.formatMonthDays(first, last, languageHere(), joint);
export const formatClock = (time: string): string => clock.formatClock(time, languageHere());
export const formatClocks = (start: string, finish: string): string => clock.formatClocks(start, finish, languageHere());
export const withClocks = (sentence: string): string => clock.withClocks(sentence, languageHere());
export const asWritten = (text: string): string => written.asWritten(text, languageHere());
