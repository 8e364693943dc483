/**
 * Five-number summary: lowest, lower quartile, median, upper quartile, highest. Values between two neighbours are interpolated:
 * definition 7 of R. J. Hyndman & Y. Fan, Sample quantiles in statistical packages, The American Statistician 50 (1996) 361-365. A single
 * number is all five. An empty list throws.
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
