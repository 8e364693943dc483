/* Words of the count day. */
import { formatDay } from '../../../shared/days/show-day.ts';
import type { Language } from '../../../shared/country/language.ts';
import { formatExact, formatNumber } from '../../../shared/numbers/show-number.ts';
import { rateWords, type Evening, type Together } from './model.ts';

const colonies = (count: number): string => `${count} ${count === 1 ? 'colony' : 'colonies'}`;
const whole = (value: number): string => formatNumber(value, { places: 0 });

export function headline(together: Together): string {
  const { level, over } = together;
  const many = together.colonies.length;
  if (!level) return `${colonies(many)}: the middle one has ${rateWords(together.spread.middle, together)} mites per hundred bees.`;
  if (over === 0) return `None of ${colonies(many)} is at or over ${formatExact(level.levelPer100)} per hundred bees.`;
  return `${over} of ${colonies(many)} ${over === 1 ? 'is' : 'are'} at or over ${formatExact(level.levelPer100)} per hundred bees.`;
}

export const moreWords = ({ over, level }: Together): string =>
  over > 0
    ? 'Each of them needs its own decision. The middle of a club says nothing about one hive.'
    : level
      ? 'A small sample can miss. The likely range of each colony is on the page of the mite count.'
      : 'The club follows no level in this part of the year, so nobody is judged here.';

export const askedWords = ({ counts, date, method }: Evening, language: Language): string =>
  `${colonies(counts.length)}, ${formatDay(date, language)}, ${{ wash: 'wash', roll: 'sugar roll', gas: 'carbon dioxide' }[method]}`;

export function allWords(together: Together): string {
  const { per100, range, lowPer100, highPer100 } = together.all;
  const likely =
    range === 'too-few-colonies'
      ? 'no range under four colonies'
      : `likely ${rateWords(lowPer100!, together)} to ${rateWords(highPer100!, together)}`;
  return `${rateWords(per100, together)} (${likely})`;
}

export const sumWords = (mites: number, bees: number, together: Together): string =>
  `All together: ${whole(mites)} mites, divided by ${whole(bees)} bees, times 100 = ${rateWords(together.all.per100, together)}.`;

export const overWords = ({ colonies: all, level }: Together): string => {
  if (!level) return 'No level for this part of the year.';
  const over = all.filter(({ isOver }) => isOver).map(({ label }) => label);
  return over.join(', ') || 'None';
};

export const levelWords = ({ levelPer100, words }: NonNullable<Together['level']>): string =>
  `${formatExact(levelPer100)} per 100 bees. ${words}`;

export const says = {
  over: 'Look at each colony over the level with its owner, in the mite count. Then give the file to the webmaster.',
  under: 'Give the file to the webmaster, who puts it with the club’s counts.',
};
export const again = (day: string): string => `Next round of counts: by ${day}.`;
/** What a box holds, as in "Write the day of the count." */
export const asked = { date: 'the day of the count', district: 'the district' };

export const chart = {
  level: (per100: number): string => `the club’s level, ${formatExact(per100)}`,
  label: 'Mites per hundred bees: each colony is a dot, the middle half a bar, the level a dashed line. The numbers below say the same.',
};

export const fields = {
  rows: 'One line per colony. A name stays on this page: the file has none.',
  date: 'Day of the count',
  dateHint: (such: string): string => `Such as ${such}`,
  district: 'District',
};

export const result = {
  heading: 'The colonies of this day',
  chart: 'Across: mites per hundred bees. Each colony is a dot. The bar is the middle half, with the middle one marked.',
  spread: 'Lowest, middle, highest',
  all: 'All together',
  over: 'At or over the level',
  level: 'The level: {level}',
};

export const example = {
  numbers: (spread: string, all: string, over: string): string =>
    `Lowest, middle, highest: ${spread}. All together: ${all}. At or over the level: ${over}.`,
  table: 'The colonies of the example',
  colony: 'Colony',
  mites: 'Mites',
  bees: 'Bees',
  per100: 'Per 100',
  file: 'The file has a line for each colony with the day, the district, mites, bees and the method, and no names.',
};
