/*
 * Cautions of a page. Its work (`work:` in its fields) brings hazards by the table in schemas/hazards. The gravest is in the first box,
 * and the others have a line each in the second. None is ever dropped.
 */
import { HAZARDS_OF } from '../schemas/hazards.ts';
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
