/*
 * Canonical form of words for the search engine, where its own parsing would lose something. The engine strips endings by itself. It
 * knows no units and no irregular forms, and it drops the sign inside a ratio or fraction (2:1 would be 21). Pages and queries use the
 * same rule.
 */
import { everyday } from './stem.ts';
import { unitOf, wordsIn } from './terms.ts';

export function canonical(word: string): string {
  if (/^\d+[:/]\d+$/.test(word)) return word.replace(':', 'to').replace('/', 'over');
  return unitOf(word) ?? everyday(word);
}

/** The canonical words of a text that the engine cannot derive from the text, each with its number of occurrences. */
export function otherForms(text: string): Map<string, number> {
  const counts = new Map<string, number>();
  for (const written of text.split(/\s+/)) {
    const read = readByEngine(written);
    for (const form of wordsIn(written).map(canonical)) if (!read.has(signless(form))) counts.set(form, (counts.get(form) ?? 0) + 1);
  }
  return counts;
}

/** What Pagefind indexes of text without spaces: the whole without its signs, and parts of two letters or more between plain signs. */
function readByEngine(written: string): Set<string> {
  const small = written.toLowerCase().normalize('NFD').replace(/\p{M}/gu, '');
  return new Set([signless(small), ...small.split(/[!-/:-@[-`{-~]/).filter((part) => part.length > 1)]);
}

const signless = (word: string): string => word.replace(/[^\p{L}\p{N}]/gu, '');
