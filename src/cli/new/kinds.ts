/* Kinds of entries that `new` writes, by the words that people use for them. */
import { collectionNames, type Collection } from '../../schemas/collections.ts';
import { nearName } from '../near-name.ts';

const SINGULAR: Record<Collection, string> = {
  checklists: 'checklist',
  bulletins: 'bulletin',
  articles: 'article',
  meetings: 'meeting',
  reading: 'reading',
  treatments: 'treatment',
  forage: 'plant',
  words: 'word',
  figures: 'figure',
  sources: 'source',
  cautions: 'caution',
  signs: 'sign',
  notices: 'notice',
  counts: 'counts',
  drawings: 'drawing',
};

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
    [SINGULAR[name], name],
    [name, name],
  ]),
  ...Object.entries(ALSO),
]);

/** Kinds that are no page of a club. */
export const OTHER_KINDS = ['club', 'schemas'] as const;

export const kindNames: readonly string[] = [...collectionNames.map((name) => SINGULAR[name]), ...OTHER_KINDS];

export const singular = (collection: Collection): string => SINGULAR[collection];

/** The collection that a word means, or the sentence for an unknown word. */
export function collectionCalled(word: string): { ok: true; collection: Collection } | { ok: false; sentence: string } {
  const collection = names.get(word.trim().toLowerCase());
  if (collection) return { ok: true, collection };
  const near = nearName(word.toLowerCase(), [...names.keys(), ...OTHER_KINDS]);
  return {
    ok: false,
    sentence: near
      ? `There is no kind "${word}"; did you mean ${near}?`
      : `There is no kind "${word}"; there are: ${kindNames.join(', ')}.`,
  };
}
