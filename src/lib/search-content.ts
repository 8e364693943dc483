/* What the search takes from the collections: the names of the word list, and the days of pages that are bound to the year. */
import type { Almanac } from './almanac.ts';
import { windowsOf, windowsText } from './season.ts';

/** A word of the word list: its names and the ways people type it, and the page that says more. */
export type SearchWord = { id: string; names: string[]; more?: string | undefined };

/** The name as this club says it comes first. */
export const searchWordsOf = ({ words, club }: Almanac): SearchWord[] =>
  words.map(({ id, data: { word, uk, also = [], more } }) => {
    const own = club.words === 'uk' && uk ? [uk, word] : [word, ...(uk ? [uk] : [])];
    return { id, names: [...new Set([...own, ...also])], more };
  });

/** By a page's path below the base: its days in each district, as `valley 05-03 05-17;hill 05-12 05-26`. Undated pages are left out. */
export function datedPages({ articles, bulletins, checklists, meetings, seasons }: Almanac): Record<string, string> {
  const parts = [
    ['know-how', articles],
    ['pests', bulletins],
    ['lists', checklists],
  ] as const;
  const dated = parts.flatMap(([part, entries]) =>
    entries.flatMap(({ id, data }) => {
      const windows = windowsOf(data.when, seasons);
      return windows ? [[`${part}/${id}/`, windowsText(windows)] as const] : [];
    }),
  );
  const days = meetings.map(
    ({ id, data }) => [`meetings/${id}/`, `all ${data.day.slice(5)} ${(data['last-day'] ?? data.day).slice(5)}`] as const,
  );
  return Object.fromEntries([...dated, ...days]);
}
