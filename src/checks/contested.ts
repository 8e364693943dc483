/* Checks that a club gives its reason for following one of several sources. */
import type { Diagnostic } from '../source/diagnostic.ts';
import { followedRows } from '../schemas/figures.ts';
import type { ValidEntries } from './fields.ts';
import { atField } from './place.ts';

export function contestedFaults(club: ValidEntries): Diagnostic[] {
  return club.of.figures.flatMap((entry) => {
    const { rows, follows, because } = entry.data;
    const followed = followedRows(entry.data);
    const others = new Set(rows.map(({ id }) => id).filter((id) => !followed.includes(id)));
    if (others.size === 0 || because !== undefined) return [];
    return [
      atField(entry, ['follows'], {
        rule: 'figure',
        field: 'because',
        found: `"${follows}" followed, and no reason why rather than ${[...others]
          .slice(0, 2)
          .map((id) => `"${id}"`)
          .join(' or ')}`,
        write: 'a line "because:" with the reason, which members see',
      }),
    ];
  });
}
