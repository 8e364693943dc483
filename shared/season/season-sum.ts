/**
 * Degree-days of a normal year from twelve monthly normals, and the day on which a sum is reached. It computes the expected sum, not the
 * mean of the years' dates; for small sums the two lie some days apart. A date comes as a window of a doubt in days either way. The doubt
 * is passed in, or comes from the club's own observed years. Parts: daily-curve.ts, spread.ts. Units: one temperature scale; days;
 * `MM-DD`.
 */
import { addMonthDays, dayOfCommonYear, newYear, type MonthDay } from '../days/month-day.ts';
import { bisect } from '../numbers/bisect.ts';
import { ok, err, type Result } from '../result.ts';
import { dailyFromMonthly } from './daily-curve.ts';
import type { DegreeDayRule } from './degree-day.ts';
import { meanDegreeDay } from './spread.ts';

export type Normals = { readonly maxByMonth: readonly number[]; readonly minByMonth: readonly number[] };

/** 365 sums. Each includes the degree-days of its own day. The first is the day `from`. */
export type SeasonSums = { readonly from: MonthDay; readonly sums: readonly number[] };

export function seasonSums(normals: Normals, rule: DegreeDayRule, spread: number, from: MonthDay): SeasonSums {
  const maxima = dailyFromMonthly(normals.maxByMonth);
  const minima = dailyFromMonthly(normals.minByMonth);
  const ofDay = meanDegreeDay(rule, spread);
  const first = dayOfCommonYear(from) - 1;
  let sum = 0;
  const sums = maxima.map((_, past) => {
    const [max, min] = [maxima[(first + past) % 365] ?? 0, minima[(first + past) % 365] ?? 0];
    sum += ofDay({ max: Math.max(max, min), min: Math.min(max, min) });
    return sum;
  });
  return { from, sums };
}

export function totalOf({ sums }: SeasonSums): number {
  return sums.at(-1) ?? 0;
}

/** The sum at the end of a day. */
export function sumOn({ from, sums }: SeasonSums, day: MonthDay): number {
  return sums[(dayOfCommonYear(day) - dayOfCommonYear(from) + 365) % 365] ?? 0;
}

export type SumReached = { readonly expected: MonthDay; readonly earliest: MonthDay; readonly latest: MonthDay };

export function dateReached(season: SeasonSums, sum: number, doubtDays: number): Result<SumReached, 'no-sum' | 'not-reached'> {
  if (!(sum > 0)) return err('no-sum');
  const past = season.sums.findIndex((reached) => reached >= sum);
  if (past < 0) return err('not-reached');
  const expected = addMonthDays(season.from, past);
  const doubt = Math.ceil(doubtDays);
  return ok({ expected, earliest: addMonthDays(expected, -doubt), latest: addMonthDays(expected, doubt) });
}

/** The spread of the club's own observed dates where there are enough, or the doubt that is usual for such a sum. */
export function doubtInDays(
  sum: number,
  observedDaysOfYear: readonly number[],
  usual: { fewestYears: number; days: number; daysForSmallSums: number; smallSumsUnder: number },
): number {
  const years = observedDaysOfYear.length;
  if (years < Math.max(2, usual.fewestYears)) return sum < usual.smallSumsUnder ? usual.daysForSmallSums : usual.days;
  const mean = observedDaysOfYear.reduce((total, day) => total + day, 0) / years;
  return Math.sqrt(observedDaysOfYear.reduce((total, day) => total + (day - mean) ** 2, 0) / (years - 1));
}

const widestSpread = 30;

/** The spread at which the normals give a published sum of a whole year. */
export function spreadForYear(normals: Normals, rule: DegreeDayRule, publishedSum: number): Result<number, 'published-sum-does-not-fit'> {
  const excess = (spread: number) => totalOf(seasonSums(normals, rule, spread, newYear)) - publishedSum;
  if (excess(0) > 0 || excess(widestSpread) < 0) return err('published-sum-does-not-fit');
  return ok(bisect(excess, 0, widestSpread));
}
