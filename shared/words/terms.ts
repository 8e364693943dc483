/*
 * Splits text into search terms. Pages and queries use the same rule, so that the two match. Units, ratios and fractions become one term
 * each, however they are written.
 */
import { stem } from './stem.ts';

/** A word of the text (without spaces) and its terms. A word of signs alone has none. */
export type Read = { word: string; terms: string[] };

/** The terms of a text, in order. */
export const termsIn = (text: string): string[] => wordsIn(text).map(termOf);

/** Every word of the text with its terms, so that a page can mark the words that match. */
export const readWords = (text: string): Read[] =>
  text
    .split(SPACES)
    .filter(Boolean)
    .map((word) => ({ word, terms: termsIn(word) }));

/** A non-breaking space, as between a number and its unit, does not split a result into words. */
const SPACES = /[^\S\u00a0\u202f]+/;

/** Normalises words before they become terms: lower case, no accents, numbers apart from their units. */
export function wordsIn(text: string): string[] {
  return (
    plain(text)
      .match(/\d+(?:[.,/]\d+)+|\d+:\d+|\d+|\p{L}+|%/gu)
      ?.map((word) => (/^\d{1,3}(?:,\d{3})+$/.test(word) ? word.replaceAll(',', '') : word)) ?? []
  );
}

/** The term of one word. Stop words are terms, too; callers leave them out. */
export const termOf = (word: string): string => unitOf(word) ?? (/\d/.test(word) ? word : stem(word));

/** The canonical form of a unit, or undefined if the text is no unit. */
export const unitOf = (word: string): string | undefined => UNITS.get(word);

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[¼½¾⅓⅔]/g, (sign) => ` ${FRACTIONS[sign]!} `)
    .normalize('NFD')
    .replace(/[\p{M}'’]/gu, '');

const FRACTIONS: Record<string, string> = { '¼': '1/4', '½': '1/2', '¾': '3/4', '⅓': '1/3', '⅔': '2/3' };

/** The spellings of units and their canonical forms. */
const UNITS = new Map(
  Object.entries({
    pound: 'lb lbs pound pounds',
    ounce: 'oz ounce ounces',
    gallon: 'gal gals gallon gallons',
    quart: 'qt qts quart quarts',
    kilogram: 'kg kgs kilo kilos kilogram kilograms',
    liter: 'l liter liters litre litres',
    fahrenheit: 'f fahrenheit',
    celsius: 'c celsius centigrade',
    foot: 'ft foot feet',
    inch: 'inch inches',
    hour: 'hr hrs hour hours',
    minute: 'min mins minute minutes',
    week: 'wk wks week weeks',
    year: 'yr yrs year years',
    percent: '% pct percent percentage',
    temperature: 'temp temps temperature temperatures',
  }).flatMap(([term, written]) => written.split(' ').map((word) => [word, term] as const)),
);
