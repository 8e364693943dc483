/**
 * A rule of law on net contents, as data with its source and date. It states how many packages to weigh, how much one may be short, and
 * how the mean is tested. No law is written in this file. Units: grams, packages.
 */
export type Tolerance = {
  readonly fromG: number;
  readonly belowG: number;
  /** Either `percent` or `grams`. */
  readonly percent?: number;
  readonly grams?: number;
};

/** For lots of `from` to `to` packages, both included. */
export type LotPlan = {
  readonly from: number;
  readonly to: number;
  /** All packages, a number, or a share of the lot rounded up with a minimum. */
  readonly weigh: 'all' | number | { readonly share: number; readonly least: number };
  /** Compares the mean with the label directly, or with an allowance for the chance of the sample. */
  readonly mean: 'plain' | 'with-chance';
  /** The count of short packages, where the rule has one: how many to weigh and how many may be short. */
  readonly shortTest?: { readonly weigh: 'all' | number; readonly mostShort: number | { readonly shareOfLot: number } };
};

export type WeightRule = {
  readonly lots: readonly LotPlan[];
  readonly tolerances: readonly Tolerance[];
  readonly tolerancesRoundUpToG?: number;
  /** One-sided, for Student's t: 0.975 or 0.995. */
  readonly certainty: number;
  /** How many weighed packages may be short by more than twice the tolerance. Absent where the rule has no such test. */
  readonly mostShortTwice?: number;
};

export function planFor(rule: WeightRule, lot: number): LotPlan | undefined {
  return rule.lots.find((plan) => plan.from <= lot && lot <= plan.to);
}

export function packagesToWeigh(weigh: LotPlan['weigh'], lot: number): number {
  if (weigh === 'all') return lot;
  if (typeof weigh === 'number') return Math.min(lot, weigh);
  return Math.min(lot, Math.max(weigh.least, Math.ceil(weigh.share * lot)));
}

/** How many grams one package may be short. Undefined where the rule has no row for this label. */
export function toleranceG(rule: WeightRule, labelG: number): number | undefined {
  const row = rule.tolerances.find(({ fromG, belowG }) => fromG <= labelG && labelG < belowG);
  if (!row) return undefined;
  const exact = row.grams ?? ((row.percent ?? 0) * labelG) / 100;
  const step = rule.tolerancesRoundUpToG;
  return step === undefined ? exact : Number((Math.ceil(exact / step - 1e-9) * step).toPrecision(12));
}
