/* Which entries are drafts: not published, so that nothing wrong in them stops a build. A draft whose fields cannot be read counts as one by its own line. */
import type { Entry } from './folder.ts';

export const isDraft = (entry: Entry): boolean =>
  entry.fields.value === undefined ? saysDraft(entry.text) : (entry.fields.value as { draft?: unknown } | null)?.draft === true;

/** A line `draft: true` among the fields at the head of a file. */
export function saysDraft(text: string): boolean {
  const head = text.replace(/^\uFEFF?---[ \t]*\r?\n/, '').split(/^---[ \t]*\r?$/m)[0]!;
  return /^draft:[ \t]*true[ \t]*(?:#.*)?\r?$/m.test(head);
}
