/*
 * Form of the treatment window. Sentences: text.ts. Choice of rows: model.ts. Rules: shared/treatments. In addresses `high` is the
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
import { judgeAll, type RowJudgement, type TreatmentFigures } from './model.ts';
import type { NextKind } from './next.ts';
import { headline, judgementWords, labelWords, nextSteps, nextWords, questionWords, stateNames, stateSteps } from './text.ts';

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
const coolest = { us: 'the daytime high of the coolest day, such as 64', metric: 'the daytime high of the coolest day, such as 18' };
const hottest = { us: 'the daytime high of the warmest day, such as 82', metric: 'the daytime high of the warmest day, such as 28' };
const meanOf = { us: 'the mean of day and night, such as 68', metric: 'the mean of day and night, such as 20' };
const night = { us: 'how cold the coldest hour gets, such as 46', metric: 'how cold the coldest hour gets, such as 8' };

defineCalculator<Asked, TreatmentFigures>('treatment-window', {
  fields: {
    start: day('the first day of the treatment'),
    'lowest-high': measured(quantity(temperature, coolest), temperatureWords),
    high: measured(quantity(temperature, hottest), temperatureWords),
    mean: measured(optional(quantity(temperature, meanOf)), temperatureWords),
    low: measured(optional(quantity(temperature, night)), temperatureWords),
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
      if (title) title.textContent = `Ask first about these (${shown.length})`;
    }
    const kind = kindOf(judgements);
    return {
      headline: headline(judgements),
      asked: questionWords(planned, units, languageHere()),
      next: {
        kind,
        says: kind === 'no-rows' ? '' : `${stateNames[kind]}: ${nextSteps[kind]}`,
        hazards: kind === 'nothing-found' || kind === 'works-poorly' ? ['acids', 'fumes'] : [],
        again: `Look again at the weather each morning. Count mites before you treat, and again when the treatment time on your label is over.`,
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
  if (impossible) return { box: boxOf(form, impossible), words: 'Weather lies from −60 to 60 °C (−76 to 140 °F).' };
  if (lowest > high) return { box: boxOf(form, 'high'), words: 'The warmest day cannot be cooler than the coolest.' };
  if (mean !== undefined && mean > high) return { box: boxOf(form, 'mean'), words: 'The mean cannot be above the highest daytime high.' };
  if (low !== undefined && low > lowest)
    return { box: boxOf(form, 'low'), words: 'The coldest hour cannot be warmer than the lowest daytime high.' };
  return undefined;
}

function rowOf(one: RowJudgement, planned: Planned, units: TreatmentFigures['units']): HTMLElement {
  const { id, title, row, judgement: { state, rules } } = one; // prettier-ignore
  const status = makeOutput('state', stateNames[state], state);
  status.className = `status ${stateSteps[state]}`.trim();
  const source = (note: number) =>
    make('sup', { class: 'mark' }, make('a', { href: `#note-${note}`, 'aria-label': `Source ${note}` }, String(note)));
  const about = row ? [make('small', {}, labelWords(row, languageHere()), source(row.note))] : [];
  return make('tr', { 'data-row': id },
    make('th', { scope: 'row' }, make('b', {}, title), ...about),
    make('td', {}, status, make('small', {}, nextWords[state])),
    make('td', {}, makeOutput('rule', judgementWords(one, planned, units, languageHere()), rules[0] ?? 'none')),
  ); // prettier-ignore
}
