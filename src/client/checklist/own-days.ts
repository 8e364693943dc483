/*
 * Days of a run's steps, from the day that the reader gave. `data-days` contains offsets (`4 7`), or one pair for each way of starting
 * (`candy drawn 4 7;released drawn 0 0`). The build computes them.
 */
import { addDays, daysBetween, isDay, weekday, type Day } from '../../../shared/days/day.ts';
import { formatDayRange, formatDayWithWeekday } from '../../../shared/days/show-day.ts';
import type { Run } from './record.ts';

export type Span = { from: Day; to: Day };

export function spanOf(days: string, run: Run): Span | null {
  const { day } = run;
  if (!day || !isDay(day)) return null;
  const ways = days.split(';').map((each) => each.split(' '));
  const way = ways.find(
    (each) => each.length === 2 || (each[0] === (run.choices?.queen ?? 'candy') && each[1] === (run.choices?.comb ?? 'drawn')),
  );
  if (!way) return null;
  const [least, most] = way.slice(-2).map(Number) as [number, number];
  return { from: addDays(day, least), to: addDays(day, most) };
}

/** "Tuesday 21 to Friday 24 April 2026: due in 3 days". */
export function spanWords({ from, to }: Span, today: Day, done: boolean): string {
  const days =
    from === to ? formatDayWithWeekday(from) : `${weekday(from)} ${formatDayRange(from, to).replace(' to ', ` to ${weekday(to)} `)}`;
  return done ? days : `${days}: ${dueStatus(from, to, today)}`;
}

function dueStatus(from: Day, to: Day, today: Day): string {
  const late = daysBetween(to, today);
  if (late > 0) return `overdue by ${count(late)}`;
  const left = daysBetween(today, from);
  return left > 0 ? `due in ${count(left)}` : 'due now';
}

const count = (days: number): string => (days === 1 ? '1 day' : `${days} days`);
