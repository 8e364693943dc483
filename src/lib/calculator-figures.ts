/*
 * Figures that calculator pages pass to their forms by value. The browser never reads the collections. A figure that the club lacks is
 * null, and the calculator says so.
 */
import { phases as allPhases, type Phase } from '../../shared/season/phases.ts';
import { followedRows } from '../schemas/figures.ts';
import type { Almanac } from './content.ts';
import { rowOn, type FigureRow } from './figures.ts';

/** The row that the club follows, or the named one. Null where none is in force. */
export function heldRow(almanac: Almanac, figureId: string, day: string, rowId?: string): FigureRow | null {
  const figure = almanac.figures.get(figureId);
  return (figure && rowOn(figure, rowId ?? figure.follows, day)) ?? null;
}

export function heldNumber(almanac: Almanac, figureId: string, day: string): number | null {
  return heldRow(almanac, figureId, day)?.value ?? null;
}

/** Both ends of a range. A single number is both. */
export function heldRange(almanac: Almanac, figureId: string, day: string, rowId?: string): { least: number; most: number } | null {
  const row = heldRow(almanac, figureId, day, rowId);
  if (!row) return null;
  return row.value === undefined ? { least: row.least!, most: row.most! } : { least: row.value, most: row.value };
}

type Counting = 'wash' | 'roll' | 'gas';

export type HeldLevel = { row: FigureRow; levelPer100: number; phases: readonly Phase[]; words: string; method: Counting | undefined };

/** The action levels that the club follows: the rows in force, for several phases or for all. */
export function followedLevels(almanac: Almanac, figureId: string, day: string): HeldLevel[] {
  const figure = almanac.figures.get(figureId);
  if (!figure) return [];
  return figure.rows
    .filter((row) => followedRows(figure).includes(row.id) && row.from <= day && (row.until === undefined || day <= row.until))
    .map((row) => level(almanac, row));
}

/** What the mite count is judged by: the club's levels, the growth of mites, and the size of a sample. */
export function miteFigures(almanac: Almanac, day: string) {
  const levels = followedLevels(almanac, 'mite-action-level', day);
  const atOnceLevels = followedLevels(almanac, 'mite-emergency-level', day);
  const growth = heldRange(almanac, 'mite-growth-per-day', day);
  const usualBees = heldNumber(almanac, 'sample-bees', day) ?? 300;
  const handed = (held: readonly HeldLevel[]) =>
    held.map(({ levelPer100, phases, words, method }) => ({ levelPer100, phases, words, method }));
  const figures = {
    levels: handed(levels),
    atOnceLevels: handed(atOnceLevels),
    growth: growth && { slowestPerDay: growth.least, fastestPerDay: growth.most },
    // Twice the usual sample.
    mostBees: 2 * usualBees,
    fewestColonies: heldNumber(almanac, 'apiary-sample-colonies-least', day),
  };
  // The last level of the year belongs to the most important count.
  return { levels, atOnceLevels, usualBees, figures, workedPhase: levels.at(-1)?.phases[0] };
}

function level(almanac: Almanac, row: FigureRow): HeldLevel {
  const source = almanac.sources.get(row.source);
  return {
    row,
    // Takes the stricter end of a range.
    levelPer100: row.value ?? row.least!,
    phases: row.phases ?? allPhases,
    words: [
      `${[source ? [source.who, source.year].filter(Boolean).join(' ') : row.source, row.place, row.method].filter(Boolean).join('; ')}.`,
      row.note,
    ]
      .filter(Boolean)
      .join(' '),
    method: countingOf(row.method),
  };
}

/** An ether roll is a different method from a sugar roll. */
function countingOf(method = ''): Counting | undefined {
  if (/ether|board/i.test(method)) return undefined;
  if (/wash/i.test(method)) return 'wash';
  if (/roll|sugar/i.test(method)) return 'roll';
  return /gas|carbon dioxide/i.test(method) ? 'gas' : undefined;
}
