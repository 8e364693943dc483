/* Chart of a mite count: each colony in a row, compared with the level, and all together in the last row. */
import type { Drawing } from '../form/drawing.ts';
import { rangeBars, type Bar } from '../form/range-bars.ts';
import type { Judgement } from './model.ts';
import { atOnceShort, chart, verdictNames } from './text.en.ts';
import type { Verdict } from '../../../shared/mites/verdict.ts';

export function drawCount({ count, level }: Pick<Judgement, 'count' | 'level'>): Drawing {
  const { colonies, apiary } = count;
  const bars = colonies.map((colony) => ({
    label: colony.label, value: colony.per100, low: colony.lowPer100, high: colony.highPer100, ...verdictOf(colony.verdict, colony.atOnce),
  })); // prettier-ignore
  const all = apiary
    ? [
        {
          label: chart.all,
          value: apiary.per100,
          ...(apiary.lowPer100 === undefined ? {} : { low: apiary.lowPer100, high: apiary.highPer100! }),
          ...verdictOf(apiary.verdict, false),
        },
      ]
    : [];
  return rangeBars([...bars, ...all], level && { at: level.levelPer100, words: chart.level(level.levelPer100) }, chart.label);
}

/** The word is short, so that it fits beside the row on a narrow screen. */
function verdictOf(verdict: Verdict | undefined, atOnce: boolean): Pick<Bar, 'verdict'> {
  return verdict ? { verdict: [verdict, atOnce ? atOnceShort : verdictNames[verdict]] } : {};
}
