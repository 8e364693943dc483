/*
 * A word as the search engine knows it, where its own reading would lose something: it takes endings off by itself, but knows no units
 * and no irregular forms, and it drops the sign inside a ratio or a fraction (2:1 would be 21). One rule for pages and questions.
 */
import { everyday } from './stem.ts';
import { unitOf, wordsIn } from './terms.ts';

export function canonical(word: string): string {
  if (/^\d+[:/]\d+$/.test(word)) return word.replace(':', 'to').replace('/', 'over');
  return unitOf(word) ?? everyday(word);
}

/** The words of a text whose canonical form the engine cannot read off the text itself, each with how often it occurs. */
export function otherForms(text: string): Map<string, number> {
  const counts = new Map<string, number>();
  for (const word of wordsIn(text)) {
    const form = canonical(word);
    if (form !== word) counts.set(form, (counts.get(form) ?? 0) + 1);
  }
  return counts;
}
