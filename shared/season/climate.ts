/**
 * Climate of a place: twelve monthly normals of the daily minimum and maximum, the spread of daily means between years, and published
 * freeze dates. The spread comes from the first available of: a fit to one published sum of degree-days of the place; a value of the
 * region; a fit to members' observations. Without a spread a sum counts too few degree-days and dates come up to 35 days late, so no date
 * is computed. Units: C and degree-days of C.
 */
import { newYear, type MonthDay } from '../days/month-day.ts';
import { bisect } from '../numbers/bisect.ts';
import { ok, err, type Result } from '../result.ts';
import { celsiusDifferenceToFahrenheit, fahrenheitDifferenceToCelsius, fahrenheitToCelsius } from '../units/temperature.ts';
import type { DegreeDayRule } from './degree-day.ts';
import { seasonSums, spreadForYear, sumOn, type Normals } from './season-sum.ts';

export type Scale = 'F' | 'C';

/** A sum of degree-days with its method, base and first day. */
export type Sum = { readonly sum: number; readonly scale: Scale; readonly rule: DegreeDayRule; readonly from: MonthDay };

export type Spread = { readonly degreesC: number; readonly from: 'published-sum' | 'region' | 'observed' };

export type Climate = {
  readonly normalsC: Normals;
  readonly spread: Spread | null;
  /** The published days of the last and first freeze with an even chance. */
  readonly freezes: { readonly last: MonthDay; readonly first: MonthDay } | null;
};

export type ClimateGiven = {
  readonly scale: Scale;
  readonly normals: Normals;
  readonly publishedSum?: { readonly sum: number; readonly rule: DegreeDayRule } | undefined;
  readonly regionSpread?: number | undefined;
  /** Sums, and the days on which members saw them reached. */
  readonly seen?: readonly { readonly sum: Sum; readonly day: MonthDay }[] | undefined;
  readonly freezes?: { readonly last: MonthDay; readonly first: MonthDay } | undefined;
};

export function climateOf(given: ClimateGiven): Climate {
  const inC = (degrees: number) => (given.scale === 'F' ? fahrenheitToCelsius(degrees) : degrees);
  const normalsC = { minByMonth: given.normals.minByMonth.map(inC), maxByMonth: given.normals.maxByMonth.map(inC) };
  return { normalsC, spread: spreadOf(given, normalsC), freezes: given.freezes ?? null };
}

function spreadOf({ scale, normals, publishedSum, regionSpread, seen = [] }: ClimateGiven, normalsC: Normals): Spread | null {
  const inC = (degrees: number) => (scale === 'F' ? fahrenheitDifferenceToCelsius(degrees) : degrees);
  const fitted = publishedSum && spreadForYear(normals, publishedSum.rule, publishedSum.sum);
  if (fitted?.ok) return { degreesC: inC(fitted.value), from: 'published-sum' };
  if (regionSpread !== undefined) return { degreesC: inC(regionSpread), from: 'region' };
  const fits = seen.flatMap(({ sum, day }) => spreadForDay(normalsC, inCelsius(sum), day) ?? []).sort((a, b) => a - b);
  const middle = fits[Math.floor((fits.length - 1) / 2)];
  return middle === undefined ? null : { degreesC: middle, from: 'observed' };
}

const widestSpreadC = 17;

/** The spread at which the sum is reached on the day, or null where no spread does it. */
export function spreadForDay(normals: Normals, { sum, rule, from }: Omit<Sum, 'scale'>, day: MonthDay): number | null {
  const excess = (spread: number) => sumOn(seasonSums(normals, rule, spread, from), day) - sum;
  return excess(0) > 0 || excess(widestSpreadC) < 0 ? null : bisect(excess, 0, widestSpreadC);
}

/**
 * Converts a sum to degrees C: the same days count, each with fewer degrees. Correct for any method, as long as base and cap are the same
 * temperatures.
 */
export function inCelsius({ sum, scale, rule, from }: Sum): Omit<Sum, 'scale'> {
  if (scale === 'C') return { sum, rule, from };
  const { method, base, cap } = rule;
  return {
    sum: fahrenheitDifferenceToCelsius(sum),
    rule: { method, base: fahrenheitToCelsius(base), ...(cap === undefined ? {} : { cap: fahrenheitToCelsius(cap) }) },
    from,
  };
}

export function spreadIn(scale: Scale, spread: Spread): number {
  return scale === 'F' ? celsiusDifferenceToFahrenheit(spread.degreesC) : spread.degreesC;
}

/** A published sum below that of the normals alone, or far above it, belongs to another place or another method. */
export function publishedSumFits(given: ClimateGiven): Result<true, 'too-small' | 'too-large'> {
  if (!given.publishedSum) return ok(true);
  const { sum, rule } = given.publishedSum;
  const alone = seasonSums(given.normals, rule, 0, newYear).sums.at(-1) ?? 0;
  if (alone > sum) return err('too-small');
  return spreadForYear(given.normals, rule, sum).ok ? ok(true) : err('too-large');
}
