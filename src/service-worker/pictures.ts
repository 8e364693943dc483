/* Photographs in the offline copy, which are optional: each is stored if it loads, and otherwise the page shows its description. */
import { copy, PICTURES } from './cache.ts';

export const isPicture = ({ pathname }: URL): boolean => pathname.startsWith(`${copy.base}pictures/`);

export async function picture(request: Request): Promise<Response> {
  const cache = await caches.open(PICTURES);
  const held = await cache.match(request);
  if (held) return held;
  const answer = await fetch(request);
  if (answer.ok) await cache.put(request, answer.clone());
  return answer;
}

/** Fetches missing pictures, deletes unlisted ones, and returns the number of failures. */
export async function keepPictures(): Promise<number> {
  const cache = await caches.open(PICTURES);
  const listed = new Set(copy.pictures.map((place) => new URL(copy.base + place, location.href).href));
  for (const { url } of await cache.keys()) if (!listed.has(url)) await cache.delete(url);
  for (const url of listed) if (!(await cache.match(url))) await cache.add(url).catch(() => undefined);
  return picturesLeft();
}

export const picturesLeft = async (): Promise<number> =>
  copy.pictures.length === 0 ? 0 : copy.pictures.length - (await (await caches.open(PICTURES)).keys()).length;
