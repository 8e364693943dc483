/* The files of search, as the build writes them and the browser reads them: where they are, and what is in them besides Pagefind's own. */

/** The folder of Pagefind's files. It names the version, so that a browser's old engine never meets a new index. */
export const PAGEFIND_FOLDER = 'pagefind-1.6.0/';
/** The engine itself, which takes most of the time of a first question. */
export const ENGINE = `${PAGEFIND_FOLDER}pagefind.js`;
export const WASM = `${PAGEFIND_FOLDER}wasm.en.pagefind`;
export const WORDS = 'search/words.json';

/** The key by which Pagefind gives all records in the order in which the build numbered them. */
export const ORDER = 'n';

/** `words.json`: what a question is read with. */
export type SearchWords = {
  kinds: string[];
  /** By the number of a record: its kind by number and, after a semicolon, its days in each district. */
  pages: string[];
  /** By the id of a word of the word list: its names. The first is left out where the id is the name. */
  names: Record<string, string>;
  /** By word of the word list: the number of the page that says more, and of the word's own record; -1 where there is none. */
  leads: number[];
  own: number[];
  /** Every word of the pages, and every word that people only type for them, as one text each. */
  words: string;
  typed: string;
};

/** What stands between the parts of a record. It is no word for Pagefind and stays in the content. */
const BETWEEN = ' ¶ ';

/** A record in parts: the title, the text, the day of a meeting; whatever follows only helps to find it. */
export const joinParts = (parts: readonly string[]): string => parts.join(BETWEEN);
export const splitParts = (content: string): { title: string; text: string; when: string } => {
  const [title = '', text = '', when = ''] = content.split(/\s*¶\s*/);
  return { title, text, when };
};
/** Text without the sign that stands between parts. */
export const onePart = (text: string): string => text.replaceAll('¶', ' ');
