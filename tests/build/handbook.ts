/* Parses the two books of a built site for tests. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { fromHtml } from 'hast-util-from-html';
import type { Element, Root } from 'hast';
import { visit } from 'unist-util-visit';
import type { Built } from '../setup/built-site.ts';

export const epubBytes = ({ folder }: Built): Uint8Array => readFileSync(join(folder, 'handbook.epub'));

/** Every file of the EPUB by its name in the archive. */
export const packedIn = (built: Built): Map<string, string> =>
  new Map(Object.entries(unzipSync(epubBytes(built))).map(([name, bytes]) => [name, strFromU8(bytes)]));

export const parsed = (html: string): Root => fromHtml(html);

export function elements(tree: Root | Element, passes: (node: Element) => boolean): Element[] {
  const found: Element[] = [];
  visit(tree, 'element', (node) => void (passes(node) && found.push(node)));
  return found;
}

export function text(node: Root | Element | undefined): string {
  let words = '';
  if (node) visit(node, 'text', ({ value }) => void (words += value));
  return words.replace(/\s+/g, ' ').trim();
}

export const classed = (node: Element, name: string): boolean =>
  Array.isArray(node.properties.className) && node.properties.className.includes(name);

/** The chapters of the single file by their `id`, in order. */
export const chaptersIn = (book: Root): Map<string, Element> =>
  new Map(elements(book, ({ tagName }) => tagName === 'article').map((each) => [String(each.properties.id), each]));

/** The main text of a page. */
export const mainOf = (page: string): Element => elements(parsed(page), ({ tagName }) => tagName === 'main')[0]!;
