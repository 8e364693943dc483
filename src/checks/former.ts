/* Checks the old addresses of a page: complete, not in use today, and leading to one page only. */
import type { Diagnostic } from '../source/diagnostic.ts';
import { addressesOf } from './addresses.ts';
import type { ValidEntries } from './fields.ts';
import { atField } from './place.ts';

export function formerFaults(club: ValidEntries): Diagnostic[] {
  const { known } = addressesOf(club);
  const taken = new Map<string, string>();
  return club.folder.entries.flatMap((entry) => {
    const former = (entry.fields.value as { formerly?: unknown } | null)?.formerly;
    return (Array.isArray(former) ? former : []).flatMap((address: unknown, index): Diagnostic[] => {
      if (typeof address !== 'string') return [];
      const at = (wrong: Pick<Diagnostic, 'found' | 'write'>): Diagnostic[] => [
        atField(entry, ['formerly', index], { rule: 'address', field: `formerly ${index + 1}`, ...wrong }),
      ];
      if (!/^\/(?:[a-z0-9]+(?:[-.][a-z0-9]+)*\/)+$/.test(address))
        return at({ found: `"${address}"`, write: 'an address with a slash at both ends, such as "/lists/package-day/"' });
      if (known.has(address)) return at({ found: `"${address}", where a page is now`, write: 'an address that no page has' });
      const other = taken.get(address);
      if (other !== undefined) return at({ found: `"${address}", which ${other} has too`, write: 'it in one of the two' });
      taken.set(address, entry.path);
      return [];
    });
  });
}
