/*
 * Words of a phrase by which two ways of asking are the same: terms without stop words, in any order, with "not" for each way to deny.
 * What stands in every question of a bee yard says little.
 */
import { SMALL_WORDS } from './small-words.ts';
import { stem } from './stem.ts';
import { wordsIn } from './terms.ts';

const DENIALS = new Set(
  'no not never without none nobody nothing cannot cant couldnt dont doesnt didnt isnt arent wasnt wont wouldnt havent hasnt'.split(' '),
);
const DENIED = 'not';
const FILLERS = new Set(
  'bee bees honeybee honeybees hive hives beehive beehives help big little small new old please now'.split(' ').map(stem),
);

/** Each term once, in the order of the text. */
export const phraseTerms = (text: string): string[] => [
  ...new Set(
    wordsIn(text)
      .filter((word) => DENIALS.has(word) || !SMALL_WORDS.has(word))
      .map((word) => (DENIALS.has(word) ? DENIED : stem(word))),
  ),
];

export const isFiller = (term: string): boolean => FILLERS.has(term);

/** The terms that a question must have. Two that say something are enough without the others. */
export function neededTerms(text: string): string[] {
  const terms = phraseTerms(text);
  const telling = terms.filter((term) => !isFiller(term));
  return telling.length > 1 ? telling : terms;
}
