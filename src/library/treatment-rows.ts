/* The rows of labels that the club holds, as the treatment page decides from them, each with the note of its source. */
import type { LabelRow } from '../../shared/treatments/label-row.ts';
import type { Day } from '../../shared/days/day.ts';
import type { Almanac } from './almanac.ts';
import { sourceWords, sureness } from './figures.ts';
import { noteOf } from './notes.ts';
import type { Note } from './page.ts';

export type HeldLabelRow = LabelRow & {
  /** The entry, and the row within it. */
  readonly entry: string;
  readonly id: string;
  /** The active ingredient. */
  readonly title: string;
  readonly form: string;
  readonly daysLeast?: number;
  readonly reachesBrood: 'yes' | 'no' | 'outlasts-brood';
  readonly resistance?: string;
  readonly fromMemory: boolean;
  readonly note: number;
};

/** Writes the notes of the rows behind those that the page has. */
export function heldLabelRows(almanac: Almanac, notes: Note[]): HeldLabelRow[] {
  return almanac.treatments.flatMap(({ id: entry, data }) =>
    data.rows.map((row): HeldLabelRow => ({
      entry,
      id: `${entry}/${row.id}`,
      title: data.title,
      form: row.form,
      place: row.place,
      ...(row['low-c'] === undefined ? {} : { lowC: row['low-c'] }),
      ...(row['high-c'] === undefined ? {} : { highC: row['high-c'] }),
      supers: row.supers,
      ...(row['supers-back-days'] === undefined ? {} : { supersBackDays: row['supers-back-days'] }),
      needsBroodless: row['needs-broodless'],
      ...(row['days-least'] === undefined ? {} : { daysLeast: row['days-least'] }),
      ...(row['days-most'] === undefined ? {} : { daysMost: row['days-most'] }),
      checkBy: row['check-by'] as Day,
      reachesBrood: row['kills-under-cappings'],
      ...(row.resistance === undefined ? {} : { resistance: row.resistance }),
      fromMemory: row.certainty === 'memory',
      note: noteOf(notes, [
        almanac.sources.has(row.source) ? sourceWords(almanac.sources.get(row.source)!) : row.source,
        `${row.place}, ${row.year}`,
        row.note,
        sentenceCase(sureness(row.certainty)),
      ]),
    })),
  );
}

/** The places of the rows, the one with most rows first. */
export function placesOf(rows: readonly LabelRow[]): string[] {
  const count = (place: string): number => rows.filter((row) => row.place === place).length;
  return [...new Set(rows.map(({ place }) => place))].sort((a, b) => count(b) - count(a) || (a < b ? -1 : 1));
}

const sentenceCase = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
