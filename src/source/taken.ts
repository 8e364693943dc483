/* What a club took from a book to change it: the text as it was then, kept beside the club's own, so that a later text can be compared with it. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { collections, type Collection } from '../schemas/collections.ts';
import type { Entry, Folder } from './folder.ts';
import { nameOf } from './layers.ts';
import { bookEntry } from './origins.ts';

/** Texts of the books as they were when the club took them to change them; a folder that no reader sees. */
const TAKEN = '.base';

export const takenPath = (entry: Pick<Entry, 'collection' | 'id'>): string =>
  `${TAKEN}/${nameOf(entry)}${collections[entry.collection as Collection]?.ending ?? ''}`;

/** The text of the books that the club started from, where it took one. */
export function takenText({ directory }: Folder, entry: Pick<Entry, 'collection' | 'id'>): string | null {
  const file = join(directory, takenPath(entry));
  return existsSync(file) ? readFileSync(file, 'utf8') : null;
}

/** The text of the books changed after the club had taken it. */
export function isOlder(folder: Folder, entry: Entry): boolean {
  const [then, now] = [takenText(folder, entry), bookEntry(entry)];
  return then !== null && now !== null && then !== now.text;
}
