/* Form of the degree-day calculator. Sentences: text.ts. Calculation: model.ts. Arithmetic: shared/season. */
import { formatMonthDay } from '../../../shared/days/month-day.ts';
import { degreeDayMethods } from '../../../shared/season/degree-day.ts';
import { defineCalculator, type Answer } from '../form/calculator.ts';
import { draw } from '../form/drawing.ts';
import { boxOf, type FormError } from '../form/field.ts';
import { number, optional } from '../form/kind.ts';
import { languageHere } from '../../../shared/country/language-here.ts';
import { make, makeOutput } from '../form/make.ts';
import { put, show } from '../form/outputs.ts';
import { choice, optionalChoice, single } from '../form/single.ts';
import { dayFromToday } from '../form/today.ts';
import type { NextKind } from './next.ts';
import { dayList } from './day-list.ts';
import { monthDay } from './month-day.ts';
import { planDegreeDays, type Asked, type AskedReason, type DegreeDayFigures, type Reached, type Sums } from './model.ts';
import { drawSum, headline, plantWords, questionWords, reachedWords, sumName, sumWords } from './text.ts';

defineCalculator<Asked, DegreeDayFigures>('degree-days', {
  fields: {
    days: dayList(),
    base: single(number('the base, such as 50')),
    cap: single(optional(number('the cap, such as 86'))),
    scale: choice(['F', 'C'], 'a scale'),
    method: optionalChoice(degreeDayMethods),
    spread: single(optional(number('the spread, such as 9'))),
    from: single(optional(monthDay)),
    sum: single(optional(number('the sum to reach, such as 86'))),
  },
  work: (asked, { form, result, figures }) => {
    const planned = planDegreeDays(asked, figures);
    if (!planned.ok) return [faultOf(planned.reason, planned.row, form)];
    const sums = planned.value;
    put(result, 'total', sums.total === undefined ? reachedWords('no-figure') : sumName(sums.total, asked.scale), sums.total);
    const { earliest, latest } = ends(sums.reached);
    put(result, 'date-reached-earliest', earliest.words, earliest.value);
    put(result, 'date-reached-latest', latest.words, latest.value);
    showPlants(sums, result);
    show(result, 'sum', sumWords(asked, sums));
    const picture = result.querySelector<SVGElement>('svg.chart')!;
    const drawing = drawSum(asked, sums);
    picture.toggleAttribute('hidden', !drawing);
    if (drawing) draw(picture, drawing);
    return {
      headline: headline(asked, sums, languageHere()),
      asked: questionWords(asked, sums),
      next: {
        kind: sums.of === 'given-days' ? 'given-days' : sums.total === undefined ? 'no-figure' : 'normals',
        says: 'Compare it with the plants of your club, and write down what you see in bloom.',
        again:
          typeof sums.reached === 'object'
            ? `Next look at the plant: from ${formatMonthDay(sums.reached.earliest, languageHere())}.`
            : `Next sum: ${dayFromToday(7)}, with the days added until then.`,
      },
    } satisfies Answer<NextKind>;
  },
});

function ends(reached: Reached): Record<'earliest' | 'latest', { words: string; value: string | undefined }> {
  if (typeof reached !== 'object')
    return { earliest: { words: reachedWords(reached), value: undefined }, latest: { words: '', value: undefined } };
  return {
    earliest: { words: formatMonthDay(reached.earliest, languageHere()), value: reached.earliest },
    latest: { words: `to ${formatMonthDay(reached.latest, languageHere())}`, value: reached.latest },
  };
}

/** Dates come from normals only, so entered days have no plants. */
function showPlants({ of, plants }: Sums, result: HTMLElement): void {
  result.querySelector<HTMLElement>('[data-of="plants"]')!.hidden = of === 'given-days' || plants.length === 0;
  result.querySelector('tbody')!.replaceChildren(
    ...(of === 'given-days' ? [] : plants).map(({ plant, reached }) => {
      const { earliest, latest } = ends(reached);
      const source = make(
        'sup',
        { class: 'mark' },
        make('a', { href: `#note-${plant.note}`, 'aria-label': `Source ${plant.note}` }, String(plant.note)),
      );
      return make('tr', { 'data-plant': plant.id },
        make('th', { scope: 'row' }, make('b', {}, plant.name), make('small', {}, plantWords(plant, languageHere()), source)),
        make('td', {}, makeOutput('date-reached-earliest', earliest.words, earliest.value), ' ', makeOutput('date-reached-latest', latest.words, latest.value)),
      ); // prettier-ignore
    }),
  );
}

function faultOf(reason: AskedReason, row = 1, form: HTMLFormElement): FormError {
  const [name, words] = {
    'no-method': ['method', 'Choose a method: each gives another sum.'],
    'cap-without-use': ['cap', 'Only sine and modified have a cap. Empty it, or choose one of them.'],
    'no-sum': ['sum', 'The sum to reach must be more than 0.'],
    'impossible-base': ['base', 'The base lies from −150 to 150 degrees.'],
    'no-cap': ['cap', 'The modified method needs a cap, such as 86.'],
    'cap-not-over-base': ['cap', 'The cap must be over the base.'],
    'impossible-spread': ['spread', 'The spread lies from 0 to 50 degrees.'],
    'no-days': ['days', 'Write the lowest and the highest of each day.'],
    'max-under-min': ['days', `Line ${row}: the highest is under the lowest. The lowest comes first.`],
    'impossible-temperature': ['days', `Line ${row}: no weather goes past 150 degrees.`],
  }[reason] as [string, string];
  return { box: boxOf(form, name), words };
}
