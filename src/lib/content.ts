/* The almanac as pages see it. This is the only file that reads entries from Astro; the others work on what it returns. */
import { getCollection, type CollectionKey } from 'astro:content';
import { tongues } from '../../shared/country/language.ts';
import { collectionNames } from '../schemas/collections.ts';
import { almanacOf, type Almanac, type RawEntry } from './almanac.ts';
import { edition } from './settings.ts';

export type { Almanac, Item } from './almanac.ts';

const opened = new Map<string, Promise<Almanac>>();

/**
 * All collections, read once per build. The preview reads them again for every page. With a `tongue`, as readers of that language see
 * them: what is translated is in their language.
 */
export function getContent(tongue?: string): Promise<Almanac> {
  if (import.meta.env.DEV) return readAlmanac(tongue);
  const held = opened.get(tongue ?? '') ?? readAlmanac(tongue);
  opened.set(tongue ?? '', held);
  return held;
}

async function readAlmanac(tongue?: string): Promise<Almanac> {
  const names = ['club', ...collectionNames, 'pictures', 'origins', 'spoken', 'offered'];
  const entries = new Map<string, readonly RawEntry[]>();
  for (const name of names) entries.set(name, await getCollection(name as CollectionKey));
  return almanacOf(
    (name) => entries.get(name)!,
    edition.day,
    tongues.find((each) => each === tongue),
  );
}
