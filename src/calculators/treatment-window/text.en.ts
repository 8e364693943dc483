/* Words of the treatment window. They never advise. A row rules out, works poorly, leaves open, or says who to ask. */
import type { Language } from '../../../shared/country/language.ts';
import { formatDay } from '../../../shared/days/show-day.ts';
import type { LabelRow, Planned, TreatmentRule, TreatmentState, WarmthKind, WarmthLimit } from '../../../shared/treatments/label-row.ts';
import type { System } from '../form/measures.ts';
import type { RowJudgement, ShownRow } from './model.ts';
import { degrees, warmthAlone, warmthWords } from './warmth.ts';

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

/** The next step in sentences, once under the table, after the name of the state. */
export const nextSteps: Readonly<Record<TreatmentState, string>> = {
  'ruled-out': 'a label forbids it for what you wrote. Do not put it in. Wait for other days, or look at another active ingredient.',
  ask: 'something is not known here. Do not put it in yet. Read the label on your container, and ask the office named on this page.',
  'works-poorly': 'this page found nothing in a label against it, and trials say that it does little now. Ask about a better time.',
  'nothing-found': 'this page found nothing against it. That is not a permission. Read your label: it alone allows.',
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

export const nothingFound = 'This page found nothing against it. Read your label.';
export const noLimits = 'The row holds no limits of warmth.';

type Computed = 'too-cold' | 'too-warm' | 'poor-cold' | 'poor-warm' | 'harvest-too-soon' | 'past-check-by' | 'other-place';
/** The rules that need no value. */
export const rules: Readonly<Record<Exclude<TreatmentRule, Computed>, string>> = {
  'supers-on': 'This label forbids boxes for harvest on the hive.',
  'brood-forbidden': 'This label forbids it while there is brood.',
  'supers-by-label': 'Ask: the label decides on boxes for harvest.',
  'harvest-by-label': 'Ask: the label decides how long before a harvest it must be over.',
  'mean-not-told': 'Ask: this row speaks of the mean temperature, which you did not write.',
  'coldest-not-told': 'Ask: this row speaks of the coldest hour, which you did not write.',
  'only-quoted': 'Ask: we saw this label only as others repeat it.',
  'no-registration-number': 'Ask: no registration number was seen with this label.',
  'no-label-date': 'Ask: we saw no date on this label, so yours may differ.',
  'not-opened': 'Ask: no label of this form could be opened.',
  'from-memory': 'Ask: this row is from memory. No label was opened.',
  superseded: 'Ask: this form is no longer sold.',
  'poor-with-brood': 'It works poorly with brood: mites under cappings live on. No label seen here forbids that.',
  'not-registered': 'Ask: what is not registered for bee colonies where you are stays off the hive.',
  'not-checked': 'Ask whether it is registered for bee colonies where you are.',
  'place-not-said': 'Ask: no place was written, so no row is yours yet.',
};
export const poorCold = 'It works poorly in such cold.';
export const poorWarm = 'It works poorly in such heat.';
export const boxesBack = (day: string): string => `Boxes for harvest could be back on ${day}, after your harvest.`;
export const pastCheck = (day: string): string => `Ask: this row was to be checked again by ${day}.`;
export const noRowFor = (place: string): string => `Ask: no row is held for ${place}.`;

export const elsewhereOut = (place: string, form: string): string =>
  `Wait: the label of another place, ${place}, ${form}, would rule these days out.`;
export const elsewherePoor = (form: string): string => `It works poorly in such weather, as is said of ${form}.`;

/** The temperature that a limit means, in plain words. */
export const kindWords: Readonly<Record<WarmthKind, string>> = {
  'daily-high': 'daily highs',
  mean: 'a mean of day and night',
  'any-time': 'temperatures at any hour',
};

/** A limit that the days break. `poorly`: no rule of a label, but the row says that it works poorly outside of it. */
export type Broken = { of: WarmthKind; bound: string; when: string | undefined; poorly: boolean };
const whose = (poorly: boolean): string => (poorly ? 'it is said to need' : 'its label asks for');
const onDays = (when: string | undefined): string => (when ? ` ${when}` : '');
export const tooCold = ({ of, bound, when, poorly }: Broken): string =>
  `Too cold: ${whose(poorly)} ${kindWords[of]} of at least ${bound}${onDays(when)}.`;
export const tooWarm = ({ of, bound, when, poorly }: Broken): string =>
  `Too warm: ${whose(poorly)} ${kindWords[of]} of at most ${bound}${onDays(when)}.`;

export const yourWarmest = (warmth: string): string => `Your warmest day reaches ${warmth}.`;
export const yourCoolest = (warmth: string): string => `Your coolest day reaches ${warmth}.`;
export const yourMean = (warmth: string): string => `Your mean is ${warmth}.`;
export const yourColdestHour = (warmth: string): string => `Your coldest hour is ${warmth}.`;

/** The limits of a row in words, each with its kind of temperature. */
export function limitWords({ of, leastC, mostC, when }: WarmthLimit, units: System): string {
  const range =
    leastC === undefined
      ? `at most ${warmthWords(mostC!, units)}`
      : mostC === undefined
        ? `at least ${warmthWords(leastC, units)}`
        : `${warmthWords(leastC, units)} to ${warmthWords(mostC, units)}`;
  return `${kindWords[of]} of ${range}${onDays(when)}`;
}

/** What was asked, in one line. */
export function questionWords(
  { start, lowestHighC, highestHighC, supersOn, brood, place }: Planned,
  units: System,
  language: Language,
): string {
  const highs = `${degrees(lowestHighC, units)} to ${warmthAlone(highestHighC, units)}`;
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
  const number = registration ? `Registration ${registration}` : 'Registration number not seen';
  const date = labelDate ? `label of ${formatDay(labelDate, language)}` : 'date of the label not seen';
  return `${about}. ${number}, ${date}${seen === 'quoted' ? ', as others repeat it' : ''}.`;
}

/** What a box holds, as in "Write the first day of the treatment." */
export const asked = {
  start: 'the first day of the treatment',
  coolest: (such: number): string => `the daytime high of the coolest day, such as ${such}`,
  warmest: (such: number): string => `the daytime high of the warmest day, such as ${such}`,
  mean: (such: number): string => `the mean of day and night, such as ${such}`,
  coldest: (such: number): string => `how cold the coldest hour gets, such as ${such}`,
  supers: 'whether boxes for harvest are on',
  brood: 'whether there is brood',
  registered: 'whether it is registered where you are',
  harvest: 'the day of the next harvest',
};

export const faults = {
  noWeather: 'Weather lies from −60 to 60 °C (−76 to 140 °F).',
  warmestUnderCoolest: 'The warmest day cannot be cooler than the coolest.',
  meanOverHigh: 'The mean cannot be above the highest daytime high.',
  hourOverHigh: 'The coldest hour cannot be warmer than the lowest daytime high.',
};

export const again =
  'Look again at the weather each morning. Count mites before you treat, and again when the treatment time on your label is over.';
export const stateAndStep = (state: TreatmentState): string => `${stateNames[state]}: ${nextSteps[state]}`;
export const source = (note: number): string => `Source ${note}`;

export const fields = {
  such: (example: string): string => `Such as ${example}`,
  start: 'First day of the treatment',
  highs: 'Daytime highs of the days ahead',
  highsHint: 'The highest temperature of each day, from the forecast. Not the nights. You can type {such}.',
  coolest: 'Coolest day’s high',
  warmest: 'Warmest day’s high',
  rare: 'Only where a label speaks of them',
  rareHint: 'You can leave them empty. The answer says if a row needs one.',
  mean: 'Mean of day and night',
  coldest: 'Coldest hour',
  supers: 'Boxes for harvest',
  supersChoices: { on: 'On', off: 'Off' },
  brood: 'Brood in the hive',
  broodChoices: { yes: 'Yes', no: 'No' },
  place: 'Land or state whose label it is',
  places: (places: readonly string[]): string =>
    places.length > 0 ? `Rows are held for: ${places.join('; ')}.` : 'The club holds no rows.',
  registered: 'Registered for bee colonies there',
  registeredChoices: { yes: 'Yes, I looked', no: 'No', 'not-checked': 'Not checked' },
  harvest: 'Next harvest, if one is to come',
};

export const result = {
  heading: 'Row by row',
  row: 'Ingredient and form',
  state: 'State and next step',
  why: 'Why',
  asking: 'Ask first about these',
  askingOf: (rows: number): string => `Ask first about these (${rows})`,
};

export const example = {
  registered: (day: string): string => `Registered there. Read on ${day}.`,
  others: (rows: number): string => `${rows} more ${rows === 1 ? 'row says' : 'rows say'} only: ask. No label of them could be opened.`,
};

const byLabel = 'as the label on your container says';
const BROOD = {
  yes: 'reaches mites under cappings',
  no: 'does not reach mites under cappings',
  'outlasts-brood': 'outlasts the brood',
  'not-known': 'may or may not reach mites under cappings: we do not know',
} as const;

export const background = {
  heading: 'The rows as they are held',
  elsewhere: (rows: number): string => `Elsewhere: ${rows === 1 ? 'one row' : `${rows} rows`}`,
  warmth: (limits: readonly WarmthLimit[], units: System): string =>
    `Warmth: ${limits.length === 0 ? byLabel : limits.map((limit) => limitWords(limit, units)).join('; ')}.`,
  boxes: (supers: LabelRow['supers'], backDays: number | undefined): string =>
    `Boxes for harvest: ${{ on: 'may be on', label: byLabel, off: backDays === undefined ? 'off' : `off, back ${backDays} days after` }[supers]}.`,
  brood: (reaches: keyof typeof BROOD, forbids: boolean): string =>
    `It ${BROOD[reaches]}${forbids ? ', and its label forbids it with brood' : ''}.`,
  poorWithBrood: 'It works poorly while there is brood.',
  poorOutside: (limits: readonly WarmthLimit[], units: System): string =>
    `It works poorly outside of ${limits.map((limit) => limitWords(limit, units)).join('; ')}.`,
  days: (least: number | undefined, most: number | undefined): string =>
    `Days: ${most === undefined ? (least === undefined ? byLabel : `${least} or more`) : least === undefined || least === most ? most : `${least} to ${most}`}.`,
  resistance: (words: string): string => `Resistance: ${words}`,
  checkBy: (day: string): string => `To be checked again by ${day}.`,
  unopened: 'Labels that we could not open',
  unopenedHint: 'This page has no limits for these. The label on your container has them.',
  poorNotForbidden: 'It works poorly while there is brood; no label seen here forbids that.',
  states: 'What the four states mean, and what to do next',
  state: (state: TreatmentState): string => `**${stateNames[state]}:** ${nextSteps[state]}`,
  temperatures:
    'Each limit says which temperature it means: the high of each day, the mean of day and night, or any hour. It is compared with that one, to a tenth of a degree Celsius, since labels print whole degrees Fahrenheit. A limit of the daytime high does not look at the nights.',
  memory:
    'A row from memory, of a label seen without its date or registration number, or seen only as others repeat it, never says more than: ask.',
};
