/*
 * Checks sources: content that can harm a colony or a person names its source. This covers bulletins, treatments, cautions and yard
 * lists. A figure that a dose, a verdict or first aid rests on should have a source that a reader can open; that is only listed.
 */
import type { Diagnostic } from '../source/diagnostic.ts';
import type { ValidEntries, ValidEntry } from './fields.ts';
import { followedRows } from '../schemas/figures.ts';
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

const RELIED_ON = new Set(['mites', 'treatments', 'diseases', 'people']);

/** Figures that a dose, a verdict or first aid may rest on, whose followed row has a source without an address that nobody opened. */
export const unopenedFigures = ({ of: { figures, sources } }: ValidEntries): string[] => {
  const unopened = new Set(sources.filter(({ data }) => data.seen === 'memory' && data.url === undefined).map(({ id }) => id));
  return figures
    .filter(({ data }) => RELIED_ON.has(data.subject ?? 'other'))
    .filter(({ data }) => data.rows.some(({ id, source }) => followedRows(data).includes(id) && unopened.has(source)))
    .map(({ id }) => id)
    .sort();
};

/** One line for editors, or none. */
export const unopenedLines = (club: ValidEntries): string[] => {
  const ids = unopenedFigures(club);
  const [of, follow] = ids.length === 1 ? ['figure', 'follows'] : ['figures', 'follow'];
  return ids.length === 0
    ? []
    : [
        `${ids.length} ${of} of mites, treatments, diseases or people ${follow} a source without an address that nobody opened: ${ids.join(', ')}.`,
      ];
};
