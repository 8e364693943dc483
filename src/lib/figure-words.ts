/*
 * Formats a figure: number and unit in the club's system, the other system in brackets, ranges with "to". This file converts units only.
 * lib/figures chooses the row and its source.
 */
import * as text from './figure-words.en.ts';
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

/** Two units for one quantity, and the conversion from the first to the second. */
type Pair = { us: [Unit, string]; metric: [Unit, string]; toMetric: (us: number) => number; toUs: (metric: number) => number };

const PAIRS: readonly Pair[] = [
  { us: ['F', '°F'], metric: ['C', '°C'], toMetric: fahrenheitToCelsius, toUs: celsiusToFahrenheit },
  {
    us: ['F-difference', '°F'],
    metric: ['C-difference', '°C'],
    toMetric: fahrenheitDifferenceToCelsius,
    toUs: celsiusDifferenceToFahrenheit,
  },
  { us: ['lb', 'lb'], metric: ['kg', 'kg'], toMetric: poundsToKilograms, toUs: kilogramsToPounds },
  {
    us: ['oz', 'oz'],
    metric: ['g', 'g'],
    toMetric: (oz) => kilogramsToGrams(ouncesToKilograms(oz)),
    toUs: (g) => kilogramsToOunces(gramsToKilograms(g)),
  },
  { us: ['us-gal', text.volumes.gallon], metric: ['L', 'L'], toMetric: usGallonsToLitres, toUs: litresToUsGallons },
  { us: ['us-qt', text.volumes.quart], metric: ['L', 'L'], toMetric: usQuartsToLitres, toUs: litresToUsQuarts },
  {
    us: ['us-cup', text.volumes.cup],
    metric: ['mL', 'mL'],
    toMetric: (cups) => litresToMillilitres(usCupsToLitres(cups)),
    toUs: (mL) => litresToUsCups(millilitresToLitres(mL)),
  },
  { us: ['ft', text.feet], metric: ['m', 'm'], toMetric: feetToMetres, toUs: metresToFeet },
  { us: ['in', text.inches], metric: ['mm', 'mm'], toMetric: inchesToMillimetres, toUs: millimetresToInches },
  {
    us: ['in', text.inches],
    metric: ['cm', 'cm'],
    toMetric: (inches) => inchesToMillimetres(inches) / 10,
    toUs: (cm) => millimetresToInches(cm * 10),
  },
];

const ALONE: Partial<Record<Unit, readonly [one: string, many: string]>> = text.alone;

/** "57 °F (14 °C)", "55 to 64 %", "3 per 100 bees". */
export function figureWords(row: Pick<FigureRow, 'value' | 'least' | 'most'>, unit: Unit, first: System): { main: string; other: string } {
  const ends = row.value === undefined ? [row.least!, row.most!] : [row.value];
  const pair = PAIRS.find((each) => each.us[0] === unit || each.metric[0] === unit);
  if (!pair) return { main: withWord(ends, ALONE[unit] ?? [unit, unit]), other: '' };
  const given: System = pair.us[0] === unit ? 'us' : 'metric';
  const shown = { [given]: ends.map(plain), [given === 'us' ? 'metric' : 'us']: ends.map((end) => converted(end, pair, given)) } as Record<
    System,
    string[]
  >;
  const words = (system: System): string => `${text.range(shown[system])}\u00a0${pair[system][1]}`;
  return { main: words(first), other: words(first === 'us' ? 'metric' : 'us') };
}

function converted(value: number, pair: Pair, given: System): string {
  const out = given === 'us' ? pair.toMetric(value) : pair.toUs(value);
  if (pair.us[0] === 'F') return formatNumber(out, { places: Number.isInteger(value) ? 0 : 1 });
  return withoutZeros(formatNumber(out, Math.abs(out) >= 100 ? { places: 0 } : { digits: 2 }));
}

const plain = (value: number): string => HALVES.get(value) ?? withoutZeros(formatNumber(value, { digits: 6 }));
const HALVES = new Map([
  [0.25, '¼'],
  [0.5, '½'],
  [0.75, '¾'],
]);

function withWord(ends: number[], [one, many]: readonly [string, string]): string {
  const word = ends.length === 1 && ends[0] === 1 ? one : many;
  return `${text.range(ends.map(plain))}${word ? `\u00a0${word}` : ''}`;
}
