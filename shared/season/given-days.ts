/**
 * Sum of degree-days over days that a member enters with their highest and lowest temperature. Methods: degree-day.ts. Unit: one
 * temperature scale; the sum is in degree-days of that scale.
 */
import { ok, err, type Result, type Refused } from '../result.ts';
import type { DayTemperatures, DegreeDayRule } from './degree-day.ts';
import { meanDegreeDay } from './spread.ts';

export type GivenDaysSum = { readonly total: number; readonly eachDay: readonly number[] };

export type RuleReason = 'impossible-base' | 'no-cap' | 'cap-not-over-base' | 'impossible-spread';
export type GivenDaysReason = RuleReason | 'no-days' | 'max-under-min' | 'impossible-temperature';

/** No weather goes beyond this in either scale. */
const furthestDegrees = 150;
const widestSpread = 50;

export function sumGivenDays(days: readonly DayTemperatures[], rule: DegreeDayRule, spread = 0): Result<GivenDaysSum, GivenDaysReason> {
  const wrong = checkRule(rule, spread);
  if (wrong) return wrong;
  if (days.length === 0) return err('no-days');
  for (const [index, { max, min }] of days.entries()) {
    if (!isWeather(max) || !isWeather(min)) return err('impossible-temperature', { row: index + 1 });
    if (max < min) return err('max-under-min', { row: index + 1 });
  }
  const eachDay = days.map(meanDegreeDay(rule, spread));
  return ok({ total: eachDay.reduce((sum, one) => sum + one, 0), eachDay });
}

export function checkRule({ method, base, cap }: DegreeDayRule, spread: number): Refused<RuleReason> | undefined {
  if (!isWeather(base)) return err('impossible-base');
  if (method === 'modified' && cap === undefined) return err('no-cap');
  if (cap !== undefined && !(cap > base)) return err('cap-not-over-base');
  return spread >= 0 && spread <= widestSpread ? undefined : err('impossible-spread');
}

function isWeather(degrees: number): boolean {
  return Math.abs(degrees) <= furthestDegrees;
}
