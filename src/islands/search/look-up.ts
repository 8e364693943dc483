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
const SHORT = 4;

/** Pages that say next to nothing beside the best are left out. */
const LEAST_SHARE = 0.12;

export async function lookUp(typed: string, engine: Engine): Promise<Hits> {
  const terms = termsOf(typed, engine.lexicon);
  const named = wordsNamed(typed, engine.lexicon).slice(0, 3);
  const names = named.flatMap(({ names: [name] }) => termsOf(name!, engine.lexicon)).filter((name) => !terms.some((term) => term.typed === name.typed));
  const weighed = [...terms.map((term) => ({ term, weight: 1 })), ...names.map((term) => ({ term, weight: NAMED }))];
  const pages = new Map<string, { score: number; words: string[] }>();
  for (const found of await Promise.all(weighed.map(({ term, weight }) => pagesWith(term, weight, engine)))) {
    for (const [id, { score, word }] of found) {
      const held = pages.get(id) ?? { score: 0, words: [] };
      pages.set(id, { score: held.score + score, words: [...held.words, word] });
    }
  }
  const hits = [...pages].map(([id, { score, words }]) => ({ id, score, kind: engine.kinds.get(id) ?? '', read: () => engine.read(id, words) }));
  const least = Math.max(...hits.map(({ score }) => score)) * LEAST_SHARE;
  return { hits: hits.filter(({ score }) => score > least).sort((a, b) => b.score - a.score), named, meant: terms.flatMap(({ meant }) => meant ?? []) };
}

/** By page: the best that the word, or what was meant by it, says of it. */
async function pagesWith({ typed, meant }: Term, weight: number, engine: Engine): Promise<Map<string, { score: number; word: string }>> {
  const best = new Map<string, { score: number; word: string }>();
  const add = async (word: string, counts: number): Promise<void> => {
    for (const { id, score } of await engine.search(word)) if (score * counts > (best.get(id)?.score ?? 0)) best.set(id, { score: score * counts, word });
  };
  await add(typed, weight);
  // A short word is near to many: it stands as it is typed where it is found.
  if (meant && (typed.length > SHORT || best.size === 0)) await add(meant, weight * MEANT);
  return best;
}
