/*
 * Excerpt of a page with most of the searched words, which are marked, and the section that it is from. Text only, so nothing in it can
 * become a tag.
 */
import { placeOfHeading } from '../../../shared/words/search-record.ts';
import { readWords, termsIn } from '../../../shared/words/terms.ts';

export type Piece = { text: string; marked: boolean };
export type Section = { id: string; text: string };
/** `section` is where a link should lead, unless the top of the page says as much. */
export type Excerpt = { pieces: Piece[]; section: Section | undefined };

const LENGTH = 28;
/** How far back an excerpt may begin, so that it starts at a sentence. */
const BACK = 14;

/** The engine returns plain spaces only. A number and its unit stay on one line, as on the page. */
const UNIT =
  /(?<=[\d½¼¾⅓⅔]) (?=(?:°[CF]|%|lb|kg|oz|m?g|m?L|gal|qt|ft|in|mm|cm|ppm|days?|hours?|weeks?|months?|years?|bees|mites|días?|horas?|semanas?|mes(?:es)?|años?|abejas|ácaros)(?![\p{L}\p{N}]))/gu;

/** `sought` are words in any form. */
export function excerptOf(
  { title, text, sections }: { title: string; text: string; sections: readonly Section[] },
  sought: readonly string[],
): Excerpt {
  const terms = new Set(sought.flatMap(termsIn));
  const words = readWords(text.replace(UNIT, '\u00a0')).map(({ word, terms: own }) => ({
    word,
    met: own.filter((term) => terms.has(term)),
  }));
  const dense = densest(words);
  const start = beginning(words, dense);
  const shown = words.slice(start, start + LENGTH);
  const pieces: Piece[] = shown.flatMap(({ word, met }, at) => [
    ...(at > 0 ? [{ text: ' ', marked: false }] : []),
    ...marked(word, met.length > 0),
  ]);
  const before = start > 0 ? [{ text: '… ', marked: false }] : [];
  const after = start + LENGTH < words.length ? [{ text: '\u00a0…', marked: false }] : [];
  const section = sectionAt(
    text,
    sections,
    words.slice(0, Math.max(start, dense)).reduce((sum, { word }) => sum + word.length + 1, 0),
  );
  const named = new Set(termsIn(title));
  const news = new Set(words.slice(dense, dense + LENGTH).flatMap(({ met }) => met.filter((term) => !named.has(term))));
  const isNamed = termsIn(section?.text ?? '').some((term) => news.has(term));
  return { pieces: joined([...before, ...pieces, ...after]), section: news.size > 1 || isNamed ? section : undefined };
}

/** The last heading before a place in the text. */
function sectionAt(text: string, sections: readonly Section[], place: number): Section | undefined {
  let [last, from]: [Section | undefined, number] = [undefined, 0];
  for (const section of sections) {
    const at = placeOfHeading(text, section.text, from);
    if (at > place + section.text.length) break;
    if (at >= 0) [last, from] = [section, at];
  }
  return last;
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
