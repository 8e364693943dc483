/* Checks figures: dated rows of one number or one range each. The rows of one source follow one another without a gap. */
import { addDays } from '../../shared/days/day.ts';
import { phaseName, phases as allPhases } from '../../shared/season/phases.ts';
import type { Diagnostic } from '../source/diagnostic.ts';
import { followedRows, type Figure, type FigureRow } from '../schemas/figures.ts';
import type { ValidEntries, ValidEntry } from './fields.ts';
import { nearOrAll } from '../../shared/words/near-name.ts';
import { atField, atFieldName, type Message } from './place.ts';

export function figureFaults(club: ValidEntries): Diagnostic[] {
  const seen = new Map(club.of.sources.map((source) => [source.id, source.data]));
  return [
    ...club.of.figures.flatMap((entry) => [
      ...entry.data.rows.flatMap((row, index) => [...numberFaults(entry, row, index), ...phaseFaults(entry, row, index)]),
      ...followsFaults(entry),
      ...periodFaults(entry),
      ...entry.data.rows.flatMap((row, index) => memoryFaults(entry, ['rows', index], row, seen)),
    ]),
    ...club.of.treatments.flatMap((entry) => entry.data.rows.flatMap((row, index) => memoryFaults(entry, ['rows', index], row, seen))),
    ...club.of.forage.flatMap((entry) => (entry.data.bloom ? memoryFaults(entry, ['bloom'], entry.data.bloom, seen) : [])),
  ];
}

const at = (entry: ValidEntry, index: number, field: string, message: Omit<Message, 'rule' | 'field'>): Diagnostic =>
  atField(entry, field ? ['rows', index, field] : ['rows', index], {
    rule: 'figure',
    field: `rows ${index + 1}${field ? `, ${field}` : ''}`,
    ...message,
  });

function numberFaults(entry: ValidEntry, { value, least, most }: FigureRow, index: number): Diagnostic[] {
  const range = least !== undefined || most !== undefined;
  if (value !== undefined && range)
    return [
      at(entry, index, least === undefined ? 'most' : 'least', {
        found: 'value and a range in one row',
        write: 'either "value:", or "least:" and "most:"',
      }),
    ];
  if (value !== undefined) return [];
  if (!range) return [at(entry, index, '', { found: 'a row without a number', write: '"value:", or "least:" and "most:"' })];
  if (least === undefined || most === undefined)
    return [
      at(entry, index, least === undefined ? 'most' : 'least', {
        found: 'one end of a range',
        write: 'both "least:" and "most:", or "value:"',
      }),
    ];
  return least < most
    ? []
    : [
        at(entry, index, 'most', {
          found: `${most}, which is not above least, ${least}`,
          write: 'the smaller number at least, the larger at most',
        }),
      ];
}

function phaseFaults(entry: ValidEntry, { phases = [] }: FigureRow, index: number): Diagnostic[] {
  return phases.flatMap((phase, place) =>
    phases.indexOf(phase) === place
      ? []
      : [
          atField(entry, ['rows', index, 'phases', place], {
            rule: 'figure',
            field: `rows ${index + 1}, phases`,
            found: `"${phase}" twice`,
            write: 'it once',
          }),
        ],
  );
}

function followsFaults(entry: ValidEntry<Figure>): Diagnostic[] {
  const ids = new Set(entry.data.rows.map(({ id }) => id));
  const named: [id: string, path: PropertyKey[]][] = [
    [entry.data.follows, ['follows']],
    ...(entry.data['also-follows'] ?? []).map((id, place): [string, PropertyKey[]] => [id, ['also-follows', place]]),
  ];
  const unknown = named.filter(([id]) => !ids.has(id));
  if (unknown.length === 0) return sharedYearFaults(entry);
  return unknown.map(([id, path]) => {
    return atField(entry, path, {
      rule: 'figure',
      field: String(path[0]),
      found: `"${id}", which is not the id of a row`,
      write: nearOrAll(id, ids),
    });
  });
}

/**
 * Where a figure follows several rows, each part of the year has one of them or is listed in `no-row-in:`. Only the rows in force last
 * count.
 */
function sharedYearFaults(entry: ValidEntry<Figure>): Diagnostic[] {
  const { 'also-follows': also, 'no-row-in': without = [] } = entry.data;
  const message = (field: string, found: string, write: string): Diagnostic =>
    atField(entry, [field], { rule: 'figure', field, found, write });
  if (also === undefined)
    return without.length === 0
      ? []
      : [message('no-row-in', 'parts of the year, while one row alone is followed', 'the parts that it covers as "phases:" of that row')];
  const followed = followedRows(entry.data);
  const covering = entry.data.rows.filter(({ id, until }) => followed.includes(id) && until === undefined);
  const allYear = covering.find(({ phases = [] }) => phases.length === 0);
  if (allYear)
    return [
      message(
        'also-follows',
        `the row "${allYear.id}" without "phases:", so that it covers the whole year`,
        'the parts of the year that each followed row covers, as its "phases:"',
      ),
    ];
  return allPhases.flatMap((phase) => {
    const rows = [...new Set(covering.filter(({ phases }) => phases!.includes(phase)).map(({ id }) => id))];
    const named = rows.map((id) => `"${id}"`).join(' and ');
    if (rows.length > 1)
      return [message('also-follows', `${phaseName(phase)} covered twice, by ${named}`, 'the part of the year in one of the rows alone')];
    if (rows.length === 1 && without.includes(phase))
      return [message('no-row-in', `${phaseName(phase)}, which the row ${named} covers`, 'it in one of the two places')];
    return rows.length === 1 || without.includes(phase)
      ? []
      : [message('also-follows', `no row for ${phaseName(phase)}`, `a row that covers it, or "no-row-in: [${phase}]"`)];
  });
}

/** Rows of one source are listed oldest first. Each ends the day before the next begins. */
function periodFaults(entry: ValidEntry<Figure>): Diagnostic[] {
  return entry.data.rows.flatMap((row, index): Diagnostic[] => {
    if (row.until !== undefined && row.until < row.from)
      return [at(entry, index, 'until', { found: `${row.until}, before from, ${row.from}`, write: 'a day from then on' })];
    const next = entry.data.rows.findIndex((other, later) => later > index && other.id === row.id && meet(row, other));
    if (next < 0) return [];
    const { from } = entry.data.rows[next]!;
    if (from <= row.from)
      return [
        at(entry, next, 'from', {
          found: `${from}, not after the row "${row.id}" above it, from ${row.from}`,
          write: 'the rows of one source oldest first, each from a later day',
        }),
      ];
    const last = addDays(from, -1);
    if (row.until === last) return [];
    if (row.until === undefined)
      return [
        atFieldName(entry, ['rows', index, 'id'], {
          rule: 'figure',
          field: `rows ${index + 1}, until`,
          found: `no last day, while row ${next + 1} follows it from ${from}`,
          write: `"until: ${last}"`,
        }),
      ];
    return [
      at(entry, index, 'until', {
        found: `${row.until}, which ${row.until < last ? 'leaves days without a figure' : 'overlaps the next'}, as row ${next + 1} begins ${from}`,
        write: `"until: ${last}"`,
      }),
    ];
  });
}

/** Two rows overlap when they share a phase. A row without phases covers all of them. */
const meet = (a: FigureRow, b: FigureRow): boolean => !a.phases || !b.phases || a.phases.some((phase) => b.phases!.includes(phase));

type Seen = Map<string, { seen: string; kind: string }>;

/** A source that was not opened is called "memory" (a mere habit "habit"), and nothing else is. */
function memoryFaults(
  entry: ValidEntry,
  path: PropertyKey[],
  row: { source?: string | undefined; certainty: string },
  seen: Seen,
): Diagnostic[] {
  const source = row.source === undefined ? undefined : seen.get(row.source);
  if (!source) return [];
  const field = [...path, 'certainty']
    .map((key) => (typeof key === 'number' ? key + 1 : key))
    .join(' ')
    .replace(/ (?=certainty)/, ', ');
  const fromMemory = source.seen === 'memory';
  const fits = source.kind === 'habit' ? ['habit', 'memory'] : ['memory'];
  if (fromMemory && !fits.includes(row.certainty))
    return [
      atField(entry, [...path, 'certainty'], {
        rule: 'certainty',
        field,
        found: `"${row.certainty}" for the source "${row.source}", which was seen from memory only`,
        write: `"${fits[0]}"`,
      }),
    ];
  if (!fromMemory && row.certainty === 'memory')
    return [
      atField(entry, [...path, 'certainty'], {
        rule: 'certainty',
        field,
        found: `"memory" for the source "${row.source}", which was opened or quoted`,
        write: 'how sure the source is: settled, likely, contested or habit',
      }),
    ];
  return [];
}
