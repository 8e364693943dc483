/*
 * Service worker: stores the almanac for use without signal, and answers from the copy when the host does not. A new edition takes over
 * when all its files are stored and a page asks for it, so that a correction is what a reader sees without signal. No page ever reloads
 * without a request.
 */
import { NavigationRoute } from 'workbox-routing/NavigationRoute.js';
import { Router } from 'workbox-routing/Router.js';
import { Route } from 'workbox-routing/Route.js';
import { isOwnFile, ownFile } from './files.ts';
import { file, fromCopy, page } from './fetch-handler.ts';
import { copy } from './cache.ts';
import { keepAll, takeOver } from './precache.ts';
import { keepPictures, picturesLeft } from './pictures.ts';
import { newEdition, saved, withoutSignal, type WorkerMessage } from './messages.ts';

declare const self: ServiceWorkerGlobalScope;

self.addEventListener('install', (event) => event.waitUntil(keepAll(event)));
self.addEventListener('activate', (event) => event.waitUntil(takeOver()));

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

/** What a page says: that an edition may take over, or its own edition, when it opens and when another worker has taken over. */
type PageMessage = 'new edition' | { edition: string; tookOver?: boolean };

self.addEventListener('message', (event) => {
  const { data, source } = event as ExtendableMessageEvent & { data: PageMessage; source: WindowClient };
  if (data === 'new edition') return void self.skipWaiting();
  event.waitUntil(answer(data, source));
});

async function answer({ edition, tookOver }: Exclude<PageMessage, string>, source: WindowClient): Promise<void> {
  const say = (message: WorkerMessage): void => source.postMessage(message);
  if (tookOver && edition !== copy.edition) return say(newEdition());
  if (fromCopy.has(source.id)) return say(withoutSignal(edition, new Date()));
  const left = await picturesLeft();
  say(saved(left));
  if (left > 0) say(saved(await keepPictures()));
}
