/*
 * Days and hours as the club's country writes them, for the pages of one build. The rules are in shared/country and shared/days. A page's
 * script reads the same language from the page.
 */
import * as clock from '../../shared/country/clock.ts';
import * as written from '../../shared/country/written.ts';
import type { Day } from '../../shared/days/day.ts';
import type { MonthDay } from '../../shared/days/month-day.ts';
import * as words from '../../shared/days/show-day.ts';
import * as span from '../../shared/days/year-span.ts';
import { languageOfBuild as language } from './settings.ts';

export { languageOfBuild as languageHere } from './settings.ts';

export const formatDay = (day: Day): string => words.formatDay(day, language());
export const formatDayWithWeekday = (day: Day): string => words.formatDayWithWeekday(day, language());
export const formatDayRange = (first: Day, last: Day): string => words.formatDayRange(first, last, language());
export const formatMonthDay = (day: MonthDay): string => span.formatMonthDay(day, language());
export const formatMonthDays = (first: MonthDay, last: MonthDay, joint?: span.Joint): string =>
  span.formatMonthDays(first, last, language(), joint);
export const formatClock = (time: string): string => clock.formatClock(time, language());
export const formatClocks = (start: string, finish: string): string => clock.formatClocks(start, finish, language());
export const withClocks = (sentence: string): string => clock.withClocks(sentence, language());
export const asWritten = (text: string): string => written.asWritten(text, language());
