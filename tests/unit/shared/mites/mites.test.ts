import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { poissonLimits } from '../../../../shared/numbers/poisson.ts';
import { tQuantile } from '../../../../shared/numbers/student-t.ts';
import { apiaryRate, relativeError } from '../../../../shared/mites/apiary-rate.ts';
import { beesToSettle } from '../../../../shared/mites/bees-to-settle.ts';
import { miteRate } from '../../../../shared/mites/rate.ts';
import { missedChance, samplingPlan } from '../../../../shared/mites/sampling-plan.ts';
import { mitesFallenPerDay } from '../../../../shared/mites/sticky-board.ts';
import { weeksToLevel } from '../../../../shared/mites/weeks-to-level.ts';
import { near } from '../../../near.ts';
import { frozen, rows } from '../../../rows.ts';
import * as tables from '../../../tables/mites.ts';

function rateOf(sample: { mites: number; bees: number }, recovery = 100) {
  const rate = miteRate(sample, recovery);
  assert.ok(rate.ok);
  return rate.value;
}

rows('mites per 100 bees', tables.rates, (sample, { per100, within }) => near(rateOf(sample).per100, per100, within));
rows('exact limits of a count', tables.countLimits, ({ count }, { low, high, within }) => {
  near(poissonLimits(count, 0.95).low, low, within);
  near(poissonLimits(count, 0.95).high, high, within);
});
rows('limits others print', tables.printedLimits, ({ count, certainty, exposure }, { low, high, within }) => {
  const found = poissonLimits(count, certainty);
  near(found.high / exposure, high, within);
  near(found.low / exposure, low ?? 0, within);
});
rows('limits of a sample', tables.sampleLimits, (sample, { low, high }) => {
  near(rateOf(sample).lowPer100, low, 0.005001);
  near(rateOf(sample).highPer100, high, 0.005001);
});
rows('corrected rate', tables.corrected, ({ recovery, ...sample }, { per100 }) =>
  near(rateOf(sample, recovery).per100Corrected, per100, 0.005),
);
rows('bees to settle', tables.settling, ({ level, mostBees, ...sample }, { bees }) =>
  assert.equal(beesToSettle(sample, level, mostBees), bees),
);
rows('bees to meet one', tables.bees, ({ share, certainty }, expect) => {
  const plan = samplingPlan({ sharePercent: share, certaintyPercent: certainty }, { coloniesLeast: 8, coloniesMost: 10 });
  assert.equal(plan.ok && plan.value.beesNeeded, expect.bees);
});
rows('chance to miss', tables.missed, ({ share, bees }, { percent }) => near(missedChance(share, bees), percent, 0.005));
rows('colonies to sample', tables.coloniesToSample, ({ colonies }, { least, most }) => {
  const plan = samplingPlan({ sharePercent: 1, certaintyPercent: 95, colonies }, { coloniesLeast: 8, coloniesMost: 10 });
  assert.deepEqual(plan.ok && [plan.value.coloniesLeast, plan.value.coloniesMost], [least, most]);
});
rows('sticky board', tables.board, ({ mites, days }, { perDay }) =>
  assert.deepEqual(mitesFallenPerDay(mites, days), { ok: true, value: perDay }),
);
rows('Student t', tables.tPoints, ({ share, freedom }, { t }) => near(tQuantile(share, freedom), t, 0.0005));
rows('weeks to the level', tables.weeks, ({ rate, high, level }, { soonest, latest }) =>
  assert.deepEqual(weeksToLevel({ per100: rate, highPer100: high }, level, tables.growth, true), {
    state: 'weeks',
    soonestWeeks: soonest,
    latestWeeks: latest,
  }),
);
rows('doubling', tables.doublingDays, ({ perDay }, { days }) => {
  const found = weeksToLevel({ per100: 1, highPer100: 1 }, 2, { slowestPerDay: perDay, fastestPerDay: perDay }, true);
  assert.deepEqual(found, { state: 'weeks', soonestWeeks: Math.floor(days / 7), latestWeeks: Math.ceil(days / 7) });
});

rows('a yard', tables.yard, ({ mites, bees }, expect) => {
  const samples = frozen(mites.map((count, index) => ({ mites: count, bees: bees[index] ?? 0 })));
  const [allMites, allBees] = [25, 2532];
  const rate = apiaryRate(samples);
  near(rate.per100, expect.per100, 5e-5);
  near(relativeError(samples, allMites, allBees) * rate.per100, expect.error, 5e-5);
  near(rate.lowPer100, expect.low, 5e-4);
  near(rate.highPer100, expect.high, 5e-4);
  const pooled = rateOf({ mites: allMites, bees: allBees });
  near(pooled.lowPer100, expect.exactLow, 5e-4);
  near(pooled.highPer100, expect.exactHigh, 5e-4);
});

test('bees to settle is the first number that settles, found by trying every one', () => {
  for (const level of [1, 2, 3, 5]) {
    for (let mites = 0; mites < 3 * level; mites += 1) {
      const found = beesToSettle({ mites, bees: 300 }, level, 1500);
      let tried: number | undefined = 300;
      while (tried !== undefined && poissonLimits(Math.ceil((mites * tried) / 300), 0.95).high >= (level * tried) / 100) {
        tried = tried < 1500 ? tried + 1 : undefined;
      }
      assert.equal(found, tried, `${mites} mites, level ${level}`);
    }
  }
});

test('no colony needs a sample larger than twice the usual one', () => {
  for (const level of [1, 2, 3]) {
    for (let mites = 0; mites < 3 * level; mites += 1) assert.ok((beesToSettle({ mites, bees: 300 }, level, 600) ?? 0) <= 600);
  }
});

test('the result names the reason for wrong input and has no number', () => {
  const reason = (mites: number, bees: number, recovery?: number) => {
    const rate = miteRate({ mites, bees }, recovery);
    return rate.ok ? rate.value : rate.reason;
  };
  assert.equal(reason(9, 0), 'no-bees');
  assert.equal(reason(9, -300), 'no-bees');
  assert.equal(reason(9, NaN), 'no-bees');
  assert.equal(reason(9, 300.5), 'bees-not-whole');
  assert.equal(reason(-1, 300), 'mites-negative');
  assert.equal(reason(1.5, 300), 'mites-not-whole');
  assert.equal(reason(NaN, 300), 'mites-not-whole');
  assert.equal(reason(1e9, 300), 'too-many');
  assert.equal(reason(9, 300, 0), 'impossible-recovery');
  assert.equal(reason(9, 300, 101), 'impossible-recovery');
  const habit = { coloniesLeast: 8, coloniesMost: 10 };
  for (const [sharePercent, certaintyPercent, colonies, expected] of [
    [0, 95, 1, 'impossible-share'],
    [101, 95, 1, 'impossible-share'],
    [1, 100, 1, 'impossible-certainty'],
    [1, 0, 1, 'impossible-certainty'],
    [1, 95, 0, 'no-colonies'],
    [1, 95, 2.5, 'colonies-not-whole'],
  ] as const) {
    assert.deepEqual(samplingPlan({ sharePercent, certaintyPercent, colonies }, habit), { ok: false, reason: expected });
  }
  for (const [mites, days, expected] of [
    [1, 0, 'no-days'],
    [1, -1, 'no-days'],
    [1.5, 2, 'mites-not-whole'],
    [-1, 2, 'mites-negative'],
    [1, 400, 'too-many'],
  ] as const) {
    assert.deepEqual(mitesFallenPerDay(mites, days), { ok: false, reason: expected });
  }
});

test('a rate at the level has reached it; no brood, no level and no mites give no later date', () => {
  const growth = tables.growth;
  assert.deepEqual(weeksToLevel({ per100: 3, highPer100: 5 }, 3, growth, true), { state: 'already-there' });
  assert.deepEqual(weeksToLevel({ per100: 1, highPer100: 2 }, 3, growth, false), { state: 'no-brood' });
  assert.deepEqual(weeksToLevel({ per100: 1, highPer100: 2 }, undefined, growth, true), { state: 'no-level' });
  assert.deepEqual(weeksToLevel({ per100: 0, highPer100: 1.23 }, 3, growth, true), { state: 'no-mites', soonestWeeks: 3 });
  assert.throws(
    () => weeksToLevel({ per100: 1, highPer100: 2 }, 3, { slowestPerDay: 0, fastestPerDay: 1 }, true),
    /weeksToLevel: needs growth over 0/,
  );
});

const anySample = fc.record({ mites: fc.nat(2000), bees: fc.integer({ min: 1, max: 5000 }) });

test('a rate lies within its limits, rises with mites, falls with bees, and is always finite', () => {
  fc.assert(
    fc.property(anySample, fc.integer({ min: 1, max: 100 }), (sample, recovery) => {
      const rate = rateOf(sample, recovery);
      for (const value of Object.values(rate)) assert.ok(Number.isFinite(value));
      assert.ok(rate.lowPer100 <= rate.per100 && rate.per100 < rate.highPer100);
      const more = rateOf({ ...sample, mites: sample.mites + 1 });
      assert.ok(more.per100 > rate.per100 && more.highPer100 > rate.highPer100 && more.lowPer100 > rate.lowPer100);
      assert.ok(rateOf({ ...sample, bees: sample.bees + 1 }).highPer100 < rate.highPer100);
    }),
  );
});

test('higher certainty gives wider limits', () => {
  fc.assert(
    fc.property(fc.nat(500), (count) => {
      const [usual, wide] = [poissonLimits(count, 0.95), poissonLimits(count, 0.99)];
      assert.ok(wide.high > usual.high && wide.low <= usual.low);
    }),
  );
});

test('more certainty, and a rarer mite, need more bees; the chance to miss stays within the allowance', () => {
  const habit = { coloniesLeast: 8, coloniesMost: 10 };
  const plan = (sharePercent: number, certaintyPercent: number) => {
    const made = samplingPlan({ sharePercent, certaintyPercent }, habit);
    assert.ok(made.ok);
    return made.value;
  };
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 99, noNaN: true }), fc.double({ min: 1, max: 99, noNaN: true }), (share, certainty) => {
      const { beesNeeded, missedChancePercent } = plan(share, certainty);
      assert.ok(beesNeeded >= plan(Math.min(100, share * 1.5), certainty).beesNeeded);
      assert.ok(beesNeeded <= plan(share, certainty + (100 - certainty) / 2).beesNeeded);
      assert.ok(missedChancePercent <= 100 - certainty + 1e-6);
      assert.ok(beesNeeded === 1 || missedChance(share, beesNeeded - 1) > 100 - certainty - 1e-6);
    }),
  );
});

test('soonest is never after latest; a higher level is never reached sooner', () => {
  fc.assert(
    fc.property(anySample, fc.constantFrom(1, 2, 3, 5, 10), (sample, level) => {
      const rate = rateOf(sample);
      const [near, far] = [weeksToLevel(rate, level, tables.growth, true), weeksToLevel(rate, level * 2, tables.growth, true)];
      if (near.state !== 'weeks') return;
      assert.ok(near.soonestWeeks >= 0 && near.soonestWeeks <= near.latestWeeks);
      assert.ok(far.state === 'weeks' && far.soonestWeeks >= near.soonestWeeks && far.latestWeeks >= near.latestWeeks);
    }),
  );
});
