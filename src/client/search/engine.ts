/*
 * Search engine in the browser: asks Pagefind word by word which pages contain a word, how much, and where. A Pagefind search of several
 * words would require all of them on one page. Files without a content hash in their name are requested with the edition's fingerprint,
 * so that another edition never answers.
 */
import { canonical } from '../../../shared/words/canonical.ts';
import type { Tongue } from '../../../shared/country/language.ts';
import { ENGINE, folderOf, PAGEFIND_FOLDER, WORDS, wordsOf } from '../../../shared/words/search-files.ts';
import { ORDER, readPage, splitParts, type PageFacts, type SearchWords } from '../../../shared/words/search-record.ts';
import { readWordList } from '../../../shared/words/word-list.ts';
import { readVocabulary, type Vocabulary } from './vocabulary.ts';

/** A search result by record number: a page, a glossary word, or a reading-list line. */
export type Entry = Omit<PageFacts, 'kind'> & { at: number; kind: string; /** The last day of a meeting. */ day?: string };

/** A glossary entry: the displayed name, then all others. */
export type Named = {
  id: string;
  names: string[];
  /** The number of the page that says more, and of its own record; -1 where there is none. */ leads: number;
  own: number;
};

/** How much a page says about a word, from 0 to 1, and the positions of the word. */
export type Posting = { page: number; level: number; places: readonly number[] };

export type Shown = {
  title: string;
  text: string;
  /** The day of a meeting, or nothing. */ when: string;
  url: string;
  /** Its headings, in order. */ sections: { id: string; text: string }[];
};

export type Engine = {
  entries: Entry[];
  named: Named[];
  vocabulary: Vocabulary;
  /** What each page says about a word of the vocabulary. */
  pagesWith: (at: number) => Promise<Posting[]>;
  /** What a result shows of a page. */
  shownOf: (entry: Entry) => Promise<Shown>;
};

type Result = {
  id: string;
  score: number;
  words: number[];
  data: () => Promise<{ url: string; content: string; anchors: { id: string; text: string }[] }>;
};
type Instance = { search: (words: string | null, options?: object) => Promise<{ results: Result[] }> };
export type Pagefind = { createInstance: (options: object) => Instance };

/**
 * BM25 of exactly the typed word (Robertson and Zaragoza 2009, chapter 3). Pagefind also finds words that only begin like it.
 * `termSimilarity` leaves almost nothing of those, and 0.0295 of the word itself, so that `termSaturation` makes a k1 of 6. `pageLength`
 * is b. Pagefind's bonus for accents and its weights of titles are off, because they count words that only begin like the word.
 */
const RANKING = {
  termSimilarity: 30,
  termSaturation: 0.18,
  pageLength: 0.3,
  termFrequency: 1,
  diacriticSimilarity: 0,
  metaWeights: { title: 0 },
};
/** A page below this level contains only words that begin like the word. */
const LEAST = 0.003;

/** `base` is the folder of the site. `tongue` is another language than the club's, whose pages have an index of their own. */
export async function openEngine(base: string, print: string, tongue?: Tongue): Promise<Engine> {
  const [pagefind, words] = await Promise.all([
    import(/* @vite-ignore */ `${base}${ENGINE}?ts=${print}`) as Promise<Pagefind>,
    fetch(`${base}${tongue ? wordsOf(tongue) : WORDS}?ts=${print}`).then((answer) => answer.json() as Promise<SearchWords>),
  ]);
  return engineOf(pagefind, words, { base, print, ...(tongue && { folder: base + folderOf(tongue) }) });
}

/** `folder` contains Pagefind's files, if they are not below the base. */
export async function engineOf(
  { createInstance }: Pagefind,
  { kinds, pages, names, leads, own, words, typed }: SearchWords,
  { base, print, folder = base + PAGEFIND_FOLDER }: { base: string; print: string; folder?: string },
): Promise<Engine> {
  // Runs in the page itself, because the content policy allows no other worker than ours.
  const pagefind = createInstance({ basePath: folder, baseUrl: base, metaCacheTag: print, noWorker: true, ranking: RANKING });
  const { results } = await pagefind.search(null, { sort: { [ORDER]: 'asc' } });
  if (results.length !== pages.length) throw new Error(`${results.length} records, ${pages.length} in the list`);
  const numbers = new Map(results.map(({ id }, at) => [id, at]));
  const [right, only] = [readWordList(words), readWordList(typed)];
  const all = [...right, ...only];
  return {
    entries: pages.map((page, at) => ({ at, ...entryOf(readPage(page), kinds) })),
    named: Object.entries(names).map(([id, each], at) => ({
      id,
      leads: leads[at]!,
      own: own[at]!,
      names: each.split(';').map((name) => name || id.replaceAll('-', ' ')),
    })),
    vocabulary: readVocabulary(right, only),
    pagesWith: inStock(async (at) => postings((await pagefind.search(canonical(all[at]!))).results, numbers)),
    shownOf: async ({ at }) => {
      const { url, content, anchors } = await results[at]!.data();
      return { ...splitParts(content), url, sections: anchors };
    },
  };
}

/** A meeting has its own days. They are those of any year for the choice of a part of the year. */
function entryOf({ kind, windows, ...facts }: PageFacts, kinds: readonly string[]): Omit<Entry, 'at'> {
  const [from, day] = windows.split(' ');
  return from?.length === 10
    ? { ...facts, kind: kinds[kind]!, day: day!, windows: `all ${from.slice(5)} ${day!.slice(5)}` }
    : { ...facts, kind: kinds[kind]!, windows };
}

/** Scores as levels, divided by the rarity of the word with which Pagefind multiplied them. */
function postings(results: readonly Result[], numbers: ReadonlyMap<string, number>): Posting[] {
  const rarity = Math.log(1 + (numbers.size - results.length + 0.5) / (results.length + 0.5));
  const found = results
    .map(({ id, score, words }) => ({ page: numbers.get(id)!, level: score / rarity / (RANKING.termSaturation + 1), places: words }))
    .filter(({ level }) => level > LEAST);
  // Every word of the list is on some page. Pagefind itself ignores a piece of the index that failed to load.
  if (found.length === 0) throw new Error('a piece of the index did not come');
  return found;
}

/** Each word is searched once. A failed one is tried again. */
function inStock(ask: (at: number) => Promise<Posting[]>): (at: number) => Promise<Posting[]> {
  const stock = new Map<number, Promise<Posting[]>>();
  return (at) => {
    const answer = stock.get(at) ?? ask(at);
    stock.set(at, answer);
    answer.catch(() => stock.delete(at));
    return answer;
  };
}
