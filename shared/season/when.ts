/**
 * Parses a `when`: a time in a hive's year in words. Forms: "in swarming", "1 October to 15 November", "2 weeks before main flow to main
 * flow", "day 3 to day 5 after installing", "any time". Each meaning has one form, and one in Spanish; any other is refused with the form to
 * write. There are no years: a span may cross New Year, and 29 February is not a day of every year.
 */
import { addMonthDays, dayOfCommonYear, monthDay, type MonthDay } from '../days/month-day.ts';
import { err, ok, type Correction, type Result } from '../result.ts';
import { anchorName, anchors, ownEvents, phaseName, phases, type Phase } from './phases.ts';
import { betterForm } from './when-hints.ts';
import { fromSpanish, isLikelySpanish, SPANISH_FORMS } from './spanish.ts';
import { readPoint } from './when-point.ts';

export { anchorName, anchors, ownEvents, phaseName, phases, type Phase };

/** An anchor is the id of a phase (its first day) or of a day of the year such as the first freeze. 2 weeks before is -14. */
export type Point = { kind: 'day'; month: number; day: number } | { kind: 'anchor'; anchor: string; offsetDays: number };

export type When =
  | { kind: 'any' }
  | { kind: 'phase'; phase: Phase }
  | { kind: 'span'; from: Point; to: Point }
  | { kind: 'own-days'; from: number; to: number; event: string };

/** `MM-DD`, both days included. The span may cross New Year. */
export type Window = { from: MonthDay; to: MonthDay };

/** The year of one district. */
export type SeasonDays = { phases: Record<Phase, Window>; anchors: Record<string, MonthDay> };

export function readWhen(text: string): Result<When, Correction> {
  const spanish = fromSpanish(text);
  const when = readExactly(spanish ?? text);
  if (when) return ok(when);
  return err(!spanish && isLikelySpanish(text) ? { found: `"${text}"`, write: SPANISH_FORMS } : betterForm(spanish ?? text, readExactly));
}

/** The accepted form of the text, or undefined. */
function readExactly(text: string): When | null {
  if (text === 'any time') return { kind: 'any' };
  const phase = phases.find((each) => text === `in ${phaseName(each)}`);
  if (phase) return { kind: 'phase', phase };
  const own = /^day (\d{1,3})(?: to day (\d{1,3}))? after ([a-z]+)$/.exec(text);
  if (own) return ownDays(Number(own[1]), Number(own[2] ?? own[1]), own[3]!);
  const ends = text.split(' to ');
  if (ends.length > 2) return null;
  const [from, to] = [readPoint(ends[0]!), readPoint(ends.at(-1)!)];
  if (!from || !to || (ends.length === 1 && from.kind === 'anchor') || runsBackwards(from, to)) return null;
  return { kind: 'span', from, to };
}

function ownDays(from: number, to: number, event: string): When | null {
  const known = (ownEvents as readonly string[]).includes(event);
  return known && from <= to ? { kind: 'own-days', from, to, event } : null;
}

/** A span of plain days may cross New Year. Two days counted from one anchor may not go round the whole year. */
const runsBackwards = (from: Point, to: Point): boolean =>
  from.kind === 'anchor' && to.kind === 'anchor' && from.anchor === to.anchor && from.offsetDays > to.offsetDays;

/** The days in one district's year, or null for any time and for the reader's own days. */
export function resolveWhen(when: When, season: SeasonDays): Window | null {
  if (when.kind === 'phase') return { ...season.phases[when.phase] };
  if (when.kind !== 'span') return null;
  return { from: resolvePoint(when.from, season), to: resolvePoint(when.to, season) };
}

function resolvePoint(point: Point, season: SeasonDays): MonthDay {
  if (point.kind === 'day') return monthDay(point.month, point.day);
  const day = season.anchors[point.anchor];
  if (day === undefined) throw new RangeError(`resolveWhen: the season has no anchor ${point.anchor}`);
  return addMonthDays(day, point.offsetDays);
}

/** 1 for a single day. */
export function daysInWindow({ from, to }: Window): number {
  return ((dayOfCommonYear(to) - dayOfCommonYear(from) + 365) % 365) + 1;
}

/** The anchors that a `when` is counted from. The start of a phase has the id of the phase. */
export function anchorsIn(when: When): string[] {
  if (when.kind !== 'span') return [];
  return [...new Set([when.from, when.to].flatMap((point) => (point.kind === 'anchor' ? [point.anchor] : [])))];
}
