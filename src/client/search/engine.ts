/*
 * Pagefind in the browser, asked word by word: which pages say how much of a word, and where. A search of several words would want all
 * of them on one page. What is not named by its content is asked for by the edition's print: another edition never answers this page.
 */
import { canonical } from '../../../shared/words/canonical.ts';
import { ENGINE, PAGEFIND_FOLDER, WORDS } from '../../../shared/words/search-files.ts';
import { ORDER, splitParts, type SearchWords } from '../../../shared/words/search-record.ts';
import { readWordList } from '../../../shared/words/word-list.ts';
import { readVocabulary, type Vocabulary } from './vocabulary.ts';

/** Something that can be found, by the number of its record: a page, a word of the word list, a line of the reading list. */
export type Entry = { at: number; kind: string; /** Its days in each district, or nothing. */ windows: string };

/** An entry of the word list: the name that is shown, then all others. */
export type Named = {
  id: string;
  names: string[];
  /** The number of the page that says more, and of its own record; -1 where there is none. */ leads: number;
  own: number;
};

/** How much a page says of a word, from 0 to 1, and the places where it stands. */
export type Posting = { page: number; level: number; places: readonly number[] };

export type Shown = { title: string; text: string; /** The day of a meeting, or nothing. */ when: string; url: string };

export type Engine = {
  entries: Entry[];
  named: Named[];
  vocabulary: Vocabulary;
  /** What each page says of a word of the vocabulary. */
  pagesWith: (at: number) => Promise<Posting[]>;
  /** What a result shows of a page. */
  shownOf: (entry: Entry) => Promise<Shown>;
};

type Result = { id: string; score: number; words: number[]; data: () => Promise<{ url: string; content: string }> };
type Instance = { search: (words: string | null, options?: object) => Promise<{ results: Result[] }> };
export type Pagefind = { createInstance: (options: object) => Instance };

/**
 * BM25 of exactly the typed word (Robertson and Zaragoza 2009, chapter 3). Pagefind also finds words that only begin like it:
 * `termSimilarity` leaves next to nothing of those, and 0.0295 of the word itself, so that `termSaturation` makes a k1 of 6.
 * `pageLength` is b. Its own bonus for accents and its weights of titles are off: they count words that only begin like the word.
 */
const RANKING = {
  termSimilarity: 30,
  termSaturation: 0.18,
  pageLength: 0.3,
  termFrequency: 1,
  diacriticSimilarity: 0,
  metaWeights: { title: 0 },
};
/** A page below this level holds only words that begin like the word. */
const LEAST = 0.003;

/** `base` is the folder of the site. */
export async function openEngine(base: string, print: string): Promise<Engine> {
  const [pagefind, words] = await Promise.all([
    import(/* @vite-ignore */ `${base}${ENGINE}?ts=${print}`) as Promise<Pagefind>,
    fetch(`${base}${WORDS}?ts=${print}`).then((answer) => answer.json() as Promise<SearchWords>),
  ]);
  return engineOf(pagefind, words, { base, print });
}

/** `folder` is where Pagefind's files are, if not below the base. */
export async function engineOf(
  { createInstance }: Pagefind,
  { kinds, pages, names, leads, own, words, typed }: SearchWords,
  { base, print, folder = base + PAGEFIND_FOLDER }: { base: string; print: string; folder?: string },
): Promise<Engine> {
  // In the page itself: the policy lets no worker but ours through.
  const pagefind = createInstance({ basePath: folder, baseUrl: base, metaCacheTag: print, noWorker: true, ranking: RANKING });
  const { results } = await pagefind.search(null, { sort: { [ORDER]: 'asc' } });
  if (results.length !== pages.length) throw new Error(`${results.length} records, ${pages.length} in the list`);
  const numbers = new Map(results.map(({ id }, at) => [id, at]));
  const [right, only] = [readWordList(words), readWordList(typed)];
  const all = [...right, ...only];
  return {
    entries: pages.map((page, at) => ({ at, kind: kinds[Number.parseInt(page, 10)]!, windows: page.replace(/^\d+;?/, '') })),
    named: Object.entries(names).map(([id, each], at) => ({
      id,
      leads: leads[at]!,
      own: own[at]!,
      names: each.split(';').map((name) => name || id.replaceAll('-', ' ')),
    })),
    vocabulary: readVocabulary(right, only),
    pagesWith: inStock(async (at) => postings((await pagefind.search(canonical(all[at]!))).results, numbers)),
    shownOf: async ({ at }) => {
      const { url, content } = await results[at]!.data();
      return { ...splitParts(content), url };
    },
  };
}

/** Scores as levels: the rarity of the word, with which Pagefind multiplied them, is taken out. */
function postings(results: readonly Result[], numbers: ReadonlyMap<string, number>): Posting[] {
  const rarity = Math.log(1 + (numbers.size - results.length + 0.5) / (results.length + 0.5));
  const found = results
    .map(({ id, score, words }) => ({ page: numbers.get(id)!, level: score / rarity / (RANKING.termSaturation + 1), places: words }))
    .filter(({ level }) => level > LEAST);
  // Every word of the list is on some page. Pagefind itself passes over a piece of the index that did not come.
  if (found.length === 0) throw new Error('a piece of the index did not come');
  return found;
}

/** Each word is looked for once; one whose answer did not come is asked for again. */
function inStock(ask: (at: number) => Promise<Posting[]>): (at: number) => Promise<Posting[]> {
  const stock = new Map<number, Promise<Posting[]>>();
  return (at) => {
    const answer = stock.get(at) ?? ask(at);
    stock.set(at, answer);
    answer.catch(() => stock.delete(at));
    return answer;
  };
}
