/*
 * Binds pages into one hand-out: a link to another page of it leads there, any other is a complete address, and every `id` is unique. The
 * sheets and the EPUB write both in their own way.
 */
import type { Root } from 'hast';
import { all } from '../../paper/find.ts';
import { leadsTo } from '../../paper/links.ts';
import type { Kind, Leaf } from './leaf.ts';

/** Pages count from 1. An empty `id` means the page as a whole. */
export type Binding = {
  kind: Kind;
  href: (number: number, id: string) => string;
  id: (number: number, id: string) => string;
  /** How many levels headings are lowered. */
  lower: number;
};

/** The pages' trees. `root` is the complete address of the first page of the almanac. */
export function bind(leaves: readonly Leaf[], { base, root }: { base: string; root: string }, { kind, href, id, lower }: Binding): Root[] {
  const trees = leaves.map(({ treeFor }) => treeFor(kind));
  const ids = new Map(
    leaves.map(({ page }, at) => [`${page}/`, new Set(named(trees[at]!).map(({ properties }) => String(properties.id)))]),
  );
  const numberOf = (place: string): number => leaves.findIndex(({ page }) => `${page}/` === place) + 1;
  const targets = new Set<string>();
  trees.forEach((tree, at) => {
    for (const link of all(tree, ({ properties }) => typeof properties.href === 'string')) {
      const led = leadsTo(String(link.properties.href), `${leaves[at]!.page}/`, { base, root, held: (place) => ids.get(place) });
      if (led.kind === 'outside') link.properties.href = led.address;
      if (led.kind !== 'inside') continue;
      link.properties.href = href(numberOf(led.place), led.id);
      targets.add(`${led.place}#${led.id}`);
    }
  });
  trees.forEach((tree, at) => {
    for (const element of named(tree)) {
      const name = String(element.properties.id);
      if (targets.has(`${leaves[at]!.page}/#${name}`)) element.properties.id = id(at + 1, name);
      else delete element.properties.id;
    }
    for (const element of all(tree, () => true)) {
      delete element.properties.ariaLabelledBy;
      const level = /^h([1-6])$/.exec(element.tagName)?.[1];
      if (level) element.tagName = `h${Math.min(6, Number(level) + lower)}`;
    }
  });
  return trees;
}

const named = (tree: Root) => all(tree, ({ properties }) => properties.id !== undefined);
