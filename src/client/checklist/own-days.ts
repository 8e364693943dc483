/*
 * Days of a run's steps, from the day that the reader gave. `data-days` contains offsets (`4 7`), or one pair for each way of starting
 * (`candy drawn 4 7;released drawn 0 0`). The build computes them.
 */
import { isMonthFirst, type Language } from '../../../shared/country/language.ts';
import { addDays, daysBetween, isDay, partsOf, weekday, weekdays, type Day } from '../../../shared/days/day.ts';
import { monthName } from '../../../shared/days/month-names.ts';
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

export type Shown = { days: string; status: string; isDue: boolean };

/** "Sun, Apr 19 – Wed, Apr 22" or "Sun 19 – Wed 22 Apr", and "starts tomorrow". The dates have no space at which a line could break. A done step has no status. */
export function spanWords({ from, to }: Span, today: Day, done: boolean, language: Language): Shown {
  const sameMonth = from.slice(0, 7) === to.slice(0, 7);
  const first = from === to ? '' : `${short(from, !sameMonth, language)} – `;
  const isDue = !done && daysBetween(from, today) >= 0;
  return { days: `${first}${short(to, true, language)}`.replaceAll(' ', '\u00a0'), status: done ? '' : dueStatus(from, to, today), isDue };
}

function short(day: Day, withMonth: boolean, language: Language): string {
  const { month, date } = partsOf(day);
  const inMonth = monthName(month).slice(0, 3);
  if (isMonthFirst(language)) return `${weekday(day).slice(0, 3)}, ${inMonth} ${date}`;
  return `${weekday(day).slice(0, 3)} ${date}${withMonth ? ` ${inMonth}` : ''}`;
}

function dueStatus(from: Day, to: Day, today: Day): string {
  const late = daysBetween(to, today);
  if (late > 0) return `${count(late)} late`;
  const left = daysBetween(today, from);
  const start = from === to ? '' : 'starts ';
  if (left > 0) return start + (left === 1 ? 'tomorrow' : `in ${count(left)}`);
  return late === 0 ? `${from === to ? '' : 'due '}today` : 'due now';
}

const count = (days: number): string => (days === 1 ? '1 day' : `${days} days`);

export const GROUPS = ['Past due', 'This week', 'Next week', 'Later', 'Earlier'] as const;

/** Where a dated step stands on a day. A week ends on Sunday. Without a date, as with another start, it stands last of what is left. */
export function groupOf(span: Span | null, today: Day, done: boolean): (typeof GROUPS)[number] {
  if (!span) return 'Later';
  if (daysBetween(span.to, today) > 0) return done ? 'Earlier' : 'Past due';
  const away = daysBetween(addDays(today, 6 - weekdays.indexOf(weekday(today))), span.from);
  return away <= 0 ? 'This week' : away <= 7 ? 'Next week' : 'Later';
}
