/* What is in the files of search besides Pagefind's own: the build writes it, the browser reads it. */

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
