/*
 * The search engine's own files, asked for by a computed address so that they load only when somebody searches, from the
 * folder the almanac is published under, and under one address an edition.
 */
import { readLexicon, type Lexicon, type WrittenLexicon } from './lexicon.ts';

export type Fragment = { url: string; excerpt: string; meta: { title?: string; when?: string } };
type Answer = { results: { id: string; score: number; data: () => Promise<Fragment> }[] };
export type Pagefind = {
  options: (options: object) => Promise<void>;
  search: (words: string | null, options?: { filters: Record<string, string> }) => Promise<Answer>;
  filters: () => Promise<{ kind?: Record<string, number> }>;
};

export type Engine = {
  lexicon: Lexicon;
  /** The kind of every page, by the engine's name for the page. */
  kinds: Map<string, string>;
  /** Pages with a word. */
  search: (word: string) => Promise<{ id: string; score: number }[]>;
  /** A page as a result: its address, its title, and the place where most of the words stand. */
  read: (id: string, words: string[]) => Promise<Fragment>;
};

/** How much a word counts that stands in the title, or in the names under which people look for the page. */
export const RANKING = { metaWeights: { title: 4, also: 3 } };

export async function engineOf({ search, filters }: Pagefind, written: WrittenLexicon): Promise<Engine> {
  const kinds = new Map<string, string>();
  for (const kind of Object.keys((await filters()).kind ?? {})) for (const { id } of (await search(null, { filters: { kind } })).results) kinds.set(id, kind);
  const find = async (id: string, words: string) => (await search(words)).results.find((result) => result.id === id);
  return {
    lexicon: readLexicon(written),
    kinds,
    search: async (word) => (await search(word)).results,
    read: async (id, words) => (await find(id, words.join(' ')) ?? (await find(id, words[0]!))!).data(),
  };
}

/** Fetches and starts the engine. */
export async function openEngine(): Promise<Engine> {
  const base = import.meta.env.BASE_URL;
  // Asked for by the edition's print: an index kept from another edition never answers for this page.
  const print = document.querySelector<HTMLElement>('[data-print]')!.dataset.print!;
  const address = `${base}pagefind/pagefind.js?ts=${print}`;
  const written = fetch(`${base}search-words.json?ts=${print}`).then((answer) => answer.json() as Promise<WrittenLexicon>);
  const pagefind = (await import(/* @vite-ignore */ address)) as Pagefind;
  // In the page itself: a worker would be 12 kB more to fetch, for work of a few milliseconds.
  await pagefind.options({ baseUrl: base, metaCacheTag: print, excerptLength: 24, ranking: RANKING, noWorker: true });
  return engineOf(pagefind, await written);
}
