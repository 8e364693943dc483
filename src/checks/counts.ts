/* Checks that count rows name the club's own districts. */
import type { Diagnostic } from '../source/diagnostic.ts';
import { fieldNameIn, type ValidEntries } from './fields.ts';
import { nearOrAll } from '../../shared/words/near-name.ts';
import { atField } from './place.ts';

export function countFaults(club: ValidEntries): Diagnostic[] {
  const ids = club.club?.data.districts.map(({ id }) => id);
  if (!ids) return [];
  return club.of.counts.flatMap((entry) =>
    entry.data.rows.flatMap(({ district }, index) => {
      if (ids.includes(district)) return [];
      return [
        atField(entry, ['rows', index, 'district'], {
          rule: 'count',
          field: fieldNameIn(entry, ['rows', index, 'district']),
          found: `"${district}", which is not among the districts of club.yaml`,
          write: nearOrAll(district, ids),
        }),
      ];
    }),
  );
}
