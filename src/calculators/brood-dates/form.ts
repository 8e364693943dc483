/* Form of the brood dates calculator. Sentences: text.ts. Arithmetic: shared/brood. */
import { broodDates } from '../../../shared/brood/dates.ts';
import type { Day } from '../../../shared/days/day.ts';
import { formatDayWithWeekday } from '../../../shared/days/show-day.ts';
import { defineCalculator } from '../form/calculator.ts';
import { day } from '../form/day-field.ts';
import { draw } from '../form/drawing.ts';
import { put, show } from '../form/outputs.ts';
import { choice } from '../form/single.ts';
import { castes, drawDates, headline, sights, stages, sumWords, type Look } from './text.ts';

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
      put(result, `${stage}-earliest`, pair ? formatDayWithWeekday(pair.earliest) : 'Of a queen only.', pair?.earliest);
      put(result, `${stage}-latest`, pair && pair.latest !== pair.earliest ? `to ${formatDayWithWeekday(pair.latest)}` : '', pair?.latest);
      result.querySelector<HTMLElement>(`[data-of="${stage}"]`)!.hidden = !pair;
    }
    putBroodless(result, 'broodless-worker', dates.broodlessWorker);
    putBroodless(result, 'broodless-drone', dates.broodlessDrone);
    show(result, 'sum', sumWords(look));
    draw(result.querySelector('svg')!, drawDates(look, dates));
    const link = result.querySelector<HTMLAnchorElement>('[data-to="treatment-window"]');
    link?.toggleAttribute('hidden', !dates.broodlessDrone);
    if (link && dates.broodlessDrone) link.hash = `start=${dates.broodlessDrone}&brood=no`;
    return headline(look, dates);
  },
});

function putBroodless(result: HTMLElement, name: string, on: Day | undefined): void {
  put(result, name, on ? formatDayWithWeekday(on) : 'Only where laying stopped.', on);
  result.querySelector<HTMLElement>(`[data-of="${name}"]`)!.hidden = !on;
}
