/* Photographs in the offline copy, which are optional: each is stored if it loads, and otherwise the page shows its description. */
import { copy, PICTURES } from './cache.ts';

export const isPicture = ({ pathname }: URL): boolean => pathname.startsWith(`${copy.base}pictures/`);

export async function picture(request: Request): Promise<Response> {
  const cache = await caches.open(PICTURES);
  const held = await cache.match(request);
  if (held) return held;
  const answer = await fetch(request);
  if (answer.status === 200) await cache.put(request, answer.clone()).catch(() => undefined);
  return answer;
}

const listed = new Set(copy.pictures.map((place) => new URL(copy.base + place, location.href).href));

/** The number of pictures that are not stored. */
export async function picturesLeft(): Promise<number> {
  if (listed.size === 0) return 0;
  const held = new Set((await (await caches.open(PICTURES)).keys()).map(({ url }) => url));
  return [...listed].filter((url) => !held.has(url)).length;
}

let fetching: Promise<void> | undefined;

/** Fetches the missing pictures, once in the life of a worker however many pages ask, and returns the number of failures. */
export async function keepPictures(): Promise<number> {
  await (fetching ??= fetchMissing());
  return picturesLeft();
}

async function fetchMissing(): Promise<void> {
  const cache = await caches.open(PICTURES);
  for (const url of listed) if (!(await cache.match(url))) await cache.add(url).catch(() => undefined);
}

/** Deletes the stored pictures that this edition does not have. */
export async function dropOldPictures(): Promise<void> {
  const cache = await caches.open(PICTURES);
  for (const { url } of await cache.keys()) if (!listed.has(url)) await cache.delete(url);
}
