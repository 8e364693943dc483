/* Fetches the copy: several files at a time, each against its digest; says how far it is. What is kept already is not fetched. */
import { controller, copy, FORMER, isHashed, isLight, READ } from './cache.ts';
import { openPages, tell } from './pages.ts';
import { keepPictures } from './pictures.ts';
import { notSaved, onlyRead, saved, saving } from './messages.ts';

declare const self: ServiceWorkerGlobalScope;

const AT_ONCE = 6;

/** Nothing of an edition is kept yet, or only what was read. */
export const nothingWasKept = (): boolean => !self.registration.active || self.registration.active.scriptURL.includes('?');

export async function keepAll(event: ExtendableEvent): Promise<void> {
  const left = [...controller.getURLsToCacheKeys()];
  const all = left.length;
  // An update is fetched quietly.
  const first = nothingWasKept() && !isLight;
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

/** The edition takes over: scripts of the one before are put by for pages still open, the rest of it goes. */
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
  if (!isLight) await caches.delete(READ);
  await self.clients.claim();
  if (isLight) {
    for (const { url } of await openPages()) await keepRead(url).catch(() => undefined);
    return tell(onlyRead());
  }
  await tell(saved(await keepPictures()));
}

/** Keeps a page as it was read, and the scripts, styles and letters that it names. Without an answer at hand it is fetched once. */
export async function keepRead(page: string, read?: Response): Promise<void> {
  const cache = await caches.open(READ);
  const address = page.split(/[?#]/)[0]!;
  if (!read && (await cache.match(address))) return;
  const answer = read ?? (await fetch(address, { credentials: 'same-origin' }));
  if (!answer.ok) return;
  const html = await answer.clone().text();
  await cache.put(address, answer);
  const named = [...html.matchAll(/(?:src|href)="([^"]+\.(?:js|css|woff2|svg))"/g)].map(([, address]) => address!);
  await Promise.all(named.map(async (address) => ((await caches.match(address)) ? undefined : cache.add(address))));
}
