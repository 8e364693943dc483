/*
 * Pages that a reader saw online, where they differ from the copy. A correction that somebody has read, or a page that somebody has found
 * taken away, stays so without signal, even if the update of the whole copy was interrupted. The update deletes them.
 */
import { ANY_SEEN, cached, copy, SEEN } from './cache.ts';
import { placeOf } from './paths.ts';

/** Every page of an almanac names its edition. The sign-in page of a network, or a fault of the host, does not. */
const OUR_PAGE = ' data-edition="';
/** The search page works with the index of its own edition alone, which is in the copy. */
const SEARCH_PAGE = ' data-search-page';

function keyOf(address: string): string {
  const place = placeOf(address);
  const { origin, pathname } = new URL(address);
  return origin + (place === undefined ? pathname : copy.base + place);
}

export const seen = async (address: string): Promise<Response | undefined> => (await caches.open(SEEN)).match(keyOf(address));

/** Stores the host's answer for a page, where the copy has another one. */
export async function remember(address: string, answer: Response): Promise<void> {
  const { status, headers } = answer;
  if (status !== 200 && status !== 404) return;
  const text = await answer.text();
  if (!text.includes(OUR_PAGE) || text.includes(SEARCH_PAGE)) return;
  const [cache, key, place] = [await caches.open(SEEN), keyOf(address), placeOf(address)];
  const held = place === undefined ? undefined : await cached(place);
  if (status === 200 ? (await held?.text()) === text : !held && !(await cache.match(key))) await cache.delete(key);
  else await cache.put(key, new Response(text, { status, headers }));
}

/** Deletes what readers saw newer than an earlier edition. */
export async function dropOldSeen(): Promise<void> {
  for (const name of await caches.keys()) if (name.startsWith(ANY_SEEN) && name !== SEEN) await caches.delete(name);
}
