/*
 * stations.csv of a book: published weather stations of its land. `new -- club` offers the nearest one, and copies its monthly normals into
 * the new club's club.yaml.
 */
import { z } from 'astro/zod';
import type { ClimateFields } from './climate.ts';
import { SCALES } from './climate.ts';
import { id, idOf, list, number, oneOf, section, words } from './fields.ts';
import { land } from './where.ts';

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'] as const;
type Month = (typeof MONTHS)[number];

const degrees = (most: number) => number(`degrees from -${most} to ${most}`).min(-most).max(most);
const perMonth = <Of extends 'low' | 'high'>(of: Of) =>
  Object.fromEntries(MONTHS.map((month) => [`${of}-${month}`, number('the normal of that month')])) as Record<
    `${Of}-${Month}`,
    z.ZodNumber
  >;
/** An empty cell is no value. */
const maybe = <T extends z.ZodType>(field: T) => z.preprocess((cell) => (cell === '' ? undefined : cell), field.optional());

const row = section({
  id: id('a short name, such as wooster'),
  name: words('the name of the station, such as "Wooster, Ohio"'),
  region: land(),
  latitude: degrees(66),
  longitude: degrees(180),
  scale: oneOf(SCALES),
  ...perMonth('low'),
  ...perMonth('high'),
  'degree-days-50': maybe(number('a sum over 0')),
  'last-freeze': maybe(words('a day such as 10 May')),
  'first-freeze': maybe(words('a day such as 10 October')),
  spread: maybe(number('degrees from 0.5 to 15').min(0.5).max(15)),
  period: words('the years of the normals, such as 1981-2010'),
  source: idOf('sources'),
});

export const stations = section({ columns: list(z.string()), rows: list(row) });

export type Station = z.infer<typeof row>;

/** The column of one of twelve monthly values. */
export const columnOf = (field: 'minima' | 'maxima', month: number): string => `${field === 'minima' ? 'low' : 'high'}-${MONTHS[month]}`;

/** The station's normals as fields of club.yaml. */
export function climateOfStation(station: Station): ClimateFields {
  const { scale, latitude, period, source, spread } = station;
  const [sum, last, first] = [station['degree-days-50'], station['last-freeze'], station['first-freeze']];
  return {
    scale,
    minima: MONTHS.map((month) => station[`low-${month}`]),
    maxima: MONTHS.map((month) => station[`high-${month}`]),
    latitude,
    period,
    source,
    ...(sum === undefined ? {} : { 'degree-days': { sum, base: 50, method: 'simple' as const, period, source } }),
    ...(spread === undefined ? {} : { spread: { sigma: spread, source } }),
    ...(last === undefined || first === undefined ? {} : { freezes: { last, first, chance: 50 as const, period, source } }),
  };
}
