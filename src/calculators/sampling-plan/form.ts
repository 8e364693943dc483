/* Form of the sampling plan. Sentences: text.ts. Plan: model.ts. Arithmetic: shared/mites. */
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
import * as words from './text.ts';

defineCalculator<Asked, SamplingFigures>('sampling-plan', {
  fields: {
    share: single(number('the share of bees with a mite, such as 1', inPercent)),
    certainty: single(number('how sure you want to be, such as 95', inPercent)),
    colonies: single(optional(count('how many colonies stand in the apiary'))),
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
      most === undefined ? (least === undefined ? '' : words.noColonies(asked.colonies)) : most === least ? '' : `to ${words.whole(most)}`,
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
        says: isTooMany
          ? `Take ${words.whole(figures.usualBees)} bees now and another sample in two weeks. Add the two together.`
          : 'Sample every colony on the same day, then enter what you counted.',
        hazards: ['alcohol-fire'],
        again: isTooMany ? `Second sample: ${dayFromToday(14)}.` : `Next round of counts: by ${dayFromToday(28)}.`,
      },
    } satisfies Answer<NextKind>;
  },
});

function faultOf(reason: SamplingReason | 'too-rare', form: HTMLFormElement): FormError {
  const [name, says] = {
    'impossible-share': ['share', 'The share lies over 0 and up to 100 %.'],
    'too-rare': ['share', `A share under ${rarestPercent} % cannot be found with the bees of one colony.`],
    'impossible-certainty': ['certainty', 'It lies over 0 and under 100 %. No sample makes it quite certain.'],
    'no-colonies': ['colonies', 'Write 1 or more colonies, or leave it empty.'],
    'colonies-not-whole': ['colonies', 'Write whole colonies.'],
  }[reason] as [string, string];
  return { box: boxOf(form, name), words: says };
}
