/* The window of days for the reader's district: its own part of `valley 05-03 05-17;hill 05-12 05-26`, or the first. */
import type { MonthDay } from '../../../shared/days/month-day.ts';
import { monthDayIn } from '../../../shared/days/year-span.ts';

export function windowHere(windows: string): [from: MonthDay, to: MonthDay] {
  const all = windows.split(';').map((each) => each.split(' '));
  const [, from, to] = all.find(([id]) => id === document.documentElement.dataset.district) ?? all[0]!;
  return [monthDayIn(from!), monthDayIn(to!)];
}
