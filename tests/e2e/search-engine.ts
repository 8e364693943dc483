/* Search of a built site without a browser: its own engine over its own files, and the records. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { gunzipSync } from 'node:zlib';
import { engineOf, type Engine, type Pagefind } from '../../src/client/search/engine.ts';
import { lookUp } from '../../src/client/search/look-up.ts';
import { ENGINE, PAGEFIND_FOLDER, WORDS } from '../../shared/words/search-files.ts';
import { splitParts, type SearchWords } from '../../shared/words/search-record.ts';

/** The folder of a site and its address. The engine fetches its files as in a browser. */
export async function openSearch(folder: string, address: string): Promise<Engine> {
  const pagefind = (await import(pathToFileURL(join(folder, ENGINE)).href)) as Pagefind;
  const words = JSON.parse(readFileSync(join(folder, WORDS), 'utf8')) as SearchWords;
  return engineOf(pagefind, words, { base: '/', print: 'test', folder: address + PAGEFIND_FOLDER });
}

/** The day of the demo's readers in these tests: before its meetings of 2026 but one. */
export const TODAY = '2026-04-18';

/** The paths of the results, the best first: `pests/varroa/`, `words/#brood`. */
export async function placesFor(typed: string, engine: Engine, most = 5, today = TODAY): Promise<string[]> {
  const { hits } = await lookUp(typed, engine, today);
  return Promise.all(hits.slice(0, most).map(({ entry }) => placeOf(entry.at, engine)));
}

/** The path of a record by its number. */
export const placeOf = async (at: number, engine: Engine): Promise<string> => (await engine.shownOf(engine.entries[at]!)).url.slice(1);

export type Kept = {
  place: string;
  title: string;
  text: string;
  when: string;
  /** The complete content, with the words that only help to find it. */ content: string;
};

/** Every record of the index in the folder, by its path: JSON files after a header of twelve bytes, compressed with gzip. */
export function recordsIn(folder: string): Kept[] {
  const fragments = join(folder, PAGEFIND_FOLDER, 'fragment');
  return readdirSync(fragments)
    .flatMap((name) => Object.values(JSON.parse(gunzipSync(readFileSync(join(fragments, name))).toString('utf8', 12)) as object))
    .filter((each): each is { url: string; content: string } => typeof each === 'object')
    .map(({ url, content }) => ({ place: url.slice(1), ...splitParts(content), content }))
    .sort((a, b) => (a.place < b.place ? -1 : 1));
}
