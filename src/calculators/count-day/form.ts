/* Form of the count day. Words: text.en.ts. Sum: model.ts. Arithmetic: shared/mites. */
import { phases } from '../../../shared/mites/action-level.ts';
import { defineCalculator, type Answer } from '../form/calculator.ts';
import { methodAsked } from '../form/colony-rows.en.ts';
import { colonyRows, sampleFault } from '../form/colony-rows.ts';
import { day } from '../form/day-field.ts';
import { draw } from '../form/drawing.ts';
import { boxOf, type Field } from '../form/field.ts';
import { languageHere } from '../../../shared/country/language-here.ts';
import { make } from '../form/make.ts';
import { put, show } from '../form/outputs.ts';
import { choice, optionalChoice } from '../form/single.ts';
import { choose, noChoice } from '../form/text.en.ts';
import { dayFromToday } from '../form/today.ts';
import { drawTogether } from './chart.ts';
import { countsFile, methods, putTogether, spreadWords, type CountDayFigures, type Evening } from './model.ts';
import type { NextKind } from './next.ts';
import * as words from './text.en.ts';

/** The choices are the club's own, as the page has them. */
const district: Field<string> = {
  read: (form, name) => {
    const { value } = form.elements.namedItem(name) as RadioNodeList;
    return value
      ? { value, address: value }
      : { faults: [{ box: boxOf(form, name), words: choose(words.asked.district) }], address: undefined };
  },
  fill: (form, name, text) => {
    const choices = form.elements.namedItem(name) as RadioNodeList;
    const before = choices.value;
    choices.value = text;
    if (choices.value === text) return undefined;
    choices.value = before;
    return { box: boxOf(form, name), words: noChoice(text) };
  },
};

defineCalculator<Evening, CountDayFigures>('count-day', {
  fields: {
    counts: colonyRows(80),
    date: day(words.asked.date),
    district: district,
    method: choice(methods, methodAsked),
    phase: optionalChoice(phases),
  },
  work: (evening, { form, result, figures }) => {
    const summed = putTogether(evening, figures);
    if (!summed.ok) return [sampleFault(form, summed.reason, summed.row)];
    const together = summed.value;
    const total = (of: 'mites' | 'bees') => evening.counts.reduce((sum, count) => sum + count[of], 0);
    put(result, 'spread', spreadWords(together), together.spread.middle);
    put(result, 'all-per-100', words.allWords(together), together.all.per100);
    put(result, 'colonies-over', words.overWords(together), together.level ? together.over : undefined);
    show(result, 'level-from', together.level ? words.levelWords(together.level) : '');
    show(result, 'sum', words.sumWords(total('mites'), total('bees'), together));
    draw(result.querySelector<SVGElement>('svg.chart')!, drawTogether(together));
    const button = result.closest('.calculator')!.querySelector<HTMLButtonElement>('[data-counts-file]')!;
    button.onclick = () => save(evening);
    return {
      headline: words.headline(together),
      more: words.moreWords(together),
      asked: words.askedWords(evening, languageHere()),
      next: {
        kind: together.level ? (together.over > 0 ? 'over' : 'under') : 'no-level',
        says: together.over > 0 ? words.says.over : words.says.under,
        hazards: [],
        again: words.again(dayFromToday(28)),
      },
    } satisfies Answer<NextKind>;
  },
});

function save(evening: Evening): void {
  const file = new Blob([countsFile(evening)], { type: 'text/csv' });
  const link = make('a', { href: URL.createObjectURL(file), download: `counts-${evening.date}.csv` });
  link.click();
  URL.revokeObjectURL(link.href);
}
