/* Steps of a checklist as its page shows them, each with its heading, words and tag. */
import type { ListItem, Paragraph } from 'mdast';
import { isBoxed, isSteps, isTag, plainText, walk, type TagNode } from '../source/prose.ts';
import type { Page } from './place.ts';

export type Step = {
  item: ListItem;
  /** The first paragraph: the words beside the box. */
  first: Paragraph | null;
  words: string;
  tags: TagNode[];
  /** The words of the `##` heading above it, or null before the first. */
  pause: string | null;
  /** 1 for the first step of its pause. */
  place: number;
};

/** Steps in an allowed place: a plain list at the top level of the page. */
export function stepsOf(page: Page): Step[] {
  let pause: string | null = null;
  let place = 0;
  return page.tree.children.flatMap((node): Step[] => {
    if (node.type === 'heading' && node.depth === 2) [pause, place] = [plainText(node).trim(), 0];
    return isSteps(node) ? node.children.filter(isBoxed).map((item) => step(item, pause, (place += 1))) : [];
  });
}

function step(item: ListItem, pause: string | null, place: number): Step {
  const first = item.children[0]?.type === 'paragraph' ? item.children[0] : null;
  const tags = first ? (first.children as unknown[]).filter(isTag).filter(isTask) : [];
  return { item, first, words: first ? shown(first) : '', tags, pause, place };
}

const isTask = (tag: TagNode): boolean => tag.name === 'Task';

/** The number of words that a reader counts. A figure or a contact is one word. */
function shown(paragraph: Paragraph): string {
  return [...walk(paragraph)]
    .map((node) => ('value' in node ? node.value : isTag(node) && node.name !== 'Task' && node.children.length === 0 ? ' # ' : ''))
    .join('')
    .replace(/\s+/g, ' ')
    .trim();
}
