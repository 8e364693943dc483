/*
 * Chapters of the book: the printable text of every page, with the targets of its links resolved once. The two files write addresses,
 * `id`s and heading levels differently, so they do that themselves (`dress`).
 */
import type { Element, Root } from 'hast';
import { h } from 'hastscript';
import { SKIP, visit } from 'unist-util-visit';
import type { Cited } from '../../lib/figures.ts';
import type { BuiltPage } from '../built-pages.ts';
import { leadsTo, type Target } from '../../paper/links.ts';
import { drawOnce, leaveToBelow, sayOnce } from './once.ts';
import { onPaper, type Districts } from '../../paper/on-paper.ts';
import { inOrder, type Leaf, type Part } from './order.ts';
import { makePlain } from '../../paper/plain.ts';
import { all, first, isOf, wordsOf } from '../../paper/find.ts';
import { pointAtSources, settleSources, Sources, type Listed, type Mark } from './sources.ts';

export type Chapter = {
  place: string;
  title: string;
  /** Its name in addresses: letters, digits and hyphens, unique in the book. */
  slug: string;
  tree: Root;
  links: readonly (readonly [Element, Target])[];
  marks: readonly Mark[];
  /** Elements that something in the book links to, with their `id` on the page. */
  marked: readonly (readonly [Element, string])[];
  /** Headings with their level on the page. */
  headings: readonly (readonly [Element, number])[];
};

/** The differences between the two files. */
export type Dress = {
  href: (target: { slug: string; id: string }) => string;
  source: (number: number) => Record<'href', string> & Record<string, string>;
  id: (slug: string, id: string) => string;
  /** How many levels headings are lowered from the page. */
  lower: number;
};

/** `root` is the complete address of the first page, where it is known. `classes` are those of the book's style sheet. */
export type Setting = {
  base: string;
  root: string | null;
  /** Those of the club. */ districts: Districts;
  classes: ReadonlySet<string>;
  /** Sources in full, as the pages have them. */ publications: readonly Cited[];
};

/** Chapters by path, in order, and all their sources. @throws Error when a page has no name or a source is missing. */
export function chaptersOf(parts: readonly Part[], setting: Setting): { chapters: Map<string, Chapter>; sources: readonly Listed[] } {
  const leaves = parts.flatMap(({ leaves: of }) => inOrder(of));
  const slugs = slugsOf(leaves);
  const sources = new Sources(setting.publications);
  const trees = new Map(leaves.map(({ page }) => [page.place, onPaper(page.main, setting.districts)] as const));
  const ledes = new Map(
    [...trees].map(([place, tree]) => [place, wordsOf(first(tree, (node) => isOf(node, 'lead'))?.children ?? [])] as const),
  );
  drawOnce(leaves, trees, setting.base);
  const marks = new Map([...trees].map(([place, tree]) => [place, settleSources(tree, place, sources)] as const));
  for (const tree of trees.values()) pointAtSources(tree, sources);
  for (const { page } of leaves) leaveToBelow(trees.get(page.place)!, page.place, setting.base);
  const ids = new Map([...trees].map(([place, tree]) => [place, new Set(named(tree).map(([, id]) => id))] as const));
  const titles = new Map(leaves.map(({ page, title }) => [page.place, title] as const));
  const links = new Map(leaves.map(({ page }) => [page.place, linksIn(trees.get(page.place)!, page, { ids, titles }, setting)] as const));
  const targets = new Set([...links.values()].flat().map(([, { place, id }]) => `${place}#${id}`));
  const chapters = new Map(
    leaves.map(({ page: { place }, title }): [string, Chapter] => {
      const tree = trees.get(place)!;
      sayOnce(tree, links.get(place)!, ledes);
      for (const [node, id] of named(tree)) if (!targets.has(`${place}#${id}`)) delete node.properties.id;
      makePlain(tree, setting.classes);
      const headings = all(tree, ({ tagName }) => /^h[1-6]$/.test(tagName)).map((node) => [node, Number(node.tagName[1])] as const);
      return [
        place,
        { place, title, slug: slugs.get(place)!, tree, links: links.get(place)!, marks: marks.get(place)!, marked: named(tree), headings },
      ];
    }),
  );
  return { chapters, sources: sources.all };
}

/** Writes addresses, ids and levels into the chapter in the form of one of the two files. */
export function dress(chapter: Chapter, chapters: ReadonlyMap<string, Chapter>, { href, source, id, lower }: Dress): Root {
  for (const [element, target] of chapter.links) element.properties.href = href({ slug: chapters.get(target.place)!.slug, id: target.id });
  for (const [element, number] of chapter.marks) element.properties = source(number);
  for (const [element, name] of chapter.marked) element.properties.id = id(chapter.slug, name);
  // A heading is one level below the heading before it at most: what stood between may be left out.
  let before = lower + 1;
  for (const [element, level] of chapter.headings) {
    before = Math.min(level + lower, before + 1, 6);
    element.tagName = `h${before}`;
  }
  return chapter.tree;
}

/** Names of the book's own pages. */
const OWN = ['title', 'contents', 'sources', 'nav', 'now'];
export const isOwnName = (name: string): boolean => OWN.includes(name) || /^(part-|s)\d+$/.test(name);

/** The last word of a path where it is unique in the book, otherwise the whole path. */
function slugsOf(leaves: readonly Leaf[]): Map<string, string> {
  const places = leaves.map(({ page: { place } }) => place);
  const lastOf = (place: string): string => place.split('/').at(-2) ?? 'now';
  const byLast = Map.groupBy(places, lastOf);
  const isFree = (last: string): boolean => byLast.get(last)!.length === 1 && !isOwnName(last);
  const slugs = places.map((place) =>
    place === '' || isFree(lastOf(place)) ? lastOf(place) : place.replace(/\/$/, '').replaceAll('/', '--'),
  );
  const before = new Set<string>();
  const odd = slugs.find((slug) => !/^[a-z0-9-]+$/i.test(slug) || before.size === before.add(slug).size);
  if (odd !== undefined) throw new Error(`the book cannot name the page ${odd}`);
  return new Map(places.map((place, index) => [place, slugs[index]!]));
}

/**
 * Resolves every link, including links inside drawings. Links within the book are returned. The others get a complete address or become
 * plain words.
 */
function linksIn(
  tree: Root,
  page: BuiltPage,
  { ids, titles }: { ids: ReadonlyMap<string, ReadonlySet<string>>; titles: ReadonlyMap<string, string> },
  { base, root }: Setting,
): [Element, Target][] {
  const found: [Element, Target][] = [];
  visit(tree, 'element', (node, index, parent) => {
    const { href } = node.properties;
    if (typeof href !== 'string' || !parent || index === undefined) return undefined;
    const led = leadsTo(href, page.place, { base, root, held: (place) => ids.get(place) });
    if (led.kind === 'inside') found.push([node, led]);
    if (led.kind === 'outside') node.properties.href = led.address;
    if (led.kind !== 'nowhere') return undefined;
    const near =
      led.near === undefined || led.near === page.place
        ? []
        : [
            { type: 'text' as const, value: ' (' },
            h('a', { href: `${base}${led.near}` }, titles.get(led.near)),
            { type: 'text' as const, value: ')' },
          ];
    parent.children.splice(index, 1, ...node.children, ...near);
    return [SKIP, index];
  });
  return found;
}

const named = (tree: Root): [Element, string][] =>
  all(tree, ({ properties }) => properties.id !== undefined).map((node) => [node, String(node.properties.id)]);
