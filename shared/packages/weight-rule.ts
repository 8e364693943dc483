/**
 * What a law on net contents says, as data handed in with its source and date: how many to weigh out of how many, how much a single
 * package may be short, and how the mean is tested. Nothing of any law is written here. Unit: grams, packages.
 */
export type Tolerance = {
  readonly fromG: number;
  readonly belowG: number;
  /** One of the two. */
  readonly percent?: number;
  readonly grams?: number;
};

/** For lots from `from` to `to` packages, both included. */
export type LotPlan = {
  readonly from: number;
  readonly to: number;
  /** All of them, a number, or a share of the lot rounded up with a least. */
  readonly weigh: 'all' | number | { readonly share: number; readonly least: number };
  /** The mean against the label as it stands, or with room for the chance of the sample. */
  readonly mean: 'plain' | 'with-chance';
  /** The test that counts short packages, where there is one: how many to weigh and how many may be short. */
  readonly shortTest?: { readonly weigh: 'all' | number; readonly mostShort: number | { readonly shareOfLot: number } };
};

export type WeightRule = {
  readonly lots: readonly LotPlan[];
  readonly tolerances: readonly Tolerance[];
  readonly tolerancesRoundUpToG?: number;
  /** One-sided, for Student's t: 0.975 or 0.995. */
  readonly certainty: number;
  /** Packages short by more than twice the tolerance that may be among those weighed; absent where the rule has no such test. */
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

/** How much one package may be short, in grams; nothing where the rule has no row for this label. */
export function toleranceG(rule: WeightRule, labelG: number): number | undefined {
  const row = rule.tolerances.find(({ fromG, belowG }) => fromG <= labelG && labelG < belowG);
  if (!row) return undefined;
  const exact = row.grams ?? ((row.percent ?? 0) * labelG) / 100;
  const step = rule.tolerancesRoundUpToG;
  return step === undefined ? exact : Number((Math.ceil(exact / step - 1e-9) * step).toPrecision(12));
}
