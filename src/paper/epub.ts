/*
 * EPUB 3.3 around finished chapters: documents in XHTML, the package document with its metadata, and the archive. The book is packed at
 * the build, a hand-out in the browser. Accessibility metadata by EPUB Accessibility 1.1, 2.2, with terms of the schema.org vocabulary.
 */
import { strToU8, zipSync, type Zippable } from 'fflate';
import { spoken } from '../../shared/country/language-here.ts';
import * as en from './text.en.ts';
import * as es from './text.es.ts';

export type PackedFile = { name: string; text: string; nav?: boolean; svg?: boolean };

export type Publication = {
  /** The same text for the same content, such as a URN or an address. */
  identifier: string;
  title: string;
  language: string;
  /** Creator and publisher. */
  club: string;
  /** Of the edition, as `2026-04-18`. */
  day: string;
};

/** Accessibility features. Every drawing and picture has its description or its table beside it. */
const ACCESS: readonly (readonly [property: string, value: string])[] = [
  ['schema:accessMode', 'textual'],
  ['schema:accessMode', 'visual'],
  ['schema:accessModeSufficient', 'textual'],
  ['schema:accessModeSufficient', 'textual,visual'],
  ['schema:accessibilityFeature', 'alternativeText'],
  ['schema:accessibilityFeature', 'displayTransformability'],
  ['schema:accessibilityFeature', 'readingOrder'],
  ['schema:accessibilityFeature', 'structuralNavigation'],
  ['schema:accessibilityFeature', 'tableOfContents'],
  ['schema:accessibilityHazard', 'none'],
];

function packageDocument({ identifier, title, language, club, day }: Publication, files: readonly PackedFile[]): string {
  const meta = (property: string, value: string): string => `<meta property="${property}">${escaped(value)}</meta>`;
  const idOf = (name: string): string => `file-${name.replace(/\.xhtml$/, '')}`;
  const item = ({ name, nav, svg }: PackedFile): string => {
    const properties = [...(nav ? ['nav'] : []), ...(svg ? ['svg'] : [])].join(' ');
    return `<item id="${idOf(name)}" href="${name}" media-type="application/xhtml+xml"${properties ? ` properties="${properties}"` : ''}/>`;
  };
  return [
    '<?xml version="1.0" encoding="utf-8"?>',
    `<package xmlns="http://www.idpf.org/2007/opf" version="3.0" unique-identifier="edition" xml:lang="${escaped(language)}">`,
    '<metadata xmlns:dc="http://purl.org/dc/elements/1.1/">',
    `<dc:identifier id="edition">${escaped(identifier)}</dc:identifier>`,
    `<dc:title>${escaped(title)}</dc:title>`,
    `<dc:language>${escaped(language)}</dc:language>`,
    `<dc:creator>${escaped(club)}</dc:creator>`,
    `<dc:publisher>${escaped(club)}</dc:publisher>`,
    `<dc:date>${day}</dc:date>`,
    meta('dcterms:modified', `${day}T00:00:00Z`),
    ...ACCESS.map(([property, value]) => meta(property, value)),
    meta('schema:accessibilitySummary', spoken<typeof en>({ en, es }).accessibility),
    '</metadata>',
    '<manifest>',
    '<item id="styles" href="book.css" media-type="text/css"/>',
    ...files.map(item),
    '</manifest>',
    '<spine>',
    ...files.map(({ name }) => `<itemref idref="${idOf(name)}"/>`),
    '</spine>',
    '</package>',
    '',
  ].join('\n');
}

/** An XHTML document. `body` is markup whose tags are closed and whose characters are escaped. */
export const xhtml = (language: string, title: string, body: string): string =>
  [
    '<?xml version="1.0" encoding="utf-8"?>',
    '<!DOCTYPE html>',
    `<html xmlns="http://www.w3.org/1999/xhtml" xmlns:epub="http://www.idpf.org/2007/ops" lang="${language}" xml:lang="${language}">`,
    `<head><title>${escaped(title)}</title><link rel="stylesheet" type="text/css" href="book.css"/></head>`,
    `<body>\n${body}\n</body>`,
    '</html>',
    '',
  ].join('\n');

const CONTAINER = `<?xml version="1.0" encoding="utf-8"?>
<container version="1.0" xmlns="urn:oasis:names:tc:opendocument:xmlns:container">
  <rootfiles><rootfile full-path="book/package.opf" media-type="application/oebps-package+xml"/></rootfiles>
</container>
`;

/** EPUB 3.3, OCF 4.2: `mimetype` comes first and is stored without compression. The same files give the same bytes. */
export function packed(publication: Publication, files: readonly PackedFile[], styles: string): Uint8Array<ArrayBuffer> {
  const archive: Zippable = {
    mimetype: [strToU8('application/epub+zip'), { level: 0 }],
    'META-INF/container.xml': strToU8(CONTAINER),
    'book/package.opf': strToU8(packageDocument(publication, files)),
    'book/book.css': strToU8(styles),
  };
  for (const { name, text } of files) archive[`book/${name}`] = strToU8(text);
  // Without a time zone: an archive stores local time, which is the same on every machine here.
  return zipSync(archive, { level: 9, mtime: `${publication.day}T12:00:00` }) as Uint8Array<ArrayBuffer>;
}

/** For text and for values in double quotes. */
export const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
