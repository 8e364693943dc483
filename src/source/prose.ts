/*
 * Parses the words of a page to a tree (mdast): Markdown with GitHub's tables, boxes and bare addresses, and the tags of tag-syntax.
 * Checks and Astro's MDX processor both use SYNTAX, so that what is checked is what is drawn.
 */
import type { Heading, List, ListItem, Nodes, Root } from 'mdast';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import { unified, type PluggableList } from 'unified';
import { remarkSpacedPictures } from './spaced-pictures.ts';
import { remarkTags } from './tag-syntax.ts';

/** "2~3 l" stays as typed. Only two tildes on each side strike words out. */
export const SYNTAX: PluggableList = [remarkTags, [remarkGfm, { singleTilde: false }], remarkSpacedPictures];

const parser = unified().use(remarkParse).use(SYNTAX).freeze();

/** The tree of a page's words. Positions count from the first line of `body`. Throws where a tag is not closed or crosses another mark. */
export const parseProse = (body: string): Root => parser.parse(body);

/** A tag in the tree, as the MDX parser creates it. */
export type TagNode = {
  type: 'mdxJsxTextElement' | 'mdxJsxFlowElement';
  name: string;
  attributes: { type: string; name: string; value: string | null }[];
  children: Nodes[];
  position?: Root['position'];
};

/** Every node of a tree, parents before children, in reading order. */
export function* walk(node: Nodes): Generator<Nodes> {
  const left = [node];
  for (let next = left.pop(); next !== undefined; next = left.pop()) {
    yield next;
    if (!('children' in next)) continue;
    for (let index = next.children.length - 1; index >= 0; index -= 1) left.push(next.children[index] as Nodes);
  }
}

export const isTag = (node: unknown): node is TagNode => {
  const type = typeof node === 'object' && node !== null && 'type' in node && node.type;
  return type === 'mdxJsxTextElement' || type === 'mdxJsxFlowElement';
};

/** A list line with a box to tick. */
export const isBoxed = (item: ListItem): boolean => typeof item.checked === 'boolean';

/** The steps of a checklist: a plain list with boxes to tick. */
export const isSteps = (node: Nodes): node is List => node.type === 'list' && !node.ordered && node.children.some(isBoxed);

/** The value of a tag's attribute, or undefined. */
export const attribute = (tag: TagNode, name: string): string | undefined =>
  tag.attributes.find((each) => each.name === name)?.value ?? undefined;

/** The plain text below a node. */
export function plainText(node: Nodes | TagNode): string {
  if ('value' in node && typeof node.value === 'string') return node.value;
  if (node.type === 'break') return ' ';
  return 'children' in node ? (node.children as Nodes[]).map(plainText).join('') : '';
}

/**
 * The id of each heading on the page: its words in lower case, joined by hyphens. A repeated one gets a number. A heading of a
 * translation has that of the original.
 */
export function headingIds(tree: Root): Map<Heading, string> {
  const ids = new Map<Heading, string>();
  const times = new Map<string, number>();
  for (const node of walk(tree)) {
    if (node.type !== 'heading') continue;
    const given = (node.data as { id?: string } | undefined)?.id;
    if (given !== undefined) {
      ids.set(node, given);
      continue;
    }
    const id =
      plainText(node)
        .toLowerCase()
        .replace(/[^\p{L}\p{N}\s-]/gu, '')
        .trim()
        .replace(/\s+/g, '-') || 'part';
    const before = times.get(id) ?? 0;
    times.set(id, before + 1);
    ids.set(node, before === 0 ? id : `${id}-${before}`);
  }
  return ids;
}
