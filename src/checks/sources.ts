/*
 * Checks sources: content that can harm a colony or a person names its source. This covers bulletins, treatments, cautions and yard
 * lists.
 */
import type { Diagnostic } from '../source/diagnostic.ts';
import type { ValidEntries, ValidEntry } from './fields.ts';
import { atFieldName } from './place.ts';

export function sourceFaults(club: ValidEntries): Diagnostic[] {
  const bound: ValidEntry<{ sources: string[] }>[] = [
    ...club.of.bulletins,
    ...club.of.treatments,
    ...club.of.cautions,
    ...club.of.checklists.filter(({ data }) => data.yard),
  ];
  return bound
    .filter(({ data }) => data.sources.length === 0)
    .map((entry) =>
      atFieldName(entry, ['sources'], {
        rule: 'sources',
        field: 'sources',
        found: 'an empty list',
        write: 'at least one file of sources/',
      }),
    );
}
