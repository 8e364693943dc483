/**
 * Normal distribution: its density, and the share below a value. The share uses the series of Abramowitz & Stegun 26.2.11, accurate to
 * 1e-15 out to 8. Beyond 8 it is 0 or 1.
 */
export function normalDensity(z: number): number {
  return Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
}

export function normalShareBelow(z: number): number {
  if (Math.abs(z) > 8) return z > 0 ? 1 : 0;
  let term = z;
  let sum = z;
  for (let k = 3; Math.abs(term) > Math.abs(sum) * 1e-17; k += 2) {
    term *= (z * z) / k;
    sum += term;
  }
  return 0.5 + sum * normalDensity(z);
}
