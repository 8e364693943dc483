/* How much each page says of each word. Titles and names count most, then the sentence under the title, then the text. */
import { LEVELS, type Posting } from '../../shared/words/postings.ts';
import { SMALL_WORDS } from '../../shared/words/small-words.ts';
import { termOf, wordsIn } from '../../shared/words/terms.ts';
import type { Word } from './handed-over.ts';
import type { Found } from './search-pages.ts';

/** A word of the index: as it is written most, the pages that say it, and whether it stands in none of them but is only typed for one. */
export type Term = { word: string; postings: Posting[]; typed: boolean };

/** Pages that gather others would answer every question: their text counts little beside their names. */
const GATHERS: Record<string, string[]> = {
  'year/': ['what to do this month', 'January February March April May June July August September October November December'],
  'meetings/': ['next meeting', 'when and where we meet', 'meeting dates', 'calendar'],
  'signs/': ['start from the signs', 'what is wrong with my bees', 'symptoms', 'which disease', 'sick brood'],
  'about/': [],
  'words/': [],
};
const GATHERED = 0.2;

/** What a word counts that stands in this place, beside one in the text. Tried out on the questions of tests/tables. */
const COUNTS = { title: 10, also: 7, lede: 3, headings: 1, kind: 1.5, text: 1 };

/** How soon more of the same word says no more (BM25's k1), and how much a long page weighs against a word (its b): Robertson and Zaragoza 2009, chapter 3. */
const K1 = 6;
const B = 0.5;

/** By term: how often it is written how; SPELLED where it stands in a page and not in a name only. */
type Forms = Map<string, Map<string, number>>;
const SPELLED = '';

type Weighed = Map<string, number>;

/** Every word of the pages in the order of the alphabet, then those that people only type for them. Pages are numbered as they come. */
export function termsOf(found: readonly Found[], words: readonly Word[]): Term[] {
  const forms: Forms = new Map();
  const lists = postingsOf(
    found.map((each) => weigh(each, words, forms)),
    found.map(({ text }) => text.length),
  );
  return [...lists]
    .map(([term, postings]) => ({ word: usual(forms.get(term)!), postings, typed: !forms.get(term)!.has(SPELLED) }))
    .sort((a, b) => Number(a.typed) - Number(b.typed) || (a.word < b.word ? -1 : 1));
}

/** The place of the page that a word leads to. */
export const pageOf = (more: string | undefined): string | undefined => more?.slice(1).replace(/#.*/, '');

/** Each word is cut down once. */
const stock = new Map<string, string>();
function inStock(word: string): string {
  const term = stock.get(word) ?? termOf(word);
  stock.set(word, term);
  return term;
}

/** The form that is written most. */
const usual = (forms: ReadonlyMap<string, number>): string =>
  [...forms].filter(([form]) => form !== SPELLED).sort(([a, x], [b, y]) => y - x || a.length - b.length || (a < b ? -1 : 1))[0]![0];

function weigh(found: Found, words: readonly Word[], forms: Forms): Weighed {
  const gathers = GATHERS[found.place];
  const names = words
    .filter(({ id, more }) => found.place === `words/#${id}` || pageOf(more) === found.place)
    .flatMap((word) => word.names);
  const weighed: Weighed = new Map();
  const add = (texts: readonly string[], counts: number, isName = false): void => {
    for (const word of texts) {
      if (SMALL_WORDS.has(word)) continue;
      const term = inStock(word);
      weighed.set(term, (weighed.get(term) ?? 0) + counts);
      const own = forms.get(term) ?? new Map<string, number>();
      forms.set(term, own.set(word, (own.get(word) ?? 0) + 1));
      if (!isName) own.set(SPELLED, 1);
    }
  };
  add(wordsIn(found.title), COUNTS.title);
  // A word of names counts once, however many ways of typing them hold it.
  add([...new Set([...names, ...(gathers ?? [])].flatMap(wordsIn))], COUNTS.also, true);
  add(wordsIn(found.lede), COUNTS.lede);
  add(wordsIn(found.headings), COUNTS.headings);
  add(wordsIn(found.kind), COUNTS.kind);
  add(wordsIn(found.text), gathers ? COUNTS.text * GATHERED : COUNTS.text);
  return weighed;
}

function postingsOf(weighed: readonly Weighed[], lengths: readonly number[]): Map<string, Posting[]> {
  const mean = lengths.reduce((sum, each) => sum + each, 0) / lengths.length;
  const lists = new Map<string, Posting[]>();
  weighed.forEach((page, at) => {
    const full = K1 * (1 - B + (B * lengths[at]!) / mean);
    for (const [term, weight] of page) {
      const posting = { page: at, level: Math.max(1, Math.round((LEVELS * weight) / (weight + full))) };
      const list = lists.get(term);
      if (list) list.push(posting);
      else lists.set(term, [posting]);
    }
  });
  return lists;
}
