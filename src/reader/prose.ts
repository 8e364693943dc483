/*
 * The words of a page: MDX with a fixed vocabulary of tags, and nothing else of MDX. People write "<3 mites", "{name}",
 * "2~3 litres" and begin lines with "import"; each such sign is swapped for a stand-in of the same length before the
 * parser sees it, and put back in the tree, so that it is shown as typed and lines and columns stay true.
 */
import { mdxToMdast } from 'satteri';
import type { Heading, Nodes, Root } from 'mdast';

/** The tags an author may write. The vocabulary draws them; checks refuse any other. */
export const TAGS = ['Figure', 'Task', 'Example', 'Contact', 'Drawing', 'Day', 'Caution'] as const;
export type Tag = (typeof TAGS)[number];

/** A tag in the tree, as the MDX parser leaves it. */
export type TagNode = {
  type: 'mdxJsxTextElement' | 'mdxJsxFlowElement';
  name: string;
  attributes: { type: string; name: string; value: string | null }[];
  children: Nodes[];
  position?: Root['position'];
};

const STAND_INS = { '{': '\uE001', '}': '\uE002', '<': '\uE003', '~': '\uE004', i: '\uE005', e: '\uE006', ' ': '\uE007' } as const;
const BACK = new Map<string, string>(Object.entries(STAND_INS).map(([sign, standIn]) => [standIn, sign]));
const TAG = new RegExp(`</?(?:${TAGS.join('|')})(?:\\s+[a-z-]+="[^"<>{}\\n]*")*\\s*/?>`, 'g');

/** A picture whose file has spaces in its name, as phones and scanners give them: no address of Markdown may have one. */
const PICTURE = /(!\[[^[\]]*\]\([ \t]*)([^\s"()<>][^"\n<>]*?\.[A-Za-z]{3,4})(?=[ \t]*(?:\)|[ \t]"))/g;

/** The tree of a page's words. Positions count from the first line of `body`. */
export function parseProse(body: string): Root {
  return restore(mdxToMdast(swap(body), { features: { frontmatter: false } }) as unknown as Root);
}

/** The text with every sign that MDX would read as code swapped for its stand-in. */
export function swap(body: string): string {
  let out = '';
  let from = 0;
  for (const match of body.matchAll(TAG)) {
    out += swapPlain(body.slice(from, match.index)) + match[0];
    from = match.index + match[0].length;
  }
  return out + swapPlain(body.slice(from));
}

function swapPlain(text: string): string {
  return text
    .replace(PICTURE, (_, before: string, name: string) => before + name.replaceAll(' ', STAND_INS[' ']))
    .replace(/[{}<~]/g, (sign) => STAND_INS[sign as '{'])
    .replace(/^([ \t]*)(i(?=mport\b)|e(?=xport\b))/gm, (_, space: string, letter: 'i' | 'e') => space + STAND_INS[letter]);
}

const HAS_STAND_IN = /[\uE001-\uE007]/;
const back = (text: string): string =>
  HAS_STAND_IN.test(text) ? text.replace(/\\?([\uE001-\uE007])/g, (_, standIn: string) => BACK.get(standIn)!) : text;

function restore<T>(node: T): T {
  const open = node as Record<string, unknown>;
  for (const key of ['value', 'url', 'title', 'alt', 'lang', 'meta', 'label', 'identifier']) {
    const held = open[key];
    if (typeof held === 'string') open[key] = back(held);
  }
  if (Array.isArray(open.children)) open.children.forEach(restore);
  return node;
}

/** Every node of a tree, parents before children. */
export function* walk(node: Nodes): Generator<Nodes> {
  yield node;
  if ('children' in node) for (const child of node.children) yield* walk(child as Nodes);
}

export const isTag = (node: unknown): node is TagNode =>
  typeof node === 'object' && node !== null && /^mdxJsx(Text|Flow)Element$/.test(String((node as { type?: string }).type));

/** The value of a tag's attribute, or undefined. */
export const attribute = (tag: TagNode, name: string): string | undefined =>
  tag.attributes.find((each) => each.name === name)?.value ?? undefined;

/** The plain text below a node. */
export function plainText(node: Nodes | TagNode): string {
  if ('value' in node && typeof node.value === 'string') return node.value;
  if (node.type === 'break') return ' ';
  return 'children' in node ? (node.children as Nodes[]).map(plainText).join('') : '';
}

/** The id each heading has on the page: its words in lower case, joined by hyphens; a second one alike gets a number. */
export function headingIds(tree: Root): Map<Heading, string> {
  const ids = new Map<Heading, string>();
  const times = new Map<string, number>();
  for (const node of walk(tree)) {
    if (node.type !== 'heading') continue;
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
