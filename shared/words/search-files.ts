/* Paths of the search files below the site. The build writes the files and the browser fetches them. */
import type { Tongue } from '../country/language.ts';

/** Pagefind's folder. Its name contains the version, so that a browser's old engine never meets a new index. */
export const PAGEFIND_FOLDER = 'pagefind-1.6.0/';
/** The engine itself, which takes most of the time of a first query. */
export const ENGINE = `${PAGEFIND_FOLDER}pagefind.js`;
export const WORDS = 'search/words.json';

/** Pagefind's rules for the words of a language. */
export const wasmOf = (tongue: Tongue): string => `${PAGEFIND_FOLDER}wasm.${tongue}.pagefind`;

/** The index and the words of pages in another language than the club's. */
export const folderOf = (tongue: Tongue): string => `${PAGEFIND_FOLDER}${tongue}/`;
export const wordsOf = (tongue: Tongue): string => `search/words.${tongue}.json`;
