/* What a reader typed, as the words to look for: small words dropped, ratios and units kept, mistyped words led to right ones. */
import type { Lexicon, Word } from './lexicon.ts';

const SMALL = /^([a-z]{1,2}|about|and|are|but|cant?|did|does|dont|for|from|gets?|got|had|has|have|how|its?|need|not|off|put|should|some|that|the[mny]?|there|this|was|were|what|when|where|which|who|why|will|with|wont|your?|\w+day)$/;

/** As people type units, and as the pages write them. */
const UNITS: Record<string, string> = { lb: 'pound', lbs: 'pound', pound: 'lb', pounds: 'lb', gal: 'gallon', gallon: 'gal', qt: 'quart', quart: 'qt', oz: 'ounce', f: '°f', c: '°c' };

/** A word to look for: as typed, and as it may have been meant; `surely` where both are to be looked for. */
export type Term = { typed: string; meant: string | null; surely: boolean; /** What it counts. */ weight: number };

/** The words to look for, each once. Where all are small, all are kept. */
export function termsOf(typed: string, lexicon: Lexicon, weight = 1): Term[] {
  const words = [...new Set(wordsIn(typed))];
  const large = words.filter((word) => UNITS[word] || !SMALL.test(word));
  return (large.length > 0 ? large : words).map((word) => ({
    typed: word,
    meant: UNITS[word] ?? (/\d/.test(word) ? null : lexicon.meant(word)),
    surely: !!UNITS[word] || lexicon.isAlias(word),
    weight,
  }));
}

function wordsIn(typed: string): string[] {
  const text = plain(typed).replace(/\b(\d{1,2})\s*(?::|\bto\b)\s*(\d{1,2})\b/g, '$1to$2');
  return text.match(/°?[\p{L}\p{N}]+(?:[.,]\d+)?/gu) ?? [];
}

const plain = (text: string): string => text.toLowerCase().normalize('NFD').replace(/[\p{M}'’]/gu, '');
const joined = (text: string): string => ` ${plain(text).match(/[\p{L}\p{N}]+/gu)?.join(' ')} `;

/** The entries of the word list that the typed words name, by any of their names; the longest name first. */
export function wordsNamed(typed: string, { words }: Lexicon): Word[] {
  const text = joined(typed);
  const length = ({ names }: Word): number => Math.max(...names.map((name) => (text.includes(joined(name)) ? name.length : 0)));
  return words.filter(length).sort((a, b) => length(b) - length(a));
}
