/*
 * Draws the words of a page: the reader's tree becomes HTML, by one function for every page, so that what is checked is
 * what is shown. The tags of the vocabulary are drawn in vocabulary/tags; a list of steps in vocabulary/steps.
 */
import type { Element, ElementContent, Nodes as HastNodes } from 'hast';
import { h } from 'hastscript';
import { toHtml } from 'hast-util-to-html';
import { toHast, type State } from 'mdast-util-to-hast';
import type { Heading, Image, Link, List, Nodes, Paragraph, Root, Table } from 'mdast';
import { headingIds, parseProse, walk, type TagNode } from '../reader/prose.ts';
import { parted, picture } from './picture.ts';
import { isSteps, steps } from './steps.ts';
import { TAGS_DRAWN, type Surroundings } from './tags.ts';

export type { Surroundings } from './tags.ts';

/** A heading of the page, for a list of its parts. */
export type Part = { id: string; words: string; steps: number };

/** `opening` is what stands before the first heading: the answer; the first caution box follows it. */
export type Drawn = { opening: string; rest: string; parts: Part[] };

const BEFORE_HEADING = /(?=<h2 )/;

/** The HTML of a page's words; each heading with what is under it is a section, so that paper does not part them. */
export function drawProse(body: string, around: Surroundings): Drawn {
  const tree = parseProse(body);
  const hast = toHast(tree as Root, { handlers: handlers(tree, around) as never }) as HastNodes;
  const html = toHtml(hast);
  const [opening, ...sections] = html.startsWith('<h2') ? ['', ...html.split(BEFORE_HEADING)] : html.split(BEFORE_HEADING);
  return {
    opening: opening!,
    rest: sections.map((section) => `<section class="part-of-page">${section}</section>`).join(''),
    parts: partsOf(tree),
  };
}

function handlers(tree: Root, around: Surroundings) {
  const ids = headingIds(tree);
  const early = earlyPicture(tree);
  const drawPicture = (node: Image) => picture(node, around, node === early);
  const tag = (_: State, node: TagNode) => TAGS_DRAWN[node.name as keyof typeof TAGS_DRAWN]?.(node, around);
  return {
    mdxJsxTextElement: tag,
    mdxJsxFlowElement: (state: State, node: TagNode) =>
      node.name === 'Drawing' || node.name === 'Caution'
        ? tag(state, node)
        : h('p', alone([tag(state, node)].filter((drawn) => drawn !== undefined))),
    heading: (state: State, node: Heading) => h(`h${node.depth}`, { id: ids.get(node) }, state.all(node)),
    link: (state: State, node: Link) =>
      around.leads(node.url) ? link(node.url, state.all(node), around.base) : h('span', state.all(node)),
    paragraph: (state: State, node: Paragraph) =>
      node.children.some(({ type }) => type === 'image')
        ? parted(state, node, drawPicture, (words) => h('p', alone(words)))
        : h('p', alone(state.all(node))),
    image: (_: State, node: Image) => drawPicture(node) ?? undefined,
    list: (state: State, node: List) => (isSteps(node) ? steps(state, node, around) : plainList(state, node)),
    table: (state: State, node: Table) => table(state, node),
  };
}

/** The one that may be seen before anybody scrolls: the first, where it stands before every heading. */
function earlyPicture(tree: Root): Image | undefined {
  const first = [...walk(tree)].find(({ type }) => type === 'image' || type === 'heading');
  return first?.type === 'image' ? first : undefined;
}

/** A link of this site gets the folder it is published under. */
export function link(url: string, words: ElementContent[], base: string): Element {
  const inside = url.startsWith('/') && !url.startsWith('//');
  return h('a', { href: inside ? base + url.slice(1) : url, ...(inside || url.startsWith('#') ? {} : { rel: 'external' }) }, words);
}

/** A link that stands by itself (a mark of punctuation apart) says so, and is drawn large enough to press. */
function alone(content: ElementContent[]): ElementContent[] {
  const [only, ...others] = content.filter((child) => child.type !== 'text' || /\p{L}/u.test(child.value));
  if (only?.type === 'element' && only.tagName === 'a' && others.length === 0)
    only.properties.className = [only.properties.className ?? [], 'alone'].flat() as string[];
  return content;
}

function plainList(state: State, node: List): Element {
  const items = node.children.map((item) => h('li', inline(state.all(item), node.spread === true)));
  return h(node.ordered ? 'ol' : 'ul', { start: node.ordered && node.start !== 1 ? node.start : undefined }, items);
}

/** Items of a tight list hold words, not paragraphs. */
const inline = (content: ElementContent[], loose: boolean): ElementContent[] =>
  content.flatMap((child) => (!loose && child.type === 'element' && child.tagName === 'p' ? child.children : [child]));

/** A ledger: alignment as a class, and a frame that a keyboard can move sideways. */
function table(state: State, node: Table): Element {
  const align = (column: number): string | undefined => (node.align?.[column] === 'right' ? 'number' : undefined);
  // The empty corner above a column of names is no heading.
  const kind = (cell: 'th' | 'td', words: ElementContent[]): 'th' | 'td' => (words.length === 0 ? 'td' : cell);
  const row = (index: number, cell: 'th' | 'td') =>
    h(
      'tr',
      node.children[index]!.children.map((each, column) => {
        const words = alone(state.all(each));
        return h(kind(cell, words), { class: align(column), scope: kind(cell, words) === 'th' ? 'col' : undefined }, words);
      }),
    );
  const head = node.children[0]!.children.map((cell) => state.all(cell));
  const name = head
    .flat()
    .map((child) => (child.type === 'text' ? child.value : ''))
    .filter(Boolean)
    .join(', ');
  const body = node.children.slice(1).map((_, index) => row(index + 1, 'td'));
  return h('div', { class: 'sideways', role: 'region', tabindex: 0, ariaLabel: `Table: ${name}` }, [
    h('table', { class: 'ledger' }, [h('thead', [row(0, 'th')]), h('tbody', body)]),
  ]);
}

function partsOf(tree: Root): Part[] {
  const ids = headingIds(tree);
  const parts: Part[] = [];
  for (const node of tree.children as Nodes[]) {
    if (node.type === 'heading' && node.depth === 2) parts.push({ id: ids.get(node)!, words: wordsOf(node), steps: 0 });
    if (isSteps(node) && parts.length > 0) parts.at(-1)!.steps += node.children.length;
  }
  return parts;
}

const wordsOf = (node: Heading): string => node.children.map((child) => ('value' in child ? child.value : '')).join('');
