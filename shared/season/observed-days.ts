/**
 * What several years' dates of one event come to: the middle one, and the earliest and latest seen. The days may lie on both
 * sides of New Year: the year is cut at its widest stretch without a date. Of an even number of years the middle is half-way
 * between the two in the middle, the earlier day where that falls between days. Unit: days of a common year.
 */
import { addMonthDays, dayOfCommonYear, monthDayAt, type MonthDay } from '../days/month-day.ts';

export type DaysSeen = { readonly middle: MonthDay; readonly earliest: MonthDay; readonly latest: MonthDay };

/** Fewer years than this say nothing of the usual day; of fewer than the second, the span seen is still too narrow. */
export const fewestYears = 3;
export const yearsForOwnSpan = 5;

/** Null below `fewestYears`. Where years are few, the span is at least `usualDays` either way of the middle. */
export function daysSeen(days: readonly MonthDay[], usualDays = 0): DaysSeen | null {
  if (days.length < fewestYears) return null;
  const line = inOrder(days.map(dayOfCommonYear));
  const [low, high] = [line[Math.ceil(line.length / 2) - 1] ?? NaN, line[Math.floor(line.length / 2)] ?? NaN];
  const middle = Math.floor((low + high) / 2);
  const least = days.length < yearsForOwnSpan ? usualDays : 0;
  return {
    middle: monthDayAt(middle),
    earliest: monthDayAt(Math.min(line[0] ?? NaN, middle - least)),
    latest: monthDayAt(Math.max(line.at(-1) ?? NaN, middle + least)),
  };
}

/** From the first after the widest gap of the year; those after New Year count on from 365. */
function inOrder(days: readonly number[]): number[] {
  const sorted = [...days].sort((a, b) => a - b);
  const gaps = sorted.map((day, index) => day - (sorted[index - 1] ?? (sorted.at(-1) ?? 0) - 365));
  const first = gaps.indexOf(Math.max(...gaps));
  return [...sorted.slice(first), ...sorted.slice(0, first).map((day) => day + 365)];
}

/** How many days the first lies before the second, negative when after, the shorter way round the year. */
export function daysApart(from: MonthDay, to: MonthDay): number {
  return ((dayOfCommonYear(to) - dayOfCommonYear(from) + 182 + 365) % 365) - 182;
}

export function spanAround(middle: MonthDay, days: number): DaysSeen {
  const whole = Math.ceil(days);
  return { middle, earliest: addMonthDays(middle, -whole), latest: addMonthDays(middle, whole) };
}
