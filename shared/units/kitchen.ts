/**
 * Amounts as a person measures them: "about 7 cups", "about 4½ lb". The printed amount is never more than `kitchenShare` away from the exact
 * one, and the exact one is printed beside it. US measures: a gallon has 4 quarts or 16 cups, a cup 16 tablespoons, a pound 16 ounces (NIST
 * Handbook 44, appendix C). Litres and kilograms are rounded to what a jug and a kitchen scale show, which is common practice, no source.
 */
import { formatNumber, withoutZeros } from '../numbers/show-number.ts';
import { about, aboutBetween, amountWords, halfGallon, oneOf, type KitchenUnit } from './kitchen.en.ts';
import { kilogramsToPounds } from './weight.ts';
import { litresToUsCups } from './volume.ts';

/** The printed amount lies within this share of the exact one. */
export const kitchenShare = 0.06;

type System = 'us' | 'metric';
/** `each` is the size in the smallest unit of the table; the printed number is a multiple of one of the steps, the coarsest that is near enough. */
type Unit = {
  readonly unit: KitchenUnit | 'half-gallon';
  readonly each: number;
  readonly from: number;
  readonly steps: readonly number[];
};

/** In cups. */
const US_VOLUMES: readonly Unit[] = [
  { unit: 'gallon', each: 16, from: 0.97, steps: [1, 0.5, 0.25] },
  { unit: 'half-gallon', each: 8, from: 0.97, steps: [] },
  { unit: 'quart', each: 4, from: 0.97, steps: [1, 0.5] },
  { unit: 'cup', each: 1, from: 0.24, steps: [1, 0.5, 0.25] },
  { unit: 'tablespoon', each: 1 / 16, from: 0.47, steps: [1, 0.5, 0.25] },
];
/** In pounds. */
const US_WEIGHTS: readonly Unit[] = [
  { unit: 'lb', each: 1, from: 0.97, steps: [1, 0.5, 0.25] },
  { unit: 'oz', each: 1 / 16, from: 0.47, steps: [1, 0.5, 0.25] },
];
/** In litres. */
const METRIC_VOLUMES: readonly Unit[] = [
  { unit: 'L', each: 1, from: 0.97, steps: [1, 0.5, 0.1] },
  { unit: 'mL', each: 0.001, from: 4.8, steps: [100, 50, 10, 5] },
];
/** In kilograms. */
const METRIC_WEIGHTS: readonly Unit[] = [
  { unit: 'kg', each: 1, from: 0.97, steps: [1, 0.5, 0.1] },
  { unit: 'g', each: 0.001, from: 4.8, steps: [100, 50, 10, 5] },
];

/** `value` in the unit. Half a gallon has a name of its own. */
type Amount = { readonly value: number; readonly unit: Unit['unit'] };

/** "about 7 cups", or undefined for nothing and for less than a person measures. */
export const kitchenVolume = (litres: number, system: System): string | undefined => aboutWords(volumeOf(litres, system));

export const kitchenWeight = (kg: number, system: System): string | undefined =>
  aboutWords(system === 'us' ? measured(kilogramsToPounds(kg), US_WEIGHTS) : measured(kg, METRIC_WEIGHTS));

/** Cups of something that is weighed, such as sugar. */
export const kitchenCups = (cups: number): string | undefined =>
  aboutWords(
    measured(
      cups,
      US_VOLUMES.filter(({ each }) => each <= 1),
    ),
  );

/** "about 1½ to 2 gallons": the unit is named once where both ends have the same. */
export function kitchenVolumes(least: number, most: number, system: System): string | undefined {
  const [low, high] = [volumeOf(least, system), volumeOf(most, system)];
  if (!low || !high) return undefined;
  if (low.unit !== high.unit) return aboutBetween(words(low), words(high));
  if (low.value === high.value) return aboutWords(low);
  return aboutBetween(shown(low.value), amountWords(shown(high.value), high.unit as KitchenUnit, high.value > 1));
}

const volumeOf = (litres: number, system: System): Amount | undefined =>
  system === 'us' ? measured(litresToUsCups(litres), US_VOLUMES) : measured(litres, METRIC_VOLUMES);

function measured(amount: number, units: readonly Unit[]): Amount | undefined {
  if (!(amount > 0)) return undefined;
  for (const { unit, each, from, steps } of units) {
    const count = amount / each;
    if (count < from) continue;
    const tried = steps.length === 0 ? [1] : steps.map((step) => Math.round(count / step) * step);
    const value = tried.find((near) => near > 0 && Math.abs(near - count) <= kitchenShare * (steps.length === 0 ? 1 : count));
    if (value !== undefined) return { value, unit };
  }
  return undefined;
}

const aboutWords = (amount: Amount | undefined): string | undefined => amount && about(words(amount));

function words({ value, unit }: Amount): string {
  if (unit === 'half-gallon') return halfGallon;
  return shown(value) === '1' ? oneOf(unit) : amountWords(shown(value), unit, value > 1);
}

function shown(value: number): string {
  const whole = Math.floor(value + 1e-9);
  const part = { 0.25: '¼', 0.5: '½', 0.75: '¾' }[Number((value - whole).toFixed(2))];
  if (part) return `${whole === 0 ? '' : whole}${part}`;
  return withoutZeros(formatNumber(value, { places: 1 }));
}
