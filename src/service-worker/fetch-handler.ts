/*
 * What a page or a file is answered with. With signal a page is always the host's, so that the next view is the new text;
 * the copy serves when nothing comes in time. Files whose name changes with what is in them come from the copy at once.
 */
import { copy, FORMER, isHashed, kept } from './cache.ts';
import { isPicture, picture } from './pictures.ts';
import { placeOf } from './paths.ts';

/** How long a page is waited for before the copy serves. */
const PATIENCE = 3000;
/** After a wait in vain, pages come from the copy at once for this long. */
const PAUSE = 30_000;
let weakUntil = 0;

/** Pages that were shown from the copy since nothing else came. */
export const fromCopy = new Set<string>();

export async function page(event: FetchEvent): Promise<Response> {
  const { request, resultingClientId } = event;
  const place = placeOf(request.url);
  const inCopy = async (): Promise<Response | undefined> => (place === undefined ? undefined : kept(place));
  const asked = fetch(request);
  // It may fail after we stopped waiting for it.
  asked.catch(() => undefined);
  const answer = await inTime(asked, inCopy);
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
  const missing = await kept('404.html');
  return missing ? new Response(missing.body, { status: 404, headers: missing.headers }) : (answer ?? Response.error());
}

/** The host's answer; undefined where none came, or none in time while the copy holds the page. */
async function inTime(asked: Promise<Response>, inCopy: () => Promise<Response | undefined>): Promise<Response | undefined> {
  const late = new Promise<undefined>((resolve) => setTimeout(resolve, Date.now() < weakUntil ? 0 : PATIENCE));
  const first = await Promise.race([asked.catch(() => null), late]);
  if (first) return first;
  if (first === undefined) {
    if (!(await inCopy())) return asked.catch(() => undefined);
    weakUntil = Date.now() + PAUSE;
  }
  return undefined;
}

export async function file({ request }: FetchEvent): Promise<Response> {
  const url = new URL(request.url);
  const place = placeOf(request.url);
  const held = async (): Promise<Response | undefined> => (place === undefined ? undefined : kept(place));
  // A page of a newer edition searches the newer index, or not at all: never two editions in one answer.
  const other = url.searchParams.get('ts');
  if (other && other !== copy.print) return fetch(request);
  if (isPicture(url)) return picture(request);
  if (place !== undefined && !isCalendar(place)) return (await held()) ?? fetch(request);
  if (isHashed(url.pathname.slice(copy.base.length))) return (await (await caches.open(FORMER)).match(request)) ?? fetch(request);
  return fetch(request).catch(async () => (await held()) ?? Response.error());
}

/** A calendar is as new as the host has it. */
const isCalendar = (place: string): boolean => place.endsWith('.ics');
