/* Settings of this build: content folder and edition. The cli sets them as environment variables. No code here reads the clock. */
import { resolve } from 'node:path';

export const contentFolder = resolve(process.env.ALMANAC_CONTENT ?? 'content');

/** Published pictures, which builds share. */
export const picturesFolder = resolve(process.env.ALMANAC_PICTURES ?? '.almanac/pictures');

/** The edition: a day, and the fingerprint of its input. */
export const edition = {
  day: process.env.ALMANAC_EDITION ?? '1970-01-01',
  fingerprint: process.env.ALMANAC_FINGERPRINT ?? 'unbuilt',
};
