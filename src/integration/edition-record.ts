/*
 * The record of an edition: its day, what it was built from, and for every page a fingerprint of its main text, so that
 * a later edition can say which pages were added, changed or withdrawn.
 */
import { createHash } from 'node:crypto';
import { mainWords, titleOf, type BuiltPage } from './built-pages.ts';

export type Edition = { day: string; fingerprint: string };

export type EditionRecord = Edition & {
  /** By place below the base, in one order. */
  pages: Record<string, { title: string; sha256: string }>;
};

export function editionRecord({ day, fingerprint }: Edition, pages: readonly BuiltPage[]): string {
  const record: EditionRecord = {
    day,
    fingerprint,
    pages: Object.fromEntries(
      pages.map((page) => [page.place, { title: titleOf(page), sha256: createHash('sha256').update(mainWords(page)).digest('hex') }]),
    ),
  };
  return `${JSON.stringify(record, null, 2)}\n`;
}
