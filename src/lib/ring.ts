/* The year ring: the parts of the year outside, the twelve months inside, and a pointer. The year starts at the top and runs clockwise. */
import { dayOfCommonYear, monthDay } from '../../shared/days/month-day.ts';
import { languageHere } from '../../shared/country/language-here.ts';
import { shownMonth } from '../../shared/days/month-names.ts';
import { phases, type SeasonDays } from '../../shared/season/when.ts';
import type { Phase } from './season.ts';

/** The radii of the ring, in units of its drawing. */
export const RING = { size: 400, outer: 196, months: 146, inner: 90 } as const;

export type Band = { phase: Phase; path: string; arc: string; length: number };
export type Month = { words: string; path: string; x: number; y: number };

/** "Jan", "ene". */
const shortNames = (): string[] => Array.from({ length: 12 }, (_, month) => shownMonth(month + 1, languageHere()).slice(0, 3));
/** "J", "E": one letter for each month. */
export const monthLetters = (): string[] => shortNames().map((name) => name.charAt(0).toUpperCase());
const round = (value: number): number => Math.round(value * 10) / 10;

/** Clockwise angle in radians from the top, for a day of the year counted from 0. */
const angle = (day: number): number => (day / 365) * 2 * Math.PI;
const point = (radius: number, at: number): [number, number] => [
  round(RING.size / 2 + radius * Math.sin(at)),
  round(RING.size / 2 - radius * Math.cos(at)),
];

/** The twelve months: the sector of each, and the middle of its name. */
export const months = (): Month[] =>
  shortNames().map((words, index) => {
    const start = dayOfCommonYear(monthDay(index + 1, 1)) - 1;
    const end = index === 11 ? 365 : dayOfCommonYear(monthDay(index + 2, 1)) - 1;
    const [x, y] = point((RING.inner + RING.months) / 2, angle((start + end) / 2));
    return { words, path: sector(start, end, RING.inner, RING.months), x, y };
  });

/** The phases of one district, around the months. */
export function bands(days: SeasonDays): Band[] {
  return phases.map((phase) => {
    const { from, to } = days.phases[phase];
    const start = dayOfCommonYear(from) - 1;
    const end = dayOfCommonYear(to) + (to < from ? 365 : 0);
    const radius = (RING.months + RING.outer) / 2;
    return {
      phase,
      path: sector(start, end, RING.months, RING.outer),
      arc: labelArc(start, end, radius),
      length: round(radius * (angle(end) - angle(start))),
    };
  });
}

function sector(start: number, end: number, inner: number, outer: number): string {
  const [a, b] = [angle(start), angle(end)];
  const large = b - a > Math.PI ? 1 : 0;
  const at = (radius: number, turn: number): string => point(radius, turn).join(' ');
  return `M${at(inner, a)}L${at(outer, a)}A${outer} ${outer} 0 ${large} 1 ${at(outer, b)}L${at(inner, b)}A${inner} ${inner} 0 ${large} 0 ${at(inner, a)}Z`;
}

/** An arc for text: clockwise in the upper half, anticlockwise in the lower, so that no word is upside down. */
function labelArc(start: number, end: number, radius: number): string {
  const [a, b] = [angle(start), angle(end)];
  const large = b - a > Math.PI ? 1 : 0;
  const low = Math.cos((a + b) / 2) < 0;
  const at = low ? radius + 6.5 : radius - 6;
  const [from, to] = low ? [b, a] : [a, b];
  return `M${point(at, from).join(' ')}A${at} ${at} 0 ${large} ${low ? 0 : 1} ${point(at, to).join(' ')}`;
}
