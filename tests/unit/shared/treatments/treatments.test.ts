import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { addDays } from '../../../../shared/days/day.ts';
import {
  judgeRow,
  judgeWithoutRow,
  samePlace,
  supersBackOn,
  type LabelRow,
  type Planned,
  type WarmthLimit,
} from '../../../../shared/treatments/label-row.ts';
import { frozen, rows } from '../../../rows.ts';
import { judgements, labels, today } from '../../../tables/treatments.ts';
import { aDay } from '../../../days.ts';

rows('label row', judgements, ({ row, planned, today: read = today }, expect) =>
  assert.deepEqual(judgeRow(labels[row], planned, read), expect),
);

test('a place without rows gives "ask", with unregistered products first', () => {
  assert.deepEqual(judgeWithoutRow({ registered: 'yes' }), { state: 'ask', rules: ['other-place'] });
  assert.deepEqual(judgeWithoutRow({ registered: 'no' }), { state: 'ask', rules: ['not-registered', 'other-place'] });
});

test('supers go back after the longest treatment and its waiting days, over a leap day too', () => {
  assert.equal(supersBackOn(labels.amitraz, aDay('2026-08-10')), '2026-10-19');
  assert.equal(supersBackOn(labels.formicStrips, aDay('2028-02-25')), '2028-03-03');
  assert.equal(supersBackOn(labels.noLength as LabelRow, aDay('2026-08-10')), undefined);
});

test('a place matches in any case and spacing, and no other place does', () => {
  assert.ok(samePlace('New  Zealand', ' new zealand'));
  assert.ok(!samePlace('United States', 'United Kingdom'));
});

const limit: fc.Arbitrary<WarmthLimit> = fc
  .record({
    of: fc.constantFrom('daily-high' as const, 'mean' as const, 'any-time' as const),
    leastC: fc.integer({ min: -10, max: 20 }),
    mostC: fc.integer({ min: 21, max: 45 }),
    ends: fc.constantFrom('least', 'most', 'both'),
  })
  .map(({ of, leastC, mostC, ends }) => ({ of, ...(ends === 'most' ? {} : { leastC }), ...(ends === 'least' ? {} : { mostC }) }));

const row: fc.Arbitrary<LabelRow> = fc
  .record({
    seen: fc.constantFrom('itself', 'quoted', 'memory', 'not-opened'),
    registration: fc.option(fc.constant('1-1'), { nil: undefined }),
    labelDate: fc.option(fc.constant('2024-05-01'), { nil: undefined }),
    superseded: fc.boolean(),
    limits: fc.array(limit, { maxLength: 2 }),
    poorOutside: fc.array(limit, { maxLength: 2 }),
    forbidsBrood: fc.boolean(),
    poorWithBrood: fc.boolean(),
    supersBackDays: fc.option(fc.integer({ min: 0, max: 60 }), { nil: undefined }),
    daysMost: fc.option(fc.integer({ min: 1, max: 90 }), { nil: undefined }),
    supers: fc.constantFrom('on', 'off', 'label'),
  })
  .map(
    (held) =>
      Object.fromEntries(
        Object.entries({ ...held, place: 'Here', checkBy: '2027-03-01' }).filter(([, value]) => value !== undefined),
      ) as unknown as LabelRow,
  );

const planned: fc.Arbitrary<Planned> = fc
  .record({
    after: fc.integer({ min: -20, max: 400 }),
    harvest: fc.option(fc.integer({ min: -60, max: 300 }), { nil: undefined }),
    lowestHighC: fc.integer({ min: -20, max: 30 }),
    wider: fc.integer({ min: 0, max: 25 }),
    mean: fc.option(fc.integer({ min: 0, max: 20 }), { nil: undefined }),
    night: fc.option(fc.integer({ min: 0, max: 20 }), { nil: undefined }),
    supersOn: fc.boolean(),
    brood: fc.boolean(),
    place: fc.constantFrom('Here', 'There', ''),
    registered: fc.constantFrom('yes', 'no', 'not-checked'),
  })
  .map(({ after, harvest, wider, mean, night, ...rest }) => {
    const start = addDays(today, after);
    const highestHighC = rest.lowestHighC + wider;
    return {
      ...rest,
      start,
      highestHighC,
      ...(mean === undefined ? {} : { meanC: highestHighC - mean }),
      ...(night === undefined ? {} : { coldestC: rest.lowestHighC - night }),
      ...(harvest === undefined ? {} : { harvest: addDays(start, harvest) }),
    };
  });

const OUT = ['too-cold', 'too-warm', 'supers-on', 'brood-forbidden', 'harvest-too-soon'];

test('nothing passes that is unknown, from memory, without number or date, or no longer sold', () => {
  fc.assert(
    fc.property(row, planned, (held, plan) => {
      const { state, rules } = judgeRow(frozen(held), frozen(plan), today);
      assert.equal(rules.length === 0, state === 'nothing-found');
      if (plan.registered !== 'yes' || plan.place !== 'Here' || plan.start > held.checkBy) assert.equal(state, 'ask');
      if (held.seen === 'memory' || held.seen === 'not-opened' || held.superseded) assert.equal(state, 'ask');
      if (held.seen === 'quoted' || held.registration === undefined || held.labelDate === undefined)
        assert.ok(['ask', 'ruled-out'].includes(state));
      if (state === 'ruled-out') assert.ok(OUT.includes(rules[0]!));
      if (state === 'works-poorly') assert.ok(rules.every((rule) => rule.startsWith('poor-')));
    }),
  );
});

test('what works poorly never rules out, and what a label forbids is never only called poor', () => {
  fc.assert(
    fc.property(row, planned, (held, plan) => {
      const kind = { ...held, limits: [], forbidsBrood: false, supers: 'on' as const };
      assert.notEqual(judgeRow(kind, plan, today).state, 'ruled-out');
      const without = { ...held, poorOutside: [], poorWithBrood: false };
      const isOut = (one: LabelRow) => judgeRow(one, plan, today).rules.filter((rule) => OUT.includes(rule));
      assert.deepEqual(isOut(without), isOut(held));
    }),
  );
});

test('a limit of the daytime high ignores nights and means', () => {
  fc.assert(
    fc.property(row, planned, fc.integer({ min: -40, max: 0 }), (held, plan, night) => {
      const highs = { ...held, limits: held.limits.filter(({ of }) => of === 'daily-high'), poorOutside: [] };
      assert.deepEqual(
        judgeRow(highs, { ...plan, coldestC: plan.lowestHighC + night, meanC: plan.lowestHighC + night }, today),
        judgeRow(highs, plan, today),
      );
    }),
  );
});

test('an entered mean or coldest hour answers its question, and nothing else', () => {
  fc.assert(
    fc.property(row, planned, (held, plan) => {
      const complete = { ...plan, meanC: plan.highestHighC - 5, coldestC: plan.lowestHighC - 5 };
      const after = judgeRow(held, complete, today).rules;
      assert.ok(!after.includes('mean-not-told') && !after.includes('coldest-not-told'));
    }),
  );
});

test('a wider range of highs, supers, brood or a doubt never removes a reason', () => {
  fc.assert(
    fc.property(row, planned, (held, plan) => {
      const before = judgeRow(held, plan, today);
      for (const worse of [
        { lowestHighC: plan.lowestHighC - 5, ...(plan.coldestC === undefined ? {} : { coldestC: plan.coldestC - 5 }) },
        ...(plan.meanC === undefined ? [] : [{ highestHighC: plan.highestHighC + 5 }]),
        { supersOn: true },
        { brood: true },
        { registered: 'no' as const },
      ]) {
        const after = judgeRow(held, { ...plan, ...worse }, today);
        if (before.state !== 'nothing-found') assert.notEqual(after.state, 'nothing-found');
        if (before.state === 'ruled-out') assert.ok(['ruled-out', 'ask'].includes(after.state));
      }
    }),
  );
});
