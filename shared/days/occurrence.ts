/** The next occurrence of a span of days that returns every year. */
import type { Day } from './day.ts';
import { dayInYear, type MonthDay } from './month-day.ts';

/** The first occurrence that is not over on the day. Its last day counts. A span may cross New Year. */
export function nextOccurrence(from: MonthDay, to: MonthDay, day: Day): { first: Day; last: Day } {
  const year = Number(day.slice(0, 4));
  const found = [year - 1, year, year + 1]
    .map((each) => ({ first: dayInYear(from, each), last: dayInYear(to, to < from ? each + 1 : each) }))
    .find(({ last }) => last >= day);
  if (!found) throw new RangeError(`nextOccurrence: needs a year from 1901 to 2197, got ${day}`);
  return found;
}
