/* Finds the pages that were past their next check on a day. */
import type { Day } from '../../shared/days/day.ts';
import type { Tongue } from '../../shared/country/language.ts';
import type { Almanac } from './content.ts';

type Due = { title: string; lang: Tongue | undefined; next: Day; by: string };

/** A meeting is never among them: it has a day of its own. */
export function pastReview(almanac: Almanac, day: string): Due[] {
  const pages = [
    ...almanac.checklists,
    ...almanac.bulletins,
    ...almanac.articles,
    ...almanac.sheets,
    ...almanac.reading,
    ...almanac.treatments,
    ...almanac.forage,
  ];
  const figures = [...almanac.figures.values()];
  return [...pages.map(({ data, lang }) => ({ ...data, lang })), ...figures]
    .filter((data) => data['next-check'] < day)
    .map(({ title, lang, 'next-check': next, by }) => ({ title, lang, next, by }));
}
