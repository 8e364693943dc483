/* The almanac as pages see it. This is the only file that reads entries from Astro; the others work on what it returns. */
import { getCollection, type CollectionKey } from 'astro:content';
import { collectionNames } from '../schemas/collections.ts';
import { almanacOf, type Almanac, type RawEntry } from './almanac.ts';
import { edition } from './settings.ts';

export type { Almanac, Item } from './almanac.ts';

let opened: Promise<Almanac> | null = null;

/** All collections, read once per build. The preview reads them again for every page. */
export function getContent(): Promise<Almanac> {
  if (import.meta.env.DEV) return readAlmanac();
  return (opened ??= readAlmanac());
}

async function readAlmanac(): Promise<Almanac> {
  const names = ['club', ...collectionNames, 'pictures', 'origins'];
  const entries = new Map<string, readonly RawEntry[]>();
  for (const name of names) entries.set(name, await getCollection(name as CollectionKey));
  return almanacOf((name) => entries.get(name)!, edition.day);
}
