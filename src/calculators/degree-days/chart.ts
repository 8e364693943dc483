/* Chart of degree-days: the running sum by day. */
import { band } from '../form/band.ts';
import type { Drawing } from '../form/drawing.ts';
import { runningSums, sumText, type Asked, type Sums } from './model.ts';
import { chart } from './text.en.ts';

/** Undefined where there is nothing to show. */
export function drawSum({ sum }: Asked, { eachDay = [], total = 0 }: Sums): Drawing | undefined {
  if (eachDay.length < 2 || total === 0) return undefined;
  const columns = [0, ...runningSums(eachDay)].map((most) => ({ least: 0, most }));
  const across = sum === undefined ? { at: total, words: chart.inAll(total) } : { at: sum, words: chart.toReach(sum) };
  return band(columns, across, sumText, chart.label);
}
