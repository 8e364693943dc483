/* Form of the sampling plan. Words: text.en.ts. Plan: model.ts. Arithmetic: shared/mites. */
import type { SamplingReason } from '../../../shared/mites/sampling-plan.ts';
import { defineCalculator, type Answer } from '../form/calculator.ts';
import { draw } from '../form/drawing.ts';
import { boxOf, type FormError } from '../form/field.ts';
import { count, number, optional } from '../form/kind.ts';
import { put, show } from '../form/outputs.ts';
import { single } from '../form/single.ts';
import { dayFromToday } from '../form/today.ts';
import { inPercent } from '../form/typed-units.ts';
import { drawPlan } from './chart.ts';
import type { NextKind } from './next.ts';
import { planSampling, rarestPercent, type Asked, type SamplingFigures } from './model.ts';
import * as words from './text.en.ts';

defineCalculator<Asked, SamplingFigures>('sampling-plan', {
  fields: {
    share: single(number(words.asked.share, inPercent)),
    certainty: single(number(words.asked.certainty, inPercent)),
    colonies: single(optional(count(words.asked.colonies))),
  },
  work: (asked, { form, result, figures }) => {
    const planned = planSampling(asked, figures);
    if (!planned.ok) return [faultOf(planned.reason, form)];
    const plan = planned.value;
    put(result, 'bees-needed', words.neededWords(plan, figures), plan.beesNeeded);
    put(result, 'missed-chance', words.missedWords(plan.missedPercent, asked), plan.missedPercent);
    const { coloniesLeast: least, coloniesMost: most } = plan;
    put(result, 'colonies-to-sample-least', least === undefined ? words.noColonies(asked.colonies) : words.whole(least), least);
    put(
      result,
      'colonies-to-sample-most',
      most === undefined ? (least === undefined ? '' : words.noColonies(asked.colonies)) : most === least ? '' : words.upTo(most),
      most,
    );
    draw(result.querySelector<SVGElement>('svg.chart')!, drawPlan(asked, plan));
    show(result, 'sum', `${words.askedWords(asked)} ${words.sumWords(asked, plan)}`);
    const isTooMany = plan.beesNeeded > figures.mostBees;
    return {
      headline: words.headline(plan, figures),
      more: words.samplesWords(plan, figures),
      asked: words.questionWords(asked),
      next: {
        kind: isTooMany ? 'too-many' : 'sample',
        says: isTooMany ? words.says.tooMany(figures.usualBees) : words.says.sample,
        hazards: ['alcohol-fire'],
        again: isTooMany ? words.again.tooMany(dayFromToday(14)) : words.again.sample(dayFromToday(28)),
      },
    } satisfies Answer<NextKind>;
  },
});

function faultOf(reason: SamplingReason | 'too-rare', form: HTMLFormElement): FormError {
  const says = reason === 'too-rare' ? words.tooRare(rarestPercent) : words.faults[reason];
  const box = reason === 'impossible-certainty' ? 'certainty' : /colonies/.test(reason) ? 'colonies' : 'share';
  return { box: boxOf(form, box), words: says };
}
