/* Pages that a hand-out may be made of, by kind, in the order of their lists. */
import * as text from './hand-out.en.ts';
import type { Tongue } from '../../shared/country/language.ts';
import type { Almanac } from './almanac.ts';
import { calculatorsHere } from './rooms.ts';
import { meetingTime } from './meetings.ts';
import { windowsOf, windowsText } from './season.ts';

/** `due` are its days here, as `valley 05-03 05-17;hill 05-12 05-26`; `day` is the last of a meeting. */
export type HandOutPage = { path: string; title: string; due?: string; day?: string; words?: string; lang?: Tongue };

/** A kind without pages is left out. */
export function pagesByKind(almanac: Almanac): { name: string; pages: HandOutPage[] }[] {
  const { checklists, bulletins, treatments, articles, meetings, seasons } = almanac;
  const dated = (
    room: string,
    entries: readonly { id: string; lang?: Tongue | undefined; data: { title: string; when?: string | undefined } }[],
  ): HandOutPage[] =>
    entries
      .map(({ id, lang, data: { title, when } }) => {
        const windows = windowsOf(when, seasons);
        return { path: `${room}/${id}`, title, ...(lang && { lang }), ...(windows ? { due: windowsText(windows) } : {}) };
      })
      .sort((a, b) => (a.title.toLowerCase() < b.title.toLowerCase() ? -1 : 1));
  return [
    { name: text.kinds.lists, pages: dated('lists', checklists) },
    { name: text.kinds.pests, pages: dated('pests', bulletins) },
    { name: text.kinds.treatments, pages: dated('treatments', treatments) },
    { name: text.kinds.articles, pages: dated('know-how', articles) },
    {
      name: text.kinds.meetings,
      pages: meetings.map(({ id, data }) => ({
        path: `meetings/${id}`,
        title: data.title,
        day: data['last-day'] ?? data.day,
        words: meetingTime(data),
      })),
    },
    {
      name: text.kinds.calculators,
      pages: calculatorsHere(almanac).map(({ slug, title }) => ({ path: `work-it-out/${slug}`, title })),
    },
  ].filter(({ pages }) => pages.length > 0);
}
