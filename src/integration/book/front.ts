/*
 * Front matter of the book: name, publisher, edition, emergency contacts, and a warning that a copy does not change. It also takes the
 * emergency line, which opens each chapter, from the drawn pages.
 */
import type { Element, ElementContent } from 'hast';
import { h } from 'hastscript';
import { editionName, type Edition } from '../../lib/edition-name.ts';
import type { BuiltPage } from '../built-pages.ts';
import type { Almanac } from '../../lib/almanac.ts';
import { leadsTo } from '../../paper/links.ts';
import { all, first, isOf, wordsOf } from '../../paper/find.ts';
import { text } from './words.ts';

export type Front = {
  club: Almanac['club'];
  edition: Edition;
  root: string | null;
  /** Names of districts, the main one first. */ districts: readonly string[];
};

export const editionWords = (edition: Edition): string => text().edition(editionName(edition));

export function titleLeaf({ club, edition, root, districts }: Front, unwell: readonly ElementContent[]): Element {
  const [main, ...others] = districts;
  const words = text().front;
  return h('header', { class: 'title' }, [
    h('h1', club.almanac),
    h('p', { class: 'of' }, words.book(editionWords(edition))),
    h('p', `${club.name}, ${club.place}.`),
    club.demonstration ? h('p', [h('b', words.demonstration), ` ${words.madeUp}`]) : '',
    h('p', { class: 'emergency' }, [...unwell]),
    h('p', words.whoDecides),
    h('p', [main ? `${others.length > 0 ? words.daysElsewhere(main) : words.days(main)} ` : '', `${words.marks} ${words.onlyLive}`]),
    h('p', root ? around(words.newerAt(editionName(edition)), h('a', { href: root }, root)) : words.newer(editionName(edition))),
  ]);
}

/** A sentence with an element in place of its `{name}`. */
export const around = (sentence: string, inside: Element): (string | Element)[] =>
  sentence.split(/(\{\w+\})/).map((part) => (part.startsWith('{') ? inside : part));

/** "Emergency: Call 911, Sting first aid", with links as the book writes them. @throws Error when no page contains it. */
export function unwellLine(
  pages: readonly BuiltPage[],
  base: string,
  hrefOf: (place: string) => string | undefined,
): () => ElementContent[] {
  const line = pages.map(({ tree }) => first(tree, (node) => node.tagName === 'section' && isOf(node, 'emergency'))).find(Boolean);
  if (!line) throw new Error('no page says whom to call when someone is unwell');
  const words = structuredClone(line);
  for (const link of all(words, ({ tagName }) => tagName === 'a')) {
    const led = leadsTo(String(link.properties.href), '', {
      base,
      root: null,
      held: (place) => (hrefOf(place) === undefined ? undefined : new Set()),
    });
    link.properties = led.kind === 'inside' ? { href: hrefOf(led.place)! } : led.kind === 'outside' ? { href: led.address } : {};
  }
  // Icons stay on the pages. Between two links stands a comma.
  const links = all(words, ({ tagName, properties }) => tagName === 'a' && properties.href !== undefined);
  const parts = links.flatMap((link, index): ElementContent[] => [
    { type: 'text', value: index === 0 ? text().emergencyFirst : ', ' },
    { ...link, children: [{ type: 'text', value: wordsOf(link.children) }] },
  ]);
  return () => structuredClone(parts);
}
