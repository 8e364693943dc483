/*
 * Second worker of a site in a sub-folder: it adds the last slash to the address of the site, with signal or without. The main worker
 * answers only behind that slash. The host allows this wider scope with the header Service-Worker-Allowed. It stores nothing.
 */
declare const self: ServiceWorkerGlobalScope;

const { pathname: base } = new URL('.', location.href);

self.addEventListener('install', () => void self.skipWaiting());
self.addEventListener('fetch', (event) => {
  const { pathname, search, origin } = new URL(event.request.url);
  if (event.request.mode === 'navigate' && `${pathname}/` === base) event.respondWith(Response.redirect(origin + base + search));
});
export {};
