/* Kinds of page for the rows: by the first word of the address and whether there is a second. `/` is the first page. */
import type { Built } from '../setup/built-site.ts';

export function kindOf(site: Built, page: string): string {
  const [first, second] = page.slice(site.base.length).split('/');
  if (!first) return '/';
  return first.includes('.') ? first : `${first}/${second ? '*' : ''}`;
}

/** Pages by kind, sorted by kind. */
export const byKind = (site: Built): Map<string, string[]> =>
  new Map([...Map.groupBy(site.pages, (page) => kindOf(site, page))].sort(([a], [b]) => (a < b ? -1 : 1)));
