/* Words of the sticky board. */
import { formatExact, formatNumber } from '../../../shared/numbers/show-number.ts';
import { three } from '../form/measures.ts';
import type { Board } from './model.ts';

const mitesWords = (mites: number): string => `${formatNumber(mites, { places: 0 })} ${mites === 1 ? 'mite' : 'mites'}`;
/** As somebody typed them: hours are parts of days. */
export const daysWords = (days: number): string => `${formatExact(Number(days.toPrecision(4)))} ${days === 1 ? 'day' : 'days'}`;

export function perDayWords(perDay: number): string {
  const shown = three(perDay);
  return `${shown} ${shown === '1' ? 'mite' : 'mites'} a day`;
}

export const headline = (perDay: number): string => `${perDayWords(perDay)} fell on the board.`;

/** What was asked, in one line. */
export const questionWords = ({ mites, days }: Board): string => `${mitesWords(mites)} in ${daysWords(days)}`;

/** The calculation with its numbers. */
export const sumWords = ({ mites, days }: Board, perDay: number): string =>
  `${mitesWords(mites)} ÷ ${daysWords(days)} = ${perDayWords(perDay)}.`;

export const says = 'A board only shows a trend. Count mites per hundred bees before you decide.';
export const again = (day: string): string => `Next board: put it in today, for as long, and read it on ${day}.`;

/** What a box holds, as in "Write how many mites lay on the board." */
export const asked = { mites: 'how many mites lay on the board', days: 'how many days it was in, such as 3' };

export const faults = {
  'no-days': 'The days must be more than 0.',
  'mites-not-whole': 'Write whole mites.',
  'mites-negative': 'Mites cannot be under 0.',
  'too-many': 'A board lies at most 366 days, and a million mites a day is no count.',
};

export const fields = {
  mites: 'Mites on the board',
  mitesHint: 'All of them, by daylight.',
  days: 'Days it was in',
  daysHint: 'Such as 3, or 72 hours.',
};

export const result = {
  fell: 'Mites that fell',
  noColony: 'How many mites the colony holds is not worked out. Published factors for that differ tenfold.',
  compare:
    '**Do not compare it with a level per hundred bees.** Compare it with your own boards, of the same hive and length. The levels for boards are below.',
};

export const example = {
  more: 'More is not worked out: published factors from a daily fall to the mites in a colony differ tenfold.',
  table: 'Mites a day',
  mites: 'Mites',
};

export const levels = {
  heading: 'Levels for boards that other groups use',
  differ: 'Each holds for its own place, weeks and board. They do not agree.',
  perDay: 'Mites a day',
  phase: 'Part of the year',
  whose: 'Whose',
  allYear: 'all year',
};
