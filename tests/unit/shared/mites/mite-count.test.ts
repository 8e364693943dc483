import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { levelFor, type ActionLevel } from '../../../../shared/mites/action-level.ts';
import { judgeMiteCount, type MiteCountInput } from '../../../../shared/mites/mite-count.ts';
import { isOnlyCorrected, verdictOf, worstVerdict } from '../../../../shared/mites/verdict.ts';
import { formatAgainst } from '../../../../shared/numbers/show-number.ts';
import { near } from '../../../near.ts';
import { frozen } from '../../../rows.ts';
import { growth } from '../../../tables/mites.ts';

const usual = { hasBrood: true, growth, mostBees: 3000 };

function count(samples: [mites: number, bees: number][], rest: Partial<MiteCountInput> = {}) {
  const labelled = samples.map(([mites, bees], index) => ({ label: 'ABCDEFGHIJ'[index] ?? '?', mites, bees }));
  const result = judgeMiteCount(frozen({ samples: labelled, levelPer100: 3, ...usual, ...rest }));
  assert.ok(result.ok);
  return result.value;
}

test('a rate at the level gives the careful verdict, and the printed figure agrees', () => {
  assert.equal(count([[9, 300]]).verdict, 'act');
  assert.equal(count([[8, 267]]).verdict, 'unsure');
  assert.equal(count([[29, 1000]]).verdict, 'unsure');
  assert.equal(count([[0, 300]]).verdict, 'below');
  assert.equal(count([[0, 300]], { levelPer100: 1 }).verdict, 'unsure');
  assert.equal(formatAgainst(count([[8, 267]]).colonies[0]?.per100 ?? 0, 3, 1), '2.996');
});

test('with level 1 and 300 bees no verdict is below', () => {
  for (let mites = 0; mites < 20; mites += 1) assert.notEqual(count([[mites, 300]], { levelPer100: 1 }).verdict, 'below');
});

test('a colony that needs action at once is named by its counted rate', () => {
  const result = count(
    [
      [9, 300],
      [6, 300],
      [8, 267],
    ],
    { levelPer100: 2, atOncePer100: 3 },
  );
  assert.deepEqual([result.verdict, result.coloniesToAct, result.coloniesAtOnce], ['act', ['A', 'B', 'C'], ['A']]);
  assert.deepEqual(count([[9, 300]], { levelPer100: 2 }).coloniesAtOnce, []);
});

test('the average does not hide one colony over the level', () => {
  const result = count([
    [12, 300],
    [0, 300],
    [0, 300],
    [1, 300],
  ]);
  assert.ok((result.apiary?.per100 ?? 9) < 3);
  assert.equal(result.verdict, 'act');
  assert.deepEqual(result.coloniesToAct, ['A']);
  assert.equal(result.toSettle, undefined);
});

test('the apiary has a rate from two colonies and a range from four', () => {
  assert.equal(count([[4, 300]]).apiary, undefined);
  const three = count([
    [2, 300],
    [1, 300],
    [0, 300],
  ]).apiary;
  assert.deepEqual([three?.range, three?.highPer100, three?.verdict], ['too-few-colonies', undefined, 'below']);
  const four = count([
    [2, 300],
    [1, 300],
    [0, 300],
    [3, 300],
  ]).apiary;
  assert.equal(four?.range, 'log-limits');
  assert.ok((four?.lowPer100 ?? 9) < (four?.per100 ?? 0) && (four?.highPer100 ?? 0) > (four?.per100 ?? 9));
});

test('without any mites the range goes from 0 to the exact limit of all bees together', () => {
  const zero = count(
    [
      [0, 300],
      [0, 300],
      [0, 300],
      [0, 300],
    ],
    { levelPer100: 1 },
  );
  assert.equal(zero.apiary?.range, 'all-zero');
  assert.equal(zero.apiary?.lowPer100, 0);
  near(zero.apiary?.highPer100, 0.3074, 5e-5);
  assert.equal(zero.apiary?.verdict, 'below');
  assert.equal(zero.verdict, 'unsure');
  assert.deepEqual(zero.toSettle, { label: 'A', bees: 369 });
  assert.deepEqual(count([[0, 300]]).weeks, { state: 'no-mites', soonestWeeks: 3 });
});

test('only an unsure colony needs more bees, and the neediest decides', () => {
  assert.deepEqual(
    count([
      [4, 300],
      [5, 300],
      [0, 300],
    ]).toSettle,
    { label: 'B', bees: 657 },
  );
  assert.deepEqual(count([[8, 300]]).toSettle, { label: 'A', bees: 'too-many' });
  assert.equal(count([[0, 300]]).toSettle, undefined);
});

test('a correction for missed mites can only make the verdict more careful', () => {
  const corrected = count([[12, 1000]], { levelPer100: 2.2, recoveryPercent: 50 });
  assert.equal(corrected.verdict, 'unsure');
  assert.equal(corrected.colonies[0]?.onlyCorrected, true);
  assert.equal(corrected.colonies[0]?.beesToSettle, undefined);
  assert.equal(count([[12, 1000]], { levelPer100: 2.2 }).verdict, 'below');
  assert.equal(isOnlyCorrected({ per100: 1, highPer100: 2.5, per100Corrected: 2.4 }, 2.2), false);
});

test('without a level there are rates and no verdict', () => {
  const result = judgeMiteCount({ samples: [{ label: 'A', mites: 9, bees: 300 }], ...usual });
  assert.ok(result.ok);
  assert.equal(result.value.verdict, undefined);
  assert.equal(result.value.colonies[0]?.per100, 3);
  assert.deepEqual(result.value.weeks, { state: 'no-level' });
});

test('weeks follow from the highest limit and the highest rate of any colony', () => {
  const weeks = count(
    [
      [1, 300],
      [0, 100],
    ],
    { levelPer100: 10 },
  ).weeks;
  assert.deepEqual(weeks, {
    state: 'weeks',
    soonestWeeks: Math.floor(Math.log(10 / 3.6889) / 0.036 / 7),
    latestWeeks: Math.ceil(Math.log(30) / 0.015 / 7),
  });
});

test('one bad row is named and there is no result', () => {
  const result = judgeMiteCount({
    samples: [
      { label: 'A', mites: 9, bees: 300 },
      { label: 'Hive 7', mites: 1, bees: 0 },
    ],
    levelPer100: 3,
    ...usual,
  });
  assert.deepEqual(result, { ok: false, reason: 'no-bees', row: 2, text: 'Hive 7' });
  assert.deepEqual(judgeMiteCount({ samples: [], ...usual }), { ok: false, reason: 'no-samples' });
});

test('the strictest level for the phase is used', () => {
  const levels: ActionLevel[] = frozen([
    { levelPer100: 3, phases: ['main-flow', 'dearth'] },
    { levelPer100: 1, phases: ['build-up', 'swarming'] },
    { levelPer100: 2, phases: ['dearth'] },
  ]);
  assert.equal(levelFor(levels, 'main-flow')?.levelPer100, 3);
  assert.equal(levelFor(levels, 'dearth')?.levelPer100, 2);
  assert.equal(levelFor(levels)?.levelPer100, 1);
  assert.equal(levelFor(levels, 'winter-rest'), undefined);
  assert.equal(levelFor([], 'dearth'), undefined);
});

test('the worst verdict of several wins; a level of zero throws', () => {
  assert.equal(worstVerdict(['below', 'unsure', 'below']), 'unsure');
  assert.equal(worstVerdict(['unsure', 'act']), 'act');
  assert.equal(worstVerdict(['below']), 'below');
  assert.throws(() => verdictOf({ per100: 1 }, 0), /verdictOf: needs a level over 0, got 0/);
});

const sample = fc.tuple(fc.oneof(fc.nat(30), fc.constant(0)), fc.integer({ min: 50, max: 600 }));
const level = fc.constantFrom(1, 2, 3, 5, 10);

test('figure, range and verdict never contradict each other, for any count', () => {
  fc.assert(
    fc.property(
      fc.array(sample, { minLength: 1, maxLength: 10 }),
      level,
      fc.integer({ min: 40, max: 100 }),
      (samples, levelPer100, recoveryPercent) => {
        const result = count(samples, { levelPer100, recoveryPercent });
        for (const { per100, highPer100, verdict } of result.colonies) {
          assert.equal(verdict === 'act', per100 >= levelPer100);
          if (verdict === 'below') assert.ok(highPer100 < levelPer100);
          assert.equal(Number(formatAgainst(per100, levelPer100, 1)) >= levelPer100, verdict === 'act');
        }
        assert.equal(result.coloniesToAct.length > 0 || result.apiary?.verdict === 'act', result.verdict === 'act');
        assert.equal(result.weeks.state === 'already-there', result.coloniesToAct.length > 0);
        assert.doesNotMatch(JSON.stringify(result), /null|NaN|Infinity/);
      },
    ),
    { numRuns: 300 },
  );
});

test('more mites, or a worse wash, never make the verdict milder', () => {
  const rank = { below: 0, unsure: 1, act: 2 } as const;
  const of = (samples: [number, number][], rest: Partial<MiteCountInput>) => rank[count(samples, rest).verdict ?? 'below'];
  fc.assert(
    fc.property(fc.array(sample, { minLength: 1, maxLength: 3 }), level, fc.integer({ min: 1, max: 20 }), (samples, levelPer100, more) => {
      const worse = samples.map(([mites, bees]): [number, number] => [mites + more, bees]);
      assert.ok(of(worse, { levelPer100 }) >= of(samples, { levelPer100 }));
      assert.ok(of(samples, { levelPer100, recoveryPercent: 100 - more }) >= of(samples, { levelPer100 }));
      assert.ok(of(samples, { levelPer100: levelPer100 + 1 }) <= of(samples, { levelPer100 }));
    }),
    { numRuns: 300 },
  );
});
