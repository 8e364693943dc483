/* Spelling correction: the words that a mistyped word may mean. */
import { slips } from '../../../shared/words/slips.ts';
import { termOf } from '../../../shared/words/terms.ts';

/** A word by its index, and its edit distance. */
export type Near = { at: number; far: number };

/** A different ending is a small slip. */
const ENDING = 0.1;
/** Spellings slightly farther than the nearest are tried too, and the pages decide. */
const NEARLY = 0.35;
const MOST = 4;

/** The maximum edit distance for a word of this length. */
export const farthest = (letters: number): number => (letters < 4 ? 1 : letters < 6 ? 1.7 : letters < 9 ? 2.2 : 2.8);

/** Sorted by distance. Empty where all are farther than `most`. `terms` are those of the words, in their order. */
export function nearest(typed: string, words: readonly string[], terms: readonly string[], most: number): Near[] {
  const term = termOf(typed);
  const near = words.flatMap((word, at) => {
    if (word.length < 3 || /[^a-z]/.test(word)) return [];
    const asWritten = slips(typed, word, most);
    const far = asWritten < 1 ? asWritten : Math.min(asWritten, slips(term, terms[at]!, most) + ENDING);
    return far <= most ? [{ at, far }] : [];
  });
  const least = Math.min(...near.map(({ far }) => far));
  return near
    .filter(({ far }) => far <= least + NEARLY)
    .sort((a, b) => a.far - b.far)
    .slice(0, MOST);
}
