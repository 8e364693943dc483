/* Words of the club's own mite counts: their page and its table. */
import { formatNumber } from '../../shared/numbers/show-number.ts';

export const rateText = (rate: number): string => formatNumber(rate, { places: 1 });
export const range = (low: number, high: number): string => `${rateText(low)} to ${rateText(high)}`;
export const noRange = 'too few colonies for a range';
export const noLevel = 'no level for this part of the year';
export const over = (colonies: number, all: number): string => `${colonies} of ${all}`;
export const titleOf = (year: string): string => `Counts of ${year}`;
const METHODS = { wash: 'wash', roll: 'roll', gas: 'gas' };
export const methods = (all: readonly (keyof typeof METHODS)[]): string => all.map((each) => METHODS[each]).join(' and ');

export const table = {
  half: 'Half-month',
  colonies: 'Colonies',
  spread: 'Lowest, middle, highest',
  together: 'All together',
  over: 'At or over the level',
};

export const page = {
  title: 'Local mite counts',
  lead: 'Mites that members of this club counted, by half-month, beside the level the club follows.',
  season: (colonies: number, days: string, rate: string, likely: string): string =>
    `${colonies} counts, ${days}. All together ${rate} mites to 100 bees; likely range ${likely}.`,
  chart:
    'Across: mites to 100 bees. Every colony a dot, the middle half of them a bar with the middle one marked, the level a dashed line.',
  numbers: (halves: number): string => `The numbers of the chart (${halves} half-months)`,
  level: 'The level',
  allYear: 'all year',
  how: 'How it is calculated',
  each: 'Each colony: mites, divided by bees, times 100.',
  together:
    'All together: all mites over all bees, times 100. The likely range allows for colonies that differ, and stands from four colonies on.',
  arithmetic: 'It is the arithmetic of [Mite count](calculator) for several colonies.',
  evening: 'Put the counts of an evening together',
  limits: 'What these counts do not tell',
  members: 'Members who count are not all members. Their hives may be better looked after, or worse.',
  middle: 'The middle hides the worst colony. Count your own: {fewest} colonies or more.',
  middleSeveral: 'The middle hides the worst colony. Count your own: several colonies.',
  elsewhere: 'Other places, other years, other methods: do not compare them with these as if they were one.',
  noNames: 'It names no treatment and no yard.',
};
