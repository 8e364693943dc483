/*
 * Form of the treatment window. Words: text.en.ts. Choice of rows: model.ts. Rules: shared/treatments. In addresses `high` is the
 * highest daytime high and `low` the coldest hour. `lowest-high` was added later. An address without it fills the other fields, and the
 * form asks for the rest.
 */
import type { Day } from '../../../shared/days/day.ts';
import type { Planned } from '../../../shared/treatments/label-row.ts';
import { defineCalculator, type Answer } from '../form/calculator.ts';
import { day, optionalDay } from '../form/day-field.ts';
import { boxOf, type FormError } from '../form/field.ts';
import { label, optional, quantity } from '../form/kind.ts';
import { languageHere } from '../../../shared/country/language-here.ts';
import { make, makeOutput } from '../form/make.ts';
import { measured } from '../form/measured.ts';
import { temperatureWords } from '../form/measures.ts';
import { choice, single } from '../form/single.ts';
import { todayHere } from '../form/today.ts';
import { temperature } from '../form/units.ts';
import { judgementWords } from './judgement-words.ts';
import { judgeAll, stateSteps, type RowJudgement, type TreatmentFigures } from './model.ts';
import type { NextKind } from './next.ts';
import * as text from './text.en.ts';

type Asked = {
  readonly start: Day;
  readonly 'lowest-high': number;
  readonly high: number;
  readonly mean: number | undefined;
  readonly low: number | undefined;
  readonly supers: 'on' | 'off';
  readonly brood: 'yes' | 'no';
  readonly place: string | undefined;
  readonly registered: Planned['registered'];
  readonly 'harvest-date': Day | undefined;
};

const [coldest, warmest] = [-60, 60];
/** The sentence with an example for each system of units. */
const such = (words: (such: number) => string, us: number, metric: number) => ({ us: words(us), metric: words(metric) });

defineCalculator<Asked, TreatmentFigures>('treatment-window', {
  fields: {
    start: day(text.asked.start),
    'lowest-high': measured(quantity(temperature, such(text.asked.coolest, 64, 18)), temperatureWords),
    high: measured(quantity(temperature, such(text.asked.warmest, 82, 28)), temperatureWords),
    mean: measured(optional(quantity(temperature, such(text.asked.mean, 68, 20))), temperatureWords),
    low: measured(optional(quantity(temperature, such(text.asked.coldest, 46, 8))), temperatureWords),
    supers: choice(['on', 'off'], text.asked.supers),
    brood: choice(['yes', 'no'], text.asked.brood),
    place: single(optional(label)),
    registered: choice(['yes', 'no', 'not-checked'], text.asked.registered),
    'harvest-date': optionalDay(text.asked.harvest),
  },
  work: (asked, { form, result, figures: { rows, units } }) => {
    const fault = faultOf(asked, form);
    if (fault) return [fault];
    const planned: Planned = {
      start: asked.start,
      lowestHighC: asked['lowest-high'],
      highestHighC: asked.high,
      ...(asked.mean === undefined ? {} : { meanC: asked.mean }),
      ...(asked.low === undefined ? {} : { coldestC: asked.low }),
      supersOn: asked.supers === 'on',
      brood: asked.brood === 'yes',
      place: asked.place ?? '',
      registered: asked.registered,
      ...(asked['harvest-date'] ? { harvest: asked['harvest-date'] } : {}),
    };
    const judgements = judgeAll(planned, rows, todayHere());
    for (const [of, shown] of [
      ['telling', judgements.filter(isTelling)],
      ['asking', judgements.filter((one) => !isTelling(one))],
    ] as const) {
      const place = result.querySelector<HTMLElement>(`[data-of="${of}"]`)!;
      place.hidden = shown.length === 0;
      place.querySelector('tbody')!.replaceChildren(...shown.map((one) => rowOf(one, planned, units)));
      const title = place.querySelector('summary');
      if (title) title.textContent = text.result.askingOf(shown.length);
    }
    const kind = kindOf(judgements);
    return {
      headline: text.headline(judgements),
      asked: text.questionWords(planned, units, languageHere()),
      next: {
        kind,
        says: kind === 'no-rows' ? '' : text.stateAndStep(kind),
        hazards: kind === 'nothing-found' || kind === 'works-poorly' ? ['acids', 'fumes'] : [],
        again: text.again,
      },
    } satisfies Answer<NextKind>;
  },
});

/** A row that says more of these days than to ask. */
function isTelling({ judgement: { state }, elsewhere }: RowJudgement): boolean {
  return state !== 'ask' || elsewhere.length > 0;
}

/** The state of the rows that leaves most open. */
function kindOf(judgements: readonly RowJudgement[]): NextKind {
  const states = (['nothing-found', 'works-poorly', 'ask', 'ruled-out'] as const).filter((state) =>
    judgements.some(({ judgement }) => judgement.state === state),
  );
  return states[0] ?? 'no-rows';
}

function faultOf(asked: Asked, form: HTMLFormElement): FormError | undefined {
  const { 'lowest-high': lowest, high, mean, low } = asked;
  const impossible = (['lowest-high', 'high', 'mean', 'low'] as const).find((name) => {
    const value = asked[name];
    return value !== undefined && (value < coldest || value > warmest);
  });
  if (impossible) return { box: boxOf(form, impossible), words: text.faults.noWeather };
  if (lowest > high) return { box: boxOf(form, 'high'), words: text.faults.warmestUnderCoolest };
  if (mean !== undefined && mean > high) return { box: boxOf(form, 'mean'), words: text.faults.meanOverHigh };
  if (low !== undefined && low > lowest) return { box: boxOf(form, 'low'), words: text.faults.hourOverHigh };
  return undefined;
}

function rowOf(one: RowJudgement, planned: Planned, units: TreatmentFigures['units']): HTMLElement {
  const { id, title, row, judgement: { state, rules } } = one; // prettier-ignore
  const status = makeOutput('state', text.stateNames[state], state);
  status.className = `status ${stateSteps[state]}`.trim();
  const source = (note: number) =>
    make('sup', { class: 'mark' }, make('a', { href: `#note-${note}`, 'aria-label': text.source(note) }, String(note)));
  const about = row ? [make('small', {}, text.labelWords(row, languageHere()), source(row.note))] : [];
  return make('tr', { 'data-row': id },
    make('th', { scope: 'row' }, make('b', {}, title), ...about),
    make('td', {}, status, make('small', {}, text.nextWords[state])),
    make('td', {}, makeOutput('rule', judgementWords(one, planned, units, languageHere()), rules[0] ?? 'none')),
  ); // prettier-ignore
}
