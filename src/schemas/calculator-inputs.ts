/*
 * The names and kinds of the values that each calculator takes from an address or from an Example, in its fixed units. A test compares
 * them with the forms.
 */
import { isDay } from '../../shared/days/day.ts';
import { readTypedNumber } from '../../shared/numbers/typed-number.ts';
import { degreeDayMethods } from '../../shared/season/degree-day.ts';
import { phases } from '../../shared/season/when.ts';
import type { Calculator } from './calculators.ts';

/** `text` is a list or a name, which only the form itself can judge. A list of words is a choice. */
export type Input = 'number' | 'count' | 'day' | 'text' | readonly string[];

export const calculatorInputs: Readonly<Record<Calculator['slug'], Readonly<Record<string, Input>>>> = {
  'mite-count': { samples: 'text', method: ['wash', 'roll', 'gas'], phase: phases, recovery: 'number' },
  'count-day': { counts: 'text', date: 'day', district: 'text', method: ['wash', 'roll', 'gas'], phase: phases },
  'sampling-plan': { share: 'number', certainty: 'number', colonies: 'count' },
  'sticky-board': { mites: 'count', days: 'number' },
  syrup: {
    'sugar-parts': 'number',
    'water-parts': 'number',
    by: ['weight', 'volume'],
    know: ['sugar', 'water', 'syrup'],
    amount: 'number',
    unit: 'text',
    temperature: 'number',
    'sugar-per-cup': 'number',
  },
  'winter-stores': {
    'gross-kg': 'number',
    'empty-kg': 'number',
    deep: 'number',
    medium: 'number',
    shallow: 'number',
    'target-kg': 'number',
    mix: ['1:1-weight', '3:2-weight', '2:1-weight', '2:1-volume', '1kg-630ml'],
  },
  'package-calendar': {
    installed: 'day',
    shaken: 'day',
    pounds: 'number',
    queen: ['candy', 'released'],
    comb: ['drawn', 'foundation'],
    'bees-per-pound': 'number',
  },
  'package-order': {
    lines: 'text',
    allowance: 'number',
    hours: 'number',
    'bees-per-pound': 'number',
    'spare-queens': 'count',
    'cage-lb': 'number',
    'can-lb': 'number',
    'syrup-l-each': 'number',
  },
  'weight-check': { rule: ['eu', 'ca', 'us'], 'label-g': 'number', lot: 'count', 'weights-g': 'text' },
  'brood-dates': {
    caste: ['worker', 'queen', 'drone'],
    seen: ['egg', 'open', 'sealed', 'emerging', 'caged'],
    date: 'day',
  },
  'treatment-window': {
    start: 'day',
    'lowest-high': 'number',
    high: 'number',
    mean: 'number',
    low: 'number',
    supers: ['on', 'off'],
    brood: ['yes', 'no'],
    place: 'text',
    registered: ['yes', 'no', 'not-checked'],
    'harvest-date': 'day',
  },
  'degree-days': {
    days: 'text',
    base: 'number',
    cap: 'number',
    scale: ['F', 'C'],
    method: degreeDayMethods,
    spread: 'number',
    from: 'text',
    sum: 'number',
  },
};

/** What a value must be, in words, where it is not. Null for a value that the calculator takes. */
export function inputWrong(input: Input, value: string): string | null {
  if (value === '' || input === 'text') return null;
  if (input === 'day') return isDay(value) ? null : 'a day such as 2026-04-18';
  if (input === 'count') return /^\d+$/.test(value) ? null : 'a whole number, such as 3';
  if (input === 'number') return readTypedNumber(value).ok ? null : 'a number, without its unit';
  return input.includes(value) ? null : `one of: ${input.join(', ')}`;
}
