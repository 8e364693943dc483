/*
 * Precache: downloads the offline copy, several files at a time, checks each against its hash, and reports progress. Stored files are not
 * downloaded again.
 */
import { controller, copy, FORMER, isHashed } from './cache.ts';
import { tell } from './pages.ts';
import { dropOldFiles } from './files.ts';
import { keepPictures } from './pictures.ts';
import { notSaved, saved, saving } from './messages.ts';

declare const self: ServiceWorkerGlobalScope;

const AT_ONCE = 6;

/** No edition is stored yet. */
export const nothingWasKept = (): boolean => !self.registration.active;

export async function keepAll(event: ExtendableEvent): Promise<void> {
  const left = [...controller.getURLsToCacheKeys()];
  const all = left.length;
  // An update downloads without progress messages.
  const first = nothingWasKept();
  let done = 0;
  const hand = async (): Promise<void> => {
    for (let next = left.shift(); next; next = left.shift()) {
      const [url, cacheKey] = next;
      const request = new Request(url, {
        integrity: controller.getIntegrityForCacheKey(cacheKey)!,
        cache: 'no-cache',
        credentials: 'same-origin',
      });
      await Promise.all(controller.strategy.handleAll({ params: { cacheKey }, request, event }));
      done += 1;
      if (first && done % 20 === 0) void tell(saving(done, all));
    }
  };
  try {
    await Promise.all(Array.from({ length: AT_ONCE }, hand));
  } catch (error) {
    left.length = 0;
    void tell(notSaved());
    throw error;
  }
}

/** Activates the edition: scripts of the previous one are saved for open pages, and the rest of it is deleted. */
export async function takeOver(): Promise<void> {
  await caches.delete(FORMER);
  const [cache, former] = await Promise.all([caches.open(controller.strategy.cacheName), caches.open(FORMER)]);
  const listed = new Set(controller.getURLsToCacheKeys().values());
  for (const request of await cache.keys()) {
    if (listed.has(request.url)) continue;
    const held = isHashed(new URL(request.url).pathname.slice(copy.base.length)) && (await cache.match(request));
    if (held) await former.put(request, held);
    await cache.delete(request);
  }
  await dropOldFiles();
  await self.clients.claim();
  await tell(saved(await keepPictures()));
}
