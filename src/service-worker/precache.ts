/*
 * Precache: downloads the offline copy, several files at a time, checks each against its hash, and reports progress. Stored files are not
 * downloaded again.
 */
import { controller, copy, isHashed, OTHER, PICTURES } from './cache.ts';
import { tell } from './pages.ts';
import { dropOldFiles } from './files.ts';
import { dropOldPictures } from './pictures.ts';
import { dropOldSeen } from './seen.ts';
import { notSaved, saving } from './messages.ts';

declare const self: ServiceWorkerGlobalScope;

const AT_ONCE = 6;

export async function keepAll(event: ExtendableEvent): Promise<void> {
  const left = [...controller.getURLsToCacheKeys()];
  const all = left.length;
  // An update downloads without progress messages.
  const first = !self.registration.active;
  let done = 0;
  let failed = false;
  const hand = async (): Promise<void> => {
    for (let next = left.shift(); next; next = left.shift()) {
      const [url, cacheKey] = next;
      const request = new Request(url, {
        integrity: controller.getIntegrityForCacheKey(cacheKey)!,
        cache: 'no-cache',
        credentials: 'same-origin',
      });
      const store = (): Promise<unknown> => Promise.all(controller.strategy.handleAll({ params: { cacheKey }, request, event }));
      await store().catch(async (error: Error) => {
        if (error.name !== 'QuotaExceededError') throw error;
        // The words of a page matter more than its photographs.
        await caches.delete(PICTURES);
        await store();
      });
      done += 1;
      if (first && !failed && done % 20 === 0) void tell(saving(done, all));
    }
  };
  try {
    await Promise.all(Array.from({ length: AT_ONCE }, hand));
  } catch (error) {
    // Files that are still on their way say nothing more.
    failed = true;
    left.length = 0;
    // A worker whose installation failed may be stopped before it has told anybody.
    await tell(notSaved()).catch(() => undefined);
    throw error;
  }
}

/** So many scripts of other editions are kept. An edition has about a third of that. */
const MOST_OTHERS = 200;

/**
 * Activates the edition. Scripts of the previous one are kept for pages that are still open, and the rest of it is deleted. If it is
 * interrupted, the next edition deletes what was left.
 */
export async function takeOver(): Promise<void> {
  const [cache, other] = await Promise.all([caches.open(controller.strategy.cacheName), caches.open(OTHER)]);
  const listed = new Set(controller.getURLsToCacheKeys().values());
  for (const request of await cache.keys()) {
    if (listed.has(request.url)) continue;
    const held = isHashed(new URL(request.url).pathname.slice(copy.base.length)) && (await cache.match(request));
    if (held) await other.put(request, held).catch(() => undefined);
    await cache.delete(request);
  }
  for (const request of (await other.keys()).slice(0, -MOST_OTHERS)) await other.delete(request);
  await dropOldSeen();
  await dropOldPictures();
  await dropOldFiles();
  await self.clients.claim();
}
