/*
 * The list of pages that a term leads to, as it travels: for each page how many it is after the one before (left out
 * where it is the next), and a letter for how much the term says of it. "c4a" is page 0 much, page 4 little.
 */

export type Posting = { page: number; /** 1 to LEVELS. */ level: number };

export const LEVELS = 20;
const LETTER_A = 97;

/** Pages rise. */
export function writePostings(postings: readonly Posting[]): string {
  let before = -1;
  return postings
    .map(({ page, level }) => {
      const step = page - before;
      before = page;
      return `${step === 1 ? '' : step}${String.fromCharCode(LETTER_A + level - 1)}`;
    })
    .join('');
}

export function readPostings(written: string): Posting[] {
  let page = -1;
  return [...written.matchAll(/(\d*)([a-t])/g)].map(([, step, letter]) => ({
    page: (page += Number(step || 1)),
    level: letter!.charCodeAt(0) - LETTER_A + 1,
  }));
}

/** Words in order as one text: each as the number of letters it shares with the one before (at most 9), and the rest. */
export function writeWords(words: readonly string[]): string {
  let before = '';
  return words
    .map((word) => {
      let shared = 0;
      while (shared < 9 && shared < before.length && before[shared] === word[shared]) shared += 1;
      before = word;
      return `${shared}${word.slice(shared)}`;
    })
    .join(' ');
}

export function readWordList(written: string): string[] {
  let before = '';
  return written
    .split(' ')
    .filter(Boolean)
    .map((each) => (before = before.slice(0, Number(each[0])) + each.slice(1)));
}
