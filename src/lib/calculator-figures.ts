/*
 * What a calculator is handed of the club's own figures, by value: an island never reads the shelves. A figure that the
 * club does not hold is null, and the calculator says so.
 */
import { phases as allPhases, type Phase } from '../../shared/season/phases.ts';
import { followedRows } from '../schemas/figures.ts';
import type { Almanac } from './content.ts';
import { rowOn, type FigureRow } from './figures.ts';

/** The row the club follows, or one it names; null where none is in force. */
export function heldRow(almanac: Almanac, figureId: string, day: string, rowId?: string): FigureRow | null {
  const figure = almanac.figures.get(figureId);
  return (figure && rowOn(figure, rowId ?? figure.follows, day)) ?? null;
}

export function heldNumber(almanac: Almanac, figureId: string, day: string): number | null {
  return heldRow(almanac, figureId, day)?.value ?? null;
}

/** Two ends; a single number is both. */
export function heldRange(almanac: Almanac, figureId: string, day: string, rowId?: string): { least: number; most: number } | null {
  const row = heldRow(almanac, figureId, day, rowId);
  if (!row) return null;
  return row.value === undefined ? { least: row.least!, most: row.most! } : { least: row.value, most: row.value };
}

type Counting = 'wash' | 'roll' | 'gas';

export type HeldLevel = { row: FigureRow; levelPer100: number; phases: readonly Phase[]; words: string; method: Counting | undefined };

/** The action levels the club follows: the rows in force, of several parts of the year or of all. */
export function followedLevels(almanac: Almanac, figureId: string, day: string): HeldLevel[] {
  const figure = almanac.figures.get(figureId);
  if (!figure) return [];
  return figure.rows
    .filter((row) => followedRows(figure).includes(row.id) && row.from <= day && (row.until === undefined || day <= row.until))
    .map((row) => level(almanac, row));
}

function level(almanac: Almanac, row: FigureRow): HeldLevel {
  const source = almanac.sources.get(row.source);
  return {
    row,
    // Of a range the stricter end.
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

/** Rolls in ether are another method than rolls in sugar. */
function countingOf(method = ''): Counting | undefined {
  if (/ether|board/i.test(method)) return undefined;
  if (/wash/i.test(method)) return 'wash';
  if (/roll|sugar/i.test(method)) return 'roll';
  return /gas|carbon dioxide/i.test(method) ? 'gas' : undefined;
}
