/* What a reader typed, as the words to look for: small words dropped, numbers with less weight, ratios whole, and what the word list has for it. */
import { SMALL_WORDS } from '../../../shared/words/small-words.ts';
import { termOf, termsIn, wordsIn } from '../../../shared/words/terms.ts';
import type { Engine, Named } from './engine.ts';
import type { Meaning, Vocabulary } from './vocabulary.ts';

/** A word to look for, and what it counts. */
export type Sought = Meaning & { typed: string; weight: number };

/** An entry of the word list, with the words of its name that were typed. */
export type Said = Named & { said: string[] };

/** A number alone says little of what is asked. */
const NUMBER = 0.5;
/** So do words that anything can be said with. */
const LITTLE = 0.5;
const FAINT = new Set(
  termsIn(
    'again always around away back bad bit both bring came come every few find fine give good happen here hold keep little look lot lots make many maybe more most much never now off often only out over put same saw see seem show sometimes still take think try up use well',
  ),
);
/** What the words count that the word list puts for the typed ones, all together. */
const LISTED = 0.7;
/** What counts at least so much may stand for the typed word in a name of the word list. */
const SURE = 0.8;
const MOST_SAID = 3;

export function queryOf(typed: string, { vocabulary, named }: Pick<Engine, 'vocabulary' | 'named'>): { sought: Sought[]; said: Said[] } {
  const sought = soughtIn(typed, vocabulary);
  const terms = new Set([
    ...wordsIn(typed).map(termOf),
    ...sought.flatMap(({ meant }) => meant.filter(({ counts }) => counts >= SURE).map(({ word }) => termOf(word))),
  ]);
  const said = saidIn(terms, named).slice(0, MOST_SAID);
  for (const [word, count] of said.flatMap(({ names }) => large(names[0]!).map((each, _, all) => [each, all.length] as const))) {
    if (!sought.some((other) => termOf(other.typed) === termOf(word)))
      sought.push({ typed: word, weight: LISTED / count, ...vocabulary.meaningOf(word, false) });
  }
  return { sought, said };
}

function soughtIn(typed: string, vocabulary: Vocabulary): Sought[] {
  const words = [...new Set(large(ratios(typed)))];
  const last = /\s$/.test(typed) ? undefined : wordsIn(typed).at(-1);
  const sought = words.map((word): Sought => ({
    typed: word,
    weight: /^[\d.,/]+$/.test(word) ? NUMBER : FAINT.has(termOf(word)) ? LITTLE : 1,
    ...vocabulary.meaningOf(word, word === last),
  }));
  // Written apart by the reader, together by the pages.
  words.slice(1).forEach((word, at) => {
    const both = words[at]! + word;
    if (vocabulary.has(both)) sought.push({ typed: both, weight: 1, ...vocabulary.meaningOf(both, false) });
  });
  return sought;
}

const large = (text: string): string[] => wordsIn(text).filter((word) => !SMALL_WORDS.has(word));

/** "2 to 1" is 2:1. */
const ratios = (typed: string): string => typed.replace(/\b(\d{1,2})\s*(?::|\bto\b)\s*(\d)\b/g, '$1:$2 $1 $2');

/** The entries of the word list of which the typed words hold a name, in any order and form; the longest name first. */
function saidIn(terms: ReadonlySet<string>, all: readonly Named[]): Said[] {
  const length = (words: readonly string[]): number => words.join('').length;
  const saidOf = ({ names }: Named): string[] =>
    names
      .map(large)
      .filter((words) => words.length > 0 && words.every((word) => terms.has(termOf(word))))
      .sort((a, b) => length(b) - length(a))[0] ?? [];
  return all
    .map((each) => ({ ...each, said: saidOf(each) }))
    .filter(({ said }) => said.length > 0)
    .sort((a, b) => length(b.said) - length(a.said));
}
