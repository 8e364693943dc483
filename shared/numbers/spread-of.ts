/**
 * Five numbers that tell how far others lie apart: the lowest, the highest, the middle one, and the two that cut off a quarter at
 * either end. Between two neighbours the cut is taken in a straight line: definition 7 of R. J. Hyndman & Y. Fan, Sample quantiles in
 * statistical packages, The American Statistician 50 (1996) 361-365. One number alone is all five. None at all throws.
 */
export type Five = {
  readonly lowest: number;
  readonly quarter: number;
  readonly middle: number;
  readonly threeQuarters: number;
  readonly highest: number;
};

export function spreadOf(numbers: readonly number[]): Five {
  if (numbers.length === 0) throw new RangeError('spreadOf: needs at least one number');
  const sorted = [...numbers].sort((a, b) => a - b);
  const cut = (share: number): number => {
    const place = share * (sorted.length - 1);
    const below = Math.floor(place);
    return sorted[below]! + (place - below) * ((sorted[below + 1] ?? sorted[below]!) - sorted[below]!);
  };
  return { lowest: cut(0), quarter: cut(0.25), middle: cut(0.5), threeQuarters: cut(0.75), highest: cut(1) };
}
