/**
 * One mite rate for several colonies together. Its range allows for mites that clump in some colonies. The rate is all mites over all
 * bees. The range is that of a ratio, on a log scale, so that it never falls below 0: R exp(+/- t SE / R), SE = sqrt(n/(n-1) sum (m - R
 * b)^2) / sum b, t with n-1 degrees of freedom. There is no range below `fewestForRange` colonies. Without any mites the range goes from
 * 0 to the exact upper limit of all bees together, which is the least careful range. Where all colonies have the same rate the range
 * shrinks to nothing, so look at the range of each colony.
 * Sources: W. G. Cochran, Sampling Techniques, 3rd ed. 1977, ch. 6 (ratio and its standard error; chapter from memory). The log limits
 * were checked by simulation and against the yards of Aurell, Bruckner, Steury & Williams 2025, J. Econ. Entomol., doi
 * 10.1093/jee/toaf126. Unit: mites per 100 bees. Validate the samples with `miteRate` first.
 */
import { poissonLimits } from '../numbers/poisson.ts';
import { tQuantile } from '../numbers/student-t.ts';
import { ratePer100, type MiteSample } from './rate.ts';

type Counts = Pick<MiteSample, 'mites' | 'bees'>;

export type ApiaryRate = {
  readonly per100: number;
  readonly range: 'log-limits' | 'all-zero' | 'too-few-colonies';
  readonly lowPer100?: number;
  readonly highPer100?: number;
  readonly per100Corrected?: number;
};

/** Below four colonies the spread between them cannot be distinguished from chance. */
const fewestForRange = 4;

export function apiaryRate(samples: readonly Counts[], recoveryPercent = 100): ApiaryRate {
  const mites = total(samples.map((sample) => sample.mites));
  const bees = total(samples.map((sample) => sample.bees));
  const rate = {
    per100: ratePer100(mites, bees),
    ...(recoveryPercent < 100 ? { per100Corrected: ratePer100(mites, bees, recoveryPercent) } : {}),
  };
  if (samples.length < fewestForRange) return { ...rate, range: 'too-few-colonies' };
  if (mites === 0) {
    return { ...rate, range: 'all-zero', lowPer100: 0, highPer100: ratePer100(poissonLimits(0, 0.95).high, bees) };
  }
  const factor = Math.exp(tQuantile(0.975, samples.length - 1) * relativeError(samples, mites, bees));
  return { ...rate, range: 'log-limits', lowPer100: rate.per100 / factor, highPer100: rate.per100 * factor };
}

/** SE / R. */
export function relativeError(samples: readonly Counts[], mites: number, bees: number): number {
  const squares = samples.map((sample) => (sample.mites - (mites * sample.bees) / bees) ** 2);
  return Math.sqrt((samples.length / (samples.length - 1)) * total(squares)) / mites;
}

function total(numbers: readonly number[]): number {
  return numbers.reduce((sum, number) => sum + number, 0);
}
