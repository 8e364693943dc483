/*
 * Fetch handler of the service worker. With signal a page always comes from the host, so that the next view has the new text. The copy
 * answers when the host is too slow. Files with a hash in their name come from the copy at once.
 */
import { cached, copy, isHashed, OTHER } from './cache.ts';
import { isPicture, picture } from './pictures.ts';
import { placeOf } from './paths.ts';
import { remember, seen } from './seen.ts';

/** Time limit for a page before the copy answers. */
const PATIENCE = 3000;
/** After a timeout, pages come from the copy at once for this long. */
const PAUSE = 30_000;
let weakUntil = 0;

/** Pages that were shown from the copy because the host did not answer. */
export const fromCopy = new Set<string>();

export async function page(event: FetchEvent): Promise<Response> {
  const { request, resultingClientId } = event;
  const place = placeOf(request.url);
  const inCopy = async (): Promise<Response | undefined> => (await seen(request.url)) ?? (place === undefined ? undefined : cached(place));
  const answering = fetch(request);
  // It may come or fail after the time limit. A device without room still shows the page.
  event.waitUntil(answering.then((answer) => remember(request.url, answer.clone())).catch(() => undefined));
  const answer = await inTime(answering, inCopy, request.mode === 'navigate');
  if (answer && answer.status !== 404 && answer.status < 500) return answer;
  if (place !== undefined && copy.base + place !== new URL(request.url).pathname)
    return Response.redirect(copy.base + place + new URL(request.url).search);
  const held = answer?.status === 404 ? undefined : await inCopy();
  if (held) {
    if (!answer) fromCopy.add(resultingClientId);
    return held;
  }
  if (answer && answer.status !== 404) return answer;
  if (!answer) fromCopy.add(resultingClientId);
  const missing = await cached('404.html');
  return missing ? new Response(missing.body, { status: 404, headers: missing.headers }) : (answer ?? Response.error());
}

/**
 * The host's answer. Undefined where none came, or none in time while the copy contains the page. A hand-out asks for many pages at once,
 * so that the last of them are late on any line: only a page that a reader opens shows that the line is weak.
 */
async function inTime(
  asked: Promise<Response>,
  inCopy: () => Promise<Response | undefined>,
  isOpened: boolean,
): Promise<Response | undefined> {
  const late = new Promise<undefined>((resolve) => setTimeout(resolve, Date.now() < weakUntil ? 0 : PATIENCE));
  const first = await Promise.race([asked.catch(() => null), late]);
  if (first) return first;
  if (first === undefined) {
    if (!(await inCopy())) return asked.catch(() => undefined);
    if (isOpened) weakUntil = Date.now() + PAUSE;
  }
  return undefined;
}

export async function file(event: FetchEvent): Promise<Response> {
  const { request } = event;
  const url = new URL(request.url);
  const place = placeOf(request.url);
  const held = async (): Promise<Response | undefined> => (place === undefined ? undefined : cached(place));
  // A page of a newer edition searches the newer index, or not at all, so that no answer mixes two editions.
  const other = url.searchParams.get('ts');
  if (other && other !== copy.print) return fetch(request);
  if (isPicture(url)) return picture(request);
  // A hand-out reads pages by script. It has each as its reader would see it.
  if (place === '' || place?.endsWith('/')) return page(event);
  if (place !== undefined && !isCalendar(place)) return (await held()) ?? fetch(request);
  if (isHashed(url.pathname.slice(copy.base.length))) return ofOtherEdition(request);
  return fetch(request).catch(async () => (await held()) ?? Response.error());
}

/** A script or style that this edition does not have: of a page that is still open, or of a newer page. */
async function ofOtherEdition(request: Request): Promise<Response> {
  const cache = await caches.open(OTHER);
  const held = await cache.match(request);
  if (held) return held;
  const answer = await fetch(request);
  if (answer.status === 200) await cache.put(request, answer.clone()).catch(() => undefined);
  return answer;
}

/** A calendar is as new as the host's. */
const isCalendar = (place: string): boolean => place.endsWith('.ics');
