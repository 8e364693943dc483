/**
 * Student's t distribution for whole degrees of freedom: the share below a value, and the value for a share. Finite sums, exact except
 * for rounding. Source: Abramowitz & Stegun, Handbook of Mathematical Functions (1964), 26.7.3 and 26.7.4.
 */
import { bisect } from './bisect.ts';

export function shareBelowT(t: number, freedom: number): number {
  const within = chanceWithin(Math.abs(t), freedom);
  return t < 0 ? (1 - within) / 2 : (1 + within) / 2;
}

/** `share` is at least a half and below 1, such as 0.975. */
export function tQuantile(share: number, freedom: number): number {
  if (!(share >= 0.5 && share < 1)) throw new RangeError(`tQuantile: needs a share from 0.5 up to 1, got ${share}`);
  if (!Number.isInteger(freedom) || freedom < 1) {
    throw new RangeError(`tQuantile: needs whole degrees of freedom from 1, got ${freedom}`);
  }
  let far = 2;
  while (shareBelowT(far, freedom) < share) far *= 2;
  return bisect((t) => shareBelowT(t, freedom) - share, 0, far);
}

/** The chance that t lies between -t and +t. */
function chanceWithin(t: number, freedom: number): number {
  const angle = Math.atan(t / Math.sqrt(freedom));
  const cosine = Math.cos(angle);
  const odd = freedom % 2 === 1;
  let term = odd ? cosine : 1;
  let sum = freedom === 1 ? 0 : term;
  for (let k = odd ? 3 : 2; k < freedom; k += 2) {
    term *= (cosine * cosine * (k - 1)) / k;
    sum += term;
  }
  const part = Math.sin(angle) * sum;
  return odd ? ((angle + part) * 2) / Math.PI : part;
}
