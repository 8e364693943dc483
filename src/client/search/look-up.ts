/*
 * Search ranking: looks words up one by one and adds their scores for each page. So a page that answers most of a query is found even
 * where one word occurs nowhere.
 */
import { termOf } from '../../../shared/words/terms.ts';
import type { Engine, Entry } from './engine.ts';
import { togetherOn } from './neighbors.ts';
import { queryOf, type NameInQuery, type Sought } from './query.ts';

export type Hit = { entry: Entry; score: number };
export type Hits = {
  hits: Hit[];
  /** Words with corrected spelling. */ corrected: string[];
  /** Every word that a result may mark. */ sought: string[];
  /** A word is on no page, nor near to one: it may be a trade name, which the almanac never prints. */ strange: boolean;
  /** Most of the words are such words: the question may be in another language. */ isForeign: boolean;
};

/** Glossary entries contain the names of the pages that say more. Those come first. */
const KINDS: Record<string, number> = { word: 0.4, reading: 0.6, meeting: 0.6, about: 0.5, counts: 0.8, file: 0.6 };
/** A pest or disease that the law wants reported is the worse one to miss. */
const LAW = 1.03;
/** A meeting that is over, and the next one. */
const OVER = 0.5;
const NEXT = 1.3;
/** A query with a number, or for one, prefers calculators. */
const SUM = 1.25;
const ASKS_FOR_SUM = /\d|how (?:many|much|long|far)|calculat|work out|convert|percent|%|cu[aá]nt[oa]s?|calcul|por ciento/i;
/** A query for the meaning of a word returns its glossary entry. */
const MEANING = 2.5;
const ASKS_FOR_MEANING =
  /^\s*(?:what(?:['’]?s| is| are| does)|define|definition|meaning)\b|\bmeaning\b|\bmean\??$|^\s*¿?\s*qu[eé] (?:es|son|significan?|quiere decir)(?!\p{L})|\bsignificado(?!\p{L})/iu;
/** Weight of a page that matches most of the words. */
const WHOLE = 0.25;
/** A rare word counts more, but less than in BM25, because a beginner's odd spelling is rare, too. */
const RARE = 0.8;
/** Bonus of a name of several words for its page. */
const NAME = 0.5;
/** Assumed rarity of a word that is on no page. */
const LOST = 3;
/** Pages with a very low score compared with the best are left out. */
const LEAST_SHARE = 0.15;
/** A substitute for the typed word with no more weight than this is not used as a neighbour. */
const SIDE = 0.5;

/** Share of the allowed spelling distance from which a corrected word counts as strange. */
const STRANGE = 0.6;

type Scores = Map<number, { sum: number; /** The weight of the words it answers to. */ met: number }>;

/** Pages and entries that match the typed words, the best first. `today` is a day in the time zone of the club. */
export async function lookUp(typed: string, engine: Engine, today: string, leastShare = LEAST_SHARE): Promise<Hits> {
  const { sought, entries } = queryOf(typed, engine);
  const { scores, rarities, whole } = await scoresOf(sought, engine);
  addNames(scores, entries, sought, rarities);
  const defined = ASKS_FOR_MEANING.test(typed) ? entries.map(({ own }) => own) : [];
  const next = engine.entries.flatMap(({ day = '' }) => (day >= today ? [day] : [])).sort()[0];
  const hits = [...scores]
    .map(([page, { sum, met }]) => {
      const entry = engine.entries[page]!;
      const kind = defined.includes(page)
        ? MEANING
        : entry.kind === 'calculator' && ASKS_FOR_SUM.test(typed)
          ? SUM
          : (KINDS[entry.kind] ?? 1);
      const due = entry.law ? LAW : entry.day === undefined ? 1 : entry.day < today ? OVER : entry.day === next ? NEXT : 1;
      return { entry, score: sum * (met / whole) ** WHOLE * kind * due };
    })
    .sort((a, b) => b.score - a.score);
  return {
    hits: hits.filter(({ score }) => score > hits[0]!.score * leastShare),
    corrected: sought.flatMap(({ corrected, candidates }) => (corrected ? [candidates[0]!.word] : [])),
    sought: sought.flatMap(({ typed: word, candidates }) => [word, ...candidates.map(({ word: other }) => other)]),
    strange: sought.some(isStrange),
    isForeign: sought.filter(isStrange).length * 2 > sought.length,
  };
}

const isStrange = ({ unknown, stretch }: Sought): boolean => unknown || stretch > STRANGE;

async function scoresOf(
  sought: readonly Sought[],
  engine: Engine,
): Promise<{ scores: Scores; rarities: Map<string, number>; whole: number }> {
  const scores: Scores = new Map();
  const rarities = new Map<string, number>();
  let whole = 0;
  // Requests all words at once, so that none waits for another.
  const matches = await Promise.all(sought.map((word) => matchOf(word, engine)));
  for (const [nth, { typed, candidates, weight }] of sought.entries()) {
    const { rarest, best, places } = matches[nth]!;
    const before = matches[nth - 1];
    whole += rarest * weight;
    rarities.set(termOf(candidates[0]?.word ?? typed), rarest);
    for (const [page, score] of best) {
      const held = scores.get(page) ?? { sum: 0, met: 0 };
      const together = before ? togetherOn(page, before.places, places) * Math.min(before.rarest, rarest) : 0;
      scores.set(page, { sum: held.sum + score + together, met: held.met + rarest * weight });
    }
  }
  return { scores, rarities, whole };
}

type Match = {
  rarest: number;
  /** By page: the score of its best word. */ best: Map<number, number>;
  places: Map<number, number[]>;
};

/** What the pages say about a typed word, through all the words that it may mean. */
async function matchOf({ candidates, weight }: Sought, engine: Engine): Promise<Match> {
  const match: Match = { rarest: candidates.length > 0 ? 0 : LOST, best: new Map(), places: new Map() };
  const found = await Promise.all(candidates.map(({ at }) => engine.pagesWith(at)));
  for (const [nth, { counts }] of candidates.entries()) {
    const pages = found[nth]!;
    // BM25's weight of a word by its number of pages: Robertson and Zaragoza 2009, chapter 3.
    const rarity = Math.log(1 + (engine.entries.length - pages.length + 0.5) / (pages.length + 0.5)) ** RARE * counts;
    match.rarest = Math.max(match.rarest, rarity);
    for (const { page, level, places } of pages) {
      match.best.set(page, Math.max(match.best.get(page) ?? 0, rarity * level * weight));
      if (counts > SIDE) match.places.set(page, [...(match.places.get(page) ?? []), ...places]);
    }
  }
  return match;
}

/** Words that form one name, or a name that is the whole query, count more for its page than the separate words. */
function addNames(scores: Scores, all: readonly NameInQuery[], sought: readonly Sought[], rarities: ReadonlyMap<string, number>): void {
  const typed = sought.filter(({ weight }) => weight === 1).length;
  for (const { leads, typedName } of all) {
    const held = scores.get(leads);
    if (held && (typedName.length > 1 || typed === 1))
      held.sum += NAME * typedName.reduce((sum, word) => sum + (rarities.get(termOf(word)) ?? 0), 0);
  }
}
