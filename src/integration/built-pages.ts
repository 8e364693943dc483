/* Finished pages. Each file is read once and parsed once, and every step after the build shares the tree. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import type { Element, Nodes, Root } from 'hast';
import { tongues, type Tongue } from '../../shared/country/language.ts';
import { fromHtml } from 'hast-util-from-html';
import { all, first, isOf } from '../paper/find.ts';

export type BuiltPage = {
  /** The file inside the site, with forward slashes: `pests/varroa/index.html`. */
  file: string;
  /** The path below the base: `pests/varroa/`, or empty for the first page. */
  place: string;
  html: string;
  /** Of a page in another language than the club's. */
  tongue: Tongue | undefined;
  /** The parsed document. The book, which comes last, takes `main` apart. */
  tree: Root;
  main: Element | undefined;
  /** The scripts in the page itself. */
  scripts: string[];
  /** Only the search page runs the search engine, which is WebAssembly. */
  searches: boolean;
};

/** Every page of the site, in the same order on every machine. `edit` changes a page's text before it is parsed. */
export const builtPages = (site: string, edit: (html: string) => string = (html) => html): BuiltPage[] =>
  readdirSync(site, { recursive: true, encoding: 'utf8' })
    .map((file) => file.split(sep).join('/'))
    .filter((file) => file.endsWith('.html'))
    .sort()
    .map((file) => builtPage(file, edit(readFileSync(join(site, file), 'utf8'))));

export function builtPage(file: string, html: string): BuiltPage {
  const tree = withoutPlaces(fromHtml(html));
  const main = first(tree, ({ tagName }) => tagName === 'main');
  const scripts = all(tree, ({ tagName, properties }) => tagName === 'script' && properties.src === undefined);
  return {
    file,
    place: file.replace(/(^|\/)index\.html$/, '$1'),
    html,
    tongue: tongues.find((each) => file.startsWith(`${each}/`)),
    tree,
    main,
    scripts: scripts.map(({ children: [text] }) => (text?.type === 'text' ? text.value : '')),
    searches: first(tree, ({ tagName, properties }) => tagName === 'form' && properties.dataSearchPage !== undefined) !== undefined,
  };
}

/** Where each node stands in the text takes a quarter of a tree's memory, and nobody asks for it. */
function withoutPlaces<Node extends Nodes>(node: Node): Node {
  node.position = undefined;
  if ('children' in node) for (const child of node.children) withoutPlaces(child);
  return node;
}

/** The 404 page and withdrawal notices are answers to old links. Nothing links to them. */
export const isPublished = ({ place, main }: BuiltPage): boolean => place !== '404.html' && main?.properties.dataWithdrawn === undefined;

/** The words of the main text, without its sidebar of notes and reviews. */
export const mainWords = ({ main }: BuiltPage): string =>
  main ? shownWords(main, (node) => node.tagName === 'aside' && isOf(node, 'sidebar')) : '';

export function titleOf({ tree }: BuiltPage): string {
  const heading = first(tree, ({ tagName }) => tagName === 'h1');
  return heading ? shownWords(heading) : '';
}

const UNSHOWN = new Set(['script', 'style', 'svg']);

/** HTML as its visible words. A source mark is no part of the number before it. */
function shownWords(element: Element, isLeftOut: (node: Element) => boolean = () => false): string {
  let words = '';
  const walk = (node: Nodes): void => {
    if (node.type === 'text') words += node.value;
    if (node.type !== 'element' || (node.tagName === 'sup' && isOf(node, 'mark'))) return;
    words += ' ';
    if (UNSHOWN.has(node.tagName) || isLeftOut(node)) return;
    for (const child of node.children) walk(child);
    words += ' ';
  };
  for (const child of element.children) walk(child);
  return words.replace(/\s+/g, ' ').trim();
}
