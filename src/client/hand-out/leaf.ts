/*
 * What a loaded page gives to a hand-out: its title, its printable text, the notices of today, and its last lines: who to call, the day of
 * its check, and its sources. Cautions are part of the text, so they always travel with it.
 */
import type { Root } from 'hast';
import type { Language } from '../../../shared/country/language.ts';
import { all, isOf } from '../../paper/find.ts';
import { onPaper, type Districts } from '../../paper/on-paper.ts';
import { showNumbers } from '../layout/consent.ts';
import * as text from './load.en.ts';
import { shortSources } from './short-source.ts';
import { toTree } from './tree.ts';

/** Sheets are a page of today. A file outlasts a consent, so like the book it has no number that was given until a day. */
export type Kind = 'sheets' | 'file';
export type Leaf = { page: string; title: string; treeFor: (kind: Kind) => Root; lastFor: (kind: Kind) => LastLines };
export type LastLines = { call: string; checked: string; sources: readonly string[] };

const wordsIn = (element: Element | null | undefined): string => (element?.textContent ?? '').replace(/\s+/g, ' ').trim();

/** `names` are those of the districts by id. */
export function leafOf(page: string, loaded: Document, today: string, names: ReadonlyMap<string, string>): Leaf {
  const main = loaded.querySelector('main')!;
  const sidebar = main.querySelector('.sidebar') ?? loaded.createElement('aside');
  const heading = main.querySelector('h1');
  // Icons, and a fold's own heading where a box with a heading follows.
  for (const gone of [sidebar, heading, ...main.querySelectorAll('.icon, .before-start > summary')]) gone?.remove();
  for (const notice of [...loaded.querySelectorAll<HTMLElement>('.page > .notice[data-holds]')].reverse()) {
    const [from, until] = notice.dataset.holds!.split(' ');
    notice.hidden = today < from! || today > until! || isHere(notice);
    main.prepend(notice);
  }
  const copyOf = (element: Element, kind: Kind): Element => {
    const copy = element.cloneNode(true) as Element;
    if (kind === 'file') return copy;
    showNumbers(today, copy);
    // Links to more, which the page leaves out in print too.
    copy.querySelectorAll('a.no-print').forEach((link) => link.remove());
    return copy;
  };
  const districts: Districts = { names, language: loaded.documentElement.lang as Language };
  return {
    page,
    title: wordsIn(heading),
    treeFor: (kind) => withoutData(onPaper(toTree(copyOf(main, kind)), districts)),
    lastFor: (kind) => lastLinesOf(copyOf(sidebar, kind), today),
  };
}

/** A notice for the whole almanac is at the top of the hand-out. */
const isHere = (notice: HTMLElement): boolean =>
  [...document.querySelectorAll('.page > .notice')].some((here) => here.textContent === notice.textContent);

/** Programs read these attributes on the live page alone. What is left is for paper. */
function withoutData(tree: Root): Root {
  for (const { properties } of all(tree, () => true))
    for (const name of Object.keys(properties)) if (/^(data|item)|^(role|tabindex)$/.test(name)) delete properties[name];
  for (const { properties } of all(tree, (node) => isOf(node, 'no-print')))
    properties.className = (properties.className as string[]).filter((name) => name !== 'no-print');
  for (const drawing of all(tree, ({ tagName }) => tagName === 'svg')) drawing.properties.role = 'img';
  return tree;
}

function lastLinesOf(sidebar: Element, today: string): LastLines {
  const call = [...sidebar.querySelectorAll('.call-row b, .call-row small, .call-row .button')].map(wordsIn).join(', ');
  const check = sidebar.querySelector<HTMLElement>('[data-next-check]');
  const isPast = check && check.dataset.nextCheck! < today;
  const checked = wordsIn(sidebar.querySelector('.checked')) + (isPast ? text.past : '');
  const sources = [...sidebar.querySelectorAll('.notes li > span, .source-fold ul > li')].map(wordsIn);
  return { call, checked, sources: shortSources(sources) };
}
