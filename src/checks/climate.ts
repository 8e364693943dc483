/*
 * Checks climate values: normals in order and scale, hemisphere, freezes around summer, a published sum that these normals can reach,
 * existing sources.
 */
import { dayOfCommonYear, writtenMonthDay } from '../../shared/days/month-day.ts';
import { monthName } from '../../shared/days/month-names.ts';
import { publishedSumFits } from '../../shared/season/climate.ts';
import type { Diagnostic } from '../source/diagnostic.ts';
import { climateGiven, dayOfYear } from '../schemas/as-season.ts';
import type { ClimateFields } from '../schemas/climate.ts';
import type { Club } from '../schemas/club.ts';
import type { ValidEntries, ValidEntry } from './fields.ts';
import { notIn } from './suggestions.ts';
import { atField } from './place.ts';

/** A climate of the club, of a district or of a station, with its position. */
export type Written = { entry: ValidEntry; path: PropertyKey[]; climate: ClimateFields; hemisphere: Club['hemisphere'] };

export function climateFaults(club: ValidEntries): Diagnostic[] {
  const entry = club.club;
  if (!entry) return [];
  const { hemisphere, districts, climate } = entry.data;
  const all = [
    { path: ['climate'], climate },
    ...districts.map((district, index) => ({ path: ['districts', index, 'climate'], climate: district.climate })),
  ];
  const first = (['climate', 'observed'] as const).flatMap((field) =>
    districts[0]?.[field]
      ? [
          atField(entry, ['districts', 0, field], {
            rule: 'climate',
            field: `districts 1, ${field}`,
            found: `"${field}:" of the main district under districts`,
            write: `it as a field of the club, at the left edge: "${field}:"`,
          }),
        ]
      : [],
  );
  return [
    ...first,
    ...all.flatMap(({ path, climate: fields }) => (fields ? faultsOf({ entry, path, climate: fields, hemisphere }, club) : [])),
  ];
}

/** Every fault of one climate. */
export function faultsOf(written: Written, club: ValidEntries): Diagnostic[] {
  const months = [...rangeFaults(written), ...orderFaults(written)];
  return [
    ...(months.length > 0 ? months : [...halfFaults(written), ...freezeFaults(written), ...sumFaults(written)]),
    ...latitudeFaults(written),
    ...sourceFaults(written, club),
  ];
}

const at = ({ entry, path }: Written, field: PropertyKey[], found: string, write: string): Diagnostic =>
  atField(entry, [...path, ...field], { rule: 'climate', field: named([...path, ...field]), found, write });

/** `districts 2, climate, minima 3`, counted from 1. */
const named = (path: readonly PropertyKey[]): string =>
  path.map((key, index) => (typeof key === 'number' ? ` ${key + 1}` : `${index === 0 ? '' : ', '}${String(key)}`)).join('');

/** The coldest and hottest monthly normals on land, with a margin. */
const COLDEST = { F: -70, C: -57 };
const HOTTEST = { F: 122, C: 50 };

function rangeFaults(written: Written): Diagnostic[] {
  const { scale, maxima, minima } = written.climate;
  const wrong = (
    [
      ['minima', minima],
      ['maxima', maxima],
    ] as const
  ).flatMap(([name, values]) =>
    values.flatMap((value, month) =>
      value >= COLDEST[scale] && value <= HOTTEST[scale]
        ? []
        : [
            at(
              written,
              [name, month],
              `${value} ${scale} for ${monthName(month + 1)}, which no month has anywhere`,
              scale === 'C' ? 'normals in C, or "scale: F"' : 'the normal of that month in F',
            ),
          ],
    ),
  );
  if (wrong.length > 3)
    return [
      at(
        written,
        ['scale'],
        `${scale}, with ${wrong.length} normals that no month has anywhere`,
        scale === 'C' ? '"F", or the normals in C' : 'the normals in F',
      ),
    ];
  if (wrong.length > 0 || scale === 'C' || Math.max(...maxima) >= 45) return wrong;
  return [at(written, ['scale'], `F, with a warmest month of ${Math.max(...maxima)}`, '"C", or the normals in F')];
}

function orderFaults(written: Written): Diagnostic[] {
  const { maxima, minima } = written.climate;
  return minima.flatMap((min, month) =>
    min <= maxima[month]!
      ? []
      : [
          at(
            written,
            ['minima', month],
            `${min} for ${monthName(month + 1)}, over its high of ${maxima[month]}`,
            'a daily low that is under the daily high',
          ),
        ],
  );
}

function latitudeFaults(written: Written): Diagnostic[] {
  const { latitude } = written.climate;
  if (latitude === 0 || latitude > 0 === (written.hemisphere === 'north')) return [];
  return [
    at(
      written,
      ['latitude'],
      `${latitude}, while hemisphere is ${written.hemisphere}`,
      written.hemisphere === 'north' ? 'degrees without a minus' : 'degrees with a minus, such as -36.8',
    ),
  ];
}

const warmestMonth = ({ maxima }: ClimateFields): number => maxima.indexOf(Math.max(...maxima));

/** Near the equator any month may be the warmest. */
function halfFaults(written: Written): Diagnostic[] {
  const { latitude } = written.climate;
  const warmest = warmestMonth(written.climate);
  const north = warmest >= 3 && warmest <= 8;
  if (Math.abs(latitude) < 20 || north === (written.hemisphere === 'north')) return [];
  return [
    at(
      written,
      ['maxima'],
      `${monthName(warmest + 1)} as the warmest month in the ${written.hemisphere}`,
      'twelve numbers that begin with January, or the other hemisphere',
    ),
  ];
}

function freezeFaults(written: Written): Diagnostic[] {
  const { freezes } = written.climate;
  if (!freezes) return [];
  const [last, first] = [dayOfYear(freezes.last), dayOfYear(freezes.first)];
  const unread = (
    [
      ['last', last, freezes.last],
      ['first', first, freezes.first],
    ] as const
  ).flatMap(([name, day, text]) => (day ? [] : [at(written, ['freezes', name], `"${text}"`, 'one day such as 10 May')]));
  if (!last || !first) return unread;
  const middle = Math.round(warmestMonth(written.climate) * 30.4 + 15);
  const past = (day: number): number => (day - dayOfCommonYear(last) + 365) % 365;
  if (past(middle) < past(dayOfCommonYear(first))) return [];
  return [
    at(
      written,
      ['freezes', 'first'],
      `${writtenMonthDay(first)}, after a last freeze of ${writtenMonthDay(last)}, with no summer between them`,
      'as last the freeze of spring, as first the one of fall',
    ),
  ];
}

function sumFaults(written: Written): Diagnostic[] {
  const published = written.climate['degree-days'];
  if (!published) return [];
  if (published.method === 'modified' && published.cap === undefined)
    return [at(written, ['degree-days', 'method'], '"modified" without a cap', 'a line "cap:" as well')];
  if (published.cap !== undefined && published.cap <= published.base)
    return [at(written, ['degree-days', 'cap'], `${published.cap}, which is not over the base of ${published.base}`, 'a higher cap')];
  const fits = publishedSumFits(climateGiven(written.climate));
  if (fits.ok) return [];
  const [found, write] =
    fits.reason === 'too-small'
      ? [`${published.sum}, which the normals alone already pass`, 'a sum, base and method of this place and these years']
      : [
          `${published.sum}, which these normals cannot reach however much days differ`,
          'a sum, base and method of this place and these years',
        ];
  return [at(written, ['degree-days', 'sum'], found, write)];
}

function sourceFaults(written: Written, club: ValidEntries): Diagnostic[] {
  const { climate } = written;
  const named = [
    [['source'], climate.source],
    ...(['degree-days', 'spread', 'freezes'] as const).map((part) => [[part, 'source'], climate[part]?.source] as const),
  ] as const;
  return named.flatMap(([path, source]) => {
    if (source === undefined || club.ids.sources.has(source)) return [];
    const { found, write } = notIn(club, 'sources', source);
    return [at(written, [...path], found, write)];
  });
}
