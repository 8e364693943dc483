/* Removes one-line page scripts that only import another file. Pages then name the other file themselves, which saves a request. */
import { readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';

const ONLY_IMPORTS = /^\s*import\s*["']\.\/([\w.-]+\.js)["'];?\s*$/;

/** Deletes the one-line scripts below `site`. Returns the change that the text of each page needs. */
export function joinScripts(site: string): (html: string) => string {
  const assets = join(site, 'assets');
  const instead = new Map<string, string>();
  for (const name of readdirSync(assets).filter((each) => each.endsWith('.js'))) {
    const other = ONLY_IMPORTS.exec(readFileSync(join(assets, name), 'utf8'))?.[1];
    if (other) instead.set(name, other);
  }
  for (const name of instead.keys()) rmSync(join(assets, name));
  return (html) =>
    html.replace(/(src="[^"]*\/assets\/)([\w.-]+\.js)"/g, (_, before: string, name: string) => `${before}${instead.get(name) ?? name}"`);
}
