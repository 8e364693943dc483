/*
 * How far a typed word is from a right one, in slips: a letter left out, put in, changed, or two that changed places.
 * Doubled letters, vowels, and letters that sound alike count less, since people spell by ear.
 */

/** Counts to at most `most`; beyond it the number only says "too far". */
export function slips(typed: string, right: string, most = Number.POSITIVE_INFINITY): number {
  if (Math.abs(typed.length - right.length) > most * 2) return most + 1;
  let before: number[] = [];
  let row = [...right, ''].map((_, at) => at);
  for (let i = 0; i < typed.length; i++) {
    const next = [i + 1];
    for (let j = 0; j < right.length; j++) {
      const extra = row[j + 1]! + (typed[i] === typed[i - 1] ? DOUBLED : isVowel(typed[i]!) ? VOWEL_TOO_MANY : 1);
      const lacking = next[j]! + (right[j] === right[j - 1] ? DOUBLED : isVowel(right[j]!) ? VOWEL_TOO_MANY : 1);
      let least = Math.min(extra, lacking, row[j]! + change(typed[i]!, right[j]!));
      if (i > 0 && j > 0 && typed[i] === right[j - 1] && typed[i - 1] === right[j]) least = Math.min(least, before[j - 1]! + SWAPPED);
      next.push(least);
    }
    if (Math.min(...next) > most) return most + 1;
    [before, row] = [row, next];
  }
  return row.at(-1)! + (typed[0] === right[0] ? 0 : FIRST_LETTER);
}

const DOUBLED = 0.5;
const VOWEL_TOO_MANY = 0.8;
const SWAPPED = 0.8;
/** People seldom get the first letter wrong. */
const FIRST_LETTER = 0.4;

const isVowel = (letter: string): boolean => 'aeiouy'.includes(letter);
const ALIKE = ['ckqs', 'sz', 'fv', 'gj', 'mn', 'td', 'bp', 'wu'];

function change(a: string, b: string): number {
  if (a === b) return 0;
  if (isVowel(a) && isVowel(b)) return 0.6;
  return ALIKE.some((letters) => letters.includes(a) && letters.includes(b)) ? 0.7 : 1;
}
