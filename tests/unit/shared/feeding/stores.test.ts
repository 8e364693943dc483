import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { brixOf } from '../../../../shared/feeding/mix.ts';
import { storeMixes, winterStores, type HiveStores, type StoreMix } from '../../../../shared/feeding/stores.ts';
import { litresToUsGallons } from '../../../../shared/units/volume.ts';
import { kilogramsToPounds, poundsToKilograms } from '../../../../shared/units/weight.ts';
import { near } from '../../../near.ts';
import { frozen, rows } from '../../../rows.ts';
import { feedingFigures, framePounds, frames, mixBrix, syrupForShortfall } from '../../../tables/stores.ts';

const kitchen = { temperatureC: 20, sugarGramsPerUsCup: 200 };

function stores(hive: HiveStores, targetKg: number, mix: StoreMix = '2:1-weight', efficiencyLeast = 0.76) {
  return winterStores(frozen({ hive, targetKg, mix, kitchen }), { ...feedingFigures, efficiencyLeast });
}

rows('syrup for a shortfall', syrupForShortfall, ({ shortKg, mix, efficiencyLeast }, { least, most, unit, within }) => {
  const found = stores({ grossKg: 20, emptyKg: 20 }, shortKg, mix, efficiencyLeast);
  assert.ok(found.ok);
  const show = (litres: number) => (unit === 'L' ? litres : litresToUsGallons(litres));
  const text = JSON.stringify(found.value);
  near(show(found.value.syrupLitresLeast), least, within, text);
  near(show(found.value.syrupLitresMost), most, within, text);
});

rows('sugar in the mixes offered', mixBrix, ({ mix }, { brix }) => near(brixOf(storeMixes[mix], kitchen), brix, 0.005001));

rows('honey in full frames', frames, ({ kind, count }, { pounds, within }) => {
  const found = stores({ frames: [{ count, honeyKgEach: poundsToKilograms(framePounds[kind]) }] }, 50);
  assert.ok(found.ok && Math.abs(kilogramsToPounds(found.value.storesKg) - pounds) <= within);
});

test('a hive at its target has no shortfall and needs no syrup', () => {
  assert.deepEqual(stores({ grossKg: 60, emptyKg: 25 }, 20), {
    ok: true,
    value: { storesKg: 35, shortKg: 0, sugarKgLeast: 0, sugarKgMost: 0, syrupLitresLeast: 0, syrupLitresMost: 0 },
  });
});

test('the result names the reason for wrong input', () => {
  const reason = (hive: HiveStores, target = 20) => {
    const found = stores(hive, target);
    return found.ok ? 'stores' : found.reason;
  };
  assert.equal(reason({ grossKg: 20, emptyKg: 25 }), 'empty-heavier-than-gross');
  assert.equal(reason({ grossKg: NaN, emptyKg: 25 }), 'impossible-weight');
  assert.equal(reason({ grossKg: 9000, emptyKg: 25 }), 'impossible-weight');
  assert.equal(reason({ frames: [{ count: -1, honeyKgEach: 3 }] }), 'impossible-frames');
  assert.equal(reason({ grossKg: 40, emptyKg: 25 }, 0), 'no-target');
  assert.equal(reason({ grossKg: 40, emptyKg: 25 }, Infinity), 'no-target');
  assert.throws(() => stores({ grossKg: 40, emptyKg: 25 }, 20, '1:1-weight', 1.2), /winterStores: needs shares/);
});

test('a larger shortfall never needs less; the least never exceeds the most; nothing is NaN', () => {
  const mix = fc.constantFrom(...(Object.keys(storeMixes) as StoreMix[]));
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 80 }), fc.integer({ min: 1, max: 60 }), mix, (kg, target, name) => {
      const [here, more] = [stores({ grossKg: kg, emptyKg: 0 }, target, name), stores({ grossKg: kg, emptyKg: 0 }, target + 5, name)];
      assert.ok(here.ok && more.ok);
      for (const value of Object.values(here.value)) assert.ok(Number.isFinite(value) && value >= 0);
      assert.ok(here.value.sugarKgLeast <= here.value.sugarKgMost && here.value.syrupLitresLeast <= here.value.syrupLitresMost);
      assert.ok(more.value.syrupLitresMost >= here.value.syrupLitresMost);
    }),
  );
});
