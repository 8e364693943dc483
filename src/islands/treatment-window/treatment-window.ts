/* The form of the treatment page. Words: words.ts; which rows: judge.ts; rules: shared/treatments. */
import type { Day } from '../../../shared/days/day.ts';
import { todayIn } from '../../../shared/days/today.ts';
import type { Planned } from '../../../shared/treatments/label-row.ts';
import { fahrenheitToCelsius } from '../../../shared/units/temperature.ts';
import { unitWords } from '../../../shared/units/unit-names.ts';
import { defineCalculator } from '../parts/calculator.ts';
import { day, optionalDay } from '../parts/day-field.ts';
import { boxOf, type Fault } from '../parts/field.ts';
import { label, number, optional } from '../parts/kind.ts';
import { make, makeOutput } from '../parts/make.ts';
import { measured } from '../parts/measured.ts';
import { temperatureWords } from '../parts/measures.ts';
import { show } from '../parts/outputs.ts';
import { choice, single } from '../parts/single.ts';
import { judgeAll, type JudgedRow, type TreatmentFigures } from './judge.ts';
import { headline, judgementWords, plannedWords, stateNames, stateSteps } from './words.ts';

type Asked = {
  readonly start: Day;
  readonly low: number;
  readonly high: number;
  readonly supers: 'on' | 'off';
  readonly brood: 'yes' | 'no';
  readonly place: string | undefined;
  readonly registered: Planned['registered'];
  readonly 'harvest-date': Day | undefined;
};

const same = (value: number): number => value;
const celsius = Object.fromEntries([
  ...unitWords.C.map((word) => [word, same] as const),
  ...unitWords.F.map((word) => [word, fahrenheitToCelsius] as const),
]);
const told = (value: number): string => temperatureWords(value, 'metric');
const [coldest, warmest] = [-60, 60];

defineCalculator<Asked, TreatmentFigures>('treatment-window', {
  fields: {
    start: day('the first day of the treatment'),
    low: measured(number('how cold the coldest day gets, such as 10 or 50 F', celsius), told),
    high: measured(number('how warm the warmest day gets, such as 28 or 82 F', celsius), told),
    supers: choice(['on', 'off'], 'whether boxes for harvest are on'),
    brood: choice(['yes', 'no'], 'whether there is brood'),
    place: single(optional(label)),
    registered: choice(['yes', 'no', 'not-checked'], 'whether it is registered where you are'),
    'harvest-date': optionalDay('the day of the next harvest'),
  },
  work: (asked, { form, result, figures: { rows, units } }) => {
    const fault = faultOf(asked, form);
    if (fault) return [fault];
    const planned: Planned = {
      start: asked.start, lowC: asked.low, highC: asked.high, supersOn: asked.supers === 'on', brood: asked.brood === 'yes', place: asked.place ?? '', registered: asked.registered,
      ...(asked['harvest-date'] ? { harvest: asked['harvest-date'] } : {}),
    }; // prettier-ignore
    const judged = judgeAll(planned, rows, todayIn(document.documentElement.dataset.zone!, new Date()));
    result.querySelector('tbody')!.replaceChildren(...judged.map((one) => rowOf(one, planned, units)));
    show(result, 'planned', plannedWords(planned, units));
    return headline(judged);
  },
});

function faultOf({ low, high }: Asked, form: HTMLFormElement): Fault | undefined {
  const far = (value: number): boolean => value < coldest || value > warmest;
  const impossible = ['low', 'high'].find((name) => far(name === 'low' ? low : high));
  if (impossible) return { box: boxOf(form, impossible), words: 'Weather lies from −60 to 60 °C (−76 to 140 °F).' };
  return low > high ? { box: boxOf(form, 'high'), words: 'The warmest day cannot be colder than the coldest.' } : undefined;
}

function rowOf(one: JudgedRow, planned: Planned, units: TreatmentFigures['units']): HTMLElement {
  const { id, title, row, judged: { state, rules } } = one; // prettier-ignore
  const told = makeOutput('state', stateNames[state], state);
  told.className = `status ${stateSteps[state]}`.trim();
  const source = (note: number) =>
    make('sup', { class: 'mark' }, make('a', { href: `#note-${note}`, 'aria-label': `Source ${note}` }, String(note)));
  const about = row ? [make('small', {}, `${row.form}; ${row.place}.${row.fromMemory ? ' From memory.' : ''}`, source(row.note))] : [];
  return make('tr', { 'data-row': id },
    make('th', { scope: 'row' }, make('b', {}, title), ...about),
    make('td', {}, told),
    make('td', {}, makeOutput('rule', judgementWords(one, planned, units), rules[0] ?? 'none')),
  ); // prettier-ignore
}
