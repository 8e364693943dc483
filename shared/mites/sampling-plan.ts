/**
 * Sampling plan: how many bees must be examined to find at least one infested bee, and how many colonies to sample. Bees: ln(1 - D) /
 * ln(1 - P), rounded up, for an infested share P and a certainty D. Holds for bees picked at random from one well-mixed colony. Mites on
 * brood are not counted. Source: COLOSS BEEBOOK vol. II, statistics chapter (Pirk et al. 2013, J. Apic. Res. 52(4)), section 2.2. The
 * caller passes two published habits for the number of colonies, the lower and the higher. Units: per cent, bees, colonies.
 */
import { ok, err, type Result } from '../result.ts';

export type SamplingPlan = {
  readonly beesNeeded: number;
  readonly missedChancePercent: number;
  /** Absent where the number of colonies is unknown. */
  readonly coloniesLeast?: number;
  readonly coloniesMost?: number;
};

export type SamplingReason = 'impossible-share' | 'impossible-certainty' | 'no-colonies' | 'colonies-not-whole';

export function samplingPlan(
  asked: { sharePercent: number; certaintyPercent: number; colonies?: number },
  habit: { coloniesLeast: number; coloniesMost: number },
): Result<SamplingPlan, SamplingReason> {
  const { sharePercent, certaintyPercent, colonies } = asked;
  if (!(sharePercent > 0 && sharePercent <= 100)) return err('impossible-share');
  if (!(certaintyPercent > 0 && certaintyPercent < 100)) return err('impossible-certainty');
  if (colonies !== undefined && !(colonies > 0)) return err('no-colonies');
  if (colonies !== undefined && !Number.isInteger(colonies)) return err('colonies-not-whole');
  const beesNeeded = beesToMeetOne(sharePercent, certaintyPercent);
  const missedChancePercent = missedChance(sharePercent, beesNeeded);
  if (colonies === undefined) return ok({ beesNeeded, missedChancePercent });
  const coloniesLeast = Math.min(colonies, habit.coloniesLeast);
  return ok({ beesNeeded, missedChancePercent, coloniesLeast, coloniesMost: Math.min(colonies, habit.coloniesMost) });
}

/** The chance in per cent that none of `bees` is infested. */
export function missedChance(sharePercent: number, bees: number): number {
  return 100 * Math.exp(bees * Math.log1p(-sharePercent / 100));
}

/** Ignores rounding errors in the last digits, so that a whole quotient stays whole. */
function beesToMeetOne(sharePercent: number, certaintyPercent: number): number {
  const exact = Math.log1p(-certaintyPercent / 100) / Math.log1p(-sharePercent / 100);
  return Math.max(1, Math.ceil(exact * (1 - 1e-12)));
}
