/**
 * A club's spot check of the net weights that it bought, by a published rule that the caller passes. The mean of the sample may be short
 * of the label only by the allowance for chance, t s / sqrt(n). Few packages may be short by more than the tolerance, and fewer by twice
 * the tolerance. This is not a legal inspection. Rules differ and can disagree about the same weights, and weights must be of live bees
 * without cage or can. Unit: grams throughout, as on the label. Errors are weight minus label, negative when short.
 */
import { ok, err, type Result, type Refused } from '../result.ts';
import { tQuantile } from '../numbers/student-t.ts';
import { packagesToWeigh, planFor, toleranceG, type LotPlan, type WeightRule } from './weight-rule.ts';

export type WeightTest = 'passes' | 'fails' | 'too-few';

export type WeightCheck = {
  readonly sampleNeeded: number;
  /** Sample size for the count of short packages, where the rule has one. */
  readonly shortSampleNeeded?: number;
  readonly meanErrorG: number;
  /** Standard deviation. Absent for a single weight. */
  readonly spreadG?: number;
  /** How far the mean may be below the label. */
  readonly limitG?: number;
  /** Absent where the rule has no tolerance for this label. */
  readonly toleranceG?: number;
  readonly shortOnce?: number;
  readonly shortTwice?: number;
  readonly tests: { readonly mean: WeightTest; readonly short?: WeightTest; readonly shortTwice?: WeightTest };
  readonly verdict: WeightTest;
};

export type WeightReason =
  'no-label' | 'no-lot' | 'lot-not-whole' | 'lot-not-in-rule' | 'no-weights' | 'impossible-weight' | 'more-weights-than-lot';

export function checkWeights(
  { labelG, lot, weightsG }: { labelG: number; lot: number; weightsG: readonly number[] },
  rule: WeightRule,
): Result<WeightCheck, WeightReason> {
  const wrong = checkInput(labelG, lot, weightsG);
  if (wrong) return wrong;
  const plan = planFor(rule, lot);
  if (!plan) return err('lot-not-in-rule');
  const sampleNeeded = packagesToWeigh(plan.weigh, lot);
  const mean = testMean(
    weightsG.map((weight) => weight - labelG),
    plan,
    rule,
    sampleNeeded,
  );
  const short = testShort(weightsG, labelG, lot, plan, rule);
  const tests = { mean: mean.test, ...short.tests };
  return ok({ sampleNeeded, ...mean.found, ...short.found, tests, verdict: worst(Object.values(tests)) });
}

function testMean(errorsG: readonly number[], plan: LotPlan, rule: WeightRule, needed: number) {
  const n = errorsG.length;
  const meanErrorG = errorsG.reduce((sum, error) => sum + error, 0) / n;
  const spreadG = n < 2 ? undefined : Math.sqrt(errorsG.reduce((sum, error) => sum + (error - meanErrorG) ** 2, 0) / (n - 1));
  const limitG =
    plan.mean === 'plain' ? 0 : spreadG === undefined ? undefined : (tQuantile(rule.certainty, n - 1) * spreadG) / Math.sqrt(n);
  const few = n < needed || limitG === undefined;
  const test: WeightTest = few ? 'too-few' : meanErrorG + limitG < -slackG ? 'fails' : 'passes';
  return { test, found: { meanErrorG, spreadG, limitG } };
}

function testShort(weightsG: readonly number[], labelG: number, lot: number, plan: LotPlan, rule: WeightRule) {
  const tolerance = toleranceG(rule, labelG);
  if (tolerance === undefined) return { tests: {}, found: {} };
  const shortBy = (times: number) => weightsG.filter((weight) => labelG - weight > times * tolerance + slackG).length;
  const [shortOnce, shortTwice] = [shortBy(1), shortBy(2)];
  const needed = plan.shortTest && packagesToWeigh(plan.shortTest.weigh, lot);
  const most = plan.shortTest?.mostShort;
  const allowed = typeof most === 'object' ? most.shareOfLot * lot : most;
  return {
    found: { toleranceG: tolerance, shortOnce, shortTwice, ...(needed === undefined ? {} : { shortSampleNeeded: needed }) },
    tests: {
      ...(needed === undefined || allowed === undefined ? {} : { short: testCount(weightsG.length, needed, shortOnce, allowed) }),
      ...(rule.mostShortTwice === undefined
        ? {}
        : { shortTwice: shortTwice > rule.mostShortTwice ? ('fails' as const) : ('passes' as const) }),
    },
  };
}

function testCount(weighed: number, needed: number, short: number, allowed: number): WeightTest {
  if (weighed < needed) return 'too-few';
  return short > allowed ? 'fails' : 'passes';
}

/** Too few weights settle nothing, whatever the other tests show. */
function worst(tests: readonly WeightTest[]): WeightTest {
  if (tests.includes('too-few')) return 'too-few';
  return tests.includes('fails') ? 'fails' : 'passes';
}

/** Allows for rounding errors in sums of decimals. A millionth of a gram is no shortage. */
const slackG = 1e-6;

const heaviestG = 100_000;

function checkInput(labelG: number, lot: number, weightsG: readonly number[]): Refused<WeightReason> | undefined {
  if (!(labelG > 0 && labelG <= heaviestG)) return err('no-label');
  if (!(lot > 0)) return err('no-lot');
  if (!Number.isSafeInteger(lot)) return err('lot-not-whole');
  if (weightsG.length === 0) return err('no-weights');
  const bad = weightsG.findIndex((weight) => !(weight > 0 && weight <= heaviestG));
  if (bad >= 0) return err('impossible-weight', { row: bad + 1 });
  return weightsG.length > lot ? err('more-weights-than-lot') : undefined;
}
