/* Compresses many words into one short text for the browser. */

/** Sorted words as one text: for each, the number of letters it shares with the word before (at most 9), and the rest. */
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
