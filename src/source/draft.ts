/*
 * Finds the drafts, which are not published, so that their mistakes stop no build. A draft with unparsable fields is recognised by its
 * own line `draft: true`.
 */
import type { Entry } from './folder.ts';

export const isDraft = (entry: Entry): boolean =>
  entry.fields.value === undefined ? saysDraft(entry.text) : (entry.fields.value as { draft?: unknown } | null)?.draft === true;

/** A draft that leaves its place empty for readers. One that is laid over a text of a book leaves them that text. */
export const isAway = (entry: Entry): boolean => isDraft(entry) && (entry.over === undefined || isAway(entry.over));

/** A line `draft: true` in the front matter of a file. */
export function saysDraft(text: string): boolean {
  const head = text.replace(/^\uFEFF?---[ \t]*\r?\n/, '').split(/^---[ \t]*\r?$/m)[0]!;
  return /^draft:[ \t]*true[ \t]*(?:#.*)?\r?$/m.test(head);
}
