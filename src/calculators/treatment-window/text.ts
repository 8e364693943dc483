/* Sentences of the treatment window. They never advise. A row rules out, works poorly, leaves open, or says who to ask. */
import type { Language } from '../../../shared/country/language.ts';
import { formatDay } from '../../../shared/days/show-day.ts';
import {
  againstLimit,
  supersBackOn,
  type LabelRow,
  type Planned,
  type TreatmentRule,
  type TreatmentState,
  type WarmthKind,
  type WarmthLimit,
} from '../../../shared/treatments/label-row.ts';
import { formatNumber } from '../../../shared/numbers/show-number.ts';
import { celsiusToFahrenheit } from '../../../shared/units/temperature.ts';
import type { System } from '../form/measures.ts';
import type { RowJudgement, ShownRow } from './model.ts';

export const stateNames: Readonly<Record<TreatmentState, string>> = {
  'ruled-out': 'Ruled out',
  ask: 'Ask',
  'works-poorly': 'Works poorly',
  'nothing-found': 'Nothing found against it',
};

/** The next step in a few words, beside each state. */
export const nextWords: Readonly<Record<TreatmentState, string>> = {
  'ruled-out': 'Not in these days.',
  ask: 'Not yet. Read your label, then ask.',
  'works-poorly': 'Read your label. Ask about a better time.',
  'nothing-found': 'Not a permission. Read your label.',
};

/** The next step in sentences, once under the table. */
export const nextSteps: Readonly<Record<TreatmentState, string>> = {
  'ruled-out': 'a label forbids it for what you wrote. Do not put it in. Wait for other days, or look at another active ingredient.',
  ask: 'something is not known here. Do not put it in yet. Read the label on your container, and ask the office named on this page.',
  'works-poorly': 'this page found nothing in a label against it, and trials say that it does little now. Ask about a better time.',
  'nothing-found': 'this page found nothing against it. That is not a permission. Read your label: it alone allows.',
};

/** The level of gravity of each state. */
export const stateSteps: Readonly<Record<TreatmentState, string>> = {
  'ruled-out': 'act',
  ask: 'watch',
  'works-poorly': 'watch',
  'nothing-found': '',
};

export function headline(judgements: readonly RowJudgement[]): string {
  if (judgements.length === 0) return 'The club holds no label rows: ask.';
  const count = (state: TreatmentState) => judgements.filter((one) => one.judgement.state === state).length;
  const ask = count('ask');
  if (ask === judgements.length) return `Ask first, about ${ask === 1 ? 'the one row' : `all ${ask} rows`}.`;
  const parts: [number, string][] = [
    [count('ruled-out'), 'ruled out'],
    [ask, 'to ask about'],
    [count('works-poorly'), 'that would work poorly'],
    [count('nothing-found'), 'with nothing found against it'],
  ];
  return `Of ${judgements.length} rows: ${parts.flatMap(([number, words]) => (number ? [`${number} ${words}`] : [])).join(', ')}.`;
}

/** One sentence per rule, the deciding one first, then what labels of other places say about such days. */
export function judgementWords(
  { row, judgement: { state, rules }, elsewhere }: RowJudgement,
  planned: Planned,
  units: System,
  language: Language,
): string {
  const own =
    state === 'nothing-found'
      ? [
          'This page found nothing against it. Read your label.',
          ...(row!.limits.length === 0 ? ['The row holds no limits of warmth.'] : []),
        ]
      : rules.map((rule) => (row ? ruleWords(rule, row, planned, units, language) : askWords(rule, planned)));
  return [...own, ...elsewhere.map((other) => elsewhereWords(other, planned, units))].join(' ');
}

function elsewhereWords(row: ShownRow, planned: Planned, units: System): string {
  const of = `the label of another place, ${row.place}, ${row.form}`;
  const out = warmthFaults(row.limits, planned, units);
  const poor = warmthFaults(row.poorOutside, planned, units, undefined, 'It is said to need');
  return [
    ...(out.length > 0 ? [`Wait: ${of}, would rule these days out.`, ...out] : []),
    ...(poor.length > 0 ? [`It works poorly in such weather, as is said of ${row.form}.`, ...poor] : []),
  ].join(' ');
}

function ruleWords(rule: TreatmentRule, row: LabelRow, planned: Planned, units: System, language: Language): string {
  switch (rule) {
    case 'too-cold':
      return warmthFaults(row.limits, planned, units, 'cold').join(' ');
    case 'too-warm':
      return warmthFaults(row.limits, planned, units, 'warm').join(' ');
    case 'supers-on':
      return 'This label forbids boxes for harvest on the hive.';
    case 'brood-forbidden':
      return 'This label forbids it while there is brood.';
    case 'harvest-too-soon':
      return `Boxes for harvest could be back on ${formatDay(supersBackOn(row, planned.start)!, language)}, after your harvest.`;
    case 'supers-by-label':
      return 'Ask: the label decides on boxes for harvest.';
    case 'harvest-by-label':
      return 'Ask: the label decides how long before a harvest it must be over.';
    case 'mean-not-told':
      return 'Ask: this row speaks of the mean temperature, which you did not write.';
    case 'coldest-not-told':
      return 'Ask: this row speaks of the coldest hour, which you did not write.';
    case 'only-quoted':
      return 'Ask: we saw this label only as others repeat it.';
    case 'no-registration-number':
      return 'Ask: no registration number was seen with this label.';
    case 'no-label-date':
      return 'Ask: we saw no date on this label, so yours may differ.';
    case 'not-opened':
      return 'Ask: no label of this form could be opened.';
    case 'from-memory':
      return 'Ask: this row is from memory. No label was opened.';
    case 'superseded':
      return 'Ask: this form is no longer sold.';
    case 'poor-with-brood':
      return 'It works poorly with brood: mites under cappings live on. No label seen here forbids that.';
    case 'poor-cold':
      return `It works poorly in such cold. ${warmthFaults(row.poorOutside, planned, units, 'cold', 'It is said to need').join(' ')}`;
    case 'poor-warm':
      return `It works poorly in such heat. ${warmthFaults(row.poorOutside, planned, units, 'warm', 'It is said to need').join(' ')}`;
    case 'past-check-by':
      return `Ask: this row was to be checked again by ${formatDay(row.checkBy, language)}.`;
    default:
      return askWords(rule, planned);
  }
}

function askWords(rule: TreatmentRule, { place }: Planned): string {
  switch (rule) {
    case 'not-registered':
      return 'Ask: what is not registered for bee colonies where you are stays off the hive.';
    case 'not-checked':
      return 'Ask whether it is registered for bee colonies where you are.';
    case 'other-place':
      return `Ask: no row is held for ${place.trim()}.`;
    default:
      return 'Ask: no place was written, so no row is yours yet.';
  }
}

/** The temperature that a limit means, in plain words. */
export const kindWords: Readonly<Record<WarmthKind, string>> = {
  'daily-high': 'daily highs',
  mean: 'a mean of day and night',
  'any-time': 'temperatures at any hour',
};

/** "Too warm: its label asks for daily highs of at most 85 °F (29.5 °C) on the day it goes in. Yours reach 91 °F." */
function warmthFaults(
  limits: readonly WarmthLimit[],
  planned: Planned,
  units: System,
  only?: 'cold' | 'warm',
  asks = 'Its label asks for',
): string[] {
  return limits.flatMap((limit) => {
    const { cold, warm } = againstLimit(limit, planned);
    const asked = (bound: string, celsius: number) =>
      `${asks} ${kindWords[limit.of]} of ${bound} ${warmthWords(celsius, units)}${limit.when ? ` ${limit.when}` : ''}.`;
    return [
      ...(cold && only !== 'warm'
        ? [`Too cold: ${uncapital(asked('at least', limit.leastC!))} ${coldestOf(limit.of, planned, units)}`]
        : []),
      ...(warm && only !== 'cold' ? [`Too warm: ${uncapital(asked('at most', limit.mostC!))} ${warmestOf(limit.of, planned, units)}`] : []),
    ];
  });
}

const uncapital = (words: string): string => words.charAt(0).toLowerCase() + words.slice(1);

function coldestOf(of: WarmthKind, { lowestHighC, highestHighC, meanC, coldestC }: Planned, units: System): string {
  if (of === 'mean')
    return meanC === undefined ? `Your warmest day reaches ${alone(highestHighC, units)}.` : `Your mean is ${alone(meanC, units)}.`;
  if (of === 'any-time' && coldestC !== undefined) return `Your coldest hour is ${alone(coldestC, units)}.`;
  return `Your coolest day reaches ${alone(lowestHighC, units)}.`;
}

function warmestOf(of: WarmthKind, { highestHighC, meanC }: Planned, units: System): string {
  return of === 'mean' ? `Your mean is ${alone(meanC!, units)}.` : `Your warmest day reaches ${alone(highestHighC, units)}.`;
}

/** The limits of a row in words, each with its kind of temperature. */
export function limitWords({ of, leastC, mostC, when }: WarmthLimit, units: System): string {
  const range =
    leastC === undefined
      ? `at most ${warmthWords(mostC!, units)}`
      : mostC === undefined
        ? `at least ${warmthWords(leastC, units)}`
        : `${warmthWords(leastC, units)} to ${warmthWords(mostC, units)}`;
  return `${kindWords[of]} of ${range}${when ? ` ${when}` : ''}`;
}

/** As labels print it: whole degrees Fahrenheit, with the club's own scale first. */
export function warmthWords(celsius: number, first: System): string {
  return first === 'us' ? `${alone(celsius, 'us')} (${alone(celsius, 'metric')})` : `${alone(celsius, 'metric')} (${alone(celsius, 'us')})`;
}

function alone(celsius: number, units: System): string {
  return units === 'us' ? `${formatNumber(celsiusToFahrenheit(celsius), { places: 0 })} °F` : `${Number(celsius.toFixed(1))} °C`;
}

/** What was asked, in one line. */
export function questionWords(
  { start, lowestHighC, highestHighC, supersOn, brood, place }: Planned,
  units: System,
  language: Language,
): string {
  const highs = `${alone(lowestHighC, units).replace(/ .*/, '')} to ${alone(highestHighC, units)}`;
  return `From ${formatDay(start, language)}, highs ${highs}, honey boxes ${supersOn ? 'on' : 'off'}, ${brood ? 'brood' : 'no brood'}${place.trim() ? `, ${place.trim()}` : ''}`;
}

/** The plan in a sentence. */
export function plannedWords(planned: Planned, units: System, language: Language): string {
  const { start, lowestHighC, highestHighC, meanC, coldestC, supersOn, brood, place } = planned;
  return [
    `From ${formatDay(start, language)}, daily highs from ${warmthWords(lowestHighC, units)} to ${warmthWords(highestHighC, units)}`,
    ...(meanC === undefined ? [] : [`a mean of ${warmthWords(meanC, units)}`]),
    ...(coldestC === undefined ? [] : [`the coldest hour ${warmthWords(coldestC, units)}`]),
    `boxes for harvest ${supersOn ? 'on' : 'off'}`,
    `${brood ? 'with' : 'without'} brood${place.trim() ? `, ${place.trim()}` : ''}.`,
  ].join(', ');
}

/** The origin of a row: place, registration and date of its label, or that no label was opened. */
export function labelWords({ place, seen, registration, labelDate, form }: ShownRow, language: Language): string {
  const about = `${form}; ${place}`;
  if (seen === 'not-opened') return `${about}. Its label could not be opened.`;
  if (seen === 'memory') return `${about}. From memory: no label was opened.`;
  const label = [
    registration ? `registration ${registration}` : 'registration number not seen',
    labelDate ? `label of ${formatDay(labelDate, language)}` : 'date of the label not seen',
  ].join(', ');
  return `${about}. ${label.charAt(0).toUpperCase()}${label.slice(1)}${seen === 'quoted' ? ', as others repeat it' : ''}.`;
}
