/*
 * Finds the books: all that exist, and those that follow from a club's land, the widest first. A book is a folder with a
 * book.yaml in the folder of books.
 */
import { existsSync, readdirSync, readFileSync, realpathSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import { holdsHere, narrowness, type Here, type Where } from '../schemas/where.ts';

export type BookAt = { id: string; place: Where; directory: string };

/** Every book below `folder`, sorted by name. A book whose book.yaml cannot be read holds nowhere; the checks report it. */
export function booksIn(folder: string): BookAt[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter((id) => existsSync(join(folder, id, 'book.yaml')))
    .sort()
    .map((id) => ({ id, place: placeIn(join(folder, id, 'book.yaml')), directory: join(folder, id) }));
}

function placeIn(file: string): Where {
  try {
    const place = (parse(readFileSync(file, 'utf8')) as { place?: unknown } | null)?.place;
    return typeof place === 'string' ? place : 'nowhere';
  } catch {
    return 'nowhere';
  }
}

const byWidth = (a: BookAt, b: BookAt): number => narrowness(a.place) - narrowness(b.place) || (a.id < b.id ? -1 : 1);

/** The books whose place holds the club's land. */
export const booksFor = (books: readonly BookAt[], here: Here): BookAt[] =>
  books.filter(({ place }) => holdsHere(place, here)).sort(byWidth);

/** The wider books below a book, so that it can be checked by itself: those that hold anywhere, and that of its country. */
export const booksBelow = (books: readonly BookAt[], directory: string): BookAt[] => {
  const own = books.find((book) => sameFolder(book.directory, directory));
  if (!own || narrowness(own.place) === 0) return [];
  const wider = ({ place }: BookAt): boolean => place === 'anywhere' || (narrowness(own.place) === 3 && place === own.place.slice(0, 2));
  return books.filter((book) => book.id !== own.id && wider(book)).sort(byWidth);
};

function sameFolder(one: string, other: string): boolean {
  return existsSync(one) && existsSync(other) && realpathSync(one) === realpathSync(other);
}
