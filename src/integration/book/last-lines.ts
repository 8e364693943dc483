/*
 * Last lines of a chapter, from the sidebar of its page: who to ask next, further reading, and when it was checked and by whom. Numbered
 * sources are not among them, because the book has one list for all.
 */
import type { Element, ElementContent } from 'hast';
import { h } from 'hastscript';
import { all, isOf, wordsOf } from '../../paper/find.ts';
import { text } from './words.ts';

/** The lines, and the links among them that name a source, each with that source's words. */
export function lastLines(margin: Element): { lines: ElementContent[]; named: [Element, string][] } {
  const named: [Element, string][] = [];
  const lines = unwrapped(margin.children).flatMap((child): ElementContent[] => {
    // The heading of the fold, and the line about the review that stands again in the review itself.
    if (child.type === 'element' && (isOf(child, 'unfolded') || isOf(child, 'checked'))) return [];
    if (child.type !== 'element' || child.tagName !== 'section') return [child];
    const within = child.children.filter((each): each is Element => each.type === 'element');
    const heading = h('b', `${wordsOf(within.filter(({ tagName }) => tagName === 'h2'))}: `);
    const body = within.filter(({ tagName }) => tagName !== 'h2');
    if (body.some((each) => isOf(each, 'notes'))) return [];
    const items = body.filter(({ tagName }) => tagName === 'ul').flatMap((list) => all(list, ({ tagName }) => tagName === 'li'));
    if (items.length > 0) {
      const links = items.map((item): [Element, string] => [h('a'), wordsOf(item.children)]);
      named.push(...links);
      return [h('p', [heading, text().numbers, ...links.flatMap(([link], index) => (index > 0 ? [', ', link] : [link]))])];
    }
    const review = body.find(({ tagName }) => tagName === 'dl');
    return [review ? reviewed(review) : h('p', [heading, ...body.flatMap(askedBriefly)])];
  });
  return { lines, named };
}

/** The content of the sidebar's own frames: the paragraph of print, and the fold of sources. */
const unwrapped = (nodes: readonly ElementContent[]): ElementContent[] =>
  nodes.flatMap((child) =>
    child.type === 'element' && (isOf(child, 'colophon') || isOf(child, 'source-fold')) ? unwrapped(child.children) : [child],
  );

/** An office is listed under who to ask. Its name, number and hours are in every chapter. */
function askedBriefly({ children }: Element): ElementContent[] {
  const [begin, call] = children.filter((child) => wordsOf([child]) !== '');
  if (begin?.type !== 'text' || call?.type !== 'element' || !String(call.properties.href).startsWith('tel:')) return children;
  return [
    { type: 'text', value: begin.value.replace(/: .*$/, ', ') },
    call,
    { type: 'text', value: '. ' },
    ...children.slice(children.indexOf(call) + 1),
  ];
}

/** The publisher is in the front matter. The rest of a review is one line. */
function reviewed(list: Element): Element {
  const lines: ElementContent[][] = [];
  for (const each of list.children.filter((child): child is Element => child.type === 'element')) {
    const last = lines.at(-1);
    if (each.tagName === 'dt') lines.push([h('b', `${wordsOf(each.children)}: `)]);
    else last?.push(...(last.length > 1 ? [{ type: 'text' as const, value: '; ' }] : []), ...each.children);
  }
  const shown = lines.filter((words) => !text().publishedBy.test(wordsOf(words)));
  return h(
    'p',
    shown.flatMap((words, index) => (index > 0 ? [{ type: 'text' as const, value: '. ' }, ...words] : words)),
  );
}
