/*
 * Edit distance between a typed word and a right one: a letter left out, inserted, changed, or two swapped. Doubled letters, vowels and
 * similar sounds cost less, because people spell by ear. The cost of each change of letters is computed once, because each unknown word
 * is compared with thousands.
 */
import { editDistance } from './edit-distance.ts';

const DOUBLED = 0.5;
const VOWEL_TOO_MANY = 0.8;
const SWAPPED = 0.8;
const VOWEL_FOR_VOWEL = 0.6;
const ALIKE_IN_SOUND = 0.7;
/** People seldom mistype the first letter. */
const FIRST_LETTER = 0.4;

const LETTERS = 'abcdefghijklmnopqrstuvwxyz';
const VOWELS = 'aeiouy';
const ALIKE = ['ckqs', 'sz', 'fv', 'gj', 'mn', 'td', 'bp', 'wu'];

const costOf = (a: string, b: string): number =>
  a === b
    ? 0
    : VOWELS.includes(a) && VOWELS.includes(b)
      ? VOWEL_FOR_VOWEL
      : ALIKE.some((letters) => letters.includes(a) && letters.includes(b))
        ? ALIKE_IN_SOUND
        : 1;
const COSTS = [...LETTERS].flatMap((a) => [...LETTERS].map((b) => costOf(a, b)));
const EXTRA = [...LETTERS].map((letter) => (VOWELS.includes(letter) ? VOWEL_TOO_MANY : 1));
const codes = (word: string): number[] => Array.from(word, (letter) => letter.charCodeAt(0) - 97);

/** Counts up to `most`. A larger result only means "too far". */
export function slips(typed: string, right: string, most = Number.POSITIVE_INFINITY): number {
  if (Math.abs(typed.length - right.length) * DOUBLED > most) return most + 1;
  return editDistance(codes(typed), codes(right), SPELLING, most) + (typed[0] === right[0] ? 0 : FIRST_LETTER);
}

/** The cost of leaving out or inserting this letter. */
const oneTooMany = (word: ArrayLike<number>, at: number): number => (word[at] === word[at - 1] ? DOUBLED : (EXTRA[word[at]!] ?? 1));
const change = (a: number, b: number): number => (a === b ? 0 : (COSTS[a * LETTERS.length + b] ?? 1));

const SPELLING = { extra: oneTooMany, change, swap: SWAPPED };
