/*
 * Parses a query to weighted search words: drops stop words, gives numbers less weight, keeps ratios whole, and adds the glossary's
 * words.
 */
import { SMALL_WORDS } from '../../../shared/words/small-words.ts';
import { termOf, termsIn, wordsIn } from '../../../shared/words/terms.ts';
import type { Engine, Named } from './engine.ts';
import type { Meaning, Vocabulary } from './vocabulary.ts';

/** A search word and its weight. */
export type Sought = Meaning & { typed: string; weight: number };

/** A glossary entry, with the typed words of its name. */
export type NameInQuery = Named & { typedName: string[] };

/** A number alone says little about the query. */
const NUMBER = 0.5;
/** Words that fit any subject also say little. */
const LITTLE = 0.5;
const FAINT = new Set(
  termsIn(
    'again always around away back bad bit both bring came come every few find fine give good happen here hold keep little look lot lots make many maybe more most much never now off often only out over put same saw see seem show sometimes still take think try up use well',
  ),
);
/** Total weight of the words that the glossary substitutes for the typed ones. */
const LISTED = 0.7;
/** A word with at least this weight may replace the typed word in a glossary name. */
const SURE = 0.8;
const MOST_NAMES = 3;

export function queryOf(
  typed: string,
  { vocabulary, named }: Pick<Engine, 'vocabulary' | 'named'>,
): { sought: Sought[]; entries: NameInQuery[] } {
  const sought = soughtIn(typed, vocabulary);
  const terms = new Set([
    ...wordsIn(typed).map(termOf),
    ...sought.flatMap(({ candidates }) => candidates.filter(({ counts }) => counts >= SURE).map(({ word }) => termOf(word))),
  ]);
  const entries = entriesIn(terms, named).slice(0, MOST_NAMES);
  for (const [word, count] of entries.flatMap(({ names }) => large(names[0]!).map((each, _, all) => [each, all.length] as const))) {
    if (!sought.some((other) => termOf(other.typed) === termOf(word)))
      sought.push({ typed: word, weight: LISTED / count, ...vocabulary.meaningOf(word, false) });
  }
  return { sought, entries };
}

function soughtIn(typed: string, vocabulary: Vocabulary): Sought[] {
  const words = [...new Set(large(ratios(typed)))];
  const last = /\s$/.test(typed) ? undefined : wordsIn(typed).at(-1);
  const sought = words.map((word): Sought => ({
    typed: word,
    weight: /^[\d.,/]+$/.test(word) ? NUMBER : FAINT.has(termOf(word)) ? LITTLE : 1,
    ...vocabulary.meaningOf(word, word === last),
  }));
  // The reader wrote it apart, the pages together.
  words.slice(1).forEach((word, at) => {
    const both = words[at]! + word;
    if (vocabulary.has(both)) sought.push({ typed: both, weight: 1, ...vocabulary.meaningOf(both, false) });
  });
  return sought;
}

const large = (text: string): string[] => wordsIn(text).filter((word) => !SMALL_WORDS.has(word));

/** "2 to 1" becomes 2:1. */
const ratios = (typed: string): string => typed.replace(/\b(\d{1,2})\s*(?::|\bto\b)\s*(\d)\b/g, '$1:$2 $1 $2');

/** The glossary entries whose name is in the typed words, in any order and form, the longest name first. */
function entriesIn(terms: ReadonlySet<string>, all: readonly Named[]): NameInQuery[] {
  const length = (words: readonly string[]): number => words.join('').length;
  const typedNameOf = ({ names }: Named): string[] =>
    names
      .map(large)
      .filter((words) => words.length > 0 && words.every((word) => terms.has(termOf(word))))
      .sort((a, b) => length(b) - length(a))[0] ?? [];
  return all
    .map((each) => ({ ...each, typedName: typedNameOf(each) }))
    .filter(({ typedName }) => typedName.length > 0)
    .sort((a, b) => length(b.typedName) - length(a.typedName));
}
