/*
 * The search index: static files that a browser reads in pieces. One holds the pages' names, the names of the word list
 * and every word there is; some hold, by word, which pages say how much of it; one a page holds its text, for results.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { writePostings, writeWords } from '../../shared/words/postings.ts';
import type { BuiltPage } from './built-pages.ts';
import type { Word } from './handed-over.ts';
import { foundOn, type Found } from './search-pages.ts';
import { pageOf, termsOf, type Term } from './search-weights.ts';

/** Letters of one file of postings: about 20 kB on the wire. */
const MOST_LETTERS = 40_000;

export type SearchFiles = { /** By path below the site. */ files: Map<string, string>; pages: number; words: number };

/** `windows`: by a page's place, its days in each district. */
export function searchIndex(pages: readonly BuiltPage[], words: readonly Word[], windows: Readonly<Record<string, string>>): SearchFiles {
  const found = pages.flatMap(foundOn).sort((a, b) => (a.place < b.place ? -1 : 1));
  const terms = termsOf(found, words);
  const { starts, parts } = inParts(terms);
  const kinds = [...new Set(found.map(({ kind }) => kind))].sort();
  const first = {
    kinds,
    pages: found.map(({ place, title, kind, when }) => [place, title, kinds.indexOf(kind), windows[place] ?? '', ...(when ? [when] : [])]),
    names: Object.fromEntries(
      words.map(({ id, names: [first, ...others] }) => [
        id,
        [first === id.replaceAll('-', ' ') ? '' : first!, ...others].map((name) => name.replaceAll(';', ',')).join(';'),
      ]),
    ),
    leads: words.map(({ more }) => found.findIndex(({ place }) => place === pageOf(more))),
    words: writeWords(terms.filter(({ typed }) => !typed).map(({ word }) => word)),
    typed: writeWords(terms.filter(({ typed }) => typed).map(({ word }) => word)),
    starts,
  };
  const files = [['index', first] as const, ...parts.map((part, at) => [`pages-${at + 1}`, part] as const), ...textsOf(found)];
  return {
    files: new Map(files.map(([name, holds]) => [`search/${name}.json`, JSON.stringify(holds)])),
    pages: found.length,
    words: terms.length,
  };
}

/** Puts the files below the site. */
export function writeSearch(site: string, { files }: SearchFiles): void {
  for (const [name, text] of files) {
    mkdirSync(dirname(join(site, name)), { recursive: true });
    writeFileSync(join(site, name), text);
  }
}

/** The postings of all terms in files of like size, and the number of the first term of each. */
function inParts(terms: readonly Term[]): { starts: number[]; parts: string[] } {
  const starts: number[] = [];
  const parts: string[] = [];
  terms.forEach(({ postings }, at) => {
    const written = writePostings(postings);
    if (parts.length === 0 || parts.at(-1)!.length > MOST_LETTERS) {
      starts.push(at);
      parts.push(written);
    } else parts[parts.length - 1] += ` ${written}`;
  });
  return { starts, parts };
}

/** The text of each page; of one with entries that are found by themselves, by their names. */
function textsOf(found: readonly Found[]): (readonly [name: string, texts: Record<string, string>])[] {
  const texts = new Map<string, Record<string, string>>();
  for (const { place, text } of found) {
    const [page, entry = ''] = place.split('#');
    texts.set(page!, { ...texts.get(page!), [entry]: text });
  }
  return [...texts].map(([place, each]) => [`text/${place.replace(/\/$/, '')}`, each]);
}
