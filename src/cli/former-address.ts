/*
 * Where an almanac lives on the web, by the folder of the site (--base) and the site (--site): of the edition in an output folder, as its
 * own files say, and of a club, as its club.yaml says.
 */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseDocument } from 'yaml';

export function formerAddress(out: string): { base: string | undefined; site: string | undefined } {
  const read = (name: string): string => (existsSync(join(out, name)) ? readFileSync(join(out, name), 'utf8') : '');
  return {
    base: /"scope": "(\/[^"]*)"/.exec(read('manifest.webmanifest'))?.[1],
    site: /<loc>(https?:\/\/[^/<]+)/.exec(read('sitemap.xml'))?.[1],
  };
}

/** The whole address of `site:` in club.yaml, taken apart. A club without it lives at the root of a site that is not known yet. */
export function addressIn(content: string): { base: string; site: string | undefined } {
  const file = join(content, 'club.yaml');
  const text = existsSync(file) ? parseDocument(readFileSync(file, 'utf8'), { logLevel: 'silent' }).get('site') : undefined;
  // The checks say what is wrong with an address that cannot be read.
  if (typeof text !== 'string' || !URL.canParse(text)) return { base: '/', site: undefined };
  const { origin, pathname } = new URL(text);
  return { base: pathname.endsWith('/') ? pathname : `${pathname}/`, site: origin };
}
