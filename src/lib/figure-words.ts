/*
 * Formats a figure: number and unit in the club's system, the other system in brackets, ranges with "to". This file converts units only.
 * lib/figures chooses the row and its source.
 */
import type { Tongue } from '../../shared/country/language.ts';
import { spoken } from '../../shared/country/language-here.ts';
import * as en from './figure-words.en.ts';
import * as es from './figure-words.es.ts';
import { formatNumber, withoutZeros } from '../../shared/numbers/show-number.ts';
import { feetToMetres, inchesToMillimetres, metresToFeet, millimetresToInches } from '../../shared/units/length.ts';
import {
  celsiusDifferenceToFahrenheit,
  celsiusToFahrenheit,
  fahrenheitDifferenceToCelsius,
  fahrenheitToCelsius,
} from '../../shared/units/temperature.ts';
import {
  litresToMillilitres,
  litresToUsCups,
  litresToUsGallons,
  litresToUsQuarts,
  millilitresToLitres,
  usCupsToLitres,
  usGallonsToLitres,
  usQuartsToLitres,
} from '../../shared/units/volume.ts';
import {
  gramsToKilograms,
  kilogramsToGrams,
  kilogramsToOunces,
  kilogramsToPounds,
  ouncesToKilograms,
  poundsToKilograms,
} from '../../shared/units/weight.ts';
import type { FigureRow, UNITS } from './figures.ts';

type Unit = (typeof UNITS)[number];
type System = 'us' | 'metric';

/** Signs that are the same in every language. A unit with neither words nor a sign here is its own sign, such as kg. */
const SIGNS: Partial<Record<Unit, string>> = {
  F: '°F',
  C: '°C',
  'F-difference': '°F',
  'C-difference': '°C',
  percent: '%',
  ratio: '',
  count: '',
};

/** Two units for one quantity, and the conversion from the first to the second. */
type Pair = { us: Unit; metric: Unit; toMetric: (us: number) => number; toUs: (metric: number) => number };

const PAIRS: readonly Pair[] = [
  { us: 'F', metric: 'C', toMetric: fahrenheitToCelsius, toUs: celsiusToFahrenheit },
  { us: 'F-difference', metric: 'C-difference', toMetric: fahrenheitDifferenceToCelsius, toUs: celsiusDifferenceToFahrenheit },
  { us: 'lb', metric: 'kg', toMetric: poundsToKilograms, toUs: kilogramsToPounds },
  {
    us: 'oz',
    metric: 'g',
    toMetric: (oz) => kilogramsToGrams(ouncesToKilograms(oz)),
    toUs: (g) => kilogramsToOunces(gramsToKilograms(g)),
  },
  { us: 'us-gal', metric: 'L', toMetric: usGallonsToLitres, toUs: litresToUsGallons },
  { us: 'us-qt', metric: 'L', toMetric: usQuartsToLitres, toUs: litresToUsQuarts },
  {
    us: 'us-cup',
    metric: 'mL',
    toMetric: (cups) => litresToMillilitres(usCupsToLitres(cups)),
    toUs: (mL) => litresToUsCups(millilitresToLitres(mL)),
  },
  { us: 'ft', metric: 'm', toMetric: feetToMetres, toUs: metresToFeet },
  { us: 'in', metric: 'mm', toMetric: inchesToMillimetres, toUs: millimetresToInches },
  {
    us: 'in',
    metric: 'cm',
    toMetric: (inches) => inchesToMillimetres(inches) / 10,
    toUs: (cm) => millimetresToInches(cm * 10),
  },
];

/** "57 °F (14 °C)", "55 to 64 %", "3 per 100 bees". The words are in `tongue`, or in the club's; the marks of numbers are the club's. */
export function figureWords(
  row: Pick<FigureRow, 'value' | 'least' | 'most'>,
  unit: Unit,
  first: System,
  tongue?: Tongue,
): { main: string; other: string } {
  const text = tongue ? { en, es }[tongue] : spoken({ en, es });
  const withUnit = (ends: readonly string[], of: Unit): string => {
    const [one, many] = (text.units as Partial<Record<Unit, readonly [string, string]>>)[of] ?? [];
    const word = (ends.length === 1 && ONE_AT_MOST.has(ends[0]!) ? one : many) ?? SIGNS[of] ?? of;
    return `${text.range(ends)}${word ? `\u00a0${word}` : ''}`;
  };
  const ends = row.value === undefined ? [row.least!, row.most!] : [row.value];
  const pair = PAIRS.find((each) => each.us === unit || each.metric === unit);
  if (!pair) return { main: withUnit(ends.map(plain), unit), other: '' };
  const given: System = pair.us === unit ? 'us' : 'metric';
  const shown = { [given]: ends.map(plain), [given === 'us' ? 'metric' : 'us']: ends.map((end) => converted(end, pair, given)) } as Record<
    System,
    string[]
  >;
  const words = (system: System): string => withUnit(shown[system], pair[system]);
  return { main: words(first), other: words(first === 'us' ? 'metric' : 'us') };
}

function converted(value: number, pair: Pair, given: System): string {
  const out = given === 'us' ? pair.toMetric(value) : pair.toUs(value);
  if (pair.us === 'F') return formatNumber(out, { places: Number.isInteger(value) ? 0 : 1 });
  return withoutZeros(formatNumber(out, Math.abs(out) >= 100 ? { places: 0 } : { digits: 2 }));
}

const plain = (value: number): string => HALVES.get(value) ?? withoutZeros(formatNumber(value, { digits: 6 }));
const HALVES = new Map([
  [0.25, '¼'],
  [0.5, '½'],
  [0.75, '¾'],
]);
/** Numbers with the unit in the singular: "1 day", "½ pulgada". */
const ONE_AT_MOST = new Set(['1', ...HALVES.values()]);
