/*
 * Put in the place of worker.js on the host, this ends the offline copy on every device at its next visit: it deletes what
 * was kept for this folder of the site and takes itself away. Ticks and notes are kept elsewhere and stay.
 */
declare const self: ServiceWorkerGlobalScope;

self.addEventListener('install', () => void self.skipWaiting());
self.addEventListener('activate', (event) => event.waitUntil(end()));

async function end(): Promise<void> {
  const ours = (await caches.keys()).filter((name) => name.startsWith(`almanac ${self.registration.scope} `));
  await Promise.all(ours.map((name) => caches.delete(name)));
  await self.registration.unregister();
}
export {};
