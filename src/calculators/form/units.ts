/*
 * Measures of a form and their units: a fixed unit in the address, one unit for a US club and one for a metric club. Also the words of
 * every unit that may be typed after a number.
 */
import { plainDecimal, withMarkHere } from '../../../shared/numbers/show-number.ts';
import { celsiusToFahrenheit, fahrenheitToCelsius } from '../../../shared/units/temperature.ts';
import { unitWords } from '../../../shared/units/unit-names.ts';
import * as volume from '../../../shared/units/volume.ts';
import * as weight from '../../../shared/units/weight.ts';
import type { System } from './measures.ts';

type Sum = (value: number) => number;
/** Each unit with its words, the conversion to the first unit of its table, and the inverse. */
type Table = Readonly<Record<string, readonly [words: readonly string[], to: Sum, back: Sum]>>;

export type Measure = {
  /** The word of the unit in the address. */
  readonly fixed: string;
  /** The most decimals of a number that counts as typed in the unit of its box. */
  readonly places: number;
  /** By typed word, in lower case: the conversion to the fixed unit. */
  readonly typed: Readonly<Record<string, Sum>>;
  /** Converts between the fixed unit and the unit of the box. */
  readonly boxes: Readonly<Record<System, { readonly toFixed: Sum; readonly fromFixed: Sum }>>;
};

const same: Sum = (value) => value;
/** Limits the digits in a box, so that 3 lb is never 3.0000000000000004 lb. */
const held: Sum = (value) => Number(value.toPrecision(15));

const weights: Table = {
  kg: [unitWords.kg, same, same],
  g: [unitWords.g, weight.gramsToKilograms, weight.kilogramsToGrams],
  lb: [unitWords.lb, weight.poundsToKilograms, weight.kilogramsToPounds],
  oz: [unitWords.oz, weight.ouncesToKilograms, weight.kilogramsToOunces],
};
const volumes: Table = {
  L: [unitWords.L, same, same],
  mL: [unitWords.mL, volume.millilitresToLitres, volume.litresToMillilitres],
  'us-gal': [unitWords['us-gal'], volume.usGallonsToLitres, volume.litresToUsGallons],
  'us-qt': [unitWords['us-qt'], volume.usQuartsToLitres, volume.litresToUsQuarts],
  'us-cup': [unitWords['us-cup'], volume.usCupsToLitres, volume.litresToUsCups],
  'imp-gal': [unitWords['imp-gal'], volume.imperialGallonsToLitres, volume.litresToImperialGallons],
  'imp-pt': [unitWords['imp-pt'], volume.imperialPintsToLitres, volume.litresToImperialPints],
};
const temperatures: Table = {
  C: [unitWords.C, same, same],
  F: [unitWords.F, fahrenheitToCelsius, celsiusToFahrenheit],
};
const inPound: Table = {
  'per lb': [['per lb', 'per pound', 'a pound', 'por lb', 'por libra'], same, same],
  'per kg': [
    ['per kg', 'per kilogram', 'a kilogram', 'por kg', 'por kilo', 'por kilogramo'],
    weight.poundsToKilograms,
    weight.kilogramsToPounds,
  ],
};

/** A weight at the hive: pounds or kilograms, kilograms in the address. */
export const hiveWeight = measure(weights, 'kg', { us: 'lb', metric: 'kg' });
/** The same with pounds in the address. */
export const packageWeight = measure(weights, 'lb', { us: 'lb', metric: 'kg' });
/** A weight on a kitchen scale: ounces or grams, grams in the address. */
export const smallWeight = measure(weights, 'g', { us: 'oz', metric: 'g' });
/** The content of a feeder can: US quarts or litres, litres in the address. */
export const canVolume = measure(volumes, 'L', { us: 'us-qt', metric: 'L' });
/** A temperature: Fahrenheit or Celsius, Celsius in the address. A tenth of a degree Celsius is exact in Fahrenheit with two decimals. */
export const temperature = measure(temperatures, 'C', { us: 'F', metric: 'C' }, 1);
/** A number per pound or per kilogram, per pound in the address. */
export const perWeight = measure(inPound, 'per lb', { us: 'per lb', metric: 'per kg' });

function measure(table: Table, fixed: string, boxes: Readonly<Record<System, string>>, places = 4): Measure {
  const between = (from: string, to: string): Sum => (from === to ? same : (value) => held(table[to]![2](table[from]![1](value))));
  const box = (unit: string) => ({ toFixed: between(unit, fixed), fromFixed: between(fixed, unit) });
  return {
    fixed: table[fixed]![0][0]!,
    places,
    typed: Object.fromEntries(Object.entries(table).flatMap(([unit, [words]]) => words.map((word) => [word, between(unit, fixed)]))),
    boxes: { us: box(boxes.us), metric: box(boxes.metric) },
  };
}

/** The current units of a form: the club's, unless the reader chose others. */
export function systemOf(form: HTMLFormElement | null): System {
  return form?.closest<HTMLElement>('.calculator')?.dataset.units === 'us' ? 'us' : 'metric';
}

/**
 * A number as a box shows it in the given units: exact where five digits suffice, because then somebody typed it in these units. Otherwise
 * it has three significant digits. The box remembers the exact value (remembered.ts).
 */
export function shownIn({ boxes, places }: Measure, value: number, units: System): string {
  const exact = boxes[units].fromFixed(value);
  const short = Number(Number(exact.toPrecision(5)).toFixed(places));
  const isTyped = Math.abs(short - exact) <= Math.abs(exact) * 1e-9;
  return withMarkHere(boxNumber(isTyped ? short : Number(exact.toPrecision(3))));
}

/** A number with the word of its fixed unit, which any box of that measure parses to exactly that number. */
export function exactly({ fixed }: Measure, value: number): string {
  return `${boxNumber(value)} ${fixed}`;
}

/** A number that a box parses to itself, because three decimals would look like thousands. */
export function boxNumber(value: number): string {
  const plain = plainDecimal(held(value));
  return /^-?[1-9]\d{0,2}\.\d{3}$/.test(plain) ? `${plain}0` : plain;
}

/** The initial content of a box, for components/form/TextField. */
export function boxed(measured: Measure, value: number, units: System): { value: string; exact: string } {
  return { value: shownIn(measured, value, units), exact: exactly(measured, value) };
}
