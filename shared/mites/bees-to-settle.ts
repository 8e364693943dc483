/**
 * How many bees a sample would need for a count at the same rate to lie surely under the level: the smallest whole number, from the
 * bees counted up, at which the exact upper limit of the mites then expected (rounded up) is under the level.
 * Where more than `mostBees` would be needed there is no answer, since no colony should give so many.
 * Only for a sample whose rate is under the level. Exact limits: Garwood 1936. The rule itself is ours. Unit: bees.
 */
import { poissonLimits } from '../numbers/poisson.ts';
import type { MiteSample } from './rate.ts';

export function beesToSettle(
  { mites, bees }: Pick<MiteSample, 'mites' | 'bees'>,
  levelPer100: number,
  mostBees: number,
): number | undefined {
  let fewest = Math.max(1, bees);
  while (fewest <= mostBees) {
    const expected = Math.ceil((mites * fewest) / bees);
    const enough = beesUnderLevel(poissonLimits(expected, 0.95).high, levelPer100);
    if (enough <= fewest) return fewest;
    const lastOfStep = mites === 0 ? Infinity : Math.floor((expected * bees) / mites);
    fewest = enough <= lastOfStep ? enough : lastOfStep + 1;
  }
  return undefined;
}

/** The first whole number of bees at which `limit` mites are under the level. */
function beesUnderLevel(limit: number, levelPer100: number): number {
  return Math.floor((limit * 100) / levelPer100) + 1;
}
