/* Small weights as the weight check shows them. Numbers are rounded only here, and never across the limit. */
import { formatAgainst, formatNumber, withoutZeros } from '../../../shared/numbers/show-number.ts';
import type { WeightTest } from '../../../shared/packages/weight-check.ts';
import { three, type System } from '../form/measures.ts';
import { shownIn, smallWeight } from '../form/units.ts';
import type { Judgement } from './model.ts';

/** The level of gravity of each verdict. */
export const verdictSteps: Readonly<Record<WeightTest, string>> = { passes: 'settled', fails: 'act', 'too-few': 'watch' };

export const whole = (value: number): string => formatNumber(value, { places: 0 });
export const places = (value: number, decimals: number): string => withoutZeros(formatNumber(value, { places: decimals }));
/** In the form's unit, as a sum has it. */
export const trimmed = (grams: number, units: System): string => places(smallWeight.boxes[units].fromFixed(grams), units === 'us' ? 4 : 3);
const inOunces = smallWeight.boxes.us.fromFixed;
const ounces = (grams: number): string => `${three(inOunces(grams))} oz`;
const tenths = (grams: number): string => places(grams, 1);

/** A small weight, the form's own unit first. */
export function weightWords(grams: number, units: System): string {
  const metric = `${tenths(grams)} g`;
  return units === 'us' ? `${ounces(grams)} (${metric})` : `${metric} (${ounces(grams)})`;
}

/** A label or a weight as a box shows it, with its unit. */
export function plain(grams: number, units: System): string {
  return `${shownIn(smallWeight, grams, units)} ${units === 'us' ? 'oz' : 'g'}`;
}

/** How far the mean is from the label, in both units, the form's own first. Undefined where it is on the label. */
export function meanAway(
  { meanErrorG, limitG }: Judgement['check'],
  units: System,
): { first: string; other: string; isUnder: boolean } | undefined {
  const away = Math.abs(meanErrorG);
  if (away < 1e-9) return undefined;
  const isUnder = meanErrorG < 0;
  const grams = `${isUnder && limitG ? withoutZeros(formatAgainst(away, limitG, 1)) : tenths(away)} g`;
  if (units === 'metric') return { first: grams, other: ounces(away), isUnder };
  const first = `${isUnder && limitG ? formatAgainst(inOunces(away), inOunces(limitG), 3) : three(inOunces(away))} oz`;
  return { first, other: grams, isUnder };
}
