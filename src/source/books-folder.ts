/* The folder of the books. It stands alone, since the hash of what a build reads needs it before any package is loaded. */
import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The books that came with this release; ALMANAC_BOOKS names another folder. Astro runs this file from a bundle of its own. */
export function booksFolder(): string {
  if (process.env.ALMANAC_BOOKS) return resolve(process.env.ALMANAC_BOOKS);
  const beside = fileURLToPath(new URL('../../content/books', import.meta.url));
  return existsSync(beside) ? beside : resolve('content/books');
}
