/*
 * What the search list needs beside the engine's index: the words of the word list with every way of typing them, and
 * the well-spelled words of the almanac, to which a mistyped one is led. A reader fetches it once, so it is kept small:
 * 6 kB on the wire.
 */
import { mainWords, plainWords, type BuiltPage } from './built-pages.ts';
import type { Word } from './handed-over.ts';

export type SearchWords = {
  /** Names by the word's place in the list, parted by semicolons; the first is left out where it is the place itself. */
  words: Record<string, string>;
  /** In the order of the alphabet, each as the number of letters it shares with the one before, and the rest. */
  spelled: string;
};

const MOST_SPELLED = 1240;
const SHORTEST = 4;
const MOST_SHARED = 9;

/** Pages of names and titles: nobody mistypes those. */
const NAMES_PEOPLE = ['reading/', 'about/', 'who-to-ask/'];

/** Words of headings count as if they stood on so many pages. */
const HEADING = 100;

export function searchWords(words: readonly Word[], pages: readonly BuiltPage[]): SearchWords {
  return {
    words: Object.fromEntries(words.map(({ id, names: [first, ...others] }) => [id, [first === id.replaceAll('-', ' ') ? '' : first!, ...others].map((name) => name.replaceAll(';', ',')).join(';')])),
    spelled: inShort(spelledWords(pages.filter(({ html, place }) => html.includes('data-pagefind-body') && !NAMES_PEOPLE.includes(place)))),
  };
}

/** Words of headings first, then those on most pages; one form of each, in the order of the alphabet. */
function spelledWords(pages: readonly BuiltPage[]): string[] {
  const weight = new Map<string, number>();
  const add = (text: string, by: number): void => {
    for (const word of new Set(lettersOf(text))) weight.set(word, (weight.get(word) ?? 0) + by);
  };
  for (const page of pages) {
    add(mainWords(page), 1);
    for (const [, heading] of page.html.matchAll(/<(?:h1|h2|h3|p class="lede")[^>]*>([\s\S]*?)<\/(?:h1|h2|h3|p)>/g)) add(plainWords(heading!), HEADING);
  }
  // A word stands for its forms, and counts for them.
  for (const [word, sum] of [...weight].sort(([a], [b]) => b.length - a.length || (a < b ? -1 : 1))) {
    const stem = stemIn(word, weight);
    if (stem === undefined) continue;
    weight.set(stem, weight.get(stem)! + sum);
    weight.delete(word);
  }
  return [...weight].sort(([a, x], [b, y]) => y - x || (a < b ? -1 : 1)).slice(0, MOST_SPELLED).map(([word]) => word).sort();
}

const lettersOf = (text: string): string[] => (text.toLowerCase().match(/[a-z]+/g) ?? []).filter((word) => word.length >= SHORTEST);

const stemIn = (word: string, known: ReadonlyMap<string, number>): string | undefined =>
  ['s', 'es', 'ed', 'd', 'ing', 'ly', 'er', 'r', 'y'].filter((ending) => word.endsWith(ending)).flatMap((ending) => [word.slice(0, -ending.length), `${word.slice(0, -ending.length)}e`]).find((stem) => stem !== word && known.has(stem));

function inShort(words: readonly string[]): string {
  let before = '';
  return words
    .map((word) => {
      let shared = 0;
      while (shared < MOST_SHARED && shared < before.length && before[shared] === word[shared]) shared += 1;
      before = word;
      return `${shared}${word.slice(shared)}`;
    })
    .join('');
}
