/* Words of the degree-day calculator. */
import type { Language } from '../../../shared/country/language.ts';
import { formatMonthDay, formatMonthDays } from '../../../shared/days/year-span.ts';
import { formatExact } from '../../../shared/numbers/show-number.ts';
import type { DayTemperatures, DegreeDayMethod } from '../../../shared/season/degree-day.ts';
import { three } from '../form/measures.ts';
import { countedAt, shownDays, sumText, type Asked, type AskedReason, type Plant, type Reached, type Scale, type Sums } from './model.ts';

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

export const sumName = (sum: number, scale: Scale): string => `${sumText(sum)} degree-days (°${scale})`;

export function headline({ scale, sum, days }: Asked, { of, total, reached, reachedOnDay, rule }: Sums, language: Language): string {
  const by = `${methodNames[rule.method]}, base ${formatExact(rule.base)} °${scale}`;
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
  return `${what}, ${methodNames[rule.method]} method, base ${formatExact(rule.base)} °${scale}${sum === undefined ? '' : `, to reach ${three(sum)}`}`;
}

export const reachedWords: Readonly<Record<Exclude<Reached, object>, string>> = {
  'no-figure': 'No figure for this club.',
  'no-sum': 'Write a sum to reach.',
  'not-reached': 'Not reached in a normal year.',
  'no-cap': 'Its cap is not stated, so there is no date.',
  'given-days': 'Days given here have no dates.',
};

/** One day's calculation with its numbers. For several days: the first that counts, then the sum of the rest. */
export function sumWords({ days, scale }: Asked, { of, rule, eachDay = [], total, spread }: Sums): string {
  const by = `${methodNames[rule.method]}: ${methodWords[rule.method]}. Base ${formatExact(rule.base)} °${scale}${rule.cap === undefined ? '' : `, cap ${formatExact(rule.cap)} °${scale}`}.`;
  const first = by.charAt(0).toUpperCase() + by.slice(1);
  if (of === 'normals')
    return `${first} A day’s degree-days are never under 0. Those of a year are added from the start.${spread > 0 ? ` A day’s mean differs by about ${three(spread)} °${scale} from year to year, and that is counted in.` : ''}`;
  const at = countedAt(eachDay);
  return `${first} ${oneDayWords(days[at]!, eachDay[at]!, rule)}${eachDay.length > 1 ? ` All days: ${shownDays(eachDay)} = ${sumText(total!)}.` : ''}`;
}

function oneDayWords({ max, min }: DayTemperatures, counted: number, { method, base, cap = Infinity }: Sums['rule']): string {
  const [low, high, from] = [formatExact(min), formatExact(max), formatExact(base)];
  const within = (value: number): string => formatExact(Math.min(cap, Math.max(base, value)));
  const below = counted === 0 ? 'so nothing: 0' : sumText(counted);
  switch (method) {
    case 'simple':
      return `The day of ${low} to ${high}: (${low} + ${high}) ÷ 2 − ${from} = ${sumText((max + min) / 2 - base)}${counted === 0 && (max + min) / 2 < base ? ', so 0' : ''}.`;
    case 'maximum':
      return `The day of ${low} to ${high}: ${high} − ${from} = ${sumText(max - base)}${max < base ? ', so 0' : ''}.`;
    case 'sine':
      return `The day of ${low} to ${high}: the part of its wave above ${from} is ${below}.`;
    default:
      return `The day of ${low} to ${high}: (${within(min)} + ${within(max)}) ÷ 2 − ${from} = ${sumText(counted)}.`;
  }
}

export const plantWords = ({ sum, scale, base, cap, from, method, stage, place, fromMemory }: Plant, language: Language): string =>
  `${stage} at ${three(sum)}, base ${formatExact(base)} °${scale}${cap === undefined ? '' : `, cap ${formatExact(cap)} °${scale}`}, ${methodNames[method]}, from ${formatMonthDay(from, language)}; ${place}.${fromMemory ? ' From memory.' : ''}`;

export const chart = {
  inAll: (total: number): string => `${sumText(total)} in all`,
  toReach: (sum: number): string => `${three(sum)} to reach`,
  label: 'The sum as it grows, a column for each day given. The dashed line is the sum in all, or the one to reach.',
};

/** What a box holds, as in "Write the base, such as 50." */
export const asked = {
  base: 'the base, such as 50',
  cap: 'the cap, such as 86',
  scale: 'a scale',
  spread: 'the spread, such as 9',
  sum: 'the sum to reach, such as 86',
  temperature: 'a temperature, such as 54',
};

export const says = 'Compare it with the plants of your club, and write down what you see in bloom.';
export const nextLook = (day: string): string => `Next look at the plant: from ${day}.`;
export const nextSum = (day: string): string => `Next sum: ${day}, with the days added until then.`;
export const to = (day: string): string => `to ${day}`;
export const source = (note: number): string => `Source ${note}`;

export const faults: Readonly<Record<Exclude<AskedReason, 'max-under-min' | 'impossible-temperature'>, string>> = {
  'no-method': 'Choose a method: each gives another sum.',
  'cap-without-use': 'Only sine and modified have a cap. Empty it, or choose one of them.',
  'no-sum': 'The sum to reach must be more than 0.',
  'impossible-base': 'The base lies from −150 to 150 degrees.',
  'no-cap': 'The modified method needs a cap, such as 86.',
  'cap-not-over-base': 'The cap must be over the base.',
  'impossible-spread': 'The spread lies from 0 to 50 degrees.',
  'no-days': 'Write the lowest and the highest of each day.',
};
export const inLine = (line: number, sentence: string): string => `Line ${line}: ${sentence}`;
export const maxUnderMin = 'the highest is under the lowest. The lowest comes first.';
export const noWeather = 'no weather goes past 150 degrees.';
export const tooManyDays = (most: number, found: string): string => `The list takes ${most} days at most, and these are ${found}.`;
export const wrongLine = (found: string): string => `found “${found}”. Write the lowest, then the highest of one day, such as 40 54.`;
export const daysInAddress = (written: string): string => `In an address these days are written ${written}. Press “Calculate” to use them.`;
export const noDayOfYear = (typed: string, such: string): string => `“${typed}” is not a day of the year. Write it like ${such}.`;

export const fields = {
  days: 'Days of your own: lowest, highest',
  daysHint: 'One line per day, such as 40 54. You can paste two columns. A date before them is skipped.',
  normals: 'Left empty, the club’s normals count.',
  noNormals: 'The club holds no normals of its own.',
  scale: 'All temperatures in',
  method: 'Method',
  methodHint: 'Each gives another sum. Take the one that your list of plants was made with.',
  methodChoice: (method: DegreeDayMethod): string => `${methodNames[method]}: ${methodWords[method]}`,
  notChosen: 'Not chosen',
  base: 'Base, degrees',
  cap: 'Cap, degrees',
  sum: 'Sum to reach',
  sumHint: 'You can leave it empty.',
  forNormals: 'For normals: start and spread',
  from: 'Sum starts on',
  fromHint: (day: string): string => `Left empty: ${day}.`,
  spread: 'Spread of a day’s mean, degrees',
  spreadHint: 'Left empty: the club’s, and 0 for given days.',
};

export const result = {
  sum: 'Sum',
  day: 'Day the sum is reached',
  plants: 'Plants',
  plant: 'Plant',
  here: 'In a normal year here',
};

export const example = {
  days: (days: Asked['days'], scale: Scale): string =>
    `Three days, lowest and highest: ${days.map(({ min, max }) => `${sumSign(min)} and ${sumSign(max)}`).join('; ')} °${scale}.`,
  byMethod: ({ min, max, base }: { min: number; max: number; base: number }, scale: Scale): string =>
    `One day of ${sumSign(min)} to ${sumSign(max)} °${scale}, base ${formatExact(base)} °${scale}, by each method`,
  method: 'Method',
  how: 'How a day is counted',
  sum: 'Degree-days',
  cap: (cap: number): string => ` (here ${formatExact(cap)})`,
};
const sumSign = (value: number): string => formatExact(value).replace('-', '−');

export const background = {
  sums: 'Sums of plants',
  own: 'Each sum holds for its own base, start, method and place. Never mix two lists.',
  how: 'How dates come from normals',
  normals: (normals: string): string => `The normals are those of ${normals}{source}.`,
  noNormals: 'This club holds no normals, so the sum is of the days that you write alone, and no plant has a date here.',
  spread: (known: boolean): string =>
    `Smooth normals alone add up too little early in the year, since a warm day in a cold week counts. So the spread of a day’s mean is counted in${known ? ': {spread}' : ''}.`,
  off: 'A date may be off by {days} either way, a small early sum by {early}.',
};
