/* Kinds of entries that `new` writes, by the words that people use for them. */
import { collectionNames, collections, type Collection } from '../../schemas/collections.ts';
import { err, ok, type Result } from '../../../shared/result.ts';
import { nearName } from '../../../shared/words/near-name.ts';

const ALSO: Record<string, Collection> = {
  'forage plant': 'forage',
  count: 'counts',
  list: 'checklists',
  page: 'articles',
  pest: 'bulletins',
  book: 'reading',
};

const names = new Map<string, Collection>([
  ...collectionNames.flatMap((name): [string, Collection][] => [
    [collections[name].entry, name],
    [name, name],
  ]),
  ...Object.entries(ALSO),
]);

/** Kinds that are no page of a club. */
export const OTHER_KINDS = ['club', 'schemas'] as const;

export const kindNames: readonly string[] = [...collectionNames.map((name) => collections[name].entry), ...OTHER_KINDS];

export const singular = (collection: Collection): string => collections[collection].entry;

/** The collection that a word means, or the sentence for an unknown word. */
export function collectionCalled(word: string): Result<Collection, string> {
  const collection = names.get(word.trim().toLowerCase());
  if (collection) return ok(collection);
  const near = nearName(word.toLowerCase(), [...names.keys(), ...OTHER_KINDS]);
  return err(
    near ? `There is no kind "${word}"; did you mean ${near}?` : `There is no kind "${word}"; there are: ${kindNames.join(', ')}.`,
  );
}
