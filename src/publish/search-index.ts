/*
 * The search index: static files that a browser reads in pieces. One holds the pages' names, the names of the word list
 * and every word there is; some hold, by word, which pages say how much of it; one a page holds its text, for results.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { LEVELS, writePostings, writeWords, type Posting } from '../../shared/words/postings.ts';
import { SMALL_WORDS } from '../../shared/words/small-words.ts';
import { termOf, wordsIn } from '../../shared/words/terms.ts';
import type { BuiltPage } from './built-pages.ts';
import type { Word } from './handed-over.ts';
import { foundOn, type Found } from './search-pages.ts';

/** Pages that gather others would answer every question: their text counts little beside their names. */
const GATHERS: Record<string, string[]> = {
  'year/': ['what to do this month', 'January February March April May June July August September October November December'],
  'meetings/': ['next meeting', 'when and where we meet', 'meeting dates', 'calendar'],
  'signs/': ['start from the signs', 'what is wrong with my bees', 'symptoms', 'which disease', 'sick brood'],
  'about/': [],
  'words/': [],
};
const GATHERED = 0.2;

/** What a word counts that stands in this place, beside one in the text. */
export const COUNTS = { title: 10, also: 9, lede: 3, headings: 1, kind: 1.5, text: 1 };

/** How soon more of the same word says no more (BM25's k1), and how much a long page weighs against a word (its b): Robertson and Zaragoza 2009, chapter 3. */
export const SATURATION = { K1: 6, B: 0.75 };


/** Letters of one file of postings: about 20 kB on the wire. */
const MOST_LETTERS = 40_000;

type Weighed = Map<string, number>;

/** By term: how often it is written how; SPELLED where it stands in a page and not in a name only. */
type Forms = Map<string, Map<string, number>>;
const SPELLED = '';

export type SearchFiles = { files: Map<string, string>; pages: number; words: number };

export const searchIndex = (pages: readonly BuiltPage[], words: readonly Word[], windows: Readonly<Record<string, string>>): SearchFiles =>
  indexOf(pages.flatMap(foundOn).sort((a, b) => (a.place < b.place ? -1 : 1)), words, windows);

export function indexOf(found: readonly Found[], words: readonly Word[], windows: Readonly<Record<string, string>>): SearchFiles {
  const forms: Forms = new Map();
  const lists = postingsOf(found.map((each) => weigh(each, words, forms)), found.map(({ text }) => text.length));
  const spelled = (term: string): boolean => forms.get(term)!.has(SPELLED);
  // Words of the pages first, then those that people type for them.
  const terms = [...lists].map(([term, postings]) => ({ word: usual(forms.get(term)!), postings, typed: !spelled(term) })).sort((a, b) => Number(a.typed) - Number(b.typed) || (a.word < b.word ? -1 : 1));
  const files = new Map<string, string>();
  const starts: number[] = [];
  let part: string[] = [];
  terms.forEach(({ postings }, at) => {
    if (part.length === 0) starts.push(at);
    part.push(writePostings(postings));
    if (part.join(' ').length < MOST_LETTERS && at < terms.length - 1) return;
    files.set(`search/pages-${starts.length}.json`, JSON.stringify(part.join(' ')));
    part = [];
  });
  const kinds = [...new Set(found.map(({ kind }) => kind))].sort();
  files.set(
    'search/index.json',
    JSON.stringify({
      kinds,
      pages: found.map(({ place, title, kind, when }) => [place, title, kinds.indexOf(kind), windows[place] ?? '', ...(when ? [when] : [])]),
      names: Object.fromEntries(words.map(({ id, names: [first, ...others] }) => [id, [first === id.replaceAll('-', ' ') ? '' : first!, ...others].map((name) => name.replaceAll(';', ',')).join(';')])),
      leads: words.map(({ more }) => found.findIndex(({ place }) => place === pageOf(more))),
      words: writeWords(terms.filter(({ typed }) => !typed).map(({ word }) => word)),
      typed: writeWords(terms.filter(({ typed }) => typed).map(({ word }) => word)),
      starts,
    }),
  );
  const texts = new Map<string, Record<string, string>>();
  for (const { place, text } of found) {
    const [page, part = ''] = place.split('#');
    texts.set(page!, { ...texts.get(page!), [part]: text });
  }
  for (const [place, text] of texts) files.set(`search/text/${place.replace(/\/$/, '') || 'first'}.json`, JSON.stringify(text));
  return { files, pages: found.length, words: terms.length };
}

/** Puts the files below the site. */
export function writeSearch(site: string, { files }: SearchFiles): void {
  for (const [name, text] of files) {
    mkdirSync(dirname(join(site, name)), { recursive: true });
    writeFileSync(join(site, name), text);
  }
}

/** The place of the page that a word leads to. */
const pageOf = (more: string | undefined): string | undefined => more?.slice(1).replace(/#.*/, '');

/** The form of a word that is written most. */
const usual = (forms: ReadonlyMap<string, number>): string => [...forms].filter(([form]) => form !== SPELLED).sort(([a, x], [b, y]) => y - x || a.length - b.length || (a < b ? -1 : 1))[0]![0];

/** How much a page says of each term. */
function weigh(found: Found, words: readonly Word[], forms: Forms): Weighed {
  const gathers = GATHERS[found.place];
  const names = words.filter(({ id, more }) => found.place === `words/#${id}` || pageOf(more) === found.place).flatMap((word) => word.names);
  const weighed: Weighed = new Map();
  const add = (text: string, counts: number, isName = false): void => {
    for (const word of wordsIn(text)) {
      const term = termOf(word);
      if (SMALL_WORDS.has(word)) continue;
      weighed.set(term, (weighed.get(term) ?? 0) + counts);
      const own = forms.get(term) ?? new Map<string, number>();
      forms.set(term, own.set(word, (own.get(word) ?? 0) + 1));
      if (!isName) own.set(SPELLED, 1);
    }
  };
  // A name counts once, however many ways of typing it hold the same word.
  const once = (texts: readonly string[]): string => [...new Set(texts.flatMap(wordsIn))].join(' ');
  add(found.title, COUNTS.title);
  add(once([...names, ...(gathers ?? [])]), COUNTS.also, true);
  add(found.lede, COUNTS.lede);
  add(found.headings, COUNTS.headings);
  add(found.kind, COUNTS.kind);
  add(found.text, gathers ? COUNTS.text * GATHERED : COUNTS.text);
  return weighed;
}

function postingsOf(weighed: readonly Weighed[], lengths: readonly number[]): Map<string, Posting[]> {
  const mean = lengths.reduce((sum, each) => sum + each, 0) / lengths.length;
  const lists = new Map<string, Posting[]>();
  weighed.forEach((page, at) => {
    const full = SATURATION.K1 * (1 - SATURATION.B + (SATURATION.B * lengths[at]!) / mean);
    for (const [term, weight] of page) {
      const level = Math.max(1, Math.round((LEVELS * weight) / (weight + full)));
      lists.set(term, [...(lists.get(term) ?? []), { page: at, level }]);
    }
  });
  return lists;
}
