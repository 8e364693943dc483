/*
 * Package document of the EPUB: metadata, accessibility, and the order of its files. EPUB 3.3, 5; accessibility metadata by EPUB
 * Accessibility 1.1, 2.2, with terms of the schema.org vocabulary.
 */
import { createHash } from 'node:crypto';
import { toHtml } from 'hast-util-to-html';
import type { Front } from './front.ts';

export type PackedFile = { name: string; text: string; nav?: boolean; svg?: boolean };

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
  [
    'schema:accessibilitySummary',
    'Text with headings, lists and tables in reading order. Every drawing has a name and its content in words beside it. Letters and colors can be changed. No sound, no movement, no script.',
  ],
];

export function packageDocument({ club, day }: Front, fingerprint: string, files: readonly PackedFile[]): string {
  const meta = (property: string, value: string): string => `<meta property="${property}">${escaped(value)}</meta>`;
  const idOf = (name: string): string => `file-${name.replace(/\.xhtml$/, '')}`;
  const item = ({ name, nav, svg }: PackedFile): string => {
    const properties = [...(nav ? ['nav'] : []), ...(svg ? ['svg'] : [])].join(' ');
    return `<item id="${idOf(name)}" href="${name}" media-type="application/xhtml+xml"${properties ? ` properties="${properties}"` : ''}/>`;
  };
  return [
    '<?xml version="1.0" encoding="utf-8"?>',
    `<package xmlns="http://www.idpf.org/2007/opf" version="3.0" unique-identifier="edition" xml:lang="${escaped(club.language)}">`,
    '<metadata xmlns:dc="http://purl.org/dc/elements/1.1/">',
    `<dc:identifier id="edition">urn:uuid:${namedUuid(`${club.id} ${day} ${fingerprint}`)}</dc:identifier>`,
    `<dc:title>${escaped(club.almanac)}</dc:title>`,
    `<dc:language>${escaped(club.language)}</dc:language>`,
    `<dc:creator>${escaped(club.name)}</dc:creator>`,
    `<dc:publisher>${escaped(club.name)}</dc:publisher>`,
    `<dc:date>${day}</dc:date>`,
    meta('dcterms:modified', `${day}T00:00:00Z`),
    ...ACCESS.map(([property, value]) => meta(property, value)),
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

/** RFC 9562, 5.5: a version 5 UUID made from a name, so that one edition always has the same one. The name space is that of URLs, A.4. */
export function namedUuid(name: string, space = '6ba7b811-9dad-11d1-80b4-00c04fd430c8'): string {
  const bytes = createHash('sha1')
    .update(Buffer.from(space.replaceAll('-', ''), 'hex'))
    .update(name, 'utf8')
    .digest()
    .subarray(0, 16);
  bytes[6] = (bytes[6]! & 0x0f) | 0x50;
  bytes[8] = (bytes[8]! & 0x3f) | 0x80;
  return bytes.toString('hex').replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}

const escaped = (text: string): string => toHtml({ type: 'text', value: text }).replaceAll('"', '&quot;');
