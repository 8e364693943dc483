/*
 * Parts of a page that become more than a heading with its words: what to do first and the law on a bulletin, and the parts that fold on
 * a bulletin or a long article.
 */
import type { Element, ElementContent, Properties, Text } from 'hast';
import { isTag } from '../../source/prose.ts';
import { DO_NOW, DONTS, isOpenPart, LAW } from './page-order.ts';
import { pageWords, type PageWords } from './page-words.ts';

/** Lines of what to do first. More of them follow in a fold. */
const MOST_LINES = 4;

/** Height of an article's open parts on a phone, in pixels: a part that ends below it folds, where the whole is long. */
const OPEN_HEIGHT = 1400;
const LONG = 1850;

type Page = {
  /** An article's opening ends with a caution in full. */
  hasBox?: boolean;
  /** In the language of the page. */
  words?: PageWords;
};

/** `parts` are the tags <Opening> and <Part>. */
export function folded(parts: Element[], collection: string, { hasBox = false, words = pageWords() }: Page = {}): Element[] {
  if (collection === 'bulletins') return ofBulletin(parts, words);
  if (collection === 'articles') return ofArticle(parts, hasBox);
  return parts;
}

function ofBulletin(parts: Element[], words: PageWords): Element[] {
  const all = parts.map((part) => {
    const id = idOf(part);
    if (id === undefined) return part;
    if (id === DO_NOW) return doNow(part, words);
    if (id === LAW) return fold(part, 'Law');
    if (id === DONTS) return named(part, 'Donts');
    return isOpenPart(id) ? part : fold(part);
  });
  // Where the page has no words about the law, its fields may still have a rule.
  if (!parts.some((part) => idOf(part) === LAW)) {
    const afterDonts = all.findIndex((part) => nameOf(part) === 'Donts') + 1;
    if (afterDonts > 0) all.splice(afterDonts, 0, { ...parts[0]!, children: [], name: 'Law' } as unknown as Element);
  }
  return all;
}

function ofArticle(parts: Element[], hasBox: boolean): Element[] {
  const heights = parts.map((part, index) => inside(part.children, heightOf) + (hasBox && index === 0 ? BOX : 0));
  const ends = heights.map((_, index) => heights.slice(0, index + 1).reduce((sum, height) => sum + height, 0));
  if (ends.at(-1)! < LONG) return parts;
  return parts.map((part, index) => (ends[index]! > OPEN_HEIGHT && idOf(part) !== undefined ? fold(part) : part));
}

const named = (part: Element, name: string): Element => ({ ...part, name }) as unknown as Element;
const nameOf = (part: Element): string => (part as unknown as { name: string }).name;

const headingOf = (part: Element): Element | undefined =>
  part.children.find((child): child is Element => child.type === 'element' && child.tagName === 'h2');
const idOf = (part: Element): string | undefined => {
  const id = headingOf(part)?.properties.id;
  return id === undefined || id === null ? undefined : String(id);
};

/** The heading goes into a slot, because it stands in the summary. */
function fold(part: Element, name = 'Fold'): Element {
  const heading = headingOf(part)!;
  const rest = part.children.filter((child) => child !== heading);
  const head: Element = { ...heading, properties: { ...heading.properties, slot: 'heading' } };
  return named({ ...part, children: [head, ...rest] }, name);
}

/** The first list or the rule of a caution, with at most four lines. All that follows is in a fold. */
function doNow(part: Element, words: PageWords): Element {
  const heading = headingOf(part)!;
  const text: Text = { type: 'text', value: words.doNow };
  const now: ElementContent[] = [];
  const then: ElementContent[] = [];
  let isFull = false;
  for (const child of part.children) {
    if (child === heading) continue;
    if (isFull) {
      then.push(child);
      continue;
    }
    isFull = isList(child) || (isTag(child) && child.name === 'Caution');
    const items = isList(child) ? child.children.filter(isItem) : [];
    if (!isList(child) || items.length <= MOST_LINES) {
      now.push(child);
      continue;
    }
    now.push({ ...child, children: items.slice(0, MOST_LINES) });
    const start = child.tagName === 'ol' ? { start: Number(child.properties.start ?? 1) + MOST_LINES } : {};
    then.push({ ...child, properties: { ...child.properties, ...start }, children: items.slice(MOST_LINES) });
  }
  const more = then.filter((child) => child.type !== 'text' || child.value.trim() !== '');
  const fold = element('details', { className: ['fold'], slot: 'after' }, [
    element('summary', {}, [{ type: 'text', value: words.whatNext }]),
    ...more,
  ]);
  return named({ ...part, children: [{ ...heading, children: [text] }, ...now, ...(more.length > 0 ? [fold] : [])] }, 'DoNow');
}

const element = (tagName: string, properties: Properties, children: ElementContent[]): Element => ({
  type: 'element',
  tagName,
  properties,
  children,
});
const isList = (node: ElementContent): node is Element => node.type === 'element' && /^[ou]l$/.test(node.tagName);
const isItem = (node: ElementContent): node is Element => node.type === 'element' && node.tagName === 'li';

/** Height of a caution in full, with its end in a fold. */
const BOX = 400;

/** Space below each kind of line, in pixels. */
const SPACE: Record<string, number> = { h2: 70, h3: 40, p: 16, li: 5, tr: 20 };
const TAGS: Record<string, number> = { Drawing: 420, Picture: 420, Local: 600, Caution: 330 };

/** An estimate for a phone: lines of about 38 letters, 27 px each, and what a drawing or a text of the place takes. */
function heightOf(node: ElementContent): number {
  if (isTag(node)) return TAGS[node.name] ?? inside(node.children as ElementContent[], heightOf);
  if (node.type !== 'element') return 0;
  const { tagName, children } = node;
  const space = SPACE[tagName];
  if (space === undefined || children.some(isList)) return inside(children, heightOf);
  // Cells stand side by side in a table, in shorter lines.
  return Math.ceil(inside(children, lettersIn) / (tagName === 'tr' ? 30 : 38)) * 27 + space;
}

const inside = (nodes: readonly ElementContent[], measure: (node: ElementContent) => number): number =>
  nodes.reduce((sum, node) => sum + measure(node), 0);

/** A tag such as a figure shows about fifteen letters. */
function lettersIn(node: ElementContent): number {
  if (node.type === 'text') return node.value.trim().length;
  if (isTag(node)) return 15 + inside(node.children as ElementContent[], lettersIn);
  return node.type === 'element' ? inside(node.children, lettersIn) : 0;
}
