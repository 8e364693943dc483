/*
 * Looks the words up one by one and adds up what each says of a page, so that a page that answers most of a question is
 * found though one word of it stands nowhere. A mistyped word is looked for as the one that was meant, too.
 */
import type { Engine, Fragment } from './engine.ts';
import type { Word } from './lexicon.ts';
import { termsOf, wordsNamed, type Term } from './query.ts';

export type Hit = { id: string; kind: string; score: number; read: () => Promise<Fragment> };
export type Hits = { hits: Hit[]; named: Word[]; meant: string[] };

/** What a word counts that was not typed, beside one that was. */
const MEANT = 0.9;
const NAMED = 0.7;

/** A word that scores less everywhere was found by its first letters only, or stands in all pages. */
const WEAK = 5;

/** Pages that say next to nothing beside the best are left out. */
const LEAST_SHARE = 0.12;

type Pages = Map<string, { score: number; word: string }>;

export async function lookUp(typed: string, engine: Engine): Promise<Hits> {
  const terms = termsOf(typed, engine.lexicon);
  const named = wordsNamed(typed, engine.lexicon).slice(0, 3);
  for (const term of named.flatMap(({ names }) => termsOf(names[0]!, engine.lexicon, NAMED))) if (!terms.some((other) => other.typed === term.typed)) terms.push(term);
  const pages = new Map<string, { score: number; words: string[] }>();
  for (const found of await Promise.all(terms.map((term) => pagesWith(term, engine)))) {
    for (const [id, { score, word }] of found) {
      const held = pages.get(id) ?? { score: 0, words: [] };
      pages.set(id, { score: held.score + score, words: [...held.words, word] });
    }
  }
  const hits = [...pages].map(([id, { score, words }]) => ({ id, score, words, kind: engine.kinds.get(id)!, read: () => engine.read(id, words) })).sort((a, b) => b.score - a.score);
  const meant = terms.flatMap(({ meant }) => (meant && hits.some(({ words }) => words.includes(meant)) ? meant : []));
  return { hits: hits.filter(({ score }) => score > hits[0]!.score * LEAST_SHARE), named, meant };
}

/** By page: the best that the word says of it, or what was meant by it where it says next to nothing. */
async function pagesWith({ typed, meant, surely, weight }: Term, engine: Engine): Promise<Pages> {
  const best: Pages = new Map();
  const add = async (word: string, counts: number): Promise<void> => {
    for (const { id, score } of await engine.search(word)) if (score * counts > (best.get(id)?.score ?? 0)) best.set(id, { score: score * counts, word });
  };
  await add(typed, weight);
  if (meant && (surely || [...best.values()].every(({ score }) => score < WEAK))) await add(meant, weight * MEANT);
  return best;
}
