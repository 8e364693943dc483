/* Checks stations.csv of a book: normals that a place can have, in the half of the world where they are, and each station once. */
import { climateOfStation, columnOf } from '../schemas/stations.ts';
import type { Diagnostic } from '../source/diagnostic.ts';
import { faultsOf } from './climate.ts';
import type { ValidEntry, ValidEntries } from './fields.ts';
import { atField } from './place.ts';

export function stationFaults(club: ValidEntries): Diagnostic[] {
  const table = club.stations;
  if (!table) return [];
  const entry = withCells(table);
  const { rows } = table.data;
  return rows.flatMap((row, index) => [
    ...twinFaults(
      entry,
      rows.map(({ id }) => id),
      index,
    ),
    ...faultsOf(
      { entry, path: ['rows', index], climate: climateOfStation(row), hemisphere: row.latitude < 0 ? 'south' : 'north' },
      club,
    ).map((fault) => ({ ...fault, field: `${row.id}, ${fault.field.replace(/^rows \d+, /, '')}` })),
  ]);
}

function twinFaults(entry: ValidEntry, ids: readonly string[], index: number): Diagnostic[] {
  if (ids.indexOf(ids[index]!) === index) return [];
  return [
    atField(entry, ['rows', index, 'id'], {
      rule: 'climate',
      field: 'id',
      found: `"${ids[index]}" again`,
      write: 'each station once',
    }),
  ];
}

/** Where the fields of a climate are in the columns of the table. */
const COLUMNS: Readonly<Record<string, string>> = { 'degree-days': 'degree-days-50', freezes: 'first-freeze' };

/** The table, with the cell of each field of a climate: that of `minima 3` is `low-mar`. */
function withCells(table: ValidEntry): ValidEntry {
  const cell = ([rows, index, field, month]: readonly PropertyKey[]): PropertyKey[] => [
    rows!,
    index!,
    field === 'minima' || field === 'maxima' ? columnOf(field, typeof month === 'number' ? month : 0) : (COLUMNS[String(field)] ?? field!),
  ];
  return { ...table, fields: { ...table.fields, placeOf: (path) => table.fields.placeOf(cell(path)) } };
}
