/* Sentences of the count day. */
import { formatDay } from '../../../shared/days/show-day.ts';
import type { Language } from '../../../shared/country/language.ts';
import { formatAgainst, formatNumber } from '../../../shared/numbers/show-number.ts';
import type { Evening, Together } from './model.ts';

const colonies = (count: number): string => `${count} ${count === 1 ? 'colony' : 'colonies'}`;

/** Never rounded across the level. */
export const rateWords = (rate: number, { level }: Pick<Together, 'level'>): string =>
  level ? formatAgainst(rate, level.levelPer100, 1) : formatNumber(rate, { places: 1 });

export function headline(together: Together): string {
  const { level, over } = together;
  const many = together.colonies.length;
  if (!level) return `${colonies(many)}: the middle one has ${rateWords(together.spread.middle, together)} mites per hundred bees.`;
  if (over === 0) return `None of ${colonies(many)} is at or over ${level.levelPer100} per hundred bees.`;
  return `${over} of ${colonies(many)} ${over === 1 ? 'is' : 'are'} at or over ${level.levelPer100} per hundred bees.`;
}

export const moreWords = ({ over, level }: Together): string =>
  over > 0
    ? 'Each of them needs its own decision. The middle of a club says nothing about one hive.'
    : level
      ? 'A small sample can miss. The likely range of each colony is on the page of the mite count.'
      : 'The club follows no level in this part of the year, so nobody is judged here.';

export const askedWords = ({ counts, date, method }: Evening, language: Language): string =>
  `${colonies(counts.length)}, ${formatDay(date, language)}, ${{ wash: 'wash', roll: 'sugar roll', gas: 'carbon dioxide' }[method]}`;

export function spreadWords(together: Together): string {
  const { lowest, middle, highest } = together.spread;
  return [lowest, middle, highest].map((rate) => rateWords(rate, together)).join(', ');
}

export function allWords(together: Together): string {
  const { per100, range, lowPer100, highPer100 } = together.all;
  const likely =
    range === 'too-few-colonies'
      ? 'no range under four colonies'
      : `likely ${rateWords(lowPer100!, together)} to ${rateWords(highPer100!, together)}`;
  return `${rateWords(per100, together)} (${likely})`;
}

export function sumWords({ counts }: Evening, together: Together): string {
  const [mites, bees] = [counts.reduce((sum, count) => sum + count.mites, 0), counts.reduce((sum, count) => sum + count.bees, 0)];
  return `All together: ${formatNumber(mites, { places: 0 })} mites, divided by ${formatNumber(bees, { places: 0 })} bees, times 100 = ${rateWords(together.all.per100, together)}.`;
}

export const overWords = ({ colonies: all, level }: Together): string => {
  if (!level) return 'No level for this part of the year.';
  return (
    all
      .filter(({ isOver }) => isOver)
      .map(({ label }) => label)
      .join(', ') || 'None'
  );
};
