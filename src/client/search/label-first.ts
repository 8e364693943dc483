/*
 * Detects product names in a query. A name on a box is in no glossary, and this almanac prints none. An unknown word beside words about a
 * treatment, or written like a name, counts as one. It leads to the page on active ingredients.
 */
import { termsIn } from '../../../shared/words/terms.ts';
import type { Sought } from './query.ts';

/** The glossary entry of that page. */
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

/** `weak`: no page matches most of the words. */
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

/** A word that is not in the almanac, or only at a large edit distance. */
const isStrange = ({ unknown, corrected, stretch }: Sought): boolean => unknown || (corrected && stretch > 0.6);

/** A capital letter inside the query, or all capitals. Phones capitalise the first letter by themselves. */
function writtenAsName(typed: string, word: string): boolean {
  const at = typed.toLowerCase().indexOf(word);
  const written = at < 0 ? '' : typed.slice(at, at + word.length);
  return /^\p{Lu}/u.test(written) && (at > 0 || /\p{Lu}.*\p{Lu}/u.test(written)) && !OF_A_PLACE.test(typed.slice(0, at));
}
