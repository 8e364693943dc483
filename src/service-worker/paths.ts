/* Maps an address that somebody typed, stored or sent to the path of the page or file that it means. */
import { copy } from './cache.ts';

const listed = new Set(copy.files.map(([place]) => place));
const byLowerCase = new Map(copy.files.map(([place]) => [place.toLowerCase(), place]));

/**
 * The listed path for an address of this site: with or without its last slash, `index.html`, fragment or capital letters. Undefined where
 * there is none.
 */
export function placeOf(address: string): string | undefined {
  const { pathname, origin } = new URL(address);
  if (origin !== location.origin || !`${pathname}/`.startsWith(copy.base)) return undefined;
  const path = decoded(pathname.slice(copy.base.length)).replace(/(^|\/)index\.html?$/i, '$1');
  for (const place of [path, `${path}/`]) {
    if (listed.has(place)) return place;
    const found = byLowerCase.get(place.toLowerCase());
    if (found !== undefined) return found;
  }
  return undefined;
}

function decoded(path: string): string {
  try {
    return decodeURIComponent(path);
  } catch {
    return path;
  }
}
