/* Chart of a mite count: each colony as a bar compared with the level, and all together as the last bar. */
import type { Drawing } from '../form/drawing.ts';
import { rangeBars } from '../form/range-bars.ts';
import type { Judgement } from './model.ts';
import { verdictSteps } from './text.ts';
import { toDataValue } from '../../../shared/numbers/show-number.ts';

export function drawCount({ count, level }: Pick<Judgement, 'count' | 'level'>): Drawing {
  const { colonies, apiary } = count;
  const bars = colonies.map((colony) => ({
    label: colony.label, value: colony.per100, low: colony.lowPer100, high: colony.highPer100, ...(colony.verdict ? { tone: verdictSteps[colony.verdict] } : {}),
  })); // prettier-ignore
  const all = apiary
    ? [
        {
          label: 'All',
          value: apiary.per100,
          ...(apiary.lowPer100 === undefined ? {} : { low: apiary.lowPer100, high: apiary.highPer100! }),
          tone: 'all',
        },
      ]
    : [];
  return rangeBars(
    [...bars, ...all],
    level && { at: level.levelPer100, words: `level ${toDataValue(level.levelPer100)}` },
    'Mites per hundred bees: a dot is the count, the bar its likely range, the dashed line the level. The same numbers stand in the table.',
  );
}
