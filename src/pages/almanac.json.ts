/* What the finished pages cannot say of themselves and publishing needs: the club, its meetings, its words. Publishing reads this file and takes it out of the site again. */
import type { APIRoute } from 'astro';
import { getContent, type Almanac } from '../lib/content.ts';
import { sourceWords } from '../lib/figures.ts';
import { newsOf } from '../lib/news.ts';
import { seasonTasks } from '../lib/season-tasks.ts';
import { windowsOf, windowsText } from '../lib/season.ts';

export const GET: APIRoute = async () => {
  const almanac = await getContent();
  const { club, meetings, words } = almanac;
  return new Response(
    JSON.stringify({
      club: {
        id: club.id,
        name: club.name,
        almanac: club.almanac,
        place: club.place,
        language: club.language,
        zone: club['time-zone'],
        demonstration: club.demonstration,
      },
      meetings: meetings.map(({ id, data }) => ({
        id,
        title: data.title,
        summary: data.summary,
        kind: data.kind,
        place: data.place,
        day: data.day,
        lastDay: data['last-day'],
        start: data.start,
        finish: data.finish,
        bring: data.bring ?? [],
        calledOffBy: data['called-off-by'],
        changes: data.history?.length ?? 0,
      })),
      season: seasonTasks(almanac),
      news: newsOf(almanac),
      moved: almanac.moved.map(({ from, to }) => ({ from, to })),
      publications: [...almanac.sources.values()].map(sourceWords),
      words: words.map(({ id, data }) => ({ id, names: namesOf(data, club.words), more: data.more })),
      windows: Object.fromEntries(datedPages(almanac)),
    }),
  );
};

/** The name as this club says it first, then all others and the ways people type them. */
function namesOf({ word, uk, also = [] }: Almanac['words'][number]['data'], says: 'us' | 'uk'): string[] {
  const own = says === 'uk' && uk ? [uk, word] : [word, ...(uk ? [uk] : [])];
  return [...new Set([...own, ...also])];
}

/** Pages that are bound to days of the year, each with its days in each district. */
function datedPages({ articles, bulletins, checklists, meetings, seasons }: Almanac): (readonly [place: string, windows: string])[] {
  const rooms = [
    ['know-how', articles],
    ['pests', bulletins],
    ['lists', checklists],
  ] as const;
  const dated = rooms.flatMap(([room, entries]) =>
    entries.flatMap(({ id, data }) => {
      const windows = windowsOf(data.when, seasons);
      return windows ? [[`${room}/${id}/`, windowsText(windows)] as const] : [];
    }),
  );
  const days = meetings.map(
    ({ id, data }) => [`meetings/${id}/`, `all ${data.day.slice(5)} ${(data['last-day'] ?? data.day).slice(5)}`] as const,
  );
  return [...dated, ...days];
}
