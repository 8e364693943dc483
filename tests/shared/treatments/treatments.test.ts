import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { addDays, type Day } from '../../../shared/days/day.ts';
import { judgeRow, judgeWithoutRow, samePlace, supersBackOn, type LabelRow, type Planned } from '../../../shared/treatments/label-row.ts';
import { frozen, rows } from '../../rows.ts';
import { judgements, labels, today } from '../../tables/treatments.ts';

rows('label row', judgements, ({ row, planned, today: read = today }, expect) =>
  assert.deepEqual(judgeRow(labels[row], planned, read), expect),
);

test('a place without rows: ask, and what is not registered first', () => {
  assert.deepEqual(judgeWithoutRow({ registered: 'yes' }), { state: 'ask', rules: ['other-place'] });
  assert.deepEqual(judgeWithoutRow({ registered: 'no' }), { state: 'ask', rules: ['not-registered', 'other-place'] });
});

test('boxes go back after the longest treatment and the days behind it, over a leap day too', () => {
  assert.equal(supersBackOn(labels.amitraz, '2026-08-10' as Day), '2026-10-19');
  assert.equal(supersBackOn(labels.formicStrips, '2028-02-25' as Day), '2028-03-03');
  assert.equal(supersBackOn(labels.coumaphos, '2026-08-10' as Day), undefined);
});

test('a place is the same in other letters, and no other', () => {
  assert.ok(samePlace('New  Zealand', ' new zealand'));
  assert.ok(!samePlace('United States', 'United Kingdom'));
});

const row: fc.Arbitrary<LabelRow> = fc
  .record({
    lowC: fc.option(fc.integer({ min: -10, max: 20 }), { nil: undefined }),
    highC: fc.option(fc.integer({ min: 20, max: 45 }), { nil: undefined }),
    supersBackDays: fc.option(fc.integer({ min: 0, max: 60 }), { nil: undefined }),
    daysMost: fc.option(fc.integer({ min: 1, max: 90 }), { nil: undefined }),
    supers: fc.constantFrom('on', 'off', 'label'),
    needsBroodless: fc.boolean(),
  })
  .map(
    (held) =>
      Object.fromEntries(
        Object.entries({ ...held, place: 'Here', checkBy: '2027-03-01' }).filter(([, value]) => value !== undefined),
      ) as LabelRow,
  );

const planned: fc.Arbitrary<Planned> = fc
  .record({
    after: fc.integer({ min: -20, max: 400 }),
    harvest: fc.option(fc.integer({ min: -60, max: 300 }), { nil: undefined }),
    lowC: fc.integer({ min: -20, max: 30 }),
    highC: fc.integer({ min: 0, max: 50 }),
    supersOn: fc.boolean(),
    brood: fc.boolean(),
    place: fc.constantFrom('Here', 'There', ''),
    registered: fc.constantFrom('yes', 'no', 'not-checked'),
  })
  .map(({ after, harvest, ...rest }) => {
    const start = addDays(today, after);
    return { ...rest, start, ...(harvest === undefined ? {} : { harvest: addDays(start, harvest) }) };
  });

test('nothing that is unknown is ever let pass, and nothing but silence is not ruled out', () => {
  fc.assert(
    fc.property(row, planned, (held, plan) => {
      const { state, rules } = judgeRow(frozen(held), frozen(plan), today);
      assert.equal(rules.length === 0, state === 'not-ruled-out');
      if (plan.registered !== 'yes' || plan.place !== 'Here' || plan.start > held.checkBy) assert.equal(state, 'ask');
      if (state === 'ruled-out') assert.ok(['too-cold', 'too-warm', 'supers-on', 'brood', 'harvest-too-soon'].includes(rules[0]!));
    }),
  );
});

test('a wider range of weather, boxes on, brood or a doubt never takes a reason away', () => {
  fc.assert(
    fc.property(row, planned, (held, plan) => {
      const before = judgeRow(held, plan, today);
      for (const worse of [
        { lowC: plan.lowC - 5 },
        { highC: plan.highC + 5 },
        { supersOn: true },
        { brood: true },
        { registered: 'no' as const },
      ]) {
        const after = judgeRow(held, { ...plan, ...worse }, today);
        if (before.state !== 'not-ruled-out') assert.notEqual(after.state, 'not-ruled-out');
        assert.ok(after.rules.length >= before.rules.length);
      }
    }),
  );
});
