/*
 * Service worker: stores the almanac for use without signal, and answers from the copy when the host does not. A new edition waits after
 * its download. It takes over when no page of another edition is open, or when a reader asks for it. No page ever reloads without a
 * request.
 */
import { NavigationRoute } from 'workbox-routing/NavigationRoute.js';
import { Router } from 'workbox-routing/Router.js';
import { Route } from 'workbox-routing/Route.js';
import { isOwnFile, ownFile } from './files.ts';
import { file, fromCopy, page } from './fetch-handler.ts';
import { copy } from './cache.ts';
import { keepAll, nothingWasKept, takeOver } from './precache.ts';
import { openPages } from './pages.ts';
import { picturesLeft } from './pictures.ts';
import { newEdition, saved, withoutSignal, type WorkerMessage } from './messages.ts';

declare const self: ServiceWorkerGlobalScope;

/** The page whose reader requested the waiting edition. */
let asker: WindowClient | undefined;

self.addEventListener('install', (event) => {
  if (nothingWasKept()) void self.skipWaiting();
  event.waitUntil(keepAll(event));
});
self.addEventListener('activate', (event) =>
  event.waitUntil(takeOver().then(() => asker?.postMessage({ says: '', again: true } satisfies WorkerMessage))),
);

const router = new Router();
router.registerRoute(
  new Route(
    ({ sameOrigin, request, url }) => sameOrigin && request.method === 'GET' && isOwnFile(url),
    ({ event }) => ownFile(event as FetchEvent),
  ),
);
router.registerRoute(new NavigationRoute(({ event }) => page(event as FetchEvent)));
router.registerRoute(
  new Route(
    ({ sameOrigin, request }) => sameOrigin && request.method === 'GET' && new URL(request.url).pathname.startsWith(copy.base),
    ({ event }) => file(event as FetchEvent),
  ),
);
router.addFetchListener();

/** A page asks for the state and sends the day of its edition, or requests this edition in place of the active one. */
self.addEventListener('message', (event) => {
  const { data, source } = event as ExtendableMessageEvent & { source: WindowClient };
  if (data === 'new edition') {
    asker = source;
    void self.skipWaiting();
  } else event.waitUntil(cacheStatus(data, source).then((message) => source.postMessage(message)));
});

async function cacheStatus(day: string, source: WindowClient): Promise<WorkerMessage> {
  if (self.registration.waiting?.scriptURL && self.serviceWorker?.state === 'installed') {
    if (day !== copy.day || (await openPages()).length > 1) return newEdition();
    // The page already has this edition, and no other is open, so nobody notices the change.
    await self.skipWaiting();
    return saved();
  }
  if (fromCopy.has(source.id)) return withoutSignal(new Date());
  return saved(await picturesLeft());
}
