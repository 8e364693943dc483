/*
 * Writes the book as a single HTML file that opens from anywhere: no other file, no script, all links internal. An id that occurs in two
 * chapters is prefixed with the name of its chapter.
 */
import type { Element, ElementContent } from 'hast';
import { toHtml } from 'hast-util-to-html';
import { h } from 'hastscript';
import type { BuiltPage } from '../built-pages.ts';
import { hashOf } from '../policy.ts';
import { dress, isOwnName, type Chapter, type Dress } from './chapters.ts';
import { contentsList, partNumber } from './contents.ts';
import { editionWords, titleLeaf, unwellLine, type Front } from './front.ts';
import { inOrder, type Leaf, type Part } from './order.ts';
import { all, isOf } from '../../paper/find.ts';
import type { Listed } from './sources.ts';
import { oneFileStyles } from './style-sheets.ts';
import { text } from './words.ts';

export type Bound = {
  front: Front;
  base: string;
  pages: readonly BuiltPage[];
  parts: readonly Part[];
  chapters: ReadonlyMap<string, Chapter>;
  sources: readonly Listed[];
};

/** A unique `id` stays, and any other is prefixed with the name of its chapter. */
function dressFor(chapters: ReadonlyMap<string, Chapter>): Dress {
  const counted = new Map<string, number>();
  for (const name of [...chapters.values()].flatMap(({ slug, marked }) => [slug, ...marked.map(([, id]) => id)]))
    counted.set(name, (counted.get(name) ?? 0) + 1);
  const named = (slug: string, id: string): string => (counted.get(id) === 1 && !isOwnName(id) ? id : `${slug}:${id}`);
  return {
    href: ({ slug, id }) => (id === '' ? `#${slug}` : `#${named(slug, id)}`),
    source: (number) => ({ href: `#s${number}` }),
    id: named,
    lower: 2,
  };
}

/** The file and its style sheet. Its own policy, and the host's, allow only that style sheet. */
export function oneFile({ front, base, pages, parts, chapters, sources }: Bound): { html: string; styles: string } {
  const { club, edition } = front;
  const unwell = unwellLine(pages, base, (place) => (chapters.has(place) ? `#${chapters.get(place)!.slug}` : undefined));
  const addressOf = ({ page }: Leaf): string => `#${chapters.get(page.place)!.slug}`;
  const worn = dressFor(chapters);
  const partId = (index: number): string => `part-${index + 1}`;
  const body = [
    h('section', { class: 'at-hand', ariaLabel: text().emergency }, unwell()),
    titleLeaf(front, unwell()),
    h('nav', { class: 'contents', id: 'contents', ariaLabel: text().contents }, [
      h('h2', text().contents),
      ...parts.map(({ name, leaves }, index) =>
        h('div', { class: inOrder(leaves).length > 9 ? 'many' : undefined }, [
          h('h3', [h('a', { href: `#${partId(index)}` }, `${partNumber(index)}: ${name}`)]),
          contentsList(leaves, addressOf),
        ]),
      ),
      h('div', [h('h3', [h('a', { href: '#sources' }, text().sources)])]),
    ]),
    h('main', [
      ...parts.map(({ name, leaves }, index) =>
        h('section', { id: partId(index) }, [
          h('h2', [h('small', partNumber(index)), ' ', name]),
          ...inOrder(leaves).map((leaf) => chapterOf(chapters.get(leaf.page.place)!, chapters, worn)),
        ]),
      ),
      h('section', { id: 'sources' }, [h('h2', text().sources), sourcesList(sources)]),
    ]),
    h('footer', { class: 'foot' }, `${club.almanac}, ${editionWords(edition)}. ${club.name}, ${club.place}.`),
    h('nav', { class: 'bottom-nav', ariaLabel: text().parts }, [
      h('a', { href: '#contents' }, text().contents),
      ...parts.map(({ name }, index) => h('a', { href: `#${partId(index)}` }, name)),
    ]),
  ];
  const styles = `${oneFileStyles()}${footOfSheets(front, unwell())}`;
  const policy = `default-src 'none'; style-src ${hashOf(styles)}; base-uri 'none'; form-action 'none'`;
  const html = [
    `<!DOCTYPE html>\n<html lang="${club.language}">\n<head>\n<meta charset="utf-8">\n<meta http-equiv="Content-Security-Policy" content="${policy}">\n<meta name="viewport" content="width=device-width, initial-scale=1">`,
    toHtml(h('title', `${club.almanac}, ${editionWords(edition)}`), { characterReferences: { useNamedReferences: true } }),
    ...(club.demonstration ? ['<meta name="robots" content="noindex">'] : []),
    `<style>${styles}</style>\n</head>\n<body>`,
    ...body.map((each) =>
      toHtml(each, {
        closeEmptyElements: true,
        tightSelfClosing: true,
        preferUnquoted: true,
        characterReferences: { useNamedReferences: true },
      }),
    ),
    '</body>\n</html>\n',
  ].join('\n');
  return { html, styles };
}

function chapterOf(chapter: Chapter, chapters: ReadonlyMap<string, Chapter>, worn: Dress): Element {
  const { children } = dress(chapter, chapters, worn);
  const article = h('article', { id: chapter.slug }, children as ElementContent[]);
  // A wide table scrolls sideways in its frame. Two frames of the book must not share a name.
  for (const frame of all(article, (node) => isOf(node, 'scroll-x'))) {
    Object.assign(frame.properties, {
      role: 'region',
      tabIndex: 0,
      ariaLabel: `${String(frame.properties.ariaLabel).replace(text().table, '')} (${chapter.title})`,
    });
  }
  return article;
}

export const sourcesList = (sources: readonly Listed[]): Element =>
  h(
    'ol',
    { class: 'sources' },
    sources.map((source, index) => h('li', { id: `s${index + 1}` }, lineOf(source))),
  );

function lineOf({ as, words, url, opened, isHidden }: Listed): string | Element | (Element | string)[] {
  if (as !== undefined) return text().asSource(as, words);
  if (!url) return isHidden ? text().noAddress(words) : words;
  // A link with words around it is part of a sentence. A link alone is a target of full size.
  return opened ? [h('a', { href: url }, words), text().opened(opened)] : h('a.alone', { href: url }, words);
}

/** Every printed sheet states who to call, the book, and the number of sheets. */
function footOfSheets({ club, edition }: Front, unwell: readonly ElementContent[]): string {
  const ring = all(h('p', [...unwell]), ({ properties }) => String(properties.href).startsWith('tel:')).map((link) =>
    toHtml(link.children),
  );
  const quoted = (words: string): string => `"${words.replace(/[\\"<>&\n]/g, ' ')}"`;
  return `@media print{@page{@bottom-left{content:${quoted(`${text().emergencyFirst}${ring[0] ?? ''}`)};font:9pt serif}@bottom-center{content:${quoted(`${club.almanac}, ${editionWords(edition)}`)};font:9pt serif}@bottom-right{content:${text().sheetOf};font:9pt serif}}}`;
}
