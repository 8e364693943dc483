/*
 * Cautions of a page. Its work (`work:` in its fields) brings hazards by the table in schemas/hazards. One may stand in a full box, where
 * the page leads the hands. The others have a line each in a second box. None is ever dropped.
 */
import { HAZARDS_OF, type Hazard } from '../schemas/hazards.ts';
import type { Caution } from '../schemas/cautions.ts';

export type Placed = { hazard: string; caution: Caution };

/** Cautions in order of gravity, for the work that the page describes. */
export function cautionsFor(work: readonly string[] | undefined, cautions: ReadonlyMap<string, Caution>): Placed[] {
  const called = new Set((work ?? []).flatMap((each) => HAZARDS_OF[each as keyof typeof HAZARDS_OF] ?? []));
  return [...called]
    .map((hazard) => {
      const caution = cautions.get(hazard);
      if (!caution) throw new Error(`cautionsFor: needs cautions/${hazard}.yaml, which checks refuse to be without`);
      return { hazard, caution };
    })
    .sort((a, b) => a.caution.gravity - b.caution.gravity || (a.hazard < b.hazard ? -1 : 1));
}

/** Where the page stands to the work: it leads the hands, it tells about the work, or it only counts for it. */
export type Reach = 'doing' | 'telling' | 'counting';

/** Hazards that every opening of a hive has, with its smoker. The emergency line of each page answers the gravest. */
const OF_EVERY_HIVE: readonly string[] = [...HAZARDS_OF['open-hive'], ...HAZARDS_OF.smoke] satisfies readonly Hazard[];

/**
 * The caution that stands in full, and the others. A page with a hazard of its own, such as the vapor of an acid, shows that one. A page
 * that leads the hands into a hive shows the gravest. On all others the emergency line serves, and every hazard has its line.
 */
export function placed(cautions: readonly Placed[], reach: Reach): { full: Placed | undefined; lines: Placed[] } {
  const own = cautions.find(({ hazard }) => !OF_EVERY_HIVE.includes(hazard));
  const full = reach === 'counting' ? undefined : (own ?? (reach === 'doing' ? cautions[0] : undefined));
  return { full, lines: cautions.filter((each) => each !== full) };
}
