import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { syrupKgPerLitre, waterKgPerLitre } from '../../../../shared/feeding/density.ts';
import { grainsBelow, modernSaturationBrix } from '../../../../shared/feeding/solubility.ts';
import { mixSyrup, type Known, type Recipe, type Syrup } from '../../../../shared/feeding/mix.ts';
import { litresToUsGallons, usGallonsToLitres } from '../../../../shared/units/volume.ts';
import { kilogramsToPounds, poundsToKilograms } from '../../../../shared/units/weight.ts';
import { near } from '../../../near.ts';
import { frozen, rows } from '../../../rows.ts';
import * as tables from '../../../tables/syrup.ts';

const kitchen = frozen({ temperatureC: 20, sugarGramsPerUsCup: 200 });

function mixed(recipe: Recipe, known: Known, place = kitchen): Syrup {
  const syrup = mixSyrup(recipe, known, place);
  assert.ok(syrup.ok, JSON.stringify(syrup));
  return syrup.value;
}

rows('density of syrup', tables.densities, ({ brix, temperatureC }, { kgPerM3, within }) =>
  near(syrupKgPerLitre(brix, temperatureC) * 1000, kgPerM3, within),
);
rows('saturation', tables.saturation, ({ atC }, { brix, within }) => near(modernSaturationBrix(atC), brix, within));
rows('graining', tables.graining, ({ brix }, { state, leastC, mostC, within }) => {
  const found = grainsBelow(brix);
  assert.equal(found.state, state);
  if (leastC !== undefined) near('leastC' in found ? found.leastC : NaN, leastC, within);
  if (mostC !== undefined) near('mostC' in found ? found.mostC : NaN, mostC, within);
});
rows('mix', tables.mixes, (recipe, expect) => {
  const syrup = mixed(recipe, { of: 'sugar', amount: { kg: 1 } });
  near(syrup.brix, expect.brix, 0.005001);
  if (expect.kgPerLitre) near(syrup.kgPerLitre, expect.kgPerLitre, 0.0005);
  if (expect.litresPerKgSugar) near(syrup.syrupLitres, expect.litresPerKgSugar, 0.001);
  if (expect.poundsPerUsGallon) near(kilogramsToPounds(syrup.sugarKgPerLitre) * usGallonsToLitres(1), expect.poundsPerUsGallon, 0.005);
});
rows('gallons', tables.gallons, ({ sugarPounds, waterGallons }, { syrupGallons }) => {
  const sugarKg = poundsToKilograms(sugarPounds);
  const recipe = { sugarParts: sugarKg, waterParts: usGallonsToLitres(waterGallons), by: 'kilograms-to-litres' } as const;
  const syrup = mixed(recipe, { of: 'sugar', amount: { kg: sugarKg } });
  near(litresToUsGallons(syrup.syrupLitres), syrupGallons, syrupGallons * 0.005);
});

test('the result names the reason for wrong input and has no number', () => {
  const good: Recipe = { sugarParts: 2, waterParts: 1, by: 'weight' };
  const reason = (recipe: Partial<Recipe>, kg = 1, place: Partial<typeof kitchen> = {}) => {
    const syrup = mixSyrup({ ...good, ...recipe }, { of: 'sugar', amount: { kg } }, { ...kitchen, ...place });
    return syrup.ok ? 'a syrup' : syrup.reason;
  };
  assert.equal(reason({}), 'a syrup');
  assert.equal(reason({ sugarParts: 0 }), 'no-sugar');
  assert.equal(reason({ sugarParts: NaN }), 'no-sugar');
  assert.equal(reason({ waterParts: -1 }), 'no-water');
  assert.equal(reason({ sugarParts: 9 }), 'too-thick');
  assert.equal(reason({}, 0), 'no-amount');
  assert.equal(reason({}, NaN), 'no-amount');
  assert.equal(reason({}, 1e9), 'too-much');
  assert.equal(reason({}, 1, { temperatureC: -1 }), 'temperature-out-of-range');
  assert.equal(reason({}, 1, { temperatureC: 100 }), 'temperature-out-of-range');
  assert.equal(reason({}, 1, { sugarGramsPerUsCup: 400 }), 'impossible-cup');
  assert.throws(() => syrupKgPerLitre(90, 20), /needs 0 to 85 Brix, got 90/);
  assert.throws(() => waterKgPerLitre(-5), /needs 0 to 60 C, got -5/);
});

const parts = fc.double({ min: 0.05, max: 5, noNaN: true });
const anyRecipe = fc
  .record({ sugarParts: parts, waterParts: parts, by: fc.constantFrom('weight', 'volume', 'kilograms-to-litres') })
  .filter(({ sugarParts, waterParts }) => sugarParts / waterParts < 4.5) as fc.Arbitrary<Recipe>;
const anyPlace = fc.record({ temperatureC: fc.integer({ min: 0, max: 60 }), sugarGramsPerUsCup: fc.integer({ min: 190, max: 212 }) });

test('masses add up, the syrup has less volume than its parts, and every number is finite', () => {
  fc.assert(
    fc.property(anyRecipe, parts, anyPlace, (recipe, kg, place) => {
      const syrup = mixed(recipe, { of: 'sugar', amount: { kg } }, place);
      near(syrup.sugarKg + syrup.waterKg, syrup.syrupKg, 1e-9);
      near(syrup.sugarKg, kg, 1e-9);
      assert.ok(syrup.syrupLitres < syrup.waterLitres + syrup.sugarKg / 1.5);
      for (const value of Object.values(syrup)) if (typeof value === 'number') assert.ok(Number.isFinite(value) && value > 0);
    }),
  );
});

test('the same syrup follows from sugar, water or syrup, by weight or by volume', () => {
  fc.assert(
    fc.property(anyRecipe, parts, anyPlace, (recipe, kg, place) => {
      const first = mixed(recipe, { of: 'sugar', amount: { kg } }, place);
      const ways: Known[] = [
        { of: 'water', amount: { kg: first.waterKg } },
        { of: 'water', amount: { litres: first.waterLitres } },
        { of: 'syrup', amount: { kg: first.syrupKg } },
        { of: 'syrup', amount: { litres: first.syrupLitres } },
        { of: 'sugar', amount: { litres: (kg / place.sugarGramsPerUsCup) * 236.5882365 } },
      ];
      for (const known of ways) near(mixed(recipe, known, place).syrupKg, first.syrupKg, first.syrupKg * 1e-9);
    }),
  );
});

test('more sugar is heavier, warmer is lighter, thicker syrup crystallises sooner', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 84, noNaN: true }), fc.double({ min: 5, max: 59, noNaN: true }), (brix, atC) => {
      assert.ok(syrupKgPerLitre(brix + 1, atC) > syrupKgPerLitre(brix, atC));
      assert.ok(syrupKgPerLitre(brix, atC + 1) < syrupKgPerLitre(brix, atC));
    }),
  );
  fc.assert(
    fc.property(fc.double({ min: 64.4, max: 69.4, noNaN: true }), (brix) => {
      const [thin, thick] = [grainsBelow(brix), grainsBelow(brix + 1)];
      assert.ok(thin.state === 'below' && thick.state === 'below');
      assert.ok(thin.leastC <= thin.mostC && thick.leastC > thin.leastC && thick.mostC > thin.mostC);
    }),
  );
});
