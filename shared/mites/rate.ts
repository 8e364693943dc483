/**
 * Mites per 100 bees of one sample, with the exact confidence limits of the count. The rate is a ratio of two counts, not a share: more
 * mites than bees is possible. The limits hold for well-mixed bees of one colony. They do not hold for pooled colonies, and they do not
 * show what a poor wash missed. Limits: Garwood 1936 (see numbers/poisson). Units: mites, bees, mites per 100 bees; recovery in per cent
 * of mites washed off.
 */
import { ok, err, type Result, type Refused } from '../result.ts';
import { poissonLimits } from '../numbers/poisson.ts';

export type MiteSample = { readonly label: string; readonly mites: number; readonly bees: number };

export type MiteRate = {
  readonly per100: number;
  readonly lowPer100: number;
  readonly highPer100: number;
  /** Only where the recovery is below 100 %. */
  readonly per100Corrected?: number;
};

export type SampleReason = 'no-bees' | 'bees-not-whole' | 'mites-not-whole' | 'mites-negative' | 'too-many' | 'impossible-recovery';

/** Larger numbers are typing errors, not samples. */
export const mostMitesInSample = 100_000;
export const mostBeesInSample = 1_000_000;

export function miteRate(
  sample: Pick<MiteSample, 'mites' | 'bees'>,
  recoveryPercent = 100,
  certainty = 0.95,
): Result<MiteRate, SampleReason> {
  const wrong = checkSample(sample);
  if (wrong) return wrong;
  if (!(recoveryPercent > 0 && recoveryPercent <= 100)) return err('impossible-recovery');
  const limits = poissonLimits(sample.mites, certainty);
  const per100 = ratePer100(sample.mites, sample.bees);
  const rate = { per100, lowPer100: ratePer100(limits.low, sample.bees), highPer100: ratePer100(limits.high, sample.bees) };
  return ok(recoveryPercent === 100 ? rate : { ...rate, per100Corrected: ratePer100(sample.mites, sample.bees, recoveryPercent) });
}

export function ratePer100(mites: number, bees: number, recoveryPercent = 100): number {
  return (10_000 * mites) / (recoveryPercent * bees);
}

export function checkSample({ mites, bees }: Pick<MiteSample, 'mites' | 'bees'>): Refused<SampleReason> | undefined {
  if (mites < 0) return err('mites-negative');
  if (!Number.isInteger(mites)) return err('mites-not-whole');
  if (!(bees > 0)) return err('no-bees');
  if (!Number.isInteger(bees)) return err('bees-not-whole');
  return mites > mostMitesInSample || bees > mostBeesInSample ? err('too-many') : undefined;
}
