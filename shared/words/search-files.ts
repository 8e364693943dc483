/* Where the files of search are, below the site: the build writes them, the browser reads them. */

/** The folder of Pagefind's files. It names the version, so that a browser's old engine never meets a new index. */
export const PAGEFIND_FOLDER = 'pagefind-1.6.0/';
/** The engine itself, which takes most of the time of a first question. */
export const ENGINE = `${PAGEFIND_FOLDER}pagefind.js`;
export const WASM = `${PAGEFIND_FOLDER}wasm.en.pagefind`;
export const WORDS = 'search/words.json';
