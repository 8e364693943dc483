/*
 * Who vouches for each entry: the editors of a book, or the club. A club that compared a text of a book adds a line with the
 * text's hash to its claims.csv. The line stops counting when the text changes.
 */
import { createHash } from 'node:crypto';
import type { Tongue } from '../../shared/country/language.ts';
import { isDay } from '../../shared/days/day.ts';
import type { Origin } from '../schemas/origin.ts';
import { bookIn, type Entry, type Folder } from './folder.ts';
import { nameOf } from './layers.ts';

/** The entry as the books have it, under what the club laid over it; null for the club's own. */
export function bookEntry(entry: Entry): Entry | null {
  if (entry.book === undefined) return entry.over ? bookEntry(entry.over) : null;
  const top = entry.overlays?.at(-1);
  return top && top.book === undefined && entry.over ? bookEntry(entry.over) : entry;
}

export const hashOf = (entry: Entry): string => `sha256:${createHash('sha256').update(entry.text).digest('hex').slice(0, 16)}`;

/** The newest claim of the club for the text as it is now. */
export function claimFor({ claims }: Folder, entry: Entry): Origin['compared'] {
  const rows = (claims?.fields.value as { rows?: unknown } | undefined)?.rows;
  const text = bookEntry(entry);
  if (!Array.isArray(rows) || !text) return null;
  const hash = hashOf(text);
  const held = (rows as { what?: unknown; day?: unknown; by?: unknown; hash?: unknown }[]).flatMap(({ what, day, by, hash: claimed }) =>
    what === nameOf(entry) && claimed === hash && typeof day === 'string' && isDay(day) ? [{ day, by: String(by) }] : [],
  );
  return held.sort((one, other) => (one.day < other.day ? 1 : -1))[0] ?? null;
}

/** Names of the entries that the club compared and that no claim holds for now. */
export function lapsedClaims(folder: Folder): string[] {
  const rows = (folder.claims?.fields.value as { rows?: unknown } | undefined)?.rows;
  const named = new Set(Array.isArray(rows) ? (rows as { what?: unknown }[]).map(({ what }) => what) : []);
  return folder.entries.filter((entry) => named.has(nameOf(entry)) && claimFor(folder, entry) === null).map(nameOf);
}

/** `tongue`: the language in which readers are told. */
export function originOf(folder: Folder, entry: Entry, tongue: Tongue = 'en'): Origin {
  const book = folder.books.find(({ id }) => id === entry.book);
  const fields = ((book && bookIn(book, tongue))?.fields.value ?? {}) as { title?: unknown; editors?: unknown; mistakes?: unknown };
  const isOwn = entry.book === undefined;
  return {
    book: book
      ? {
          id: book.id,
          title: String(fields.title),
          editors: String(fields.editors),
          mistakes: typeof fields.mistakes === 'string' ? fields.mistakes : null,
        }
      : null,
    isWrittenOver: isOwn && entry.over !== undefined,
    isAddedTo: !isOwn && (entry.overlays ?? []).some((overlay) => overlay.book === undefined),
    compared: isOwn ? null : claimFor(folder, entry),
  };
}
