/*
 * Order of the book's pages: the parts in the order of the bottom navigation. In each part, the page that opens it comes first, then
 * every page below the one that lists it, in the order of that list.
 */
import type { Element } from 'hast';
import { isPublished, titleOf, type BuiltPage } from '../built-pages.ts';
import { all, first, isOf, wordsOf } from '../../paper/find.ts';

/** A page of the book with the pages below it. */
export type Leaf = { page: BuiltPage; title: string; below: Leaf[] };
export type Part = { name: string; leaves: Leaf[] };

/** Pages that consist of their form. In a book the contents replace them. */
const ONLY_LIVE = ['search/', 'hand-out/', 'hall/'];

/** The book is in the club's language alone. */
export const isInBook = (page: BuiltPage): boolean => isPublished(page) && page.tongue === undefined && !ONLY_LIVE.includes(page.place);

/** @throws Error when a page belongs to no part, because the book would silently lack it. */
export function partsOf(pages: readonly BuiltPage[], base: string): Part[] {
  const held = pages.filter(isInBook);
  const placed = held.map((page) => ({ page, ...partOf(page) }));
  const names = held[0] ? partLinks(held[0]).map(({ children }) => wordsOf(children)) : [];
  const lost = placed.filter(({ part }) => !names.includes(part));
  if (lost.length > 0) throw new Error(`the book has no part for ${lost.map(({ page }) => page.file).join(', ')}`);
  return names.flatMap((name) => {
    const own = placed.filter(({ part }) => part === name);
    const first = own.find(({ opens }) => opens) ?? own[0];
    return first
      ? [
          {
            name,
            leaves: treeOf(
              first.page,
              own.map(({ page }) => page),
              base,
            ),
          },
        ]
      : [];
  });
}

/** All pages in reading order. */
export const inOrder = (leaves: readonly Leaf[]): Leaf[] => leaves.flatMap((leaf) => [leaf, ...inOrder(leaf.below)]);

/** The links of the bar that every page has at its bottom, a part of the almanac each. */
const partLinks = ({ tree }: BuiltPage): Element[] =>
  all(
    first(tree, (node) => isOf(node, 'bottom-nav')),
    ({ tagName }) => tagName === 'a',
  );

function partOf(page: BuiltPage): { part: string; opens: boolean } {
  const here = partLinks(page).find(({ properties }) => properties.ariaCurrent !== undefined);
  return { part: here ? wordsOf(here.children) : '', opens: here?.properties.ariaCurrent === 'page' };
}

/** The page that opens a part, and the pages that no other lists. */
function treeOf(first: BuiltPage, pages: readonly BuiltPage[], base: string): Leaf[] {
  const others = new Map(pages.filter((page) => page !== first).map((page) => [page.place, page]));
  const children = Map.groupBy(
    others.values(),
    ({ place }) =>
      foldersAbove(place)
        .filter((folder) => folder !== place)
        .map((folder) => others.get(folder))
        .find(Boolean) ?? first,
  );
  const below = (parent: BuiltPage): Leaf[] => {
    const ranks = new Map(namedOn(parent, base).map((place, rank) => [place, rank]));
    const rank = ({ place }: BuiltPage): number => ranks.get(place) ?? ranks.size;
    return (children.get(parent) ?? [])
      .sort((a, b) => rank(a) - rank(b) || (a.place < b.place ? -1 : 1))
      .map((page) => ({ page, title: titleOf(page), below: below(page) }));
  };
  return [{ page: first, title: titleOf(first), below: [] }, ...below(first)];
}

/** The parent path: `year/`, and then the empty path of the first page, for `year/bloom/`. */
const foldersAbove = (place: string): string[] =>
  [...place.matchAll(/\/(?=[^/])/g)]
    .map(({ index }) => place.slice(0, index + 1))
    .reverse()
    .concat('');

/** Paths that the main text of a page links to, in order. */
function namedOn({ main }: BuiltPage, base: string): string[] {
  const addresses = all(main, ({ properties }) => typeof properties.href === 'string').map(
    ({ properties }) => String(properties.href).split(/[#?]/)[0]!,
  );
  return [...new Set(addresses.filter((address) => address.startsWith(base)).map((address) => address.slice(base.length)))];
}
