/* Form of the brood dates calculator. Words: text.en.ts. Arithmetic: shared/brood. */
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
import { drawDates } from './chart.ts';
import { castes, nextEvent, sights, stages, type Look } from './model.ts';
import type { NextKind } from './next.ts';
import * as text from './text.en.ts';

defineCalculator<Look, null>('brood-dates', {
  fields: {
    caste: choice(castes, text.asked.caste),
    seen: choice(sights, text.asked.seen),
    date: day(text.asked.date),
  },
  work: (look, { result }) => {
    const dates = broodDates(look.caste, look.seen, look.date);
    for (const stage of stages) {
      const pair = dates[stage];
      put(result, `${stage}-earliest`, pair ? formatDayWithWeekday(pair.earliest, languageHere()) : text.dates.queenOnly, pair?.earliest);
      put(
        result,
        `${stage}-latest`,
        pair && pair.latest !== pair.earliest ? text.dates.to(formatDayWithWeekday(pair.latest, languageHere())) : '',
        pair?.latest,
      );
      result.querySelector<HTMLElement>(`[data-of="${stage}"]`)!.hidden = !pair;
    }
    putBroodless(result, 'broodless-worker', dates.broodlessWorker);
    putBroodless(result, 'broodless-drone', dates.broodlessDrone);
    show(result, 'sum', text.sumWords(look));
    draw(result.querySelector<SVGElement>('svg.chart')!, drawDates(look, dates));
    const ahead = nextEvent(dates, todayHere());
    return {
      headline: text.headline(look, dates, languageHere()),
      asked: text.questionWords(look, languageHere()),
      next: {
        kind:
          look.seen === 'caged' ? 'no-laying' : look.caste !== 'queen' ? 'brood' : look.seen === 'emerging' ? 'young-queen' : 'queen-cells',
        says: look.caste === 'queen' && look.seen !== 'caged' ? text.leaveShut : '',
        again: ahead ? text.next(ahead.what, ahead.on, languageHere()) : text.nextLook(dayFromToday(1)),
        ...(dates.broodlessDrone ? { values: { 'treatment-window': `start=${dates.broodlessDrone}&brood=no` } } : {}),
      },
    } satisfies Answer<NextKind>;
  },
});

function putBroodless(result: HTMLElement, name: string, on: Day | undefined): void {
  put(result, name, on ? formatDayWithWeekday(on, languageHere()) : text.dates.stoppedOnly, on);
  result.querySelector<HTMLElement>(`[data-of="${name}"]`)!.hidden = !on;
}
