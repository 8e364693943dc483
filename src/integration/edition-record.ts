/*
 * Edition record: its day, the fingerprint of its input, and a fingerprint of every page's main text and of every file of the club, so
 * that a later edition can list what was added, changed and removed.
 */
import { createHash } from 'node:crypto';
import { editionMark, editionName, type Edition } from '../lib/edition-name.ts';
import { mainWords, titleOf, type BuiltPage } from './built-pages.ts';

export type Recorded = { title: string; sha256: string };

export type EditionRecord = Edition & {
  /** `id:` of club.yaml. Records of older releases have none. */
  club?: string;
  /** The short mark beside the day on every page. Records of older releases have none. */
  mark?: string;
  /** By path below the base, in a fixed order. */
  pages: Record<string, Recorded>;
  /** The club's own PDFs: `files/membership-form.pdf`. Records of older releases have none. */
  files?: Record<string, Recorded>;
};

export function editionRecord(
  edition: Edition,
  club: string,
  pages: readonly BuiltPage[],
  files: Readonly<Record<string, Recorded>>,
): string {
  const { day, fingerprint } = edition;
  // The name of the edition on a page is no change of the page.
  const words = (page: BuiltPage): string => mainWords(page).replaceAll(editionName(edition).replaceAll('\u00a0', ' '), '');
  const record: EditionRecord = {
    club,
    day,
    mark: editionMark({ fingerprint }),
    fingerprint,
    pages: Object.fromEntries(
      pages.map((page) => [page.place, { title: titleOf(page), sha256: createHash('sha256').update(words(page)).digest('hex') }]),
    ),
    files,
  };
  return `${JSON.stringify(record, null, 2)}\n`;
}
