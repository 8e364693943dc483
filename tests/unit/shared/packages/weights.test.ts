import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { tQuantile } from '../../../../shared/numbers/student-t.ts';
import { checkWeights } from '../../../../shared/packages/weight-check.ts';
import { packagesToWeigh, planFor, toleranceG, type WeightRule } from '../../../../shared/packages/weight-rule.ts';
import { near } from '../../../near.ts';
import { frozen, rows } from '../../../rows.ts';
import { checks, eu, factors, ca, rules, sampleErrors, sampleSizes, tolerances, us } from '../../../tables/weights.ts';

rows('tolerance', tolerances, ({ rule, labelG }, { grams }) => assert.equal(toleranceG(rules[rule], labelG), grams));
rows('sample size', sampleSizes, ({ rule, lot }, { needed }) => {
  const plan = planFor(rules[rule], lot);
  assert.equal(plan && packagesToWeigh(plan.weigh, lot), needed);
});
rows('factor t over root n', factors, ({ share, n }, { factor }) => near(tQuantile(share, n - 1) / Math.sqrt(n), factor, 0.00051));
rows('check', checks, ({ rule, shift }, expect) => {
  const found = check(
    rules[rule],
    48,
    sampleErrors.map((error) => error + shift),
  );
  near(found.meanErrorG, expect.mean, 1e-9);
  near(found.limitG, expect.limit, 0.002);
  near(found.spreadG, 2.939, 0.0005);
  assert.equal(found.verdict, expect.verdict);
  assert.equal(found.shortTwice, expect.shortTwice);
});

function check(rule: WeightRule, lot: number, errors: readonly number[], labelG = 454) {
  const found = checkWeights(frozen({ labelG, lot, weightsG: errors.map((error) => labelG + error) }), rule);
  assert.ok(found.ok, JSON.stringify(found));
  return found.value;
}

test('eu: a small lot is weighed whole, and its mean is compared with the label directly', () => {
  assert.equal(check(eu, 12, sampleErrors).verdict, 'fails');
  assert.equal(
    check(
      eu,
      12,
      sampleErrors.map((error) => error + 1.5),
    ).verdict,
    'passes',
  );
  const oneShort = [-14, ...Array.from({ length: 19 }, () => 1)];
  assert.deepEqual([check(eu, 20, oneShort).shortOnce, check(eu, 20, oneShort).verdict], [1, 'passes']);
  assert.equal(check(eu, 19, oneShort.slice(0, 19)).tests.short, 'fails');
  assert.equal(check(eu, 20, [-28, ...Array.from({ length: 19 }, () => 2)]).tests.shortTwice, 'fails');
});

test('eu: a larger lot needs the sample of its count test too', () => {
  const thirty = check(
    eu,
    200,
    Array.from({ length: 30 }, (_, index) => index % 3),
  );
  assert.deepEqual(
    [thirty.sampleNeeded, thirty.shortSampleNeeded, thirty.tests.mean, thirty.tests.short, thirty.verdict],
    [30, 50, 'passes', 'too-few', 'too-few'],
  );
  const fifty = (short: number) =>
    check(
      eu,
      200,
      Array.from({ length: 50 }, (_, index) => (index < short ? -14 : 3)),
    );
  assert.equal(fifty(3).verdict, 'passes');
  assert.equal(fifty(4).verdict, 'fails');
});

test('ca: one package may be short by more than twice the tolerance, two may not', () => {
  const twelve = (short: number) =>
    check(
      ca,
      48,
      Array.from({ length: 12 }, (_, index) => (index < short ? -13 : 6)),
    );
  assert.deepEqual([twelve(1).shortTwice, twelve(1).verdict], [1, 'passes']);
  assert.deepEqual([twelve(2).shortTwice, twelve(2).verdict], [2, 'fails']);
});

test('exactly at the tolerance is not short', () => {
  assert.equal(
    check(
      eu,
      12,
      Array.from({ length: 12 }, (_, index) => (index === 0 ? -13.7 : 5)),
    ).shortOnce,
    0,
  );
  assert.equal(
    check(
      us,
      48,
      Array.from({ length: 12 }, () => 0),
    ).verdict,
    'passes',
  );
});

test('the result names the reason for wrong input, with its row', () => {
  const reason = (labelG: number, lot: number, weightsG: number[], rule = us) => {
    const found = checkWeights({ labelG, lot, weightsG }, rule);
    return found.ok ? 'a check' : { reason: found.reason, row: found.row };
  };
  assert.deepEqual(reason(0, 48, [454]), { reason: 'no-label', row: undefined });
  assert.deepEqual(reason(454, 0, [454]), { reason: 'no-lot', row: undefined });
  assert.deepEqual(reason(454, 4.5, [454]), { reason: 'lot-not-whole', row: undefined });
  assert.deepEqual(reason(454, 48, []), { reason: 'no-weights', row: undefined });
  assert.deepEqual(reason(454, 48, [454, -1]), { reason: 'impossible-weight', row: 2 });
  assert.deepEqual(reason(454, 48, [454, NaN]), { reason: 'impossible-weight', row: 2 });
  assert.deepEqual(reason(454, 2, [454, 454, 454]), { reason: 'more-weights-than-lot', row: undefined });
  assert.deepEqual(reason(454, 9000, [454], ca), { reason: 'lot-not-in-rule', row: undefined });
});

const errors = fc.array(
  fc.integer({ min: -300, max: 300 }).map((tenths) => tenths / 10),
  { minLength: 1, maxLength: 24 },
);

test('one weight and many: no NaN, and lighter packages never pass where heavier ones failed', () => {
  fc.assert(
    fc.property(errors, fc.integer({ min: 24, max: 400 }), fc.constantFrom(eu, ca, us), (list, lot, rule) => {
      const found = check(rule, lot, list);
      for (const value of Object.values(found)) assert.ok(typeof value !== 'number' || Number.isFinite(value));
      assert.equal(
        found.verdict === 'too-few',
        list.length < Math.max(found.sampleNeeded, found.shortSampleNeeded ?? 0) || (list.length < 2 && found.limitG === undefined),
      );
      const lighter = check(
        rule,
        lot,
        list.map((error) => error - 2),
      );
      if (found.verdict === 'fails') assert.equal(lighter.verdict, 'fails');
      if (found.shortTwice !== undefined)
        assert.ok((lighter.shortTwice ?? 0) >= found.shortTwice && (found.shortOnce ?? 0) >= found.shortTwice);
    }),
  );
});
