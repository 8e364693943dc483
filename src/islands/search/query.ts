/* What a reader typed, as the words to look for: small words dropped, ratios and units kept, mistyped words led to right ones. */
import type { Lexicon, Word } from './lexicon.ts';

const SMALL = new Set(
  'a about after all am an and any are as at be but by can cant could did do does doing dont for from get gets getting go goes going got had has have he help her his how i if in into is isnt it its just may me my need no not of off ok on one or our out she should so some than that the their them then there they this to too up us was we were what whats when where which who why will with wont would yes you your put monday tuesday wednesday thursday friday saturday sunday'.split(' '),
);

/** As people type units, and as the pages write them. */
const UNITS: Record<string, string> = { lb: 'pound', lbs: 'pound', pounds: 'lb', pound: 'lb', gal: 'gallon', gals: 'gallon', gallon: 'gal', gallons: 'gal', qt: 'quart', quarts: 'qt', oz: 'ounce', ounces: 'oz', kilo: 'kg', kilos: 'kg', litre: 'l', litres: 'l', liter: 'l', liters: 'l', f: '°f', c: '°c' };

/** A word to look for: as typed, and as it may have been meant. */
export type Term = { typed: string; meant: string[] };

/** The words to look for, each once. Where all are small, all are kept. */
export function termsOf(typed: string, lexicon: Lexicon): Term[] {
  const words = [...new Set(wordsIn(typed))];
  const large = words.filter((word) => !SMALL.has(word));
  return (large.length > 0 ? large : words).map((word) => ({ typed: word, meant: meantBy(word, lexicon) }));
}

function wordsIn(typed: string): string[] {
  const text = plain(typed).replace(/['’]/g, '').replace(/\b(\d{1,2})\s*(?::|\bto\b)\s*(\d{1,2})\b/g, '$1to$2');
  return text.match(/°?[\p{L}\p{N}]+(?:[.,]\d+)?/gu) ?? [];
}

function meantBy(word: string, lexicon: Lexicon): string[] {
  if (UNITS[word]) return [UNITS[word]];
  const near = /\d/.test(word) ? null : lexicon.meant(word);
  return near ? [near] : [];
}

export const plain = (text: string): string => text.toLowerCase().normalize('NFD').replace(/\p{M}/gu, '');

const joined = (text: string): string => plain(text).replace(/['’]/g, '').replace(/[^\p{L}\p{N}]+/gu, ' ').trim();

/** The entries of the word list that the typed words name, by any of their names; the longest name first. */
export function wordsNamed(typed: string, { words }: Lexicon): Word[] {
  const text = ` ${joined(typed)} `;
  const length = (word: Word): number => Math.max(0, ...word.names.filter((name) => text.includes(` ${joined(name)} `)).map((name) => name.length));
  return words.filter((word) => length(word) > 0).sort((a, b) => length(b) - length(a));
}
