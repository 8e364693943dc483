/*
 * How hard the words of each page are to read. The grade is that of Flesch and Kincaid (J. P. Kincaid and others, Research Branch Report
 * 8-75, US Navy, 1975): a US school grade from the words in a sentence and the syllables in a word. A child of grade g is about g + 5
 * years old. It is a report for editors and refuses nothing.
 */
import { fleschKincaid } from 'flesch-kincaid';
import type { Nodes } from 'mdast';
import { syllable } from 'syllable';
import type { Entry, Folder } from '../source/folder.ts';
import { isTag, walk } from '../source/prose.ts';

export type ReadingLevel = { path: string; grade: number; /** Sentences of more than 20 words. */ long: string[] };

/** A page with fewer words says little about its level. */
const FEWEST_WORDS = 80;
const LONGEST_SENTENCE = 20;

/** The pages of words, the hardest first. */
export const readingLevels = ({ entries }: Pick<Folder, 'entries'>): ReadingLevel[] =>
  entries.flatMap((entry) => levelOf(entry) ?? []).sort((a, b) => b.grade - a.grade);

/** Null for an entry without words, or with few. */
export function levelOf({ path, tree }: Pick<Entry, 'path' | 'tree'>): ReadingLevel | null {
  const sentences = tree === null ? [] : sentencesOf(tree);
  const words = sentences.flatMap(wordsOf);
  if (words.length < FEWEST_WORDS) return null;
  const counts = { sentence: sentences.length, word: words.length, syllable: words.reduce((sum, word) => sum + syllable(word), 0) };
  return {
    path,
    grade: Math.round(fleschKincaid(counts) * 10) / 10,
    long: sentences.filter((sentence) => wordsOf(sentence).length > LONGEST_SENTENCE),
  };
}

const wordsOf = (sentence: string): string[] => sentence.match(/\p{L}+(?:['’]\p{L}+)*/gu) ?? [];

/** Sentences of paragraphs and list lines. Cells of tables are no sentences, and headings are not read on. */
function sentencesOf(tree: Nodes): string[] {
  const found: string[] = [];
  for (const node of walk(tree))
    if (node.type === 'paragraph')
      found.push(
        ...textOf(node)
          .split(/(?<=[.!?:])["”)]?\s+/)
          .filter((sentence) => wordsOf(sentence).length > 0),
      );
  return found;
}

/** A figure or a day stands for one word. */
const textOf = (node: Nodes): string =>
  node.type === 'text' || node.type === 'inlineCode'
    ? node.value
    : isTag(node) && node.children.length === 0
      ? 'one'
      : 'children' in node
        ? node.children.map((child) => textOf(child as Nodes)).join('')
        : '';

/** Lines for editors: the middle, the hardest pages, and their longest sentences. */
export function readingLines(levels: readonly ReadingLevel[], most = 15): string[] {
  const middle = levels[Math.floor(levels.length / 2)];
  if (!middle) return [];
  const easy = levels.filter(({ grade }) => grade <= 9).length;
  return [
    `${levels.length} pages of words. The middle one reads at grade ${middle.grade}, age ${ageOf(middle)}. ${easy} are at grade 9 or below, age 14.`,
    ...levels
      .slice(0, most)
      .flatMap((level) => [
        `${level.path}: grade ${level.grade}, age ${ageOf(level)}, ${level.long.length} ${level.long.length === 1 ? 'sentence' : 'sentences'} of more than ${LONGEST_SENTENCE} words`,
        ...level.long.slice(0, 1).map((sentence) => `  ${sentence}`),
      ]),
  ];
}

const ageOf = ({ grade }: ReadingLevel): number => Math.round(grade + 5);
