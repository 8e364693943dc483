/* Chart of a sampling plan: how often smaller and larger samples miss, compared with the requested certainty. */
import { formatExact, toDataValue } from '../../../shared/numbers/show-number.ts';
import type { Drawing } from '../form/drawing.ts';
import { rangeBars } from '../form/range-bars.ts';
import type { Asked, Plan } from './model.ts';
import { chart, whole } from './text.en.ts';

export function drawPlan({ certainty }: Asked, { others }: Plan): Drawing {
  const allowed = Number(toDataValue(100 - certainty));
  return rangeBars(
    others.map(({ bees, missedPercent }) => ({
      label: whole(bees),
      value: missedPercent,
      low: 0,
      high: missedPercent,
      tone: missedPercent <= allowed ? 'settled' : 'watch',
    })),
    { at: allowed, words: `${formatExact(allowed)} %` },
    chart,
  );
}
