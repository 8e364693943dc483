/* Copies into the site only those pictures that the drawn pages name. Pictures of drafts are left out. */
import { copyFileSync, existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { BuiltPage } from './built-pages.ts';

export const PICTURES = 'pictures/';

/** Copies from the cache `kept` and returns the number of files. `base` begins and ends with a slash. */
export function putPictures(site: string, base: string, pages: readonly BuiltPage[], cache: string): number {
  const names = picturesNamed(base, pages);
  if (names.length > 0) mkdirSync(join(site, PICTURES), { recursive: true });
  for (const name of names) {
    if (!existsSync(join(cache, name))) throw new Error(`the picture ${name} was taken away while the site was built. Build again.`);
    copyFileSync(join(cache, name), join(site, PICTURES, name));
  }
  return names.length;
}

/** Names of files below `pictures/`, from every address in a picture's tag, sorted and unique. */
export function picturesNamed(base: string, pages: readonly BuiltPage[]): string[] {
  const tags = pages.flatMap(({ html }) => html.match(/<img\b[^>]*>/g) ?? []);
  const addresses = tags.flatMap((tag) => [...tag.matchAll(/(?<=["\s])(\/[^"\s,]*\/|\/)pictures\/([a-z0-9-]+\.jpg)(?=["\s])/g)]);
  return [...new Set(addresses.filter(([, before]) => before === base).map(([, , name]) => name!))].sort();
}
