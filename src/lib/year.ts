/*
 * The year as 24 half-months, each with what begins in it: lists, pests, reading, plants in flower, meetings. The ring with its list, the
 * wall sheet and the calendar all use this order.
 */
import type { Tongue } from '../../shared/country/language.ts';
import { languageHere } from '../../shared/country/language-here.ts';
import { dayOfCommonYear, halfMonthName, monthDay, monthDayAt, monthDayOf, type MonthDay } from '../../shared/days/month-day.ts';
import type { Almanac } from './content.ts';
import { plantsHere } from './bloom.ts';
import { calledOffIn, meetingTime } from './meetings.ts';
import { datedPages } from './now.ts';
import type { Windows } from './season.ts';

export type YearKind = 'list' | 'pest' | 'know-how' | 'bloom' | 'meeting';
export type YearItem = {
  kind: YearKind;
  href: string;
  title: string;
  lang?: Tongue | undefined;
  /** Null for a meeting, which occurs in one year only. */ windows: Windows | null;
  day: MonthDay;
  time?: string;
  calledOff?: boolean;
};
export type HalfMonth = { id: string; name: string; from: MonthDay; to: MonthDay; items: YearItem[] };

export const YEAR_KINDS: readonly YearKind[] = ['list', 'pest', 'bloom', 'meeting', 'know-how'];

/** The first and last day of each of the 24. */
export const halves: readonly { from: MonthDay; to: MonthDay }[] = Array.from({ length: 24 }, (_, index) => {
  const month = Math.floor(index / 2) + 1;
  const from = monthDay(month, index % 2 === 0 ? 1 : 16);
  return { from, to: index % 2 === 0 ? monthDay(month, 15) : monthDayAt(month === 12 ? 365 : dayOfCommonYear(monthDay(month + 1, 1)) - 1) };
});

export function yearOf(almanac: Almanac, base: string): HalfMonth[] {
  const items = yearItems(almanac, base);
  return halves.map(({ from, to }, index) => ({
    id: halfId(index),
    name: halfMonthName(from, languageHere()),
    from,
    to,
    items: items.filter(({ day }) => halfOf(day) === index),
  }));
}

/** Counted from 0, the first half of January. */
export const halfOf = (day: MonthDay): number => (Number(day.slice(0, 2)) - 1) * 2 + (day.slice(3) > '15' ? 1 : 0);

/** The month and the half, in the form that the page's script looks up. */
export const halfId = (index: number): string => `half-${Math.floor(index / 2) + 1}-${(index % 2) + 1}`;

function yearItems(almanac: Almanac, base: string): YearItem[] {
  const pages = datedPages(almanac, base).map((page): YearItem => ({ ...page, day: page.windows[0]!.window.from }));
  const plants = plantsHere(almanac).flatMap(({ id, title, stage, windows }): YearItem[] =>
    windows
      ? [{ kind: 'bloom', href: `${base}year/bloom/#${id}`, title: `${title}: ${stage}`, windows, day: windows[0]!.window.from }]
      : [],
  );
  const meetings = almanac.meetings.map(({ id, data }): YearItem => ({
    kind: 'meeting',
    href: `${base}meetings/${id}/`,
    title: data.title,
    windows: null,
    day: monthDayOf(data.day),
    time: meetingTime(data),
    calledOff: calledOffIn(data) !== null,
  }));
  return [...pages, ...plants, ...meetings].sort((a, b) =>
    a.day < b.day ? -1 : a.day > b.day ? 1 : YEAR_KINDS.indexOf(a.kind) - YEAR_KINDS.indexOf(b.kind) || (a.title < b.title ? -1 : 1),
  );
}
