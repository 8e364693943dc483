/* What the desk told this build: which folder, which edition. The desk sets the variables; nothing here asks the clock. */
import { resolve } from 'node:path';

export const contentFolder = resolve(process.env.ALMANAC_CONTENT ?? 'content');

/** Published pictures, which builds share. */
export const picturesFolder = resolve(process.env.ALMANAC_PICTURES ?? '.almanac/pictures');

/** The edition: a day and the fingerprint of what it was built from. */
export const edition = {
  day: process.env.ALMANAC_EDITION ?? '1970-01-01',
  fingerprint: process.env.ALMANAC_FINGERPRINT ?? 'unbuilt',
};
