/*
 * Where a link of a drawn page leads in the book: to a place in it; outside, by its whole address; or nowhere, when only
 * its words stay. A calculator's form filled by an address is on the live page only; its example and tables are near.
 */
export type Target = { place: string; /** Nothing for the page as a whole. */ id: string };
export type Led =
  | ({ kind: 'inside' } & Target)
  | { kind: 'outside'; address: string }
  | { kind: 'nowhere'; /** The place of the page that would have answered. */ near?: string };

export type Shelf = {
  base: string;
  /** The whole address of the first page, where it is known. */
  root: string | null;
  /** The ids of a page of the book; undefined for a page that is not in it. */
  held: (place: string) => ReadonlySet<string> | undefined;
};

/** `from` is the place of the page on which the link stands. */
export function leadsTo(href: string, from: string, { base, root, held }: Shelf): Led {
  if (/^(tel|mailto|https?):/.test(href)) return { kind: 'outside', address: href };
  const { pathname, search, hash } = new URL(href, `https://almanac.invalid${base}${from}`);
  const place = pathname.startsWith(base) ? pathname.slice(base.length) : null;
  const ids = place === null ? undefined : held(place);
  const id = decodeURIComponent(hash.slice(1));
  const fills = hash.includes('=');
  if (place !== null && ids && search === '' && !fills) return { kind: 'inside', place, id: ids.has(id) ? id : '' };
  if (root === null) return place !== null && ids ? { kind: 'nowhere', near: place } : { kind: 'nowhere' };
  return { kind: 'outside', address: new URL(`${(place ?? pathname).replace(/^\//, '')}${search}${hash}`, root).href };
}
