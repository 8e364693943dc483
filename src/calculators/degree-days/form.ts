/* Form of the degree-day calculator. Words: text.en.ts. Calculation: model.ts. Arithmetic: shared/season. */
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
import { drawSum } from './chart.ts';
import * as text from './text.en.ts';

defineCalculator<Asked, DegreeDayFigures>('degree-days', {
  fields: {
    days: dayList(),
    base: single(number(text.asked.base)),
    cap: single(optional(number(text.asked.cap))),
    scale: choice(['F', 'C'], text.asked.scale),
    method: optionalChoice(degreeDayMethods),
    spread: single(optional(number(text.asked.spread))),
    from: single(optional(monthDay)),
    sum: single(optional(number(text.asked.sum))),
  },
  work: (asked, { form, result, figures }) => {
    const planned = planDegreeDays(asked, figures);
    if (!planned.ok) return [faultOf(planned.reason, planned.row, form)];
    const sums = planned.value;
    put(result, 'total', sums.total === undefined ? text.reachedWords['no-figure'] : text.sumName(sums.total, asked.scale), sums.total);
    const { earliest, latest } = ends(sums.reached);
    put(result, 'date-reached-earliest', earliest.words, earliest.value);
    put(result, 'date-reached-latest', latest.words, latest.value);
    showPlants(sums, result);
    show(result, 'sum', text.sumWords(asked, sums));
    const picture = result.querySelector<SVGElement>('svg.chart')!;
    const drawing = drawSum(asked, sums);
    picture.toggleAttribute('hidden', !drawing);
    if (drawing) draw(picture, drawing);
    return {
      headline: text.headline(asked, sums, languageHere()),
      asked: text.questionWords(asked, sums),
      next: {
        kind: sums.of === 'given-days' ? 'given-days' : sums.total === undefined ? 'no-figure' : 'normals',
        says: text.says,
        again:
          typeof sums.reached === 'object'
            ? text.nextLook(formatMonthDay(sums.reached.earliest, languageHere()))
            : text.nextSum(dayFromToday(7)),
      },
    } satisfies Answer<NextKind>;
  },
});

function ends(reached: Reached): Record<'earliest' | 'latest', { words: string; value: string | undefined }> {
  if (typeof reached !== 'object')
    return { earliest: { words: text.reachedWords[reached], value: undefined }, latest: { words: '', value: undefined } };
  return {
    earliest: { words: formatMonthDay(reached.earliest, languageHere()), value: reached.earliest },
    latest: { words: text.to(formatMonthDay(reached.latest, languageHere())), value: reached.latest },
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
        make('a', { href: `#note-${plant.note}`, 'aria-label': text.source(plant.note) }, String(plant.note)),
      );
      return make('tr', { 'data-plant': plant.id },
        make('th', { scope: 'row' }, make('b', {}, plant.name), make('small', {}, text.plantWords(plant, languageHere()), source)),
        make('td', {}, makeOutput('date-reached-earliest', earliest.words, earliest.value), ' ', makeOutput('date-reached-latest', latest.words, latest.value)),
      ); // prettier-ignore
    }),
  );
}

const BOXES: Readonly<Record<AskedReason, string>> = {
  'no-method': 'method',
  'cap-without-use': 'cap',
  'no-sum': 'sum',
  'impossible-base': 'base',
  'no-cap': 'cap',
  'cap-not-over-base': 'cap',
  'impossible-spread': 'spread',
  'no-days': 'days',
  'max-under-min': 'days',
  'impossible-temperature': 'days',
};

const faultOf = (reason: AskedReason, row = 1, form: HTMLFormElement): FormError => ({
  box: boxOf(form, BOXES[reason]),
  words:
    reason === 'max-under-min'
      ? text.inLine(row, text.maxUnderMin)
      : reason === 'impossible-temperature'
        ? text.inLine(row, text.noWeather)
        : text.faults[reason],
});
