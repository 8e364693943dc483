/* Format of the search files besides Pagefind's own. The build writes them and the browser parses them. */

/** The sort key with which Pagefind returns all records in the order of the build. */
export const ORDER = 'n';

/** `words.json`: what the browser needs to parse a query. */
export type SearchWords = {
  kinds: string[];
  /** By record number, see `writePage`. */
  pages: string[];
  /** By glossary id: the names of the word. The first is omitted where the id is the name. */
  names: Record<string, string>;
  /** By glossary word: the number of the page that says more, and of the word's own record. -1 where there is none. */
  leads: number[];
  own: number[];
  /** Every word on the pages, and every word that people only type for them, each as one text. */
  words: string;
  typed: string;
};

/** Separates the parts of a record. Pagefind does not index it, and it stays in the content. */
const BETWEEN = ' ¶ ';

/** A record in parts: the title, the text, the day of a meeting. The rest only helps to find it. */
export const joinParts = (parts: readonly string[]): string => parts.join(BETWEEN);
export const splitParts = (content: string): { title: string; text: string; when: string } => {
  const [title = '', text = '', when = ''] = content.split(/\s*¶\s*/);
  return { title, text, when };
};
/** Text without the separator. */
export const onePart = (text: string): string => text.replaceAll('¶', ' ');

/** What the browser knows of a record before it fetches its text. */
export type PageFacts = {
  /** The number of its kind. */ kind: number;
  /** A pest or disease that the law wants reported. */ law: boolean;
  /** Its number in the list of all pages. */ listed?: number;
  /** Its days in each district, or the first and last day of a meeting. */ windows: string;
};

/** `8!,31;valley 04-08 05-10`: the kind, the law, the number in the list, the days. */
export const writePage = ({ kind, law, listed, windows }: PageFacts): string =>
  `${kind}${law ? '!' : ''}${listed === undefined ? '' : `,${listed}`}${windows && `;${windows}`}`;
export function readPage(written: string): PageFacts {
  const [, kind, law, listed, windows = ''] = /^(\d+)(!?)(?:,(\d+))?(?:;(.*))?$/.exec(written)!;
  return { kind: Number(kind), law: law !== '', windows, ...(listed ? { listed: Number(listed) } : {}) };
}

/** Where a heading is in the text of a record: it ends like a sentence. Negative where it is not. */
export const placeOfHeading = (text: string, heading: string, from: number): number =>
  text.indexOf(heading + (/[.:,!?]$/.test(heading) ? ' ' : '. '), from);
