import type { WeightRule } from '../../shared/packages/weight-rule.ts';
import type { SourcedRow } from '../rows.ts';

/** Directive 76/211/EEC, annexes; UK SI 2006/659, schedule 2; factors by the packers' guide. */
export const eu: WeightRule = {
  lots: [
    { from: 1, to: 99, weigh: 'all', mean: 'plain', shortTest: { weigh: 'all', mostShort: { shareOfLot: 0.05 } } },
    { from: 100, to: 500, weigh: 30, mean: 'with-chance', shortTest: { weigh: 50, mostShort: 3 } },
    { from: 501, to: 3200, weigh: 50, mean: 'with-chance', shortTest: { weigh: 80, mostShort: 5 } },
    { from: 3201, to: 1_000_000, weigh: 50, mean: 'with-chance', shortTest: { weigh: 125, mostShort: 7 } },
  ],
  tolerances: [
    { fromG: 5, belowG: 50, percent: 9 }, { fromG: 50, belowG: 100, grams: 4.5 }, { fromG: 100, belowG: 200, percent: 4.5 },
    { fromG: 200, belowG: 300, grams: 9 }, { fromG: 300, belowG: 500, percent: 3 }, { fromG: 500, belowG: 1000, grams: 15 },
    { fromG: 1000, belowG: 10_000, percent: 1.5 },
  ],
  tolerancesRoundUpToG: 0.1,
  certainty: 0.995,
  mostShortTwice: 0,
};

/** Canada, Safe Food for Canadians Regulations, SOR/2018-108, s. 200 and schedule 5. */
export const ca: WeightRule = {
  lots: [
    { from: 2, to: 10, weigh: 'all', mean: 'with-chance' },
    { from: 11, to: 128, weigh: { share: 0.25, least: 10 }, mean: 'with-chance' },
    { from: 129, to: 4000, weigh: 32, mean: 'with-chance' },
    { from: 4001, to: 8000, weigh: 64, mean: 'with-chance' },
  ],
  tolerances: [
    { fromG: 1, belowG: 60, percent: 10 }, { fromG: 60, belowG: 600, grams: 6 }, { fromG: 600, belowG: 1000, percent: 1 },
    { fromG: 1000, belowG: 1500, grams: 10 }, { fromG: 1500, belowG: 3000, percent: 0.66 }, { fromG: 3000, belowG: 4000, grams: 20 },
    { fromG: 4000, belowG: 10_000, percent: 0.5 },
  ],
  certainty: 0.995,
  mostShortTwice: 1,
};

/** NIST Handbook 133; its table of sample sizes from memory, its allowed variations left out. */
export const us: WeightRule = {
  lots: [
    { from: 2, to: 11, weigh: 'all', mean: 'with-chance' },
    { from: 12, to: 250, weigh: 12, mean: 'with-chance' },
    { from: 251, to: 3200, weigh: 24, mean: 'with-chance' },
    { from: 3201, to: 1_000_000, weigh: 48, mean: 'with-chance' },
  ],
  tolerances: [],
  certainty: 0.975,
};

export const rules = { eu, ca, us };
type RuleName = keyof typeof rules;

const directive = { from: 'Directive 76/211/EEC, annex I, tolerable negative error; UK SI 2006/659, schedule 2', basis: 'published' } as const;
const canada = { from: 'Canada, SOR/2018-108, schedule 5', basis: 'published' } as const;
const handbook = { from: 'NIST Handbook 133, sampling plans (table from memory)', basis: 'memory' } as const;

export const tolerances: SourcedRow<{ rule: RuleName; labelG: number }, { grams: number | undefined }>[] = [
  { case: 'eu 30 g, 9 %', given: { rule: 'eu', labelG: 30 }, expect: { grams: 2.7 }, ...directive, basis: 'derived' },
  { case: 'eu 50 g', given: { rule: 'eu', labelG: 50 }, expect: { grams: 4.5 }, ...directive },
  { case: 'eu 150 g, 4.5 % rounded up', given: { rule: 'eu', labelG: 150 }, expect: { grams: 6.8 }, ...directive, basis: 'derived' },
  { case: 'eu 250 g', given: { rule: 'eu', labelG: 250 }, expect: { grams: 9 }, ...directive },
  { case: 'eu 454 g, rounded up', given: { rule: 'eu', labelG: 454 }, expect: { grams: 13.7 }, ...directive, basis: 'derived' },
  { case: 'eu 750 g', given: { rule: 'eu', labelG: 750 }, expect: { grams: 15 }, ...directive },
  { case: 'eu 1,361 g, a 3 lb package', given: { rule: 'eu', labelG: 1361 }, expect: { grams: 20.5 }, ...directive, basis: 'derived' },
  { case: 'ca 454 g', given: { rule: 'ca', labelG: 454 }, expect: { grams: 6 }, ...canada },
  { case: 'ca 800 g, 1 %', given: { rule: 'ca', labelG: 800 }, expect: { grams: 8 }, ...canada, basis: 'derived' },
  { case: 'ca 1,361 g', given: { rule: 'ca', labelG: 1361 }, expect: { grams: 10 }, ...canada },
  { case: 'ca 2,000 g, 0.66 %', given: { rule: 'ca', labelG: 2000 }, expect: { grams: 13.2 }, ...canada, basis: 'derived' },
  { case: 'us: no figure held', given: { rule: 'us', labelG: 454 }, expect: { grams: undefined }, ...handbook },
];

export const sampleSizes: SourcedRow<{ rule: RuleName; lot: number }, { needed: number }>[] = [
  { case: 'eu 48: all', given: { rule: 'eu', lot: 48 }, expect: { needed: 48 }, ...directive },
  { case: 'eu 100', given: { rule: 'eu', lot: 100 }, expect: { needed: 30 }, ...directive },
  { case: 'eu 501', given: { rule: 'eu', lot: 501 }, expect: { needed: 50 }, ...directive },
  { case: 'ca 10: all', given: { rule: 'ca', lot: 10 }, expect: { needed: 10 }, ...canada },
  { case: 'ca 11: at least 10', given: { rule: 'ca', lot: 11 }, expect: { needed: 10 }, ...canada, basis: 'derived' },
  { case: 'ca 48: a quarter', given: { rule: 'ca', lot: 48 }, expect: { needed: 12 }, ...canada, basis: 'derived' },
  { case: 'ca 49: a quarter, rounded up', given: { rule: 'ca', lot: 49 }, expect: { needed: 13 }, ...canada, basis: 'derived' },
  { case: 'ca 129', given: { rule: 'ca', lot: 129 }, expect: { needed: 32 }, ...canada },
  { case: 'us 11: all', given: { rule: 'us', lot: 11 }, expect: { needed: 11 }, ...handbook },
  { case: 'us 48', given: { rule: 'us', lot: 48 }, expect: { needed: 12 }, ...handbook },
  { case: 'us 251', given: { rule: 'us', lot: 251 }, expect: { needed: 24 }, ...handbook },
];

/** t over root n, as printed or computed by others. */
export const factors: SourcedRow<{ share: number; n: number }, { factor: number }>[] = [
  ...[8.985, 2.484, 1.591, 1.242, 1.049, 0.925, 0.836, 0.769, 0.715, 0.672].map((factor, index) => ({
    case: `us n ${index + 2}`, given: { share: 0.975, n: index + 2 }, expect: { factor }, from: 'NIST Handbook 133 factors, recomputed independently', basis: 'recomputed' as const,
  })),
  { case: 'us n 12', given: { share: 0.975, n: 12 }, expect: { factor: 0.635 }, from: 'NIST Handbook 133 factors, recomputed independently', basis: 'recomputed' },
  { case: 'us n 24', given: { share: 0.975, n: 24 }, expect: { factor: 0.422 }, from: 'NIST Handbook 133 factors, recomputed independently', basis: 'recomputed' },
  { case: 'eu n 30', given: { share: 0.995, n: 30 }, expect: { factor: 0.503 }, from: 'UK packers guide, lots of 100 to 500, k', basis: 'published' },
  { case: 'eu n 50', given: { share: 0.995, n: 50 }, expect: { factor: 0.379 }, from: 'UK packers guide, lots over 500, k', basis: 'published' },
  { case: 'ca n 12', given: { share: 0.995, n: 12 }, expect: { factor: 0.897 }, from: 'SOR/2018-108, t at 0.995, computed independently', basis: 'recomputed' },
  { case: 'ca n 32', given: { share: 0.995, n: 32 }, expect: { factor: 0.485 }, from: 'SOR/2018-108, t at 0.995, computed independently', basis: 'recomputed' },
];

export const sampleErrors = [-3, 2, -5, 1, 0, -4, 3, -6, -2, 1, -1, -4];
const vector = { from: 'derived: one sample of twelve on a label of 454 g, lot 48', basis: 'derived' } as const;

export const checks: SourcedRow<{ rule: RuleName; shift: number }, { mean: number; limit: number; verdict: string; shortTwice?: number }>[] = [
  { case: 'us as weighed', given: { rule: 'us', shift: 0 }, expect: { mean: -1.5, limit: 1.867, verdict: 'passes' }, ...vector },
  { case: 'us, each 1 g less', given: { rule: 'us', shift: -1 }, expect: { mean: -2.5, limit: 1.867, verdict: 'fails' }, ...vector },
  { case: 'ca as weighed', given: { rule: 'ca', shift: 0 }, expect: { mean: -1.5, limit: 2.635, verdict: 'passes', shortTwice: 0 }, ...vector },
  { case: 'ca, each 1 g less: passes where the us test fails', given: { rule: 'ca', shift: -1 }, expect: { mean: -2.5, limit: 2.635, verdict: 'passes', shortTwice: 0 }, ...vector },
  { case: 'ca, each 2 g less', given: { rule: 'ca', shift: -2 }, expect: { mean: -3.5, limit: 2.635, verdict: 'fails', shortTwice: 0 }, ...vector },
  { case: 'eu: a lot of 48 is weighed whole', given: { rule: 'eu', shift: 0 }, expect: { mean: -1.5, limit: 0, verdict: 'too-few', shortTwice: 0 }, ...vector },
];
