/* The year as a strip of 365 days. */
import { dayOfCommonYear, type MonthDay } from '../../shared/days/month-day.ts';

/** Start and length of a window on the strip, in days. A window over the turn of the year has two spans. */
export function spans({ from, to }: { from: MonthDay; to: MonthDay }): [from: number, length: number][] {
  const [start, end] = [dayOfCommonYear(from) - 1, dayOfCommonYear(to)];
  return end > start
    ? [[start, end - start]]
    : (
        [
          [start, 365 - start],
          [0, end],
        ] as [number, number][]
      ).filter(([, length]) => length > 0);
}
