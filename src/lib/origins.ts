/* Counts pages by whose claim they are: each book's editors, or the club. */
import { collections, collectionNames, type Collection } from '../schemas/collections.ts';
import type { Almanac } from './content.ts';

export type FromWhere = { whose: string; id: string; mistakes: string | null; pages: number; compared: number };

/** The books in the order of their names, then the club; empty for a club without books. */
export function pagesByOrigin({ club, origins }: Pick<Almanac, 'club' | 'origins'>): FromWhere[] {
  if (origins.size === 0) return [];
  const found = new Map<string, FromWhere>();
  for (const [name, { book, compared }] of origins) {
    const [collection] = name.split('/') as [Collection];
    if (!collectionNames.includes(collection) || collections[collection].path === null) continue;
    const id = book?.id ?? '';
    const row = found.get(id) ?? { whose: book?.title ?? club.name, id, mistakes: book?.mistakes ?? null, pages: 0, compared: 0 };
    found.set(id, { ...row, pages: row.pages + 1, compared: row.compared + (compared || !book ? 1 : 0) });
  }
  return [...found.values()].sort((a, b) => Number(a.id === '') - Number(b.id === '') || (a.id < b.id ? -1 : 1));
}
