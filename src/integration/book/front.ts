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

export type Front = {
  club: Almanac['club'];
  edition: Edition;
  root: string | null;
  /** Names of districts, the main one first. */ districts: readonly string[];
};

export const editionWords = (edition: Edition): string => `edition of ${editionName(edition)}`;

export function titleLeaf({ club, edition, root, districts }: Front, unwell: readonly ElementContent[]): Element {
  const [main, ...others] = districts;
  return h('header', { class: 'title' }, [
    h('h1', club.almanac),
    h('p', { class: 'of' }, `The book, ${editionWords(edition)}`),
    h('p', `${club.name}, ${club.place}.`),
    club.demonstration
      ? h('p', [h('b', 'A demonstration: this club does not exist.'), ' Its county, its dates and its offices’ numbers are made up.'])
      : '',
    h('p', { class: 'emergency' }, [...unwell]),
    h('p', 'The label, the inspector, the extension service and your doctor decide; this book does not.'),
    h('p', [
      main ? `Days are those of ${main}${others.length > 0 ? `; where they differ elsewhere, those days follow in brackets` : ''}. ` : '',
      'Raised numbers lead to the sources at the end. A notice holds for its days only. ',
      'Forms that reckon with your own numbers, and the search, are on the club’s pages alone.',
    ]),
    h('p', [
      `This copy does not change. What was found wrong after the edition of ${editionName(edition)} is not in it`,
      ...(root ? [': look for a newer one at ', h('a', { href: root }, root)] : [': ask the club for a newer one']),
      '.',
    ]),
  ]);
}

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
    { type: 'text', value: index === 0 ? 'Emergency: ' : ', ' },
    { ...link, children: [{ type: 'text', value: wordsOf(link.children) }] },
  ]);
  return () => structuredClone(parts);
}
