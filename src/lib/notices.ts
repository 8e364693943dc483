/*
 * Notices, and the pages that show them at the top. The browser decides which are current when a page is read. A notice whose last day
 * precedes the edition's day is left out.
 */
import * as text from './notices.en.ts';
import type { Day } from '../../shared/days/day.ts';
import { formatDay, formatDayRange } from './country.ts';
import { EVERY_PAGE } from '../schemas/notices.ts';
import type { Almanac } from './content.ts';
import { askWithin, type Asked } from './page-context.ts';
import { sourceWords } from './figures.ts';

export type Told = {
  id: string;
  from: Day;
  until: Day;
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

/** Notices that are still current on `day` or later, sorted by first day. */
export function noticesFrom(almanac: Almanac, day: string): Told[] {
  return almanac.notices
    .filter(({ data }) => data.until >= day)
    .map(({ id, data }) => ({
      id,
      from: data.from,
      until: data.until,
      kind: text.kinds[data.kind],
      title: data.title,
      says: data.says,
      where: almanac.seasons.find((district) => district.id === data.district)?.name ?? '',
      days: data.from === data.until ? formatDay(data.from) : formatDayRange(data.from, data.until),
      by: data.by,
      ask: askWithin(almanac, data.ask),
      source: data.source && almanac.sources.has(data.source) ? sourceWords(almanac.sources.get(data.source)!) : '',
      pages: data.concerns,
    }));
}

/** Notices of the page at `place`, such as `/pests/varroa/`. */
export const noticesAt = (almanac: Almanac, place: string, day: string): Told[] =>
  noticesFrom(almanac, day).filter(({ pages }) => pages.includes(EVERY_PAGE) || pages.includes(place));
