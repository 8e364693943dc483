/* Removes repetitions that pages need and a book does not: a drawing, rows that link to subpages, and the first words of a page. */
import type { Element, Root } from 'hast';
import { toHtml } from 'hast-util-to-html';
import { h } from 'hastscript';
import { all, isOf } from '../../paper/find.ts';
import type { Target } from '../../paper/links.ts';
import { dropEmpty } from '../../paper/on-paper.ts';
import { around } from './front.ts';
import type { Leaf } from './order.ts';
import { text } from './words.ts';

/** A drawing on two pages is drawn on the first. The other keeps its text version and a reference. */
export function drawOnce(leaves: readonly Leaf[], trees: ReadonlyMap<string, Root>, base: string): void {
  const drawn = new Map<string, { place: string; title: string }>();
  for (const { page, title } of leaves) {
    for (const figure of all(trees.get(page.place)!, ({ tagName }) => tagName === 'figure')) {
      const lines = figure.children.find((child): child is Element => child.type === 'element' && child.tagName === 'svg');
      const before = lines && drawn.get(toHtml(lines));
      if (before)
        figure.children = [
          h('p', around(text().drawnUnder, h('a', { href: `${base}${before.place}` }, before.title))),
          ...figure.children.filter((child) => child !== lines),
        ];
      else if (lines) drawn.set(toHtml(lines), { place: page.place, title });
    }
  }
}

/** Rows that link to places on subpages, which follow directly. In a book the contents link there. */
export function leaveToBelow(tree: Root, place: string, base: string): void {
  const leadsBelow = (node: Element): boolean => place !== '' && new RegExp(`^${base}${place}[^#]+#`).test(String(node.properties.href));
  for (const list of all(tree, (node) => isOf(node, 'rows')))
    list.children = list.children.filter(
      (row) => row.type !== 'element' || !row.children.some((child) => child.type === 'element' && leadsBelow(child)),
    );
  dropEmpty(tree);
}

/** Where a row names a page of the book, that page's own summary is not repeated. */
export function sayOnce(tree: Root, links: readonly (readonly [Element, Target])[], leadOf: ReadonlyMap<string, string>): void {
  const leads = new Map(links.filter(([, { id }]) => id === '').map(([link, { place }]) => [link, leadOf.get(place) ?? '']));
  for (const row of all(tree, ({ tagName }) => tagName === 'li')) {
    const lead = row.children.map((child) => (child.type === 'element' ? leads.get(child) : undefined)).find(Boolean);
    for (const line of lead ? row.children : []) {
      const [begin] = line.type === 'element' && line.tagName === 'p' ? line.children : [];
      if (begin?.type === 'text' && begin.value.trim() === lead) begin.value = '';
    }
  }
}
