/*
 * Edition record: its day, the fingerprint of its input, and a fingerprint of every page's main text and of every file of the club, so
 * that a later edition can list what was added, changed and removed.
 */
import { createHash } from 'node:crypto';
import type { Day } from '../../shared/days/day.ts';
import { mainWords, titleOf, type BuiltPage } from './built-pages.ts';

export type Edition = { day: Day; fingerprint: string };

export type Recorded = { title: string; sha256: string };

export type EditionRecord = Edition & {
  /** `id:` of club.yaml. Records of older releases have none. */
  club?: string;
  /** By path below the base, in a fixed order. */
  pages: Record<string, Recorded>;
  /** The club's own PDFs: `files/membership-form.pdf`. Records of older releases have none. */
  files?: Record<string, Recorded>;
};

export function editionRecord(
  { day, fingerprint }: Edition,
  club: string,
  pages: readonly BuiltPage[],
  files: Readonly<Record<string, Recorded>>,
): string {
  const record: EditionRecord = {
    club,
    day,
    fingerprint,
    pages: Object.fromEntries(
      pages.map((page) => [page.place, { title: titleOf(page), sha256: createHash('sha256').update(mainWords(page)).digest('hex') }]),
    ),
    files,
  };
  return `${JSON.stringify(record, null, 2)}\n`;
}
