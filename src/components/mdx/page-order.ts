/*
 * Order of the parts of a page. A bulletin shows first what to do, then its five parts and the law, and folds the rest. A long article
 * keeps its first parts open, and folds those that follow.
 */
import type { Nodes } from 'mdast';

/** The heading of the bulletin part that the signs page also shows. */
export const FIELD_TEST = 'the-field-test';
export const DO_NOW = 'what-to-do-today';
export const DONTS = 'what-not-to-do';
export const LAW = 'law';

/** Parts of a bulletin that stay open, in the order of the page. Authors write them in the order of schemas/bulletins. */
const OPEN_PARTS = [DO_NOW, 'what-you-see', FIELD_TEST, 'what-looks-like-it', DONTS, LAW];

/** `bulletins` for `.../bulletins/varroa.mdx`. */
export const collectionOf = (path: string | undefined): string => /([^\\/]+)[\\/][^\\/]+$/.exec(path ?? '')?.[1] ?? '';

/** The nodes of a bulletin in the order of its page: opening, open parts, the rest. `idOf` is the id of a heading of second level. */
export function inBulletinOrder<Node extends Nodes>(nodes: readonly Node[], idOf: (node: Node) => string | undefined): Node[] {
  const parts: { id: string; nodes: Node[] }[] = [{ id: '', nodes: [] }];
  for (const node of nodes) {
    const id = idOf(node);
    if (id !== undefined) parts.push({ id, nodes: [] });
    parts.at(-1)!.nodes.push(node);
  }
  const rank = ({ id }: { id: string }): number => (id === '' ? -1 : OPEN_PARTS.includes(id) ? OPEN_PARTS.indexOf(id) : OPEN_PARTS.length);
  return parts.toSorted((a, b) => rank(a) - rank(b)).flatMap((part) => part.nodes);
}

export const isOpenPart = (id: string): boolean => OPEN_PARTS.includes(id);
