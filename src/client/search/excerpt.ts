/* Excerpt of a page with most of the searched words, which are marked. Text only, so nothing in it can become a tag. */
import { readWords, termsIn } from '../../../shared/words/terms.ts';

export type Piece = { text: string; marked: boolean };

const LENGTH = 28;
/** How far back an excerpt may begin, so that it starts at a sentence. */
const BACK = 14;

/** The engine returns plain spaces only. A number and its unit stay on one line, as on the page. */
const UNIT =
  /(?<=[\d½¼¾⅓⅔]) (?=(?:°[CF]|%|lb|kg|oz|m?g|m?L|gal|qt|ft|in|mm|cm|ppm|days?|hours?|weeks?|months?|years?|bees|mites)(?![\p{L}\p{N}]))/gu;

/** `sought` are words in any form. */
export function excerptOf(text: string, sought: readonly string[]): Piece[] {
  const terms = new Set(sought.flatMap(termsIn));
  const words = readWords(text.replace(UNIT, '\u00a0')).map(({ word, terms: own }) => ({
    word,
    met: own.filter((term) => terms.has(term)),
  }));
  const start = beginning(words, densest(words));
  const shown = words.slice(start, start + LENGTH);
  const pieces: Piece[] = shown.flatMap(({ word, met }, at) => [
    ...(at > 0 ? [{ text: ' ', marked: false }] : []),
    ...marked(word, met.length > 0),
  ]);
  const before = start > 0 ? [{ text: '… ', marked: false }] : [];
  const after = start + LENGTH < words.length ? [{ text: '\u00a0…', marked: false }] : [];
  return joined([...before, ...pieces, ...after]);
}

/** Punctuation before and after a word is not marked with it. */
function marked(word: string, met: boolean): Piece[] {
  const [, before, core, after] = /^([^\p{L}\p{N}]*)(.*?)([^\p{L}\p{N}%]*)$/su.exec(word)!;
  return met && core
    ? [
        { text: before!, marked: false },
        { text: core, marked: true },
        { text: after!, marked: false },
      ].filter(({ text }) => text)
    : [{ text: word, marked: false }];
}

type Met = { word: string; met: string[] };

/** Start of the excerpt with the most different searched words, then with the most of them. */
function densest(words: readonly Met[]): number {
  let [best, most] = [0, 0];
  for (let start = 0; start === 0 || start + LENGTH <= words.length; start++) {
    const met = words.slice(start, start + LENGTH).flatMap((each) => each.met);
    const score = new Set(met).size * 10 + Math.min(met.length, 9);
    if (score > most) [best, most] = [start, score];
  }
  return best;
}

/** Moves back to the first word of the sentence, where it is near and no searched word drops off the end. */
function beginning(words: readonly Met[], start: number): number {
  const firstMet = words.findIndex(({ met }, at) => at >= start && met.length > 0);
  for (let at = Math.max(start, firstMet); at > Math.max(0, firstMet - BACK); at--) if (/[.?!:]$/.test(words[at - 1]!.word)) return at;
  return Math.max(0, Math.min(start, firstMet - 3));
}

/** Joins neighbours of one kind. */
function joined(pieces: readonly Piece[]): Piece[] {
  const all: Piece[] = [];
  for (const piece of pieces) {
    if (all.at(-1)?.marked === piece.marked) all.at(-1)!.text += piece.text;
    else all.push({ ...piece });
  }
  return all;
}
