/* The sentences of the treatment page. They never advise: a row rules out, leaves open, or says whom to ask. */
import { formatDay } from '../../../shared/days/show-day.ts';
import {
  supersBackOn,
  type LabelRow,
  type Planned,
  type TreatmentRule,
  type TreatmentState,
} from '../../../shared/treatments/label-row.ts';
import { formatNumber } from '../../../shared/numbers/show-number.ts';
import { celsiusToFahrenheit } from '../../../shared/units/temperature.ts';
import type { System } from '../parts/measures.ts';
import type { JudgedRow } from './judge.ts';

export const stateNames: Readonly<Record<TreatmentState, string>> = {
  'ruled-out': 'Ruled out',
  'not-ruled-out': 'Not ruled out',
  ask: 'Ask',
};
/** The step of gravity a state is shown with; what is not ruled out has none. */
export const stateSteps: Readonly<Record<TreatmentState, string>> = { 'ruled-out': 'act', 'not-ruled-out': '', ask: 'watch' };

export function headline(judged: readonly JudgedRow[]): string {
  if (judged.length === 0) return 'The club holds no label rows: ask.';
  const count = (state: TreatmentState) => judged.filter((one) => one.judged.state === state).length;
  const [out, open, ask] = [count('ruled-out'), count('not-ruled-out'), count('ask')];
  if (ask === judged.length) return `Ask first, about ${ask === 1 ? 'the one row' : `all ${ask} rows`}.`;
  const parts = [...(out ? [`${out} ruled out`] : []), ...(ask ? [`${ask} to ask about`] : []), ...(open ? [`${open} not ruled out`] : [])];
  return `Of ${judged.length} rows: ${parts.join(', ')}.`;
}

/** One sentence a rule, the one that decides first; or that the row is silent. */
export function judgementWords({ row, judged: { state, rules } }: JudgedRow, planned: Planned, units: System): string {
  if (!row) return rules.map((rule) => askWords(rule, planned)).join(' ');
  if (state === 'not-ruled-out')
    return `This row rules nothing out. ${row.lowC === undefined && row.highC === undefined ? 'It holds no limits of warmth. ' : ''}Your label decides.`;
  return rules.map((rule) => ruleWords(rule, row, planned, units)).join(' ');
}

function ruleWords(rule: TreatmentRule, row: LabelRow, planned: Planned, units: System): string {
  switch (rule) {
    case 'too-cold':
      return `Too cold: the row begins at ${warmthWords(row.lowC!, units)}.`;
    case 'too-warm':
      return `Too warm: the row ends at ${warmthWords(row.highC!, units)}.`;
    case 'supers-on':
      return 'Boxes for harvest must be off.';
    case 'brood':
      return 'Only, or mainly, for a hive without brood.';
    case 'harvest-too-soon':
      return `Boxes for harvest could be back on ${formatDay(supersBackOn(row, planned.start)!)}, after your harvest.`;
    case 'supers-by-label':
      return 'Ask: the label decides on boxes for harvest.';
    case 'harvest-by-label':
      return 'Ask: the label decides how long before a harvest it must be over.';
    case 'past-check-by':
      return `Ask: this row was to be checked again by ${formatDay(row.checkBy)}.`;
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

/** As labels print it: whole degrees Fahrenheit, the club's own scale first. */
export function warmthWords(celsius: number, first: System): string {
  const us = `${formatNumber(celsiusToFahrenheit(celsius), { places: 0 })} °F`;
  const metric = `${Number(celsius.toFixed(1))} °C`;
  return first === 'us' ? `${us} (${metric})` : `${metric} (${us})`;
}

/** What was planned, in a sentence. */
export function plannedWords({ start, lowC, highC, supersOn, brood, place }: Planned, units: System): string {
  return `From ${formatDay(start)}, every day between ${warmthWords(lowC, units)} and ${warmthWords(highC, units)}, boxes for harvest ${supersOn ? 'on' : 'off'}, ${brood ? 'with' : 'without'} brood${place.trim() ? `, ${place.trim()}` : ''}.`;
}
