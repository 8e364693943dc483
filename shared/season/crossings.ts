/**
 * The days on which a curve of daily normals passes a temperature, up in spring and down in fall, in either hemisphere. `up` is the first
 * day of the run at or above the temperature that contains the warmest day. `down` is the first day after that run. The curve shows
 * normals, not weather: a single year passes weeks earlier or later, and more than once. A minimum that passes freezing is no frost date,
 * because freezes continue for about a month. Unit: that of the curve.
 */
import { monthDayAt, type MonthDay } from '../days/month-day.ts';
import { ok, err, type Result } from '../result.ts';

export type Crossings = { readonly up: MonthDay; readonly down: MonthDay };

export function crossings(daily: readonly number[], degrees: number): Result<Crossings, 'always-above' | 'never-above'> {
  const warmest = daily.indexOf(Math.max(...daily));
  if (!((daily[warmest] ?? NaN) >= degrees)) return err('never-above');
  const at = (day: number) => daily[(day + 2 * daily.length) % daily.length] ?? NaN;
  const run = (step: 1 | -1) => daily.findIndex((_, past) => at(warmest + step * (past + 1)) < degrees);
  const [before, after] = [run(-1), run(1)];
  if (before < 0 || after < 0) return err('always-above');
  return ok({ up: monthDayAt(warmest - before + 1), down: monthDayAt(warmest + after + 2) });
}
