/*
 * Edition record: its day, the fingerprint of its input, and a fingerprint of every page's main text, so that a later edition can list
 * added, changed and removed pages.
 */
import { createHash } from 'node:crypto';
import type { Day } from '../../shared/days/day.ts';
import { mainWords, titleOf, type BuiltPage } from './built-pages.ts';

export type Edition = { day: Day; fingerprint: string };

export type EditionRecord = Edition & {
  /** `id:` of club.yaml. Records of older releases have none. */
  club?: string;
  /** By path below the base, in a fixed order. */
  pages: Record<string, { title: string; sha256: string }>;
};

export function editionRecord({ day, fingerprint }: Edition, club: string, pages: readonly BuiltPage[]): string {
  const record: EditionRecord = {
    club,
    day,
    fingerprint,
    pages: Object.fromEntries(
      pages.map((page) => [page.place, { title: titleOf(page), sha256: createHash('sha256').update(mainWords(page)).digest('hex') }]),
    ),
  };
  return `${JSON.stringify(record, null, 2)}\n`;
}
