/* The year ring: shapes for 24 half-months and for the phases of the year. The year starts at the top and runs clockwise. */
import { dayOfCommonYear, monthDay, type MonthDay } from '../../shared/days/month-day.ts';
import { phases, type SeasonDays } from '../../shared/season/when.ts';
import type { Phase } from './season.ts';
import { halves } from './year.ts';

export const RING = { size: 342, outer: 169, months: 128, inner: 98 } as const;

export type Wedge = { from: MonthDay; to: MonthDay; path: string };
export type Band = { phase: Phase; path: string; arc: string; length: number };
export type MonthMark = { words: string; x: number; y: number };

const SHORT = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
const round = (value: number): number => Math.round(value * 10) / 10;

/** Clockwise angle in radians from the top, for a day of the year counted from 0. */
const angle = (day: number): number => (day / 365) * 2 * Math.PI;
const point = (radius: number, at: number): string =>
  `${round(RING.size / 2 + radius * Math.sin(at))} ${round(RING.size / 2 - radius * Math.cos(at))}`;

/** First and last day of each half-month, and its wedge. */
export const halfMonths = (): Wedge[] => halves.map(({ from, to }) => wedge(from, to));

const wedge = (from: MonthDay, to: MonthDay): Wedge => ({
  from,
  to,
  path: sector(dayOfCommonYear(from) - 1, dayOfCommonYear(to), RING.months, RING.outer),
});

/** The name of each month in the middle of its two wedges. */
export const monthMarks = (): MonthMark[] =>
  SHORT.map((words, index) => {
    const start = dayOfCommonYear(monthDay(index + 1, 1)) - 1;
    const [x, y] = point((RING.months + RING.outer) / 2, angle(start + 15.2))
      .split(' ')
      .map(Number) as [number, number];
    return { words, x, y };
  });

/** The phases of one district, drawn inside the months. */
export function bands(days: SeasonDays): Band[] {
  return phases.map((phase) => {
    const { from, to } = days.phases[phase];
    const start = dayOfCommonYear(from) - 1;
    const end = dayOfCommonYear(to) + (to < from ? 365 : 0);
    const radius = (RING.inner + RING.months) / 2;
    return {
      phase,
      path: sector(start, end, RING.inner, RING.months),
      arc: labelArc(start, end, radius),
      length: round(radius * (angle(end) - angle(start))),
    };
  });
}

function sector(start: number, end: number, inner: number, outer: number): string {
  const [a, b] = [angle(start), angle(end)];
  const large = b - a > Math.PI ? 1 : 0;
  return `M${point(inner, a)}L${point(outer, a)}A${outer} ${outer} 0 ${large} 1 ${point(outer, b)}L${point(inner, b)}A${inner} ${inner} 0 ${large} 0 ${point(inner, a)}Z`;
}

/** An arc for text: clockwise in the upper half, anticlockwise in the lower, so that no word is upside down. */
function labelArc(start: number, end: number, radius: number): string {
  const [a, b] = [angle(start), angle(end)];
  const large = b - a > Math.PI ? 1 : 0;
  const low = Math.cos((a + b) / 2) < 0;
  const at = low ? radius + 6.5 : radius - 6;
  return low ? `M${point(at, b)}A${at} ${at} 0 ${large} 0 ${point(at, a)}` : `M${point(at, a)}A${at} ${at} 0 ${large} 1 ${point(at, b)}`;
}

/** A month from rim to centre, as a click target. */
export const monthSector = (month: number): string =>
  sector(dayOfCommonYear(halves[2 * month]!.from) - 1, dayOfCommonYear(halves[2 * month + 1]!.to), CORE, RING.outer);

const CORE = 34;
const TRACKS = [88, 74, 60, 46];
const MOST_MARKS = 3;

/** Marks side by side in a half-month's part of a track: one for each thing that begins there, three at most. */
export function trackMarks(track: number, counts: readonly number[]): { x: number; y: number }[] {
  const radius = TRACKS[track]!;
  return counts.flatMap((count, half) => {
    const marks = Math.min(count, MOST_MARKS);
    const middle = (half + 0.5) * (365 / 24);
    return Array.from({ length: marks }, (_, index) => {
      const at = angle(middle) + ((index - (marks - 1) / 2) * 8.4) / radius;
      const [x, y] = point(radius, at).split(' ').map(Number) as [number, number];
      return { x, y };
    });
  });
}

export const trackLine = (track: number): number => TRACKS[track]!;
