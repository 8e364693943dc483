/**
 * Poisson distribution: chances of a count, and the exact confidence limits of its mean. Each limit is the mean at which so many or
 * fewer, or so many or more, have half of the remaining chance (two-sided). Does not hold for counts that clump, such as several colonies
 * together. Source: F. Garwood 1936, Fiducial limits for the Poisson distribution, Biometrika 28:437-442. Unit: a count.
 */
import { bisect } from './bisect.ts';

/** The chance of `count` or fewer where `mean` are expected. The sum runs away from the peak, so that only tiny terms are lost. */
export function chanceOfAtMost(count: number, mean: number): number {
  if (count < 0) return 0;
  if (mean === 0) return 1;
  return count < mean ? sumDown(count, mean) : 1 - sumUp(count + 1, mean);
}

function sumDown(count: number, mean: number): number {
  let term = chanceOf(count, mean);
  let sum = term;
  for (let k = count; k > 0 && term > sum * 1e-17; k -= 1) {
    term *= k / mean;
    sum += term;
  }
  return sum;
}

function sumUp(count: number, mean: number): number {
  let term = chanceOf(count, mean);
  let sum = term;
  for (let k = count + 1; term > sum * 1e-17; k += 1) {
    term *= mean / k;
    sum += term;
  }
  return sum;
}

function chanceOf(count: number, mean: number): number {
  return Math.exp(count * Math.log(mean) - mean - logFactorial(count));
}

/** `certainty` is a share: 0.95 for 95 %. The low limit of a count of 0 is 0. */
export function poissonLimits(count: number, certainty: number): { low: number; high: number } {
  if (!Number.isInteger(count) || count < 0) throw new RangeError(`poissonLimits: needs a whole count, got ${count}`);
  if (!(certainty > 0 && certainty < 1)) throw new RangeError(`poissonLimits: needs a certainty between 0 and 1, got ${certainty}`);
  const tail = (1 - certainty) / 2;
  const far = count + 10 - 2 * Math.log(tail) * (1 + Math.sqrt(count));
  const high = bisect((mean) => tail - chanceOfAtMost(count, mean), count, far);
  const low = count === 0 ? 0 : bisect((mean) => 1 - chanceOfAtMost(count - 1, mean) - tail, 0, count);
  return { low, high };
}

/** Uses Stirling's series from 20 on, where its first omitted term is below 1e-11, and the plain sum below that. */
function logFactorial(count: number): number {
  if (count < 20) {
    let sum = 0;
    for (let k = 2; k <= count; k += 1) sum += Math.log(k);
    return sum;
  }
  const x = count + 1;
  return (x - 0.5) * Math.log(x) - x + 0.5 * Math.log(2 * Math.PI) + 1 / (12 * x) - 1 / (360 * x ** 3) + 1 / (1260 * x ** 5);
}
