/* Checks best answers: each way to ask has a word that says something, and leads to one answer. */
import { isFiller, neededTerms } from '../../shared/words/phrases.ts';
import type { Diagnostic } from '../source/diagnostic.ts';
import type { ValidEntries } from './fields.ts';
import { atField, isDraft, isWithdrawn } from './place.ts';

export function answerFaults(club: ValidEntries): Diagnostic[] {
  const taken = new Map<string, string>();
  // What the folder itself adds is compared with what its books have.
  return club.of.answers
    .filter((entry) => !isDraft(entry) && !isWithdrawn(entry))
    .sort((a, b) => Number(a.book === undefined) - Number(b.book === undefined))
    .flatMap((entry) =>
      entry.data.asks.flatMap((way, index): Diagnostic[] => {
        const terms = neededTerms(way);
        const key = [...terms].sort().join(' ');
        const other = taken.get(key) ?? entry.id;
        taken.set(key, other);
        const at = (found: string, write: string): Diagnostic[] => [
          atField(entry, ['asks', index], { rule: 'answer', field: `asks ${index + 1}`, found, write }),
        ];
        if (terms.every(isFiller)) return at(`"${way}", whose words are in every question`, 'a word that only this question has');
        if (other === entry.id) return [];
        return at(
          `"${way}", whose words lead to answers/${other}.yaml`,
          'a further word here, or a file of that name, which takes its place',
        );
      }),
    );
}
