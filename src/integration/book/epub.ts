/*
 * Writes the book as EPUB 3.3: one file per chapter, the contents as navigation, the metadata in the package document. The same chapters
 * give the same bytes: the order is fixed, and the edition's day is the time of every file.
 */
import { strToU8, zipSync, type Zippable } from 'fflate';
import type { Element, Root } from 'hast';
import { toHtml } from 'hast-util-to-html';
import { h } from 'hastscript';
import { dress, type Chapter, type Dress } from './chapters.ts';
import { contentsList, partNumber } from './contents.ts';
import { editionWords, titleLeaf, unwellLine } from './front.ts';
import { sourcesList, type Bound } from './one-file.ts';
import { inOrder, type Leaf } from './order.ts';
import { packageDocument, type PackedFile } from './package-document.ts';
import { bookStyles } from './style-sheets.ts';

const DRESS: Dress = {
  href: ({ slug, id }) => `${slug}.xhtml${id === '' ? '' : `#${id}`}`,
  source: (number) => ({ href: `sources.xhtml#s${number}`, role: 'doc-noteref', ariaLabel: `Source ${number}` }),
  id: (_, id) => id,
  lower: 0,
};

/** `fingerprint` distinguishes two editions of one day. */
export function epub(bound: Bound, fingerprint: string): Uint8Array {
  const { front, base, pages, parts, chapters, sources } = bound;
  const { club, day } = front;
  const unwell = unwellLine(pages, base, (place) => (chapters.has(place) ? `${chapters.get(place)!.slug}.xhtml` : undefined));
  const page = (title: string, body: readonly (Element | Root)[], lead = true): string =>
    xhtml(club.language, title, [...(lead ? [h('p', { class: 'emergency' }, unwell())] : []), ...body]);
  const foot = (): Element =>
    h(
      'p',
      { class: 'foot' },
      `${club.almanac}, ${editionWords(day)}. The label, the inspector, the extension service and your doctor decide; this book does not.`,
    );
  const files: PackedFile[] = [
    { name: 'title.xhtml', text: page(club.almanac, [titleLeaf(front, unwell())], false) },
    { name: 'nav.xhtml', nav: true, text: navigation(bound) },
    ...parts.flatMap(({ name, leaves }, index) => [
      { name: `part-${index + 1}.xhtml`, text: page(name, [h('h1', { class: 'title' }, [h('small', partNumber(index)), h('br'), name])]) },
      ...inOrder(leaves).map((leaf) => chapterFile(chapters.get(leaf.page.place)!, chapters, (title, body) => page(title, [body, foot()]))),
    ]),
    { name: 'sources.xhtml', text: page('Sources', [h('h1', 'Sources'), sourcesList(sources)]) },
  ];
  return packed(files, packageDocument(front, fingerprint, files), day);
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
    ['titlepage', 'title.xhtml', 'Title'],
    ['toc', 'nav.xhtml', 'Contents'],
    ['bodymatter', 'part-1.xhtml', 'First part'],
    ['endnotes', 'sources.xhtml', 'Sources'],
  ] as const;
  const made = xhtml(club.language, 'Contents', [
    h('nav', { 'epub:type': 'toc', role: 'doc-toc' }, [
      h('h1', 'Contents'),
      h('ol', [...entries, h('li', [h('a', { href: 'sources.xhtml' }, 'Sources')])]),
    ]),
    h('nav', { 'epub:type': 'landmarks' }, [
      h(
        'ol',
        landmarks.map(([type, href, words]) => h('li', [h('a', { 'epub:type': type, href }, words)])),
      ),
    ]),
  ]);
  // For programs only. XML requires a value.
  return made.replace('<nav epub:type="landmarks">', '<nav epub:type="landmarks" hidden="hidden">');
}

/** An XHTML document. All content comes from trees, so every tag is closed and every character is escaped. */
function xhtml(language: string, title: string, body: readonly (Element | Root)[]): string {
  const drawn = body.map((each) => toHtml(each, { closeSelfClosing: true })).join('\n');
  return [
    '<?xml version="1.0" encoding="utf-8"?>',
    '<!DOCTYPE html>',
    `<html xmlns="http://www.w3.org/1999/xhtml" xmlns:epub="http://www.idpf.org/2007/ops" lang="${language}" xml:lang="${language}">`,
    `<head>${toHtml(h('title', title))}<link rel="stylesheet" type="text/css" href="book.css"/></head>`,
    `<body>\n${drawn.replaceAll('<svg ', '<svg xmlns="http://www.w3.org/2000/svg" ')}\n</body>`,
    '</html>',
    '',
  ].join('\n');
}

const CONTAINER = `<?xml version="1.0" encoding="utf-8"?>
<container version="1.0" xmlns="urn:oasis:names:tc:opendocument:xmlns:container">
  <rootfiles><rootfile full-path="book/package.opf" media-type="application/oebps-package+xml"/></rootfiles>
</container>
`;

/** EPUB 3.3, OCF 4.2: `mimetype` comes first and is stored without compression. */
function packed(files: readonly PackedFile[], opf: string, day: string): Uint8Array {
  const archive: Zippable = {
    mimetype: [strToU8('application/epub+zip'), { level: 0 }],
    'META-INF/container.xml': strToU8(CONTAINER),
    'book/package.opf': strToU8(opf),
    'book/book.css': strToU8(bookStyles()),
  };
  for (const { name, text } of files) archive[`book/${name}`] = strToU8(text);
  // Without a time zone: an archive stores local time, which is the same on every machine here.
  return zipSync(archive, { level: 9, mtime: `${day}T12:00:00` });
}
