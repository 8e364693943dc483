/*
 * Shapes of the season chart: the band between normal daily low and high, the growing sum of degree-days, and plants of the bloom
 * calendar. The numbers come from shared/season. This file only draws.
 */
import { dayOfCommonYear, newYear, type MonthDay } from '../../shared/days/month-day.ts';
import { dailyFromMonthly } from '../../shared/season/daily-curve.ts';
import { seasonSums, totalOf } from '../../shared/season/season-sum.ts';
import { spreadIn, type Climate, type Scale } from '../../shared/season/climate.ts';
import { monthLetters } from './ring.ts';
import { celsiusDifferenceToFahrenheit, celsiusToFahrenheit } from '../../shared/units/temperature.ts';

export const CURVE = { width: 342, height: 250, left: 40, right: 336, top: 24, bottom: 216 } as const;

export type SeasonCurve = {
  band: string;
  high: string;
  low: string;
  sum: string | null;
  /** Multiples of ten on the scale, with their heights. */
  lines: { y: number; words: string }[];
  months: { x: number; words: string }[];
  blooms: { x: number; y: number }[];
  total: number;
  base: number;
  spread: number | null;
};

/** The most common base in published lists: 50 F, 10 C. */
const BASE_C = 10;
const STEP_DAYS = 5;

export function seasonCurve(climate: Climate, scale: Scale, blooms: readonly MonthDay[]): SeasonCurve {
  const shown = (degreesC: number) => (scale === 'F' ? celsiusToFahrenheit(degreesC) : degreesC);
  const [lows, highs] = [climate.normalsC.minByMonth, climate.normalsC.maxByMonth].map((means) => dailyFromMonthly(means).map(shown)) as [
    number[],
    number[],
  ];
  const tens = scale === 'F' ? 20 : 10;
  const [least, most] = [Math.floor(Math.min(...lows) / tens) * tens, Math.ceil(Math.max(...highs) / tens) * tens];
  const height = (degrees: number) => round(CURVE.bottom - ((degrees - least) / (most - least)) * (CURVE.bottom - CURVE.top));
  const [low, high] = [lineOf(lows, height), lineOf(highs, height)];
  const sums = climate.spread && seasonSums(climate.normalsC, { method: 'simple', base: BASE_C }, climate.spread.degreesC, newYear);
  const total = sums ? totalOf(sums) : 0;
  const means = lows.map((value, day) => (value + highs[day]!) / 2);
  return {
    band: `M${high}L${lineOf(lows, height, true)}Z`,
    high: `M${high}`,
    low: `M${low}`,
    sum: sums && `M${lineOf([...sums.sums], (value) => round(CURVE.bottom - (value / total) * (CURVE.bottom - CURVE.top)))}`,
    lines: Array.from({ length: (most - least) / tens + 1 }, (_, index) => ({
      y: height(least + index * tens),
      words: String(least + index * tens),
    })),
    months: monthLetters().map((words, month) => ({ x: across(month * 30.4 + 15), words })),
    blooms: blooms.map((day) => ({ x: across(dayOfCommonYear(day) - 0.5), y: height(means[dayOfCommonYear(day) - 1]!) })),
    total: scale === 'F' ? celsiusDifferenceToFahrenheit(total) : total,
    base: shown(BASE_C),
    spread: climate.spread && spreadIn(scale, climate.spread),
  };
}

const round = (value: number): number => Math.round(value * 10) / 10;
const across = (day: number): number => round(CURVE.left + (day / 365) * (CURVE.right - CURVE.left));

/** Every fifth day and the last, forward or backward. */
function lineOf(values: readonly number[], height: (value: number) => number, backwards = false): string {
  const days = values.flatMap((_, day) => (day % STEP_DAYS === 0 || day === values.length - 1 ? [day] : []));
  if (backwards) days.reverse();
  return days.map((day) => `${across(day + 0.5)} ${height(values[day]!)}`).join('L');
}
