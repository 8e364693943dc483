/**
 * Median, earliest and latest of several years' dates of one event. The days may lie on both sides of New Year: the year is cut at its
 * widest gap without a date. For an even number of years the median is half-way between the two middle days, rounded to the earlier day.
 * Unit: days of a common year.
 */
import { addMonthDays, dayOfCommonYear, monthDayAt, type MonthDay } from '../days/month-day.ts';

export type DaysSeen = { readonly middle: MonthDay; readonly earliest: MonthDay; readonly latest: MonthDay };

/** Fewer years than this do not show the usual day. Below the second number, the observed span is still too narrow. */
export const fewestYears = 3;
export const yearsForOwnSpan = 5;

/** Null below `fewestYears`. Where years are few, the span is at least `usualDays` either way of the median. */
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

/** Starts at the first day after the widest gap of the year. Days after New Year count on from 365. */
function inOrder(days: readonly number[]): number[] {
  const sorted = [...days].sort((a, b) => a - b);
  const gaps = sorted.map((day, index) => day - (sorted[index - 1] ?? (sorted.at(-1) ?? 0) - 365));
  const first = gaps.indexOf(Math.max(...gaps));
  return [...sorted.slice(first), ...sorted.slice(0, first).map((day) => day + 365)];
}

/** Days by which the first lies before the second, negative when after, by the shorter way round the year. */
export function daysApart(from: MonthDay, to: MonthDay): number {
  return ((dayOfCommonYear(to) - dayOfCommonYear(from) + 182 + 365) % 365) - 182;
}

export function spanAround(middle: MonthDay, days: number): DaysSeen {
  const whole = Math.ceil(days);
  return { middle, earliest: addMonthDays(middle, -whole), latest: addMonthDays(middle, whole) };
}
