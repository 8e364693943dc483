/*
 * The almanac's shelves: every entry of every collection, drafts left out, in one sorted order. The only file that asks
 * Astro for entries; the other joins take what it hands them.
 */
import { getCollection, type CollectionKey } from 'astro:content';
import type { Article } from '../schemas/articles.ts';
import type { Bulletin } from '../schemas/bulletins.ts';
import type { Caution } from '../schemas/cautions.ts';
import type { Checklist } from '../schemas/checklists.ts';
import type { Club } from '../schemas/club.ts';
import type { Figure } from '../schemas/figures.ts';
import type { Forage } from '../schemas/forage.ts';
import type { Meeting } from '../schemas/meetings.ts';
import type { Reading } from '../schemas/reading.ts';
import type { Source } from '../schemas/sources.ts';
import type { Treatment } from '../schemas/treatments.ts';
import type { Word } from '../schemas/words.ts';
import { isPublished } from './published.ts';
import { seasonsOf, type DistrictSeason } from './season.ts';

export type Item<T> = { id: string; data: T; body: string };

export type Almanac = {
  club: Club;
  seasons: DistrictSeason[];
  checklists: Item<Checklist>[];
  bulletins: Item<Bulletin>[];
  articles: Item<Article>[];
  meetings: Item<Meeting>[];
  reading: Item<Reading>[];
  treatments: Item<Treatment>[];
  forage: Item<Forage>[];
  words: Item<Word>[];
  figures: Map<string, Figure>;
  sources: Map<string, Source>;
  cautions: Map<string, Caution>;
};

let opened: Promise<Almanac> | null = null;

/** All shelves, read once a build; in the preview they are read afresh for every page. */
export function openAlmanac(): Promise<Almanac> {
  if (import.meta.env.DEV) return readShelves();
  return (opened ??= readShelves());
}

async function readShelves(): Promise<Almanac> {
  const [clubEntry] = await shelf<Club>('club');
  if (!clubEntry) throw new Error('openAlmanac: needs club.yaml, which checks refuse to be without');
  const club = clubEntry.data;
  return {
    club,
    seasons: seasonsOf(club),
    checklists: byTitle(await shelf<Checklist>('checklists')),
    bulletins: byTitle(await shelf<Bulletin>('bulletins')),
    articles: byTitle(await shelf<Article>('articles')),
    meetings: (await shelf<Meeting>('meetings')).sort((a, b) => compare(a.data.day + (a.data.start ?? ''), b.data.day + (b.data.start ?? '')) || compare(a.id, b.id)),
    reading: byTitle(await shelf<Reading>('reading')),
    treatments: byTitle(await shelf<Treatment>('treatments')),
    forage: byTitle(await shelf<Forage>('forage')),
    words: (await shelf<Word>('words')).sort((a, b) => compare(a.data.word.toLowerCase(), b.data.word.toLowerCase())),
    figures: new Map((await shelf<Figure>('figures')).map((item) => [item.id, item.data])),
    sources: new Map((await shelf<Source>('sources')).map((item) => [item.id, item.data])),
    cautions: new Map((await shelf<Caution>('cautions')).map((item) => [item.id, item.data])),
  };
}

async function shelf<T>(name: string): Promise<Item<T>[]> {
  const entries = (await getCollection(name as CollectionKey)) as unknown as { id: string; data: T & { draft?: boolean }; body?: string }[];
  return entries
    .filter((entry) => isPublished(entry.data))
    .map(({ id, data, body }) => ({ id, data, body: body ?? '' }))
    .sort((a, b) => compare(a.id, b.id));
}

const byTitle = <T extends { title: string }>(items: Item<T>[]): Item<T>[] =>
  items.sort((a, b) => compare(a.data.title.toLowerCase(), b.data.title.toLowerCase()) || compare(a.id, b.id));

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
