/* Chart of brood dates: each stage as a bar from its earliest to its latest day. */
import type { BroodDates } from '../../../shared/brood/dates.ts';
import { daysBetween } from '../../../shared/days/day.ts';
import type { Drawing } from '../form/drawing.ts';
import { spanBars, type SpanBar } from '../form/span-bars.ts';
import { stages, type Look } from './model.ts';
import { chart } from './text.en.ts';

export function drawDates({ seen, date }: Look, dates: BroodDates): Drawing {
  const bars: SpanBar[] = stages.flatMap((stage) => {
    const pair = dates[stage];
    return pair
      ? [
          {
            label: chart.stages[stage],
            from: daysBetween(date, pair.earliest),
            to: daysBetween(date, pair.latest),
            tone: stage === 'emerges' || stage === 'lays' ? 'watch' : '',
          },
        ]
      : [];
  });
  return spanBars(bars, seen === 'caged' ? chart.stopped : chart.seen, chart.label);
}
