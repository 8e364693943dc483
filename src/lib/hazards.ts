/*
 * Cautions of a page. Its work (`work:` in its fields) brings hazards by the table in schemas/hazards. One may stand in a full box, where
 * the page leads the hands. The others have a line each in a second box. None is ever dropped.
 */
import { HAZARDS_OF, type Hazard } from '../schemas/hazards.ts';
import type { Caution } from '../schemas/cautions.ts';
import type { InTongue } from './almanac.ts';

/** `isMain`: the work that the page names first brings it. */
export type Placed = { hazard: string; caution: InTongue<Caution>; isMain: boolean };

/** Cautions in order of gravity, for the work that the page describes. */
export function cautionsFor(work: readonly string[] | undefined, cautions: ReadonlyMap<string, InTongue<Caution>>): Placed[] {
  const hazardsOf = (each: string | undefined): readonly string[] => HAZARDS_OF[each as keyof typeof HAZARDS_OF] ?? [];
  const called = new Set((work ?? []).flatMap(hazardsOf));
  const main = hazardsOf(work?.[0]);
  return [...called]
    .map((hazard) => {
      const caution = cautions.get(hazard);
      if (!caution) throw new Error(`cautionsFor: needs cautions/${hazard}.yaml, which checks refuse to be without`);
      return { hazard, caution, isMain: main.includes(hazard) };
    })
    .sort((a, b) => a.caution.gravity - b.caution.gravity || (a.hazard < b.hazard ? -1 : 1));
}

/** Where the page stands to the work: it leads the hands, or it tells about the work. */
export type Reach = 'doing' | 'telling';

/** Hazards that every opening of a hive has, with its smoker. The emergency line of each page answers the gravest. */
const OF_EVERY_HIVE: readonly string[] = [...HAZARDS_OF['open-hive'], ...HAZARDS_OF.smoke] satisfies readonly Hazard[];

/**
 * The caution that stands in full, and the others. A page that leads the hands shows the gravest of the work that it names first. A page
 * that tells about a hazard of its own, such as the vapor of an acid, shows that one. On all others the emergency line serves. Every other
 * hazard has its line.
 */
export function placed(cautions: readonly Placed[], reach: Reach): { full: Placed | undefined; lines: Placed[] } {
  const full = {
    doing: () => cautions.find(({ isMain }) => isMain),
    telling: () => ofItsOwn(cautions)[0],
  }[reach]();
  return { full, lines: cautions.filter((each) => each !== full) };
}

/** True for work with a hazard that not every opening of a hive brings. */
export const isGraver = (work: readonly string[]): boolean =>
  work.some((each) => HAZARDS_OF[each as keyof typeof HAZARDS_OF]?.some((hazard) => !OF_EVERY_HIVE.includes(hazard)));

/**
 * The cautions of work that not every opening of a hive brings. A calculator shows the line of one where its result sends somebody to that
 * work. For the others the emergency line serves, and the list that the result leads to has them.
 */
export function ofItsOwn(cautions: readonly Placed[]): Placed[] {
  return cautions.filter(({ hazard }) => !OF_EVERY_HIVE.includes(hazard));
}
