/*
 * Remark plug-in for a page's words before they become HTML. Lists of steps and pictures become tags, headings get their ids, and the
 * page gets its list of figures and headings in advance.
 */
import type { Image, Link, ListItem, Nodes, Paragraph, Parents, PhrasingContent, Root, TableCell } from 'mdast';
import { SKIP, visit } from 'unist-util-visit';
import type { VFile } from 'vfile';
import type { WordsAhead } from '../../lib/render-context.ts';
import { isOfBook, isText } from '../../source/mdx-modules.ts';
import { asWritten } from '../../lib/country.ts';
import { attribute, headingIds, isSteps, isTag, walk, type TagNode } from '../../source/prose.ts';
import { collectionOf, FIELD_TEST, inBulletinOrder } from './page-order.ts';

export function remarkPage() {
  return (tree: Root, file: VFile): void => {
    const ids = headingIds(tree);
    for (const [heading, id] of ids) setProperties(heading, { id });
    if (isOfBook(file.path)) writeForCountry(tree);
    joinTags(tree);
    if (collectionOf(file.path) === 'bulletins')
      tree.children = inBulletinOrder(tree.children, (node) => (node.type === 'heading' && node.depth === 2 ? ids.get(node) : undefined));
    const test = fieldTest(tree, ids);
    const ahead: WordsAhead = {
      figures: figuresIn(tree),
      testFigures: test.flatMap(figuresIn),
      locals: localsIn(tree),
      parts: partsOf(tree, ids),
    };
    Object.assign((file.data.astro as { frontmatter: object }).frontmatter, ahead);
    if (test.length > 0) nodesIn(tree).push(tag('FieldTest', {}, structuredClone(test)));
    drawPictures(tree);
    visit(tree, (node, index, parent) => {
      if (node.type === 'link') setProperties(node, { href: node.url });
      if (node.type === 'paragraph' || node.type === 'tableCell') markAlone(node);
      if (isSteps(node)) {
        setProperties(node, { className: ['steps'] });
        node.spread = true;
        (node as { children: unknown[] }).children = node.children.map(step);
      }
      // A Task that belongs to no step shows nothing.
      if (isTag(node) && node.name === 'Task' && parent && index !== undefined) {
        parent.children.splice(index, 1);
        return index;
      }
      return undefined;
    });
  };
}

/** Words of a book as the club's country writes them. Ids of headings are those of the book. */
function writeForCountry(tree: Root): void {
  for (const node of walk(tree)) {
    if (node.type === 'text') node.value = asWritten(node.value);
    if (isTag(node))
      for (const each of node.attributes)
        if (each.type === 'mdxJsxAttribute' && typeof each.value === 'string' && isText(each.value)) each.value = asWritten(each.value);
  }
}

/** Properties of the element that a node becomes. */
function setProperties(node: { data?: object | undefined }, properties: Record<string, unknown>): void {
  const data = node.data as { hProperties?: object } | undefined;
  node.data = { ...data, hProperties: { ...data?.hProperties, ...properties } };
}

const tag = (name: string, attributes: Record<string, string | undefined>, children: readonly unknown[] = []): TagNode => ({
  type: 'mdxJsxFlowElement',
  name,
  attributes: Object.entries(attributes).flatMap(([key, value]) =>
    value === undefined ? [] : [{ type: 'mdxJsxAttribute', name: key, value }],
  ),
  children: children as Nodes[],
});

/** The children of a node, where the tags of MDX may stand between Markdown. */
const nodesIn = (parent: Parents): (Nodes | TagNode)[] => parent.children;

/** An HTML element without a Markdown equivalent. */
const element = (hName: string, hProperties: Record<string, unknown>, children: PhrasingContent[]): PhrasingContent =>
  ({ type: 'element', data: { hName, hProperties }, children }) as unknown as PhrasingContent;

const figuresIn = (node: Nodes): WordsAhead['figures'] =>
  [...walk(node)].flatMap((each) =>
    isTag(each) && each.name === 'Figure' ? [{ id: attribute(each, 'id') ?? '', row: attribute(each, 'row') }] : [],
  );

function localsIn(node: Nodes): WordsAhead['locals'] {
  const tags = [...walk(node)].flatMap((each) => (isTag(each) && (each.name === 'Figure' || each.name === 'Local') ? [each] : []));
  return tags.flatMap((each, index) =>
    each.name === 'Local'
      ? [{ id: attribute(each, 'id') ?? '', after: tags.slice(0, index).filter(({ name }) => name === 'Figure').length }]
      : [],
  );
}

function partsOf(tree: Root, ids: ReturnType<typeof headingIds>): WordsAhead['parts'] {
  const parts: WordsAhead['parts'] = [];
  for (const node of tree.children) {
    if (node.type === 'heading' && node.depth === 2)
      parts.push({ id: ids.get(node)!, words: node.children.map((child) => ('value' in child ? child.value : '')).join(''), steps: 0 });
    if (isSteps(node) && parts.length > 0) parts.at(-1)!.steps += node.children.length;
  }
  return parts;
}

/** The words of the first paragraph or list line under the heading of the field test. */
function fieldTest(tree: Root, ids: ReturnType<typeof headingIds>): PhrasingContent[] {
  const at = tree.children.findIndex((node) => node.type === 'heading' && node.depth === 2 && ids.get(node) === FIELD_TEST);
  if (at < 0) return [];
  const part = tree.children.slice(at + 1);
  const end = part.findIndex((node) => node.type === 'heading' && node.depth === 2);
  const first = part
    .slice(0, end < 0 ? part.length : end)
    .map((node) => (node.type === 'list' ? node.children[0]?.children[0] : node))
    .find((node) => node?.type === 'paragraph' && node.children[0]?.type !== 'image');
  return first?.type === 'paragraph' ? first.children.filter(({ type }) => type !== 'image') : [];
}

/** @mdx-js removes the paragraph around tags on their own line. All except drawings are words of a sentence and get it back. */
function joinTags(tree: Root): void {
  visit(tree, (node, index, parent) => {
    if (!isInSentence(node) || index === undefined || !parent) return undefined;
    const { children } = parent as { children: Nodes[] };
    const together: unknown[] = [inSentence(node)];
    let last: TagNode = node;
    for (let next = children[index + 1]; next && isInSentence(next) && isBelow(last, next); next = children[index + 1]) {
      together.push({ type: 'text', value: ' ' }, inSentence(next));
      children.splice(index + 1, 1);
      last = next;
    }
    children[index] = { type: 'paragraph', children: together as PhrasingContent[] };
    return SKIP;
  });
}

const isInSentence = (node: unknown): node is TagNode =>
  isTag(node) && node.type === 'mdxJsxFlowElement' && /^(?:Figure|Example|Contact|Day|Line)$/.test(node.name);
const inSentence = (node: TagNode): TagNode => ({ ...node, type: 'mdxJsxTextElement' });
/** True for lists without empty lines between the items. */
const isBelow = (above: TagNode, node: TagNode): boolean =>
  above.position !== undefined && node.position !== undefined && node.position.start.line - above.position.end.line <= 1;

/** Each picture becomes its own figure. The text before and after it in one paragraph becomes paragraphs. */
function drawPictures(tree: Root): void {
  // The picture that may be visible without scrolling: the first, where it precedes every heading.
  const first = [...walk(tree)].find(({ type }) => type === 'image' || type === 'heading');
  const picture = (image: Image): TagNode =>
    tag('Picture', {
      url: image.url,
      alt: image.alt ?? '',
      title: image.title ?? undefined,
      early: image === first ? 'early' : undefined,
    });
  visit(tree, (node, index, parent) => {
    if (index === undefined || !parent) return undefined;
    if (node.type === 'paragraph' && node.children.some(({ type }) => type === 'image')) {
      const parts = apart(node, picture);
      nodesIn(parent).splice(index, 1, ...parts);
      return [SKIP, index + parts.length];
    }
    if (node.type === 'image') nodesIn(parent)[index] = picture(node);
    return undefined;
  });
}

function apart(node: Paragraph, picture: (image: Image) => TagNode): (TagNode | Paragraph)[] {
  const parts: (TagNode | PhrasingContent[])[] = [[]];
  for (const child of node.children)
    if (child.type === 'image') parts.push(picture(child), []);
    else (parts.at(-1) as PhrasingContent[]).push(child);
  return parts.flatMap((part): (TagNode | Paragraph)[] => {
    if (!Array.isArray(part)) return [part];
    const children = trimmed(part);
    return children.length > 0 ? [{ type: 'paragraph', children }] : [];
  });
}

/** Trims spaces and line ends at both ends. */
function trimmed(words: PhrasingContent[]): PhrasingContent[] {
  const isSpace = (child: PhrasingContent | undefined): boolean =>
    child?.type === 'break' || (child?.type === 'text' && child.value.trim() === '');
  const left = [...words];
  while (isSpace(left[0])) left.shift();
  while (isSpace(left.at(-1))) left.pop();
  const [start, end] = [left[0], left.at(-1)];
  if (start?.type === 'text') start.value = start.value.trimStart();
  if (end?.type === 'text') end.value = end.value.trimEnd();
  return left;
}

/** Marks a link or a contact that is alone in its paragraph (except for punctuation), so that it is drawn large enough to press. */
function markAlone({ children }: Paragraph | TableCell): void {
  const [only, ...others] = children.filter((child) => child.type !== 'text' || /\p{L}/u.test(child.value)) as (Link | TagNode)[];
  if (!only || others.length > 0) return;
  if (only.type === 'link') setProperties(only, { className: ['alone'] });
  if (isTag(only) && /^(?:Example|Contact)$/.test(only.name ?? ''))
    only.attributes.push({ type: 'mdxJsxAttribute', name: 'alone', value: 'alone' });
}

/** Turns `- [ ] Words <Task id="x" />` and its content into <Step id="x"> with its words in a slot. */
function step(item: ListItem): TagNode {
  const [head, ...below] = item.children;
  const words = head?.type === 'paragraph' ? head.children : [];
  const task = (words as unknown[]).filter(isTag).find(({ name }) => name === 'Task');
  const attributes = Object.fromEntries((task?.attributes ?? []).map(({ name, value }) => [name, value ?? undefined]));
  const time = attributes.time ? [element('span', { className: ['step-time'] }, [{ type: 'text', value: ` (${attributes.time})` }])] : [];
  return tag('Step', { ...attributes, below: below.length > 0 ? 'below' : undefined }, [
    element('span', { slot: 'words', className: ['step-words'] }, [
      ...verbFirst(words.filter((child) => (child as unknown) !== task)),
      ...time,
    ]),
    ...(head && head.type !== 'paragraph' ? [head] : []),
    ...below,
  ]);
}

/** Sets the first word in heavier type and trims spaces at the end. */
function verbFirst(words: PhrasingContent[]): PhrasingContent[] {
  const last = words.at(-1);
  if (last?.type === 'text') last.value = last.value.trimEnd();
  const [first, ...rest] = words;
  const match = first?.type === 'text' ? /^(\S+)([\s\S]*)$/.exec(first.value) : null;
  return match ? [{ type: 'strong', children: [{ type: 'text', value: match[1]! }] }, { type: 'text', value: match[2]! }, ...rest] : words;
}
