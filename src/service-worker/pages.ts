/* Open pages of this almanac, and messages to them. */
import type { WorkerMessage } from './messages.ts';
import { copy } from './cache.ts';

declare const self: ServiceWorkerGlobalScope;

/** Other almanacs on one host have their own workers. Their pages ignore ours. */
export const openPages = async (): Promise<WindowClient[]> =>
  (await self.clients.matchAll({ type: 'window', includeUncontrolled: true })).filter(({ url }) =>
    new URL(url).pathname.startsWith(copy.base),
  ) as WindowClient[];

export async function tell(message: WorkerMessage): Promise<void> {
  for (const page of await openPages()) page.postMessage(message);
}
