/*
 * Decides what a reader may see. Every output follows this rule, because the collections contain nothing else. A draft appears nowhere. A
 * withdrawn entry is removed from every page, list, search, calendar and file; a notice replaces its page. A row of a withdrawn source is
 * removed too.
 */

import { parseDay, type Day } from '../../shared/days/day.ts';
import { unwrap } from '../../shared/result.ts';

export type Withdrawal = { day: Day; why: string };

type Fields = { draft?: boolean | undefined; withdrawn?: string | undefined };

/** A built site contains no drafts. The preview shows them, marked. Neither contains withdrawn entries. */
export const isPublished = (fields: Fields): boolean =>
  fields.withdrawn === undefined && (fields.draft !== true || import.meta.env?.DEV === true);

/** A withdrawn draft was never published. */
export function withdrawalOf({ draft, withdrawn }: Fields): Withdrawal | null {
  return withdrawn === undefined || draft === true ? null : dayAndReasonIn(withdrawn);
}

/** Splits `2026-05-14, the test on this page can mislead`. */
export const dayAndReasonIn = (text: string): Withdrawal => ({
  day: unwrap(parseDay(text.slice(0, 10))),
  why: sentence(text.slice(10).replace(/^[,\s]+/, '')),
});

/** The rows whose source is not withdrawn. */
export const withoutWithdrawn = <Row extends { source?: string | undefined }>(
  rows: readonly Row[],
  sources: ReadonlyMap<string, unknown>,
): Row[] => rows.filter(({ source }) => source === undefined || sources.has(source));

const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}${/[.!?]$/.test(words) ? '' : '.'}`;
