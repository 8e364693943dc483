/*
 * Searchable parts of a drawn page: title, kind, and words by weight. An element with `data-found-as` is a record of its own: a page's
 * main text, a glossary word, a reading-list line. An element with `data-unfound` is left out.
 */
import type { Element, Nodes } from 'hast';
import type { BuiltPage } from './built-pages.ts';
import { all, first } from '../paper/find.ts';

export type Found = {
  /** `pests/varroa/`, `words/#varroa`. */
  place: string;
  kind: string;
  title: string;
  /** The sentence below the title. */
  lead: string;
  headings: string;
  /** The headings that a link can lead to, in order. */
  sections: { id: string; title: string }[];
  /** All the text below its title, in order. */
  text: string;
  /** The day of a meeting, in words. */
  when?: string;
};

/** A non-breaking space stays, as between a number and its unit. */
const SPACES = /[^\S\u00a0\u202f]+/g;

/**
 * Removes elements that are no text of the page: source marks, hidden parts, controls. Also removes cautions and footer links, which are
 * on many pages and answer no query.
 */
const NOT_READ = new Set(['svg', 'form', 'button', 'script', 'style', 'aside']);
const NOT_READ_CLASSES = ['mark', 'print-only', 'visually-hidden'];
const NAMES_OTHERS = new Set(['pest or disease', 'meeting']);

const BLOCKS = new Set([
  'p',
  'li',
  'h1',
  'h2',
  'h3',
  'h4',
  'tr',
  'dt',
  'dd',
  'section',
  'div',
  'table',
  'caption',
  'ul',
  'ol',
  'dl',
  'blockquote',
  'figcaption',
  'summary',
  'details',
  'legend',
  'label',
  'header',
  'footer',
  'nav',
  'thead',
  'tbody',
]);
const CELLS = new Set(['td', 'th']);

/** All records of the page, the page itself first. Empty for a page outside the search. */
export function foundOn({ main, place }: BuiltPage): Found[] {
  const records: Found[] = [];
  if (main?.properties.dataFoundAs !== undefined) take(main, place, records);
  return records;
}

function take(element: Element, place: string, records: Found[]): void {
  const id = element.properties.id;
  const found: Found = {
    place: element.tagName === 'main' ? place : `${place}#${String(id)}`,
    kind: String(element.properties.dataFoundAs),
    title: '',
    lead: '',
    headings: '',
    sections: [],
    text: '',
  };
  records.push(found);
  const text: string[] = [];
  const walk = (node: Nodes): void => {
    if (node.type === 'text') text.push(node.value.replace(SPACES, ' '));
    if (node.type !== 'element') return;
    if (isUnread(node, found)) return;
    if (node.properties.dataFoundAs !== undefined && node !== element) return take(node, place, records);
    const from = text.length;
    // Small print below a name is a line of its own.
    if (node.tagName === 'br' || node.tagName === 'small') text.push(' ');
    // The description of a picture is an answer, too.
    if (node.tagName === 'img' && node.properties.alt) text.push(` ${String(node.properties.alt)} `);
    for (const child of node.children) walk(child);
    const textOf = (): string => text.slice(from).join('').replace(/\s+/g, ' ').trim();
    if (isTitle(node, found)) {
      found.title = textOf();
      text.length = from;
      return;
    }
    if (/^h[23]$/.test(node.tagName)) {
      found.headings += ` ${textOf()}`;
      if (node.properties.id) found.sections.push({ id: String(node.properties.id), title: textOf() });
    }
    if (node.tagName === 'p' && classesOf(node).includes('lead')) found.lead = text.slice(from).join('').replace(SPACES, ' ').trim();
    else if (node.tagName === 'time' && found.kind === 'meeting') found.when ??= textOf();
    if (CELLS.has(node.tagName)) text.push(/[.:;,!?]$|^$/.test(textOf()) ? ' ' : '; ');
    else if (BLOCKS.has(node.tagName)) closeBlock(text);
  };
  walk(element);
  found.text = text
    .join('')
    .replace(SPACES, ' ')
    .replace(/^[\s,;.]+/, '')
    .trim();
}

/** The places of all pages in the order of the list on the search page, from which the browser takes titles. */
export const listedOn = (pages: readonly BuiltPage[], base: string): string[] =>
  all(
    first(
      pages.find(({ searches }) => searches)?.tree ?? { type: 'root', children: [] },
      ({ properties }) => properties.dataSearchPages !== undefined,
    ),
    ({ tagName }) => tagName === 'a',
  ).map(({ properties }) => String(properties.href).slice(base.length));

/** The heading of a page, or the first bold or cited words of an entry. */
const isTitle = (element: Element, { place, title }: Found): boolean =>
  element.tagName === 'h1' || (place.includes('#') && !title && /^(?:b|cite)$/.test(element.tagName));

/** Ends a text like a sentence, so that two lines do not run together. */
function closeBlock(text: string[]): void {
  const last = text.findLastIndex((each) => each.trim() !== '');
  if (last < 0) return;
  const end = text[last]!.trimEnd();
  if (end.endsWith(';')) text[last] = `${end.slice(0, -1)}. `;
  else text.push(/[.:,!?]$/.test(end) ? ' ' : '. ');
}

const classesOf = (element: Element): string[] => (element.properties.className as string[] | undefined) ?? [];

function isUnread(element: Element, found: Found): boolean {
  const classes = classesOf(element);
  if (NOT_READ.has(element.tagName) || element.properties.hidden || element.properties.dataUnfound !== undefined) return true;
  if (NOT_READ_CLASSES.some((each) => classes.includes(each))) return true;
  if (classes.includes('box') && !classes.includes('law')) return true;
  return element.tagName === 'ul' && classes.includes('rows') && NAMES_OTHERS.has(found.kind) && /\/./.test(found.place);
}
