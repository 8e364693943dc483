/* Sizes of the two books, written into the pages that link to them and reported to the webmaster. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { formatNumber } from '../../../shared/numbers/show-number.ts';
import type { BuiltPage } from '../built-pages.ts';

/** Bytes that a book without photographs should not exceed, so that it can be mailed and read on an old device. */
const LARGE = 2_000_000;

/** Fills `<span data-book="epub"></span>` in the pages. Returns one sentence with the sizes, and one for each book that is too large. */
export function nameSizes(site: string, pages: readonly BuiltPage[], { html, epub }: { html: string; epub: Uint8Array }): string[] {
  const sizes: Record<string, number> = { html: Buffer.byteLength(html), epub: epub.length };
  for (const page of pages.filter((each) => each.html.includes('data-book="'))) {
    writeFileSync(
      join(site, page.file),
      page.html.replace(/(<span data-book="(\w+)">)(<\/span>)/g, (whole, begin: string, kind: string, end: string) =>
        sizes[kind] ? `${begin}${megabytes(sizes[kind])}${end}` : whole,
      ),
    );
  }
  const large = Object.entries(sizes).filter(([, bytes]) => bytes > LARGE);
  return [
    `Book: handbook.epub, ${megabytes(sizes.epub!)}; handbook.html, ${megabytes(sizes.html!)}.`,
    ...large.map(([kind, bytes]) => `handbook.${kind} is ${megabytes(bytes)}, more than 2 MB: it takes long on a weak line.`),
  ];
}

const megabytes = (bytes: number): string => `${formatNumber(bytes / 1e6, { places: 2 })} MB`;
