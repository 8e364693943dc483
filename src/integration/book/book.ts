/* Book of the almanac, made from the drawn pages: `handbook.epub` and `handbook.html`, both of one edition. */
import type { BuiltPage } from '../built-pages.ts';
import type { Edition } from '../../lib/edition-name.ts';
import type { Almanac } from '../../lib/almanac.ts';
import { cited } from '../../lib/figures.ts';
import { classesIn } from '../../paper/plain.ts';
import { chaptersOf } from './chapters.ts';
import { epub } from './epub.ts';
import { oneFile } from './one-file.ts';
import { partsOf } from './order.ts';
import { oneFileStyles } from './style-sheets.ts';

export type BookOf = {
  pages: readonly BuiltPage[];
  base: string;
  /** The complete address of the first page, where it is known. */
  root: string | null;
  almanac: Almanac;
  edition: Edition;
};

export type Book = {
  html: string;
  epub: Uint8Array;
  /** The style sheet in the single file, for the content policy of a host. */
  styles: string;
};

/** Makes both files. The pages contain no drafts and no withdrawn entries, so neither do the books. */
export function makeBook({ pages, base, root, almanac: { club, seasons, sources: listed }, edition }: BookOf): Book {
  const parts = partsOf(pages, base);
  const classes = classesIn(oneFileStyles());
  const { chapters, sources } = chaptersOf(parts, {
    base,
    root,
    districts: { names: new Map(seasons.map(({ id, name }) => [id, name])), language: club.language },
    classes,
    publications: [...listed.values()].map(cited),
  });
  const bound = {
    front: { club, edition, root, districts: seasons.map(({ name }) => name) },
    base,
    pages,
    parts,
    chapters,
    sources,
  };
  const archive = epub(bound);
  return { ...oneFile(bound), epub: archive };
}
