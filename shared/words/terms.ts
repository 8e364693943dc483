/*
 * Text as the terms under which it is kept and looked for. One rule for the pages and for what a reader types: without
 * it the two would not meet. Units, ratios and fractions become one term each, however they are written.
 */
import { stem } from './stem.ts';

/** A word of the text (without spaces), and the terms in it; a word of signs alone has none. */
export type Read = { word: string; terms: string[] };

/** The terms of a text, in order. */
export const termsIn = (text: string): string[] => wordsIn(text).map(termOf);

/** Every word of the text with its terms, so that a page can show which of its words was sought. */
export const readWords = (text: string): Read[] =>
  text
    .split(SPACES)
    .filter(Boolean)
    .map((word) => ({ word, terms: termsIn(word) }));

/** A space that must not break, as between a number and its unit, parts no words of a result. */
const SPACES = /[^\S\u00a0\u202f]+/;

/** Words before they are cut down to terms: small letters, no accents, numbers apart from their units. */
export function wordsIn(text: string): string[] {
  return (
    plain(text)
      .match(/\d+(?:[.,/]\d+)+|\d+:\d+|\d+|\p{L}+|%/gu)
      ?.map((word) => (/^\d{1,3}(?:,\d{3})+$/.test(word) ? word.replaceAll(',', '') : word)) ?? []
  );
}

/** The term of one word. Small words are terms, too; whoever keeps or asks leaves them out. */
export const termOf = (word: string): string => unitOf(word) ?? (/\d/.test(word) ? word : stem(word));

/** The one form under which a unit is kept, however it is written; undefined of what is no unit. */
export const unitOf = (word: string): string | undefined => UNITS.get(word);

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[¼½¾⅓⅔]/g, (sign) => ` ${FRACTIONS[sign]!} `)
    .normalize('NFD')
    .replace(/[\p{M}'’]/gu, '');

const FRACTIONS: Record<string, string> = { '¼': '1/4', '½': '1/2', '¾': '3/4', '⅓': '1/3', '⅔': '2/3' };

/** As people write units, and the one form under which they are kept. */
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
