/* The open pages of this almanac, and telling them something. */
import type { Told } from './messages.ts';
import { copy } from './cache.ts';

declare const self: ServiceWorkerGlobalScope;

/** Other almanacs of one host have workers of their own: their pages take no notice of ours. */
export const openPages = async (): Promise<WindowClient[]> =>
  (await self.clients.matchAll({ type: 'window', includeUncontrolled: true })).filter(({ url }) =>
    new URL(url).pathname.startsWith(copy.base),
  ) as WindowClient[];

export async function tell(told: Told): Promise<void> {
  for (const page of await openPages()) page.postMessage(told);
}
