/*
 * Simplifies a chapter: removes attributes for programs, classes that the book's style sheet does not use, redundant wrappers, and
 * invisible spaces.
 */
import type { Element, ElementContent, Parents, Root } from 'hast';
import { SKIP, visit } from 'unist-util-visit';
import { all, isOf } from './find.ts';

const KEPT = new Set(['id', 'href', 'className', 'scope', 'colSpan', 'rowSpan', 'lang', 'ariaLabel']);

export function makePlain(tree: Root, classes: ReadonlySet<string>): void {
  strip(tree, classes);
  for (const frame of all(tree, isNarrow)) frame.properties = {};
  for (const strong of all(tree, ({ tagName }) => tagName === 'strong')) strong.tagName = 'b';
  visit(tree, 'element', (node, index, parent) => {
    if (!parent || index === undefined || !['div', 'section', 'span'].includes(node.tagName)) return undefined;
    handOn(node);
    if (Object.keys(node.properties).length > 0) return undefined;
    (parent.children as ElementContent[]).splice(index, 1, ...node.children);
    return [SKIP, index];
  });
  closeUp(tree);
}

function strip(tree: Root | Element, classes: ReadonlySet<string>): void {
  visit(tree, 'element', (node) => {
    const own = ((node.properties.className as string[] | undefined) ?? []).filter((name) => classes.has(name));
    if (own.length > 0) node.properties.className = own;
    else delete node.properties.className;
    if (node.tagName === 'svg') return stripPicture(node, classes);
    for (const name of Object.keys(node.properties)) if (!KEPT.has(name)) delete node.properties[name];
    // An aria-label on an element without a role is ignored. A scrollable table has the label of its frame.
    if (!own.includes('scroll-x')) delete node.properties.ariaLabel;
    return undefined;
  });
}

function stripPicture(svg: Element, classes: ReadonlySet<string>): typeof SKIP {
  visit(svg, 'element', (node) => {
    for (const name of Object.keys(node.properties)) if (name.startsWith('data') || name === 'ariaHidden') delete node.properties[name];
    const own = ((node.properties.className as string[] | undefined) ?? []).filter((name) => classes.has(name));
    if (own.length > 0) node.properties.className = own;
    else delete node.properties.className;
    // Only this unit keeps the size of letters relative to the text in every reading program.
    for (const [name, value] of Object.entries(node.properties))
      if (typeof value === 'string' && value.endsWith('rem')) node.properties[name] = value.replace(/rem$/, 'em');
  });
  return SKIP;
}

/** A table of three columns fits the narrowest screen, so it needs no frame. */
const isNarrow = (node: Element): boolean =>
  isOf(node, 'scroll-x') &&
  all(node, ({ tagName }) => tagName === 'tr').every((row) => row.children.filter((child) => child.type === 'element').length <= 3);

/** A link target may move to the heading that begins the frame. */
function handOn(frame: Element): void {
  const within = frame.children.filter((child): child is Element => child.type === 'element');
  const [begin] = within;
  if (begin && Object.keys(frame.properties).join() === 'id' && /^h[2-6]$/.test(begin.tagName) && begin.properties.id === undefined) {
    begin.properties.id = frame.properties.id;
    frame.properties = {};
  }
}

const BLOCKS = new Set(
  'p ul ol li dl dt dd div section h1 h2 h3 h4 h5 h6 table caption thead tbody tfoot tr th td figure figcaption svg title path g line rect circle text nav header footer blockquote'.split(
    ' ',
  ),
);
const isBlock = (node: ElementContent | undefined): boolean => node === undefined || (node.type === 'element' && BLOCKS.has(node.tagName));

/** One space between words, and none where a block begins or ends. */
function closeUp(tree: Root): void {
  visit(tree, 'text', (node, index, parent) => {
    const next = index === undefined ? undefined : parent?.children[index + 1];
    if (!parent || index === undefined || next?.type !== 'text') return undefined;
    node.value += next.value;
    parent.children.splice(index + 1, 1);
    return [SKIP, index];
  });
  visit(tree, 'text', (node, index, parent) => {
    if (index === undefined || !parent) return undefined;
    const [before, after] = [parent.children[index - 1], parent.children[index + 1]] as (ElementContent | undefined)[];
    node.value = node.value.replace(/ {2,}/g, ' ');
    const edge = parent.type === 'root' || isBlock(parent as Element);
    if (before ? isBlock(before) : edge) node.value = node.value.replace(/^ /, '');
    if (after ? isBlock(after) : edge) node.value = node.value.replace(/ $/, '');
    if (node.value !== '') return undefined;
    (parent as Parents).children.splice(index, 1);
    return [SKIP, index];
  });
}

/** Classes in selectors. `.5rem` and `example.org` are none. */
export const classesIn = (styles: string): Set<string> =>
  new Set([...styles.matchAll(/\.([a-z][\w-]*)(?=[^{}]*\{)/gi)].map(([, name]) => name!));
