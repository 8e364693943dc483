/*
 * What pages know of the build they are drawn in: the content folder, the folder of published pictures, and the edition. The
 * integration passes it through one environment variable, because Astro bundles this file. Nothing here reads the clock.
 */
import { resolve } from 'node:path';
import { dayOf, type Day } from '../../shared/days/day.ts';

export type Settings = {
  content: string;
  /** Published pictures, which builds share. */
  pictures: string;
  /** A day, and a hash of what the edition was built from. */
  edition: { day: Day; fingerprint: string };
};

const VARIABLE = 'ALMANAC_SETTINGS';

/** To be called before Astro loads the content. */
export function passSettings(settings: Settings): void {
  process.env[VARIABLE] = JSON.stringify(settings);
}

const option = process.env[VARIABLE];
const settings: Settings = option
  ? (JSON.parse(option) as Settings)
  : {
      content: resolve('content/demo-club'),
      pictures: resolve('.almanac/pictures'),
      edition: { day: dayOf(1970, 1, 1), fingerprint: 'unbuilt' },
    };

export const contentFolder = settings.content;
export const picturesFolder = settings.pictures;
export const edition = settings.edition;

/** The whole address of the first page; null where the site's is not known. `base` begins and ends with a slash. */
export const rootAddress = (site: URL | undefined, base: string): string | null => (site ? new URL(base, site).href : null);
