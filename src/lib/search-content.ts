/*
 * What the search takes from the collections: the names of the word list, the days of pages that are bound to the year, and the lists of
 * its page.
 */
import type { Tongue } from '../../shared/country/language.ts';
import { neededTerms } from '../../shared/words/phrases.ts';
import { phaseName, phases } from '../../shared/season/phases.ts';
import type { Almanac } from './almanac.ts';
import { contactFor, reached, type Reached } from './contacts.ts';
import { calculatorsHere, pageExists } from './rooms.ts';
import { edition } from './settings.ts';
import { calledOffIn, meetingTime } from './meetings.ts';
import { phaseTitle, windowsOf, windowsText } from './season.ts';

/** A word of the word list: its names and the ways people type it, and the page that says more. */
export type SearchWord = { id: string; names: string[]; more?: string | undefined };

/** The name as this club says it comes first. */
const searchWordsOf = ({ words, club }: Almanac): SearchWord[] =>
  words.map(({ id, data: { word, uk, also = [], more } }) => {
    const own = club.words === 'uk' && uk ? [uk, word] : [word, ...(uk ? [uk] : [])];
    return { id, names: [...new Set([...own, ...also])], more };
  });

/** What the search files are made of, besides the pages. */
export type SearchContent = {
  words: SearchWord[];
  /** By a page's path, its days. */ windows: Readonly<Record<string, string>>;
  /** Paths of pests and diseases that the law wants reported. */ law: string[];
};

/** `before` is the folder of the pages, such as `es/` for those in another language. */
export const searchContentOf = (almanac: Almanac, before = ''): SearchContent => ({
  words: searchWordsOf(almanac).map((word) => (word.more ? { ...word, more: `/${before}${word.more.slice(1)}` } : word)),
  windows: Object.fromEntries(Object.entries(datedPages(almanac)).map(([place, windows]) => [before + place, windows])),
  law: almanac.bulletins.filter(({ data }) => data.status === 'law').map(({ id }) => `${before}pests/${id}/`),
});

/** By a page's path below the base: its days in each district, as `valley 05-03 05-17;hill 05-12 05-26`, or those of a meeting. */
function datedPages({ articles, bulletins, checklists, meetings, seasons }: Almanac): Record<string, string> {
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
  const days = meetings.map(({ id, data }) => [`meetings/${id}/`, `${data.day} ${data['last-day'] ?? data.day}`] as const);
  return Object.fromEntries([...dated, ...days]);
}

/** Every page with a text of its own, from A to Z, by its path below the base. */
export const pagesByTitle = (
  almanac: Almanac,
): { path: string; title: string; lang?: Tongue | undefined; day?: string; when?: string }[] => {
  const { checklists, bulletins, articles, meetings, treatments, sheets } = almanac;
  return [
    ...checklists.map(({ id, data, lang }) => ({ path: `lists/${id}/`, title: data.title, lang })),
    ...bulletins.map(({ id, data, lang }) => ({ path: `pests/${id}/`, title: data.title, lang })),
    ...articles.map(({ id, data, lang }) => ({ path: `know-how/${id}/`, title: data.title, lang })),
    ...meetings.map(({ id, data }) => ({
      path: `meetings/${id}/`,
      title: data.title,
      // The search offers the next meeting by its day.
      ...(calledOffIn(data) ? {} : { day: data['last-day'] ?? data.day, when: `${meetingTime(data)}, ${data.place}` }),
    })),
    ...treatments.map(({ id, data, lang }) => ({ path: `treatments/${id}/`, title: data.title, lang })),
    ...sheets.map(({ id, data, lang }) => ({ path: `sheets/${id}/`, title: data.title, lang })),
    ...calculatorsHere(almanac).map(({ slug, title }) => ({ path: `work-it-out/${slug}/`, title })),
  ].sort((a, b) => (a.title.toLowerCase() < b.title.toLowerCase() ? -1 : 1));
};

/** The parts of the year that a search can be narrowed to. */
export const timesOfYear = ({ seasons, club }: Almanac): { name: string; windows: string }[] =>
  phases.flatMap((phase) => {
    const windows = windowsOf(`in ${phaseName(phase)}`, seasons);
    const name = phaseTitle(phase, club).replace(/^./, (letter) => letter.toUpperCase());
    return windows ? [{ name, windows: windowsText(windows) }] : [];
  });

/** A best answer as the search page draws it. */
export type BestAnswer = {
  title: string;
  /** The ways to ask, each as the terms that a question must have. */
  ways: string[];
  answer: string;
  /** Its path below the base. */
  path: string;
  call?: { name: string; of: Reached };
  /** The part of the year in which it is listed before anything is typed. */
  windows?: string;
};

/** Those whose page this club has. What is most urgent comes first. */
export const bestAnswersOf = (almanac: Almanac): BestAnswer[] =>
  almanac.answers
    .filter(({ data }) => pageExists(almanac, data.page) && !almanac.withdrawn.some(({ place }) => place && data.page.startsWith(place)))
    .sort((a, b) => Number(b.data.line === 'emergency') - Number(a.data.line === 'emergency'))
    .map(({ data: { title, asks, page, answer, line, ask, when } }) => {
      const contact = ask === undefined ? undefined : contactFor(almanac.club, ask);
      const held = line && almanac.club[line];
      const windows = when === undefined ? null : windowsOf(when, almanac.seasons);
      return {
        title,
        ways: [...new Set([title, ...asks].map((way) => neededTerms(way).join(' ')))],
        answer,
        path: page.slice(1),
        ...(held ? { call: { name: held.name, of: { phone: held.number, place: '' } } } : {}),
        ...(contact && !held ? { call: { name: contact.name, of: reached(contact, edition.day) } } : {}),
        ...(windows ? { windows: windowsText(windows) } : when === undefined ? {} : { windows: 'all 01-01 12-31' }),
      };
    });
