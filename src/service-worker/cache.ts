/// <reference lib="webworker" />
/*
 * The offline copy: what the build listed for it, and where the browser keeps it. The build writes `offlineCopy` above this
 * script; each file is listed with a digest, so that a host that is half updated gives no mixed edition.
 */
import type { Day } from '../../shared/days/day.ts';
import { PrecacheController } from 'workbox-precaching/PrecacheController.js';

export type OfflineCopy = {
  /** The folder of the site, first and last a slash. */
  base: string;
  /** The edition's day, as 2026-04-18 and in words. */
  day: Day;
  dayInWords: string;
  zone: string;
  /** What is fetched for it, compressed, as in "1.4 MB". */
  size: string;
  /** The print of the edition, which search files are asked for with. */
  print: string;
  pages: number;
  /** Below the base: place, and the SHA-256 of what is there in base64. */
  files: readonly (readonly [string, string])[];
  /** Places of photographs: kept where they come, missed where they do not. */
  pictures: readonly string[];
};

declare const offlineCopy: OfflineCopy;
export const copy = offlineCopy;

declare const self: ServiceWorkerGlobalScope;

const cacheName = (part: string): string => `almanac ${self.registration.scope} ${part}`;
/** Scripts and styles of the edition before, for pages that are still open. */
export const FORMER = cacheName('former');
const COPY = cacheName('copy');
export const PICTURES = cacheName('pictures');

export const isHashed = (place: string): boolean => place.startsWith('assets/');

export const controller = new PrecacheController({ cacheName: COPY });
controller.addToCacheList(
  copy.files.map(([place, digest]) => ({
    url: copy.base + place,
    revision: isHashed(place) ? null : digest.slice(0, 12),
    integrity: `sha256-${digest}`,
  })),
);

/** What is kept of the edition at a place below the base; undefined where it is not listed or was lost. */
export const kept = (place: string): Promise<Response | undefined> => controller.matchPrecache(copy.base + place);
