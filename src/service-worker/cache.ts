/// <reference lib="webworker" />
/*
 * Offline copy: the build's list of files, and their place in the browser. The build writes `offlineCopy` above this script. Each file is
 * listed with a hash, so that a half-updated host gives no mixed edition.
 */
import type { Day } from '../../shared/days/day.ts';
import { PrecacheController } from 'workbox-precaching/PrecacheController.js';

export type OfflineCopy = {
  /** The folder of the site, with a slash at both ends. */
  base: string;
  day: Day;
  /** The edition as its pages name it, and in words: `2026-04-18 3f2a1c`, `April 18, 2026 (3f2a1c)`. */
  edition: string;
  name: string;
  zone: string;
  /** The compressed size of the download, as in "1.4 MB". */
  size: string;
  /** The fingerprint of the edition, with which search files are requested. */
  print: string;
  pages: number;
  /** Paths below the base, each with the SHA-256 of its file in base64. */
  files: readonly (readonly [string, string])[];
  /** Paths of photographs, which are stored where they load and skipped where they do not. */
  pictures: readonly string[];
  /** A club's larger files, which are stored when they are opened, each with its hash. */
  ownFiles: readonly (readonly [string, string])[];
};

declare const offlineCopy: OfflineCopy;
export const copy = offlineCopy;

declare const self: ServiceWorkerGlobalScope;

const cacheName = (part: string): string => `almanac ${self.registration.scope} ${part}`;
/** Scripts and styles of other editions, for pages that are still open, or were seen before their edition was complete here. */
export const OTHER = cacheName('former');
/** Pages that their reader has seen newer than this edition, and pages that were gone. */
export const ANY_SEEN = cacheName('seen ');
export const SEEN = ANY_SEEN + copy.print;
const COPY = cacheName('copy');
export const PICTURES = cacheName('pictures');
export const FILES = cacheName('files');

export const isHashed = (place: string): boolean => place.startsWith('assets/');

export const controller = new PrecacheController({ cacheName: COPY });
controller.addToCacheList(
  copy.files.map(([place, digest]) => ({
    url: copy.base + place,
    revision: isHashed(place) ? null : digest.slice(0, 12),
    integrity: `sha256-${digest}`,
  })),
);

/** The stored file of the edition at a path below the base. Undefined where it is not listed or was lost. */
export const cached = (place: string): Promise<Response | undefined> => controller.matchPrecache(copy.base + place);
