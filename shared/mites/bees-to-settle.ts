/**
 * The sample size that would settle an unsure mite count: the number of bees that puts the same rate surely below the level. The answer
 * is the smallest whole number, starting from the bees counted. At that number the exact upper limit of the expected mites (rounded up)
 * is below the level. There is no answer where more than `mostBees` would be needed, because no colony should give so many. Only for a
 * sample whose rate is below the level. Exact limits: Garwood 1936. The rule itself is ours. Unit: bees.
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

/** The smallest whole number of bees at which `limit` mites are below the level. */
function beesUnderLevel(limit: number, levelPer100: number): number {
  return Math.floor((limit * 100) / levelPer100) + 1;
}
