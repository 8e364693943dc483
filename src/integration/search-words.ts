/*
 * Word lists for parsing queries: every word of the almanac, for spelling and other forms; the glossary names; and the kind and days of
 * each record, for filters.
 */
import { writePage, type SearchWords } from '../../shared/words/search-record.ts';
import { SMALL_WORDS } from '../../shared/words/small-words.ts';
import { termOf, wordsIn } from '../../shared/words/terms.ts';
import { writeWords } from '../../shared/words/word-list.ts';
import type { SearchContent, SearchWord } from '../lib/search-content.ts';
import type { Found } from './search-pages.ts';
import { namesOf, pageOf } from './search-record.ts';

/** By term: the number of each spelling. */
type Forms = Map<string, Map<string, number>>;

/** `listed`: the places of the list of all pages, in its order. */
export function searchWords(found: readonly Found[], { words, windows, law }: SearchContent, listed: readonly string[]): SearchWords {
  const kinds = [...new Set(found.map(({ kind }) => kind))].sort();
  const recordAt = new Map(found.map(({ place }, at) => [place, at]));
  const { right, typed } = formsOf(found, words);
  return {
    kinds,
    pages: found.map(({ place, kind }) => {
      const at = listed.indexOf(place);
      return writePage({
        kind: kinds.indexOf(kind),
        law: law.includes(place),
        windows: windows[place] ?? '',
        ...(at < 0 ? {} : { listed: at }),
      });
    }),
    names: Object.fromEntries(words.map((word) => [word.id, writtenNames(word)])),
    leads: words.map(({ more }) => recordAt.get(pageOf(more) ?? '') ?? -1),
    own: words.map(({ id }) => recordAt.get(`words/#${id}`) ?? -1),
    words: writeWords(right),
    typed: writeWords(typed),
  };
}

function writtenNames({ id, names: [first, ...others] }: SearchWord): string {
  return [first === id.replaceAll('-', ' ') ? '' : first!, ...others].map((name) => name.replaceAll(';', ',')).join(';');
}

/** Each word in its most frequent form, sorted: first those on pages, then those that people only type. */
function formsOf(found: readonly Found[], words: readonly SearchWord[]): { right: string[]; typed: string[] } {
  const forms: Forms = new Map();
  const onPages = new Set<string>();
  for (const { place, title, lead, headings, kind, text } of found) {
    for (const word of [title, lead, headings, kind, text].flatMap(wordsIn)) onPages.add(counted(word, forms));
    for (const word of new Set(namesOf(place, words).flatMap(wordsIn))) counted(word, forms);
  }
  const listed = (of: 'pages' | 'names'): string[] =>
    [...forms]
      .filter(([term]) => onPages.has(term) === (of === 'pages'))
      .map(([, each]) => usual(each))
      .sort(byAlphabet);
  return { right: listed('pages'), typed: listed('names') };
}

/** The term of each word is computed once. */
const stock = new Map<string, string>();

/** Counts the form of a word, without stop words, and returns its term. */
function counted(word: string, forms: Forms): string {
  const term = stock.get(word) ?? termOf(word);
  stock.set(word, term);
  if (SMALL_WORDS.has(word)) return term;
  const own = forms.get(term) ?? new Map<string, number>();
  forms.set(term, own.set(word, (own.get(word) ?? 0) + 1));
  return term;
}

/** The most frequent form, or the shorter of two equals. */
const usual = (forms: ReadonlyMap<string, number>): string =>
  [...forms].sort(([a, x], [b, y]) => y - x || a.length - b.length || byAlphabet(a, b))[0]![0];

const byAlphabet = (a: string, b: string): number => (a < b ? -1 : 1);
