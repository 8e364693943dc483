/* Form of the brood dates calculator. Sentences: text.ts. Arithmetic: shared/brood. */
import { broodDates } from '../../../shared/brood/dates.ts';
import type { Day } from '../../../shared/days/day.ts';
import { formatDayWithWeekday } from '../../../shared/days/show-day.ts';
import { defineCalculator, type Answer } from '../form/calculator.ts';
import { day } from '../form/day-field.ts';
import { draw } from '../form/drawing.ts';
import { languageHere } from '../../../shared/country/language-here.ts';
import { put, show } from '../form/outputs.ts';
import { choice } from '../form/single.ts';
import { dayFromToday, todayHere } from '../form/today.ts';
import type { NextKind } from './next.ts';
import { castes, drawDates, headline, nextDate, questionWords, sights, stages, sumWords, type Look } from './text.ts';

defineCalculator<Look, null>('brood-dates', {
  fields: {
    caste: choice(castes, 'which kind of bee it is'),
    seen: choice(sights, 'what was seen'),
    date: day('the day of the look'),
  },
  work: (look, { result }) => {
    const dates = broodDates(look.caste, look.seen, look.date);
    for (const stage of stages) {
      const pair = dates[stage];
      put(result, `${stage}-earliest`, pair ? formatDayWithWeekday(pair.earliest, languageHere()) : 'Of a queen only.', pair?.earliest);
      put(
        result,
        `${stage}-latest`,
        pair && pair.latest !== pair.earliest ? `to ${formatDayWithWeekday(pair.latest, languageHere())}` : '',
        pair?.latest,
      );
      result.querySelector<HTMLElement>(`[data-of="${stage}"]`)!.hidden = !pair;
    }
    putBroodless(result, 'broodless-worker', dates.broodlessWorker);
    putBroodless(result, 'broodless-drone', dates.broodlessDrone);
    show(result, 'sum', sumWords(look));
    draw(result.querySelector<SVGElement>('svg.chart')!, drawDates(look, dates));
    return {
      headline: headline(look, dates, languageHere()),
      asked: questionWords(look, languageHere()),
      next: {
        kind:
          look.seen === 'caged' ? 'no-laying' : look.caste !== 'queen' ? 'brood' : look.seen === 'emerging' ? 'young-queen' : 'queen-cells',
        says: look.caste === 'queen' && look.seen !== 'caged' ? 'Leave a hive with a young queen shut until her eggs are due.' : '',
        again:
          nextDate(dates, todayHere(), languageHere()) ??
          `All these days are past. Next look: the first warm, calm day from ${dayFromToday(1)}.`,
        ...(dates.broodlessDrone ? { values: { 'treatment-window': `start=${dates.broodlessDrone}&brood=no` } } : {}),
      },
    } satisfies Answer<NextKind>;
  },
});

function putBroodless(result: HTMLElement, name: string, on: Day | undefined): void {
  put(result, name, on ? formatDayWithWeekday(on, languageHere()) : 'Only where laying stopped.', on);
  result.querySelector<HTMLElement>(`[data-of="${name}"]`)!.hidden = !on;
}
