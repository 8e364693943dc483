/*
 * Days of a run's steps, from the day that the reader gave. `data-days` contains offsets (`4 7`), or one pair for each way of starting
 * (`candy drawn 4 7;released drawn 0 0`). The build computes them.
 */
import { isMonthFirst, tongueOf, type Language } from '../../../shared/country/language.ts';
import { addDays, daysBetween, isDay, partsOf, weekday, weekdays, type Day } from '../../../shared/days/day.ts';
import { shownMonth } from '../../../shared/days/month-names.ts';
import { shownWeekday } from '../../../shared/days/show-day.ts';
import type { Run } from './record.ts';
import * as text from './own-days.en.ts';
import * as es from './own-days.es.ts';

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

/** "Sun, Apr 19 – Wed, Apr 22", "Sun 19 – Wed 22 Apr" or "dom 19 – mié 22 abr", and "starts tomorrow". The dates have no space at which a line could break. A done step has no status. */
export function spanWords({ from, to }: Span, today: Day, done: boolean, language: Language): Shown {
  const sameMonth = from.slice(0, 7) === to.slice(0, 7);
  const first = from === to ? '' : `${short(from, !sameMonth, language)} – `;
  const isDue = !done && daysBetween(from, today) >= 0;
  return {
    days: `${first}${short(to, true, language)}`.replaceAll(' ', '\u00a0'),
    status: done ? '' : dueStatus(from, to, today, tongueOf(language) === 'es'),
    isDue,
  };
}

function short(day: Day, withMonth: boolean, language: Language): string {
  const { month, date } = partsOf(day);
  const inMonth = shownMonth(month, language).slice(0, 3);
  const onDay = shownWeekday(day, language).slice(0, 3);
  if (isMonthFirst(language)) return `${onDay}, ${inMonth} ${date}`;
  return `${onDay} ${date}${withMonth ? ` ${inMonth}` : ''}`;
}

function dueStatus(from: Day, to: Day, today: Day, inSpanish: boolean): string {
  const late = daysBetween(to, today);
  if (late > 0) return (inSpanish ? es.late : text.late)(late);
  const left = daysBetween(today, from);
  if (left > 0) return (inSpanish ? es.ahead : text.ahead)(left, from !== to);
  if (late === 0) return (inSpanish ? es.today : text.today)(from !== to);
  return inSpanish ? es.dueNow : text.dueNow;
}

/** Their headings: dated.en.ts. */
export const GROUPS = ['past-due', 'this-week', 'next-week', 'later', 'earlier'] as const;

/** Where a dated step stands on a day. A week ends on Sunday. Without a date, as with another start, it stands last of what is left. */
export function groupOf(span: Span | null, today: Day, done: boolean): (typeof GROUPS)[number] {
  if (!span) return 'later';
  if (daysBetween(span.to, today) > 0) return done ? 'earlier' : 'past-due';
  const away = daysBetween(addDays(today, 6 - weekdays.indexOf(weekday(today))), span.from);
  return away <= 0 ? 'this-week' : away <= 7 ? 'next-week' : 'later';
}
