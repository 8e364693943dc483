/* Filters search results by the time of year that a reader chose: their days in her district overlap it. */
import type { MonthDay } from '../../../shared/days/month-day.ts';
import { isWithinSpan, monthDayOf } from '../../../shared/days/year-span.ts';
import { dayOf, type Day } from '../../../shared/days/make-day.ts';
import { windowHere } from '../../calculators/form/window-here.ts';

type Span = [from: MonthDay, to: MonthDay];

/** "These weeks" are today and the following three weeks. */
const THESE_WEEKS_DAYS = 21;

/** `chosen` is a phase as `valley 11-20 03-01;hill 11-12 03-09`, or `now`. */
export const spanOf = (chosen: string, today: Day): Span =>
  chosen === 'now' ? [monthDayOf(today), monthDayOf(lastOfWeeks(today))] : windowHere(chosen);

// The sums of day.ts would be two requests more for this page.
function lastOfWeeks(today: Day): Day {
  const last = new Date(Date.parse(today) + (THESE_WEEKS_DAYS - 1) * 864e5);
  return dayOf(last.getUTCFullYear(), last.getUTCMonth() + 1, last.getUTCDate());
}

/** False for a page without days: it applies all year and says nothing special about this part of it. */
export function fallsInto(windows: string, [from, to]: Span): boolean {
  if (!windows) return false;
  const [first, last] = windowHere(windows);
  return isWithinSpan(from, first, last) || isWithinSpan(first, from, to);
}

/** Days of the reader's window, as if each month had 31. */
export function lengthOf(windows: string): number {
  const [from, to] = windowHere(windows).map((day) => Number(day.slice(0, 2)) * 31 + Number(day.slice(3))) as [number, number];
  return (to - from + 372) % 372;
}
