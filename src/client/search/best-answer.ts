/*
 * Best answer to a question: the one of which all the needed words of a way to ask are typed, and hardly a word more. Word endings and
 * order do not matter, nor do small slips of spelling.
 */
import { slips } from '../../../shared/words/slips.ts';
import { isFiller, phraseTerms } from '../../../shared/words/phrases.ts';

/** The number of the best answer, or -1. `isWord` keeps a right word from being corrected to another. */
export type BestAnswer = (typed: string, isWord?: (word: string) => boolean) => number;

/** The farthest spelling that is corrected. A short word has other words near it. */
const farthest = (letters: number): number => (letters < 4 ? 0 : letters < 5 ? 0.7 : letters < 6 ? 1 : letters < 9 ? 1.3 : 1.8);
/** The most words beside those of the way to ask. Each must be outweighed by one of its own. */
const MOST_MORE = 2;

/** `waysToAsk`: those of each answer, each as the terms that a question must have. */
export function readAnswers(waysToAsk: readonly (readonly string[])[]): BestAnswer {
  const phrases = waysToAsk.flatMap((ways, answer) =>
    ways.map((way) => way.split(' ')).map((terms) => ({ answer, terms, own: terms.filter((term) => !isFiller(term)).length })),
  );
  const known = new Set(phrases.flatMap(({ terms }) => terms));

  const corrected = (term: string): string => {
    const most = farthest(term.length);
    if (most === 0 || known.has(term) || isFiller(term) || /\d/.test(term)) return term;
    let [best, least] = [term, most];
    for (const right of known) {
      const far = slips(term, right, most);
      if (far < least || (far === least && best === term)) [best, least] = [right, far];
    }
    return best;
  };

  return (typed, isWord = () => false) => {
    const terms = new Set(phraseTerms(typed).map((term) => (isWord(term) ? term : corrected(term))));
    const telling = [...terms].filter((term) => !isFiller(term));
    let [best, most] = [-1, 0];
    for (const { answer, terms: needed, own } of phrases) {
      const more = telling.filter((term) => !needed.includes(term)).length;
      const score = needed.length - more / 4;
      if (score > most && more < own && more <= MOST_MORE && needed.every((term) => terms.has(term))) [best, most] = [answer, score];
    }
    return best;
  };
}
