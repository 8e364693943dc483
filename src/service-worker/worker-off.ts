/*
 * Replacement for worker.js that ends the offline copy on every device at its next visit. It deletes the caches of this site folder and
 * unregisters itself. Ticks and notes are stored elsewhere and stay.
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
