/*
 * Loads a page of the almanac as a document, without its scripts. XMLHttpRequest parses it: the page's policy closes DOMParser and
 * innerHTML. The request goes through the service worker, so the offline copy answers it.
 */
export { leafOf } from './leaf.ts';

import * as text from './load.en.ts';

const base = import.meta.env.BASE_URL;
const PATIENCE = 30_000;

/** `page` is the path that it has now: an old address leads on to another. */
export type Loaded = { page: string; document: Document } | { why: string };

export async function load(page: string, hops = 0): Promise<Loaded> {
  const { status, document } = await request(`${base}${page}/`);
  if (status === 404 || status === 410) return { why: text.noPage };
  const main = document?.querySelector('main');
  if (status === 0 || !document || !main || status >= 400) return { why: text.noSignal };
  if (!('withdrawn' in main.dataset)) return { page, document };
  const next = new URL(document.querySelector('link[rel=canonical]')?.getAttribute('href') ?? '', location.href).pathname;
  const isElsewhere = document.querySelector('meta[http-equiv=refresh]') && next.startsWith(base);
  if (isElsewhere && hops < 3) return load(next.slice(base.length).replace(/\/$/, ''), hops + 1);
  const reason = main.querySelector('h2 + p')?.textContent?.trim() ?? '';
  return { why: text.takenDown(reason) };
}

const request = (address: string): Promise<{ status: number; document: Document | null }> =>
  new Promise((resolve) => {
    const asked = new XMLHttpRequest();
    const answer = (): void => resolve({ status: asked.status, document: asked.responseXML });
    asked.open('GET', address);
    asked.responseType = 'document';
    asked.timeout = PATIENCE;
    asked.onload = answer;
    asked.onerror = asked.ontimeout = () => resolve({ status: 0, document: null });
    asked.send();
  });
