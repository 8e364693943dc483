/*
 * The search index in the browser: fetched when somebody searches, from the folder the almanac is published under, each
 * piece once. Asked for by the edition's print: an index kept from another edition never answers for this page.
 */
import { LEVELS, readPostings, readWordList, type Posting } from '../../../shared/words/postings.ts';
import { readVocabulary, type Vocabulary } from './vocabulary.ts';

/** Something that can be found: a page, a word of the word list, a line of the reading list. */
export type Entry = {
  place: string;
  title: string;
  kind: string;
  /** Its days in each district, or nothing. */ windows: string;
  /** The day of a meeting. */ when?: string;
};

/** An entry of the word list: the name that is shown, then all others. */
export type Named = { id: string; names: string[]; /** The number of the page that says more; -1 where there is none. */ leads: number };

export type Engine = {
  entries: Entry[];
  named: Named[];
  vocabulary: Vocabulary;
  /** What each page says of a word of the vocabulary: its number, and from 0 to 1. */
  pagesWith: (at: number) => Promise<Posting[]>;
  textOf: (entry: Entry) => Promise<string>;
};

type Written = {
  kinds: string[];
  pages: [string, string, number, string, string?][];
  names: Record<string, string>;
  leads: number[];
  words: string;
  typed: string;
  starts: number[];
};

/** `fetchJson` is handed an address below the site's folder. */
export async function openIndex(fetchJson: (path: string) => Promise<unknown>): Promise<Engine> {
  const { kinds, pages, names, leads, words, typed, starts } = (await fetchJson('search/index.json')) as Written;
  const entries = pages.map(([place, title, kind, windows, when]) => ({
    place,
    title,
    kind: kinds[kind]!,
    windows,
    ...(when ? { when } : {}),
  }));
  const named = Object.entries(names).map(([id, all], at) => ({
    id,
    leads: leads[at]!,
    names: all.split(';').map((name) => name || id.replaceAll('-', ' ')),
  }));
  const once = inStock(fetchJson);
  return {
    entries,
    named,
    vocabulary: readVocabulary(readWordList(words), readWordList(typed)),
    pagesWith: async (at) => {
      const part = starts.findLastIndex((start) => start <= at);
      const lists = (await once(`search/pages-${part + 1}.json`, (text) => (text as string).split(' '))) as string[];
      return readPostings(lists[at - starts[part]!]!).map(({ page, level }) => ({ page, level: level / LEVELS }));
    },
    textOf: async ({ place }) => {
      const [page, part = ''] = place.split('#');
      return ((await fetchJson(`search/text/${page!.replace(/\/$/, '')}.json`)) as Record<string, string>)[part]!;
    },
  };
}

/** Each file is fetched and read once; one that did not come is asked for again. */
function inStock(fetchJson: (path: string) => Promise<unknown>): (path: string, read: (text: unknown) => unknown) => Promise<unknown> {
  const stock = new Map<string, Promise<unknown>>();
  return (path, read) => {
    if (!stock.has(path)) stock.set(path, fetchJson(path).then(read));
    return stock.get(path)!.catch((fault: unknown) => {
      stock.delete(path);
      throw fault;
    });
  };
}
