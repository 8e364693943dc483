/*
 * Vocabulary of the almanac, and the words that a typed word may mean: itself, another form, a word that it begins, the two parts of a
 * compound, or the right spelling.
 */
import { termOf } from '../../../shared/words/terms.ts';
import { farthest, nearest } from './spelling.ts';

/** A word of the vocabulary by index, and its weight compared with the word as typed. */
export type Candidate = { at: number; word: string; counts: number };
export type Meaning = {
  candidates: Candidate[];
  /** True where the spelling was corrected. */
  corrected: boolean;
  /** How far the spelling was from it: 0 to 1, the farthest that is tried. */
  stretch: number;
  /** True where no word is near. */
  unknown: boolean;
};

export type Vocabulary = { meaningOf: (word: string, unfinished: boolean) => Meaning; has: (word: string) => boolean };

/** Words other than the typed one count less. */
const FORM = 0.6;
const BEGUN = 0.75;
const SPELLED = 0.9;
const TOGETHER = 0.9;
/** A word that people only type has its own entry, so a correction of it must be nearer. */
const ALIAS = 0.5;
/** How much less a spelling counts for each slip beyond the nearest. */
const FARTHER = 0.6;

/** Endings that make another word for the same subject: feed, feeder; treat, treatment; robb-er. */
const ENDINGS = new Set([
  'er',
  'or',
  'ment',
  'ation',
  'ion',
  'al',
  'li',
  'ness',
  'ful',
  'less',
  'i',
  'y',
  'ier',
  'iest',
  'est',
  'th',
  'able',
]);

/** `right` are the words of the pages, `typed` those that people only type for them. */
export function readVocabulary(right: readonly string[], typed: readonly string[]): Vocabulary {
  const words = [...right, ...typed];
  const terms = words.map(termOf);
  const places = new Map(terms.map((term, at) => [term, at]));
  const candidate = (at: number, counts: number): Candidate => ({ at, word: words[at]!, counts });

  const formsOf = (term: string): Candidate[] =>
    term.length < 3 || /\d/.test(term)
      ? []
      : terms.flatMap((other, at) => (other !== term && isForm(term, other) ? [candidate(at, FORM)] : []));
  const begunBy = (word: string, least: number): Candidate[] =>
    word.length < least
      ? []
      : words.flatMap((other, at) => (other.startsWith(word) && other !== word ? [candidate(at, BEGUN)] : [])).slice(0, 12);
  const together = (word: string): Candidate[] => {
    for (let cut = 3; cut <= word.length - 3; cut++) {
      const [a, b] = [places.get(termOf(word.slice(0, cut))), places.get(termOf(word.slice(cut)))];
      if (a !== undefined && b !== undefined) return [candidate(a, TOGETHER), candidate(b, TOGETHER)];
    }
    return [];
  };

  const spelled = (word: string, most: number, among: readonly string[]): { meant: Candidate[]; far: number } => {
    const near = nearest(word, among, terms, most);
    const least = near[0]?.far ?? most;
    return { far: least, meant: near.map(({ at, far }) => candidate(at, SPELLED * (1 - FARTHER * (far - least)))) };
  };

  const workedOut = (word: string, unfinished: boolean): Meaning => {
    const term = termOf(word);
    const at = places.get(term);
    const sure = (all: Candidate[]): Meaning => ({ candidates: all, corrected: false, stretch: 0, unknown: false });
    if (at !== undefined) {
      const slip = at < right.length ? [] : spelled(word, farthest(word.length) * ALIAS, right).meant;
      return sure([candidate(at, 1), ...formsOf(term), ...(unfinished ? begunBy(word, 3) : []), ...slip]);
    }
    if (/\d/.test(word)) return sure([]);
    const near = [...formsOf(term), ...begunBy(word, unfinished ? 2 : 4), ...together(word)];
    if (near.length > 0) return sure(near);
    const { meant: best, far } = spelled(word, farthest(word.length), words);
    return { candidates: best, corrected: best.length > 0, stretch: far / farthest(word.length), unknown: best.length === 0 };
  };
  // A query is searched again at each pause in typing, and most of its words are the same.
  const stock = new Map<string, Meaning>();
  const meaningOf = (word: string, unfinished: boolean): Meaning => {
    const key = word + Number(unfinished);
    const meaning = stock.get(key) ?? workedOut(word, unfinished);
    stock.set(key, meaning);
    return meaning;
  };
  return { meaningOf, has: (word) => places.has(termOf(word)) };
}

function isForm(a: string, b: string): boolean {
  const [short, long] = a.length < b.length ? [a, b] : [b, a];
  if (!long.startsWith(short) || short.length < 3) return false;
  const rest = long.slice(short.length);
  return ENDINGS.has(rest) || (rest[0] === short.at(-1) && ENDINGS.has(rest.slice(1)));
}
