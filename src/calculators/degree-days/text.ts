/* Sentences and chart of the degree-day calculator. */
import type { Language } from '../../../shared/country/language.ts';
import { formatMonthDay, formatMonthDays } from '../../../shared/days/year-span.ts';
import { formatNumber, plainDecimal } from '../../../shared/numbers/show-number.ts';
import type { DayTemperatures, DegreeDayMethod } from '../../../shared/season/degree-day.ts';
import { band } from '../form/band.ts';
import type { Drawing } from '../form/drawing.ts';
import { three } from '../form/measures.ts';
import { runningSums, type Asked, type Plant, type Reached, type Scale, type Sums } from './model.ts';

export const methodNames: Readonly<Record<DegreeDayMethod | 'not stated', string>> = {
  simple: 'simple',
  floored: 'low-floored',
  sine: 'sine',
  modified: 'modified',
  maximum: 'maximum',
  'not stated': 'method not stated',
};

export const methodWords: Readonly<Record<DegreeDayMethod, string>> = {
  simple: 'the mean of lowest and highest, less the base',
  floored: 'a lowest under the base counts as the base',
  sine: 'the day as a smooth wave, the part above the base',
  modified: 'like low-floored, and a highest over the cap counts as the cap',
  maximum: 'the highest alone, less the base',
};

export const sumName = (sum: number, scale: Scale): string => `${places(sum)} degree-days (°${scale})`;
/** Sums are rounded to a tenth. */
export const places = (value: number): string =>
  Math.abs(value) >= 100 ? formatNumber(value, { places: 0 }) : Number(value.toFixed(2)).toString();

export function headline({ scale, sum, days }: Asked, { of, total, reached, reachedOnDay, rule }: Sums, language: Language): string {
  const by = `${methodNames[rule.method]}, base ${plainDecimal(rule.base)} °${scale}`;
  if (total === undefined) return 'No figure for this club: it holds no normals. Write days of your own.';
  if (of === 'given-days') {
    const went =
      reachedOnDay === undefined
        ? sum === undefined
          ? ''
          : ` That is under ${three(sum)}.`
        : ` ${three(sum!)} is reached on day ${reachedOnDay} of ${days.length}.`;
    return `${sumName(total, scale)}, ${by}.${went}`;
  }
  if (typeof reached === 'object') return `${sumName(sum!, scale)}: ${formatMonthDays(reached.earliest, reached.latest, language)}, ${by}.`;
  return `${sumName(total, scale)} in a normal year, ${by}.`;
}

/** What was asked, in one line. */
export function questionWords({ days, scale, sum }: Asked, { rule }: Pick<Sums, 'rule'>): string {
  const what = days.length > 0 ? `${days.length} ${days.length === 1 ? 'day' : 'days'} of your own` : 'A normal year';
  return `${what}, ${methodNames[rule.method]} method, base ${plainDecimal(rule.base)} °${scale}${sum === undefined ? '' : `, to reach ${three(sum)}`}`;
}

export function reachedWords(reached: Exclude<Reached, object>): string {
  return {
    'no-figure': 'No figure for this club.',
    'no-sum': 'Write a sum to reach.',
    'not-reached': 'Not reached in a normal year.',
    'no-cap': 'Its cap is not stated, so there is no date.',
    'given-days': 'Days given here have no dates.',
  }[reached];
}

/** One day's calculation with its numbers. For several days: the first that counts, then the sum of the rest. */
export function sumWords({ days, scale }: Asked, { of, rule, eachDay = [], total, spread }: Sums): string {
  const by = `${methodNames[rule.method]}: ${methodWords[rule.method]}. Base ${plainDecimal(rule.base)} °${scale}${rule.cap === undefined ? '' : `, cap ${plainDecimal(rule.cap)} °${scale}`}.`;
  const first = by.charAt(0).toUpperCase() + by.slice(1);
  if (of === 'normals')
    return `${first} A day’s degree-days are never under 0. Those of a year are added from the start.${spread > 0 ? ` A day’s mean differs by about ${three(spread)} °${scale} from year to year, and that is counted in.` : ''}`;
  const shown = eachDay.length > 8 ? `${eachDay.slice(0, 6).map(places).join(' + ')} + …` : eachDay.map(places).join(' + ');
  const at = Math.max(
    0,
    eachDay.findIndex((one) => one > 0),
  );
  return `${first} ${oneDayWords(days[at]!, eachDay[at]!, rule)}${eachDay.length > 1 ? ` All days: ${shown} = ${places(total!)}.` : ''}`;
}

function oneDayWords({ max, min }: DayTemperatures, counted: number, { method, base, cap = Infinity }: Sums['rule']): string {
  const [low, high, from] = [plainDecimal(min), plainDecimal(max), plainDecimal(base)];
  const within = (value: number): string => plainDecimal(Math.min(cap, Math.max(base, value)));
  const below = counted === 0 ? 'so nothing: 0' : places(counted);
  switch (method) {
    case 'simple':
      return `The day of ${low} to ${high}: (${low} + ${high}) ÷ 2 − ${from} = ${places((max + min) / 2 - base)}${counted === 0 && (max + min) / 2 < base ? ', so 0' : ''}.`;
    case 'maximum':
      return `The day of ${low} to ${high}: ${high} − ${from} = ${places(max - base)}${max < base ? ', so 0' : ''}.`;
    case 'sine':
      return `The day of ${low} to ${high}: the part of its wave above ${from} is ${below}.`;
    default:
      return `The day of ${low} to ${high}: (${within(min)} + ${within(max)}) ÷ 2 − ${from} = ${places(counted)}.`;
  }
}

export function plantWords({ sum, scale, base, cap, from, method, stage, place, fromMemory }: Plant, language: Language): string {
  return `${stage} at ${three(sum)}, base ${plainDecimal(base)} °${scale}${cap === undefined ? '' : `, cap ${plainDecimal(cap)} °${scale}`}, ${methodNames[method]}, from ${formatMonthDay(from, language)}; ${place}.${fromMemory ? ' From memory.' : ''}`;
}

/** The running sum by day, or undefined where there is nothing to show. */
export function drawSum({ sum }: Asked, { eachDay = [], total = 0 }: Sums): Drawing | undefined {
  if (eachDay.length < 2 || total === 0) return undefined;
  const columns = [0, ...runningSums(eachDay)].map((most) => ({ least: 0, most }));
  const across = sum === undefined ? { at: total, words: `${places(total)} in all` } : { at: sum, words: `${three(sum)} to reach` };
  return band(
    columns,
    across,
    places,
    'The sum as it grows, a column for each day given. The dashed line is the sum in all, or the one to reach.',
  );
}
