/* Removes one-line page scripts that only import another file. Pages then name the other file themselves, which saves a request. */
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const ONLY_FETCHES = /^\s*import\s*["']\.\/([\w.-]+\.js)["'];?\s*$/;

/** Rewrites the pages below `site` and returns the number of deleted files. */
export function nameScriptFiles(site: string): number {
  const assets = join(site, 'assets');
  const instead = new Map<string, string>();
  for (const name of readdirSync(assets).filter((each) => each.endsWith('.js'))) {
    const other = ONLY_FETCHES.exec(readFileSync(join(assets, name), 'utf8'))?.[1];
    if (other) instead.set(name, other);
  }
  for (const path of readdirSync(site, { recursive: true, encoding: 'utf8' }).filter((each) => each.endsWith('.html'))) {
    const html = readFileSync(join(site, path), 'utf8');
    const named = html.replace(/(src="[^"]*\/assets\/)([\w.-]+\.js)"/g, (whole, before: string, name: string) =>
      instead.has(name) ? `${before}${instead.get(name)}"` : whole,
    );
    if (named !== html) writeFileSync(join(site, path), named);
  }
  for (const name of instead.keys()) rmSync(join(assets, name));
  return instead.size;
}
