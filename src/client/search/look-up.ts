/*
 * Looks the words up one by one and adds up what each says of a page, so that a page that answers most of a question is
 * found though one word of it stands nowhere.
 */
import { termOf } from '../../../shared/words/terms.ts';
import type { Engine, Entry } from './engine.ts';
import { LABEL_WORD, readsLikeATradeName } from './label-first.ts';
import { togetherOn } from './neighbors.ts';
import { queryOf, type Said, type Sought } from './query.ts';

export type Hit = { entry: Entry; score: number };
export type Hits = {
  hits: Hit[];
  /** Words that were spelled otherwise than typed. */ corrected: string[];
  /** Every word that a result may show as sought. */ sought: string[];
};

/** Short entries carry the names of the pages that say more: those come first. */
const KINDS: Record<string, number> = { word: 0.4, reading: 0.6, meeting: 0.6, about: 0.5, counts: 0.8 };
/** A question with a number, or for one, is a sum's. */
const SUM = 1.25;
const ASKS_FOR_SUM = /\d|how (?:many|much|long|far)|calculat|work out|convert|percent|%/i;
/** Who asks what a word means gets its entry. */
const MEANING = 2.5;
const ASKS_FOR_MEANING = /^\s*(?:what(?:['’]?s| is| are| does)|define|definition|meaning)\b|\bmeaning\b|\bmean\??$/i;
/** How much it counts that a page answers to most of the words. */
const WHOLE = 0.25;
/** A rare word counts more, but less than BM25 has it: what a beginner types oddly is rare, too. */
const RARE = 0.8;
/** What a name of several words adds to the page it leads to. */
const NAME = 0.5;
/** How rare a word is taken to be that stands on no page. */
const LOST = 3;
/** Pages that say next to nothing beside the best are left out. */
const LEAST_SHARE = 0.15;
/** A word that stands for the typed one and counts no more than this is no neighbor of others. */
const SIDE = 0.5;

type Scores = Map<number, { sum: number; /** The weight of the words it answers to. */ met: number }>;

/** Pages and entries that answer to the typed words, the best first. */
export async function lookUp(typed: string, engine: Engine, leastShare = LEAST_SHARE): Promise<Hits> {
  const { sought, said } = queryOf(typed, engine);
  const { scores, rarities, whole } = await scoresOf(sought, engine);
  addNames(scores, said, sought, rarities);
  const defined = ASKS_FOR_MEANING.test(typed) ? said.map(({ own }) => own) : [];
  const hits = [...scores]
    .map(([page, { sum, met }]) => {
      const entry = engine.entries[page]!;
      const kind = defined.includes(page)
        ? MEANING
        : entry.kind === 'calculator' && ASKS_FOR_SUM.test(typed)
          ? SUM
          : (KINDS[entry.kind] ?? 1);
      return { entry, score: sum * (met / whole) ** WHOLE * kind, share: met / whole };
    })
    .sort((a, b) => b.score - a.score);
  const found = hits.filter(({ score }) => score > hits[0]!.score * leastShare);
  return {
    hits: readsLikeATradeName(typed, sought, !(hits[0] && hits[0].share > 0.5)) ? withLabelFirst(found, engine) : found,
    corrected: sought.flatMap(({ corrected, meant }) => (corrected ? [meant[0]!.word] : [])),
    sought: sought.flatMap(({ typed: word, meant }) => [word, ...meant.map(({ word: other }) => other)]),
  };
}

async function scoresOf(
  sought: readonly Sought[],
  engine: Engine,
): Promise<{ scores: Scores; rarities: Map<string, number>; whole: number }> {
  const scores: Scores = new Map();
  const rarities = new Map<string, number>();
  let whole = 0;
  // All words are asked for at once: what one waits for, the others need not.
  const told = await Promise.all(sought.map((word) => toldOf(word, engine)));
  for (const [nth, { typed, meant, weight }] of sought.entries()) {
    const { rarest, best, places } = told[nth]!;
    const before = told[nth - 1];
    whole += rarest * weight;
    rarities.set(termOf(meant[0]?.word ?? typed), rarest);
    for (const [page, score] of best) {
      const held = scores.get(page) ?? { sum: 0, met: 0 };
      const together = before ? togetherOn(page, before.places, places) * Math.min(before.rarest, rarest) : 0;
      scores.set(page, { sum: held.sum + score + together, met: held.met + rarest * weight });
    }
  }
  return { scores, rarities, whole };
}

type Told = {
  rarest: number;
  /** By page: what the word it says most of adds. */ best: Map<number, number>;
  places: Map<number, number[]>;
};

/** What the pages say of a typed word, through all the words that it may mean. */
async function toldOf({ meant, weight }: Sought, engine: Engine): Promise<Told> {
  const told: Told = { rarest: meant.length > 0 ? 0 : LOST, best: new Map(), places: new Map() };
  const found = await Promise.all(meant.map(({ at }) => engine.pagesWith(at)));
  for (const [nth, { counts }] of meant.entries()) {
    const pages = found[nth]!;
    // BM25's weight of a word by the pages it stands on: Robertson and Zaragoza 2009, chapter 3.
    const rarity = Math.log(1 + (engine.entries.length - pages.length + 0.5) / (pages.length + 0.5)) ** RARE * counts;
    told.rarest = Math.max(told.rarest, rarity);
    for (const { page, level, places } of pages) {
      told.best.set(page, Math.max(told.best.get(page) ?? 0, rarity * level * weight));
      if (counts > SIDE) told.places.set(page, [...(told.places.get(page) ?? []), ...places]);
    }
  }
  return told;
}

/** Words that make up one name, or a name that is all of the question, count more for the page it leads to than each by itself. */
function addNames(scores: Scores, all: readonly Said[], sought: readonly Sought[], rarities: ReadonlyMap<string, number>): void {
  const typed = sought.filter(({ weight }) => weight === 1).length;
  for (const { leads, said } of all) {
    const held = scores.get(leads);
    if (held && (said.length > 1 || typed === 1)) held.sum += NAME * said.reduce((sum, word) => sum + (rarities.get(termOf(word)) ?? 0), 0);
  }
}

function withLabelFirst(hits: readonly Hit[], { entries, named }: Engine): Hit[] {
  const leads = named.find(({ id }) => id === LABEL_WORD)?.leads ?? -1;
  return leads < 0 ? [...hits] : [{ entry: entries[leads]!, score: 0 }, ...hits.filter(({ entry }) => entry !== entries[leads])];
}
