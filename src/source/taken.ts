/* Texts that a club took from a book, kept as they were, so that a later text of the book can be compared with them. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { collections, type Collection } from '../schemas/collections.ts';
import type { Entry, Folder } from './folder.ts';
import { nameOf } from './layers.ts';
import { bookEntry } from './origins.ts';

/** A hidden folder in the club's own, which is never published. */
const TAKEN = '.base';

export const takenPath = (entry: Pick<Entry, 'collection' | 'id'>): string =>
  `${TAKEN}/${nameOf(entry)}${collections[entry.collection as Collection]?.ending ?? ''}`;

/** The text of the books that the club started from, where it took one. */
export function takenText({ directory }: Folder, entry: Pick<Entry, 'collection' | 'id'>): string | null {
  const file = join(directory, takenPath(entry));
  return existsSync(file) ? readFileSync(file, 'utf8') : null;
}

/** Whether the book's text has changed since the club took it. */
export function isOlder(folder: Folder, entry: Entry): boolean {
  const [then, now] = [takenText(folder, entry), bookEntry(entry)];
  return then !== null && now !== null && then !== now.text;
}
