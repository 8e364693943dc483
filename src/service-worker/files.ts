/*
 * A club's own files that are too large for everybody's offline copy. Each is stored on this device when its reader opens it with
 * signal, and answers without signal from then on, until an edition has another file of that name or none.
 */
import { copy, FILES } from './cache.ts';
import { page } from './fetch-handler.ts';

const digests = new Map(copy.ownFiles.map(([place, digest]) => [new URL(copy.base + place, location.href).pathname, digest]));

export const isOwnFile = ({ pathname }: URL): boolean => digests.has(pathname);

const keyOf = (pathname: string): string => `${new URL(pathname, location.href).href}?${encodeURIComponent(digests.get(pathname)!)}`;

export async function ownFile(event: FetchEvent): Promise<Response> {
  const { request } = event;
  const key = keyOf(new URL(request.url).pathname);
  const cache = await caches.open(FILES);
  const answer = await fetch(request).catch(() => null);
  // A part of a file (206) cannot be stored.
  if (answer?.status === 200) await cache.put(key, answer.clone()).catch(() => undefined);
  return answer && answer.status < 500 ? answer : ((await cache.match(key)) ?? answer ?? page(event));
}

/** Deletes the stored files that this edition does not have. */
export async function dropOldFiles(): Promise<void> {
  const cache = await caches.open(FILES);
  const listed = new Set([...digests.keys()].map(keyOf));
  for (const { url } of await cache.keys()) if (!listed.has(url)) await cache.delete(url);
}
