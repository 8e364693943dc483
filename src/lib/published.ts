/*
 * The one rule of what a reader may see; every output inherits it, because the shelves hand out nothing else. A draft
 * appears nowhere. What was withdrawn is gone from every page, list, search, calendar and file; where it had a page, a
 * notice stands at its address. A row that rests on a withdrawn source is gone too.
 */

export type Withdrawal = { day: string; why: string };

type Fields = { draft?: boolean | undefined; withdrawn?: string | undefined };

/** Drafts appear nowhere in a built site; the preview shows them, marked. The withdrawn appear in neither. */
export const isPublished = (fields: Fields): boolean =>
  fields.withdrawn === undefined && (fields.draft !== true || import.meta.env?.DEV === true);

/** `2026-05-14, the test on this page can mislead` as its two parts; a draft that is withdrawn was never seen. */
export function withdrawalOf({ draft, withdrawn }: Fields): Withdrawal | null {
  if (withdrawn === undefined || draft === true) return null;
  return { day: withdrawn.slice(0, 10), why: sentence(withdrawn.slice(10).replace(/^[,\s]+/, '')) };
}

/** The rows whose source still stands. */
export const standing = <Row extends { source?: string | undefined }>(rows: readonly Row[], sources: ReadonlyMap<string, unknown>): Row[] =>
  rows.filter(({ source }) => source === undefined || sources.has(source));

const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}${/[.!?]$/.test(words) ? '' : '.'}`;
