/**
 * Bisection: finds where a rising function passes 0 between two ends, to the last digit of a floating-point number. Throws where the
 * function does not pass 0 between them.
 */
export function bisect(rising: (x: number) => number, low: number, high: number): number {
  if (!(rising(low) <= 0 && rising(high) >= 0)) {
    throw new RangeError(`bisect: needs a sign change between ${low} and ${high}`);
  }
  let [below, above] = [low, high];
  for (let round = 0; round < 200; round += 1) {
    const middle = below + (above - below) / 2;
    if (middle === below || middle === above) break;
    if (rising(middle) < 0) below = middle;
    else above = middle;
  }
  return above;
}
