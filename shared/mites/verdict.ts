/**
 * The verdict on a mite rate against an action level. `act`: the counted rate, unrounded, is at or over the level. `unsure`: its upper
 * limit is, or only the rate corrected for missed mites is. `below`: all others. A correction never makes a verdict milder, and never
 * makes it `act` by itself. Unit: mites per 100 bees.
 */
export type Verdict = 'below' | 'unsure' | 'act';

export type Judgement = {
  readonly per100: number;
  /** Absent where there is no range. */
  readonly highPer100?: number;
  readonly per100Corrected?: number;
};

export function verdictOf(rate: Judgement, levelPer100: number): Verdict {
  if (!(levelPer100 > 0)) throw new RangeError(`verdictOf: needs a level over 0, got ${levelPer100}`);
  if (rate.per100 >= levelPer100) return 'act';
  if (rate.highPer100 !== undefined && rate.highPer100 >= levelPer100) return 'unsure';
  return isOnlyCorrected(rate, levelPer100) ? 'unsure' : 'below';
}

/** The counted rate and its range are below the level, but the corrected rate is not. */
export function isOnlyCorrected(rate: Judgement, levelPer100: number): boolean {
  const counted = Math.max(rate.per100, rate.highPer100 ?? 0);
  return counted < levelPer100 && (rate.per100Corrected ?? 0) >= levelPer100;
}

export function worstVerdict(verdicts: readonly Verdict[]): Verdict {
  if (verdicts.includes('act')) return 'act';
  return verdicts.includes('unsure') ? 'unsure' : 'below';
}
