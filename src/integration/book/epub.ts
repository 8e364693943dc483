/*
 * Writes the book as EPUB 3.3: one file per chapter, the contents as navigation. The same chapters give the same bytes: the order is
 * fixed, and the edition's day is the time of every file.
 */
import type { Element, Root } from 'hast';
import { toHtml } from 'hast-util-to-html';
import { h } from 'hastscript';
import { dress, type Chapter, type Dress } from './chapters.ts';
import { contentsList, partNumber } from './contents.ts';
import { editionWords, titleLeaf, unwellLine } from './front.ts';
import { namedUuid } from './named-uuid.ts';
import { sourcesList, type Bound } from './one-file.ts';
import { inOrder, type Leaf } from './order.ts';
import { packed, xhtml, type PackedFile } from '../../paper/epub.ts';
import { bookStyles } from './style-sheets.ts';
import { text } from './words.ts';

const DRESS: Dress = {
  href: ({ slug, id }) => `${slug}.xhtml${id === '' ? '' : `#${id}`}`,
  source: (number) => ({ href: `sources.xhtml#s${number}`, role: 'doc-noteref', ariaLabel: text().source(number) }),
  id: (_, id) => id,
  lower: 0,
};

export function epub(bound: Bound): Uint8Array {
  const { front, base, pages, parts, chapters, sources } = bound;
  const { club, edition } = front;
  const unwell = unwellLine(pages, base, (place) => (chapters.has(place) ? `${chapters.get(place)!.slug}.xhtml` : undefined));
  const page = (title: string, body: readonly (Element | Root)[], lead = true): string =>
    xhtml(club.language, title, drawn([...(lead ? [h('p', { class: 'emergency' }, unwell())] : []), ...body]));
  const foot = (): Element => h('p', { class: 'foot' }, `${club.almanac}, ${editionWords(edition)}. ${text().front.whoDecides}`);
  const files: PackedFile[] = [
    { name: 'title.xhtml', text: page(club.almanac, [titleLeaf(front, unwell())], false) },
    { name: 'nav.xhtml', nav: true, text: navigation(bound) },
    ...parts.flatMap(({ name, leaves }, index) => [
      { name: `part-${index + 1}.xhtml`, text: page(name, [h('h1', { class: 'title' }, [h('small', partNumber(index)), h('br'), name])]) },
      ...inOrder(leaves).map((leaf) => chapterFile(chapters.get(leaf.page.place)!, chapters, (title, body) => page(title, [body, foot()]))),
    ]),
    { name: 'sources.xhtml', text: page(text().sources, [h('h1', text().sources), sourcesList(sources)]) },
  ];
  const { day, fingerprint } = edition;
  const identifier = `urn:uuid:${namedUuid(`${club.id} ${day} ${fingerprint}`)}`;
  return packed({ identifier, title: club.almanac, language: club.language, club: club.name, day }, files, bookStyles());
}

function chapterFile(chapter: Chapter, chapters: ReadonlyMap<string, Chapter>, page: (title: string, body: Root) => string): PackedFile {
  const tree = dress(chapter, chapters, DRESS);
  const text = page(chapter.title, tree);
  return { name: `${chapter.slug}.xhtml`, text, svg: text.includes('<svg ') };
}

function navigation({ front: { club }, parts, chapters }: Bound): string {
  const addressOf = ({ page }: Leaf): string => `${chapters.get(page.place)!.slug}.xhtml`;
  const entries = parts.map(({ name, leaves }, index) =>
    h('li', [h('a', { href: `part-${index + 1}.xhtml` }, `${partNumber(index)}: ${name}`), contentsList(leaves, addressOf)]),
  );
  const landmarks = [
    ['titlepage', 'title.xhtml', text().landmarks.title],
    ['toc', 'nav.xhtml', text().contents],
    ['bodymatter', 'part-1.xhtml', text().landmarks.firstPart],
    ['endnotes', 'sources.xhtml', text().sources],
  ] as const;
  const body = drawn([
    h('nav', { 'epub:type': 'toc', role: 'doc-toc' }, [
      h('h1', text().contents),
      h('ol', [...entries, h('li', [h('a', { href: 'sources.xhtml' }, text().sources)])]),
    ]),
    h('nav', { 'epub:type': 'landmarks' }, [
      h(
        'ol',
        landmarks.map(([type, href, words]) => h('li', [h('a', { 'epub:type': type, href }, words)])),
      ),
    ]),
  ]);
  // For programs only. XML requires a value.
  return xhtml(club.language, text().contents, body.replace('<nav epub:type="landmarks">', '<nav epub:type="landmarks" hidden="hidden">'));
}

const drawn = (body: readonly (Element | Root)[]): string =>
  body
    .map((each) => toHtml(each, { closeSelfClosing: true }))
    .join('\n')
    .replaceAll('<svg ', '<svg xmlns="http://www.w3.org/2000/svg" ');
