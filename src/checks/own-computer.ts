/*
 * Checks for addresses that only the author's own computer or house can reach, such as those copied from the preview. Links in the words
 * and fields that lead to a page are checked in links.ts, which knows the pages.
 */
import type { Diagnostic } from '../source/diagnostic.ts';
import { fieldName, valueAt, type ValidEntries } from './fields.ts';
import { atField } from './place.ts';

/** A name without a dot, a name that ends in .local, and the addresses that are kept for networks of one house (RFC 1918, 3927, 4193). */
const HOST =
  /^(?:[^.]+|.+\.local(?:host)?|0\.0\.0\.0|127(?:\.\d+){3}|10(?:\.\d+){3}|192\.168(?:\.\d+){2}|172\.(?:1[6-9]|2\d|3[01])(?:\.\d+){2}|169\.254(?:\.\d+){2})$/i;

export const isOnOwnComputer = (url: string): boolean => /^https?:/i.test(url) && URL.canParse(url) && HOST.test(new URL(url).hostname);

/** Fields that lead to a page of this site. */
const TO_PAGES = new Set(['more', 'page', 'concerns', 'formerly']);

export function ownComputerFaults({ folder }: ValidEntries): Diagnostic[] {
  const entries = folder.club ? [folder.club, ...folder.entries] : folder.entries;
  return entries.flatMap((entry) =>
    addressesIn(entry.fields.value, []).map((path) =>
      atField(entry, path, {
        rule: 'link',
        field: fieldName(path),
        found: `"${String(valueAt(entry.fields.value, path))}", an address on your own computer`,
        write: 'the address on the web, which every reader can open',
      }),
    ),
  );
}

function addressesIn(value: unknown, path: PropertyKey[]): PropertyKey[][] {
  if (typeof value === 'string') return isOnOwnComputer(value) && !path.some((key) => TO_PAGES.has(String(key))) ? [path] : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, held]) => addressesIn(held, [...path, Array.isArray(value) ? Number(key) : key]));
}
