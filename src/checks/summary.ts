/* Summary of an almanac in sentences for a committee: what comes from the books, what is the club's own, and what is missing. */
import { collections, type Collection } from '../schemas/collections.ts';
import { withoutDrafts, type Entry, type Folder } from '../source/folder.ts';
import { nameOf } from '../source/layers.ts';
import { claimFor } from '../source/origins.ts';
import { isOlder } from '../source/taken.ts';
import { isWithdrawn } from './place.ts';

export const isPageKind = ({ collection }: Pick<Entry, 'collection'>): boolean =>
  (collections[collection as Collection]?.path ?? null) !== null;

export type Made = {
  fromBooks: Entry[];
  own: Entry[];
  writtenOver: Entry[];
  addedTo: Entry[];
  compared: Entry[];
};

/** The entries of a club by origin, without drafts and withdrawn entries. */
export function madeOf(folder: Folder): Made {
  const shown = withoutDrafts(folder).entries.filter((entry) => !isWithdrawn(entry));
  const fromBooks = shown.filter(({ book }) => book !== undefined);
  const own = shown.filter(({ book }) => book === undefined);
  return {
    fromBooks,
    own: own.filter(({ over }) => over === undefined),
    writtenOver: own.filter(({ over }) => over !== undefined),
    addedTo: fromBooks.filter(({ overlays = [] }) => overlays.some(({ book }) => book === undefined)),
    compared: fromBooks.filter((entry) => claimFor(folder, entry) !== null),
  };
}

/** `day`: that of the edition. Empty for a club without books. */
export function summaryLines(folder: Folder, day: string): string[] {
  if (folder.books.length === 0) return [];
  const { fromBooks, own, writtenOver, addedTo, compared } = madeOf(folder);
  const pages = fromBooks.filter(isPageKind);
  const past = pastNextCheck(fromBooks, day);
  const over = [...writtenOver, ...addedTo];
  const older = over.filter((entry) => isOlder(folder, entry)).map(nameOf);
  return [
    `From the books (${folder.books.map(({ id }) => id).join(', ')}): ${counted(pages.length, 'page')}, ${counted(fromBooks.filter(({ collection }) => collection === 'figures').length, 'figure')}; ${past.length} past their next check, for their editors to do.`,
    `Your own: ${counted(own.filter(isPageKind).length, 'page')}. Over the books: ${over.length}${older.length > 0 ? ` (${older.length} older than its book: ${older.join(', ')})` : ''}. Compared by you: ${compared.filter(isPageKind).length} of ${pages.length}.`,
    `Not shown here: ${counted(folder.elsewhere.entries, 'entry', 'entries')}, ${counted(folder.elsewhere.rows, 'row')} (for other places). Gaps: ${folder.gaps.length}${folder.gaps.length > 0 ? ` (${folder.gaps.join(', ')})` : ''}.`,
  ];
}

/** The entries whose next check was due before the day. */
export const pastNextCheck = (entries: readonly Entry[], day: string): Entry[] =>
  entries.filter(({ fields }) => String((fields.value as { 'next-check'?: unknown } | undefined)?.['next-check'] ?? '9999') < day);

export const counted = (count: number, word: string, many = `${word}s`): string => `${count} ${count === 1 ? word : many}`;
