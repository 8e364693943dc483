/*
 * Resolves a link of a drawn page for the book: inside the book, outside by complete address, or nowhere, where only its words stay. A
 * calculator with values in its address works only on the live page, but its example and tables are in the book.
 */
export type Target = { place: string; /** Empty for the page as a whole. */ id: string };
export type Led =
  | ({ kind: 'inside' } & Target)
  | { kind: 'outside'; address: string }
  | { kind: 'nowhere'; /** The path of the page that would have answered. */ near?: string };

export type Shelf = {
  base: string;
  /** The complete address of the first page, where it is known. */
  root: string | null;
  /** The ids of a page in the book, or undefined for another page. */
  held: (place: string) => ReadonlySet<string> | undefined;
};

/** `from` is the path of the page that contains the link. */
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
