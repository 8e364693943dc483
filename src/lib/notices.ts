/*
 * Notices and the pages at whose head they stand. Which of them holds today is decided when a page is read; one whose last
 * day is past on the day of the edition is left out for good.
 */
import { formatDay, formatDayRange } from '../../shared/days/show-day.ts';
import type { Day } from '../../shared/days/day.ts';
import { EVERY_PAGE, type Notice } from '../schemas/notices.ts';
import type { Almanac } from './content.ts';
import { askOf, type Asked } from './page-context.ts';
import { sourceWords } from './figures.ts';

export type Told = {
  id: string;
  from: string;
  until: string;
  kind: string;
  title: string;
  says: string[];
  where: string;
  days: string;
  by: string;
  ask: Asked;
  source: string;
  pages: string[];
};

const KINDS: Record<Notice['kind'], string> = {
  disease: 'Disease near by',
  recall: 'Recall',
  'called off': 'Called off',
  law: 'New rule',
  other: 'Notice',
};

/** All that may still hold on some day from `day` on, the first to begin first. */
export function noticesFrom(almanac: Almanac, day: string): Told[] {
  return almanac.notices
    .filter(({ data }) => data.until >= day)
    .map(({ id, data }) => ({
      id,
      from: data.from,
      until: data.until,
      kind: KINDS[data.kind],
      title: data.title,
      says: data.says,
      where: almanac.seasons.find((district) => district.id === data.district)?.name ?? '',
      days: data.from === data.until ? formatDay(data.from as Day) : formatDayRange(data.from as Day, data.until as Day),
      by: data.by,
      ask: askOf(almanac, data.ask),
      source: data.source && almanac.sources.has(data.source) ? sourceWords(almanac.sources.get(data.source)!) : '',
      pages: data.concerns,
    }));
}

/** Those of the page at `place`, such as `/pests/varroa/`. */
export const noticesAt = (almanac: Almanac, place: string, day: string): Told[] =>
  noticesFrom(almanac, day).filter(({ pages }) => pages.includes(EVERY_PAGE) || pages.includes(place));
