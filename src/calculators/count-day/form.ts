/* Form of the count day. Sentences: text.ts. Sum: model.ts. Arithmetic: shared/mites. */
import { phases } from '../../../shared/mites/action-level.ts';
import { mostBeesInSample, mostMitesInSample, type SampleReason } from '../../../shared/mites/rate.ts';
import { formatNumber } from '../../../shared/numbers/show-number.ts';
import { defineCalculator, type Answer } from '../form/calculator.ts';
import { day } from '../form/day-field.ts';
import { draw } from '../form/drawing.ts';
import { boxOf, type Field, type FormError } from '../form/field.ts';
import { count, label } from '../form/kind.ts';
import { languageHere } from '../form/language-here.ts';
import { make } from '../form/make.ts';
import { put, show } from '../form/outputs.ts';
import { rows } from '../form/rows.ts';
import { choice, optionalChoice } from '../form/single.ts';
import { dayFromToday } from '../form/today.ts';
import { drawTogether } from './chart.ts';
import { countsFile, methods, putTogether, type CountDayFigures, type Evening } from './model.ts';
import type { NextKind } from './next.ts';
import * as words from './text.ts';

const whole = (value: number): string => formatNumber(value, { places: 0 });
/** The choices are the club's own, as the page has them. */
const district: Field<string> = {
  read: (form, name) => {
    const { value } = form.elements.namedItem(name) as RadioNodeList;
    return value ? { value, address: value } : { faults: [{ box: boxOf(form, name), words: 'Choose the district.' }], address: undefined };
  },
  fill: (form, name, text) => {
    const choices = form.elements.namedItem(name) as RadioNodeList;
    const before = choices.value;
    choices.value = text;
    if (choices.value === text) return undefined;
    choices.value = before;
    return { box: boxOf(form, name), words: `“${text}” is not one of the choices.` };
  },
};

defineCalculator<Evening, CountDayFigures>('count-day', {
  fields: {
    counts: rows({
      columns: { label, mites: count('how many mites were counted'), bees: count('how many bees were in the sample') },
      marks: [':', '/'],
      word: 'Colony',
      most: 80,
      shape: { numbers: 2, least: 1, whole: true, numberedNames: true },
      such: 'A 12 300',
    }),
    date: day('the day of the count'),
    district: district,
    method: choice(methods, 'how the mites were counted'),
    phase: optionalChoice(phases),
  },
  work: (evening, { form, result, figures }) => {
    const summed = putTogether(evening, figures);
    if (!summed.ok) return [faultOf(summed.reason, summed.row, form)];
    const together = summed.value;
    put(result, 'spread', words.spreadWords(together), together.spread.middle);
    put(result, 'all-per-100', words.allWords(together), together.all.per100);
    put(result, 'colonies-over', words.overWords(together), together.level ? together.over : undefined);
    show(result, 'level-from', together.level ? `${together.level.levelPer100} per 100 bees. ${together.level.words}` : '');
    show(result, 'sum', words.sumWords(evening, together));
    draw(result.querySelector<SVGElement>('svg.chart')!, drawTogether(together));
    const button = result.closest('.calculator')!.querySelector<HTMLButtonElement>('[data-counts-file]')!;
    button.onclick = () => save(evening);
    return {
      headline: words.headline(together),
      more: words.moreWords(together),
      asked: words.askedWords(evening, languageHere()),
      next: {
        kind: together.level ? (together.over > 0 ? 'over' : 'under') : 'no-level',
        says:
          together.over > 0
            ? 'Look at each colony over the level with its owner, in the mite count. Then give the file to the webmaster.'
            : 'Give the file to the webmaster, who puts it with the club’s counts.',
        hazards: [],
        again: `Next round of counts: by ${dayFromToday(28)}.`,
      },
    } satisfies Answer<NextKind>;
  },
});

function faultOf(reason: SampleReason, row = 1, form: HTMLFormElement): FormError {
  const says: Readonly<Record<SampleReason, readonly [string, string]>> = {
    'no-bees': ['bees', 'A sample of 0 bees has no rate. Write how many bees were in it.'],
    'bees-not-whole': ['bees', 'Write whole bees.'],
    'mites-not-whole': ['mites', 'Write whole mites.'],
    'mites-negative': ['mites', 'Mites cannot be under 0.'],
    'too-many': ['mites', `More than ${whole(mostMitesInSample)} mites or ${whole(mostBeesInSample)} bees is not one sample.`],
    'impossible-recovery': ['mites', 'Write whole mites.'],
  };
  const [name, sentence] = says[reason];
  return { box: boxOf(form, name, row - 1), words: `Colony ${row}: ${sentence}` };
}

function save(evening: Evening): void {
  const file = new Blob([countsFile(evening)], { type: 'text/csv' });
  const link = make('a', { href: URL.createObjectURL(file), download: `counts-${evening.date}.csv` });
  link.click();
  URL.revokeObjectURL(link.href);
}
