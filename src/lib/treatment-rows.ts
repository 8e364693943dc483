/* Label rows of the club for the treatment page, each with its source note. */
import type { LabelRow, WarmthLimit } from '../../shared/treatments/label-row.ts';
import { formatDay } from './country.ts';
import type { TreatmentRow } from '../schemas/treatments.ts';
import type { Almanac } from './content.ts';
import { sourceWords, sureness } from './figures.ts';
import { noteOf } from './notes.ts';
import * as text from './treatment-words.en.ts';
import type { Note } from './page-context.ts';

export type HeldLabelRow = LabelRow & {
  /** The entry and its row. */
  readonly entry: string;
  readonly id: string;
  /** The active ingredient. */
  readonly title: string;
  readonly form: string;
  readonly daysLeast?: number;
  readonly reachesBrood: TreatmentRow['kills-under-cappings'];
  readonly resistance?: string;
  readonly note: number;
};

/** Label rows of every land. Adds their notes after the notes that the page already has. */
export function heldLabelRows(almanac: Almanac, notes: Note[]): HeldLabelRow[] {
  return almanac.labelRows.flatMap(({ id: entry, data }) =>
    data.rows.map((row): HeldLabelRow => ({
      entry,
      id: `${entry}/${row.id}`,
      title: data.title,
      form: row.form,
      place: row.place,
      seen: seenOf(almanac, row),
      ...(row.registration === undefined ? {} : { registration: row.registration }),
      ...(row['label-date'] === undefined ? {} : { labelDate: row['label-date'] }),
      ...(row.superseded === undefined ? {} : { superseded: row.superseded }),
      limits: limitsOf(row.limits),
      forbidsBrood: row['forbids-brood'] ?? false,
      supers: row.supers,
      ...(row['supers-back-days'] === undefined ? {} : { supersBackDays: row['supers-back-days'] }),
      poorWithBrood: row['works-poorly-with-brood'],
      poorOutside: limitsOf(row['works-poorly-outside']),
      ...(row['days-least'] === undefined ? {} : { daysLeast: row['days-least'] }),
      ...(row['days-most'] === undefined ? {} : { daysMost: row['days-most'] }),
      checkBy: row['check-by'],
      reachesBrood: row['kills-under-cappings'],
      ...(row.resistance === undefined ? {} : { resistance: row.resistance }),
      note: noteOf(notes, rowNote(almanac, row), row.source === undefined ? undefined : almanac.sources.get(row.source)),
    })),
  );
}

/** How the label of a row was seen. A row without a source is one whose label could not be opened. */
export function seenOf({ sources }: Pick<Almanac, 'sources'>, { source }: Pick<TreatmentRow, 'source'>): LabelRow['seen'] {
  return source === undefined ? 'not-opened' : (sources.get(source)?.seen ?? 'memory');
}

/** The line under a row: its label, place, number and date, who found that it works poorly, and its certainty. */
export function rowNote({ sources }: Pick<Almanac, 'sources'>, row: TreatmentRow): (string | undefined)[] {
  const named = (id: string): string => (sources.has(id) ? sourceWords(sources.get(id)!) : id);
  return [
    row.source === undefined ? text.notOpened : named(row.source),
    row.source === undefined ? row.place : text.labelOf(row.place, row.registration, row['label-date'] && formatDay(row['label-date'])),
    row['efficacy-source'] && text.onPoorly(named(row['efficacy-source'])),
    ...(row.source === undefined ? [] : [row.note, sentenceCase(sureness(row.certainty))]),
  ];
}

/** The places of the rows, sorted by number of rows. */
export function placesOf(rows: readonly Pick<LabelRow, 'place'>[]): string[] {
  const count = (place: string): number => rows.filter((row) => row.place === place).length;
  return [...new Set(rows.map(({ place }) => place))].sort((a, b) => count(b) - count(a) || (a < b ? -1 : 1));
}

function limitsOf(limits: TreatmentRow['limits'] = []): WarmthLimit[] {
  return limits.map(({ of, when, 'least-c': leastC, 'most-c': mostC }) => ({
    of,
    ...(leastC === undefined ? {} : { leastC }),
    ...(mostC === undefined ? {} : { mostC }),
    ...(when === undefined ? {} : { when }),
  }));
}

const sentenceCase = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
