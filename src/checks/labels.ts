/*
 * Checks label rows. A row with numbers names its label. A United States row names its registration number and date, or no label at all.
 * A temperature limit has an end. A "works poorly" names its source.
 */
import { samePlace } from '../../shared/treatments/label-row.ts';
import type { Diagnostic } from '../source/diagnostic.ts';
import type { Treatment, TreatmentRow } from '../schemas/treatments.ts';
import type { ValidEntries, ValidEntry } from './fields.ts';
import { atField, type Message } from './place.ts';

const US = ['United States', 'United States of America', 'US', 'USA'];
/** Fields that only an opened label can supply. */
const OF_A_LABEL = ['registration', 'label-date', 'limits', 'forbids-brood', 'supers-back-days', 'days-least', 'days-most'] as const;

export function labelFaults(club: ValidEntries): Diagnostic[] {
  return club.of.treatments.flatMap((entry) =>
    entry.data.rows.flatMap((row, index) => [
      ...registrationFaults(entry, row, index),
      ...numberFaults(entry, row, index),
      ...limitFaults(entry, row, index),
      ...poorFaults(entry, row, index),
    ]),
  );
}

const at = (entry: ValidEntry<Treatment>, index: number, field: PropertyKey[], message: Pick<Message, 'found' | 'write'>): Diagnostic =>
  atField(entry, ['rows', index, ...field], {
    rule: 'label',
    field: [`rows ${index + 1}`, ...field.map((key) => (typeof key === 'number' ? key + 1 : key))].join(', ').replace(/, (?=\d)/g, ' '),
    ...message,
  });

function registrationFaults(entry: ValidEntry<Treatment>, row: TreatmentRow, index: number): Diagnostic[] {
  if (row.source === undefined || !US.some((place) => samePlace(place, row.place))) return [];
  const lacking = [
    ...(row.registration === undefined ? ['registration number'] : []),
    ...(row['label-date'] === undefined ? ['label date'] : []),
  ];
  return lacking.length === 0
    ? []
    : [
        at(entry, index, [], {
          found: `a row of the United States without ${lacking.join(' and ')}`,
          write:
            '"registration:" with the EPA Reg. No. and "label-date:" as the label prints them; where no label was opened, leave out "source:"',
        }),
      ];
}

function numberFaults(entry: ValidEntry<Treatment>, row: TreatmentRow, index: number): Diagnostic[] {
  if (row.source !== undefined) return [];
  return [
    ...OF_A_LABEL.filter((field) => row[field] !== undefined).map((field) =>
      at(entry, index, [field], {
        found: `"${field}:" in a row that names no label`,
        write: '"source:" with the label that says so, or nothing',
      }),
    ),
    ...(row.supers === 'label'
      ? []
      : [
          at(entry, index, ['supers'], {
            found: `"${row.supers}" in a row that names no label`,
            write: '"source:" with the label that says so, or "label"',
          }),
        ]),
  ];
}

function limitFaults(entry: ValidEntry<Treatment>, row: TreatmentRow, index: number): Diagnostic[] {
  return (['limits', 'works-poorly-outside'] as const).flatMap((field) =>
    (row[field] ?? []).flatMap(({ 'least-c': least, 'most-c': most }, place) =>
      least === undefined && most === undefined
        ? [at(entry, index, [field, place], { found: 'a limit without an end', write: '"least-c:", "most-c:" or both' })]
        : least !== undefined && most !== undefined && least >= most
          ? [
              at(entry, index, [field, place, 'most-c'], {
                found: `${most}, which is not above least-c, ${least}`,
                write: 'the smaller at least-c, the larger at most-c',
              }),
            ]
          : [],
    ),
  );
}

function poorFaults(entry: ValidEntry<Treatment>, row: TreatmentRow, index: number): Diagnostic[] {
  if (row['efficacy-source'] !== undefined) return [];
  const field = row['works-poorly-with-brood']
    ? 'works-poorly-with-brood'
    : row['works-poorly-outside']
      ? 'works-poorly-outside'
      : undefined;
  return field === undefined
    ? []
    : [
        at(entry, index, [field], {
          found: 'that it works poorly, and nobody who found it',
          write: '"efficacy-source:" with a file of sources/',
        }),
      ];
}
