/* Paths of the search files below the site. The build writes the files and the browser fetches them. */

/** Pagefind's folder. Its name contains the version, so that a browser's old engine never meets a new index. */
export const PAGEFIND_FOLDER = 'pagefind-1.6.0/';
/** The engine itself, which takes most of the time of a first query. */
export const ENGINE = `${PAGEFIND_FOLDER}pagefind.js`;
export const WASM = `${PAGEFIND_FOLDER}wasm.en.pagefind`;
export const WORDS = 'search/words.json';
