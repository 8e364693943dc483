/* Where the edition in an output folder lives on the web, as its own files say: the folder of the site (--base) and the site (--site). */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

export function formerAddress(out: string): { base: string | undefined; site: string | undefined } {
  const read = (name: string): string => (existsSync(join(out, name)) ? readFileSync(join(out, name), 'utf8') : '');
  return {
    base: /"scope": "(\/[^"]*)"/.exec(read('manifest.webmanifest'))?.[1],
    site: /<loc>(https?:\/\/[^/<]+)/.exec(read('sitemap.xml'))?.[1],
  };
}
