/**
 * Mean degree-days of a day whose temperatures are normals. A warm day in a cold week counts, and a cold day never counts below 0, so a
 * smooth curve of normals alone adds up too little. `spread` is the standard deviation of one calendar day's mean about its normal.
 * simple, in closed form: s (density(z) + z share(z)), z = (mean - base) / s. Other methods: the mean over shifts of the whole day, in
 * steps of a fifth of the spread out to four times it, weighted by probability. Idea: H. C. S. Thom 1954, Mon. Wea. Rev. 82:1-6. Holds
 * for the mean of many years, not for the days of one. Unit: one temperature scale; the spread is in its degrees.
 */
import { normalDensity, normalShareBelow } from '../numbers/normal.ts';
import { degreeDay, type DayTemperatures, type DegreeDayRule } from './degree-day.ts';

const steps = Array.from({ length: 41 }, (_, index) => (index - 20) / 5);

/** Returns a function of one day, so that the shifts are computed once. With spread 0 it is the plain degree-day. */
export function meanDegreeDay(rule: DegreeDayRule, spread: number): (day: DayTemperatures) => number {
  if (!(spread >= 0)) throw new RangeError(`meanDegreeDay: needs a spread of 0 or more, got ${spread}`);
  if (spread === 0) return (day) => degreeDay(rule, day);
  if (rule.method === 'simple') return (day) => meanAbove((day.max + day.min) / 2 - rule.base, spread);
  const shifts = steps.map((z) => ({ degrees: z * spread, weight: normalDensity(z) }));
  const whole = shifts.reduce((sum, { weight }) => sum + weight, 0);
  return ({ max, min }) =>
    shifts.reduce((sum, { degrees, weight }) => sum + weight * degreeDay(rule, { max: max + degrees, min: min + degrees }), 0) / whole;
}

function meanAbove(excess: number, spread: number): number {
  const z = excess / spread;
  if (Math.abs(z) > 8) return Math.max(0, excess);
  return Math.max(0, spread * (normalDensity(z) + z * normalShareBelow(z)));
}
