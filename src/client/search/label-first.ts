/*
 * A name read off a box is in no word list, and this almanac prints none. A word that nobody here knows, beside words
 * about a treatment or written as names are, is taken for one, and leads to the page on the active ingredient.
 */
import { termsIn } from '../../../shared/words/terms.ts';
import type { Sought } from './query.ts';

/** The entry of the word list whose page that is. */
export const LABEL_WORD = 'active-ingredient';

const ABOUT_TREATMENT = new Set(
  termsIn(
    'strip pad gel dribble trickle vapor fumes fog sachet tablet wafer label brand product dose dosage medicine medication treat treatment miticide remedy apply ingredient mite',
  ),
);
const ON_A_BOX =
  /\b(?:box|packet|pack|bottle|jar|tub|bag) (?:says|reads|is called|named)\b|\b(?:on|off|from) (?:the|my|a) (?:box|packet|bottle|tub)\b/i;
const OF_A_PLACE = /\b(?:in|at|near|from|of|to) $/i;
const SIGNED = /[®™]|\((?:r|tm)\)/i;

/** `weak`: no page answers to most of the words. */
export function readsLikeATradeName(typed: string, sought: readonly Sought[], weak: boolean): boolean {
  if (SIGNED.test(typed)) return true;
  const unknown = sought
    .filter(isStrange)
    .map(({ typed: word }) => word)
    .filter((word) => !termsIn(word).some((term) => ABOUT_TREATMENT.has(term)));
  if (unknown.length === 0) return false;
  if (ON_A_BOX.test(typed) || termsIn(typed).some((term) => ABOUT_TREATMENT.has(term))) return true;
  return weak && unknown.some((word) => writtenAsName(typed, word));
}

/** No word of the almanac, or one only by many slips. */
const isStrange = ({ unknown, corrected, stretch }: Sought): boolean => unknown || (corrected && stretch > 0.6);

/** With a capital inside the question, or all in capitals: telephones write the first letter large by themselves. */
function writtenAsName(typed: string, word: string): boolean {
  const at = typed.toLowerCase().indexOf(word);
  const written = at < 0 ? '' : typed.slice(at, at + word.length);
  return /^\p{Lu}/u.test(written) && (at > 0 || /\p{Lu}.*\p{Lu}/u.test(written)) && !OF_A_PLACE.test(typed.slice(0, at));
}
