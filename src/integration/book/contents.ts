/* Table of contents of the book as nested lists: parts, the pages of each, and below a page those that it lists. */
import type { Element } from 'hast';
import { h } from 'hastscript';
import type { Leaf } from './order.ts';
import { text } from './words.ts';

export type Addresses = (leaf: Leaf) => string;

export function contentsList(leaves: readonly Leaf[], addressOf: Addresses): Element {
  return h(
    'ol',
    leaves.map((leaf) =>
      h('li', [h('a', { href: addressOf(leaf) }, leaf.title), leaf.below.length > 0 ? contentsList(leaf.below, addressOf) : '']),
    ),
  );
}

/** "Part 2" and its name. */
export const partNumber = (index: number): string => text().part(index + 1);
