import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import * as temperature from '../../../../shared/units/temperature.ts';
import * as volume from '../../../../shared/units/volume.ts';
import * as weight from '../../../../shared/units/weight.ts';
import { unitNamed, unitNames, unitWords } from '../../../../shared/units/unit-names.ts';
import { near } from '../../../near.ts';
import { rows } from '../../../rows.ts';
import { conversions } from '../../../tables/units.ts';

const all: Record<string, (value: number) => number> = { ...temperature, ...volume, ...weight };

rows('conversion', conversions, ({ convert, from }, expect) => {
  const found = all[convert]?.(from) ?? NaN;
  near(found, expect.to, 0, `${convert}(${from})`);
});

const opposites = [
  ['poundsToKilograms', 'kilogramsToPounds'],
  ['ouncesToKilograms', 'kilogramsToOunces'],
  ['gramsToKilograms', 'kilogramsToGrams'],
  ['millilitresToLitres', 'litresToMillilitres'],
  ['usGallonsToLitres', 'litresToUsGallons'],
  ['usQuartsToLitres', 'litresToUsQuarts'],
  ['usCupsToLitres', 'litresToUsCups'],
  ['imperialGallonsToLitres', 'litresToImperialGallons'],
  ['imperialPintsToLitres', 'litresToImperialPints'],
  ['fahrenheitToCelsius', 'celsiusToFahrenheit'],
  ['fahrenheitDifferenceToCelsius', 'celsiusDifferenceToFahrenheit'],
] as const;

test('every conversion has its inverse, and a round trip agrees to 12 digits', () => {
  assert.deepEqual(opposites.flat().toSorted(), Object.keys(all).toSorted());
  fc.assert(
    fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.constantFrom(...opposites), (value, [there, back]) => {
      const returned = all[back]?.(all[there]?.(value) ?? NaN) ?? NaN;
      assert.ok(Math.abs(returned - value) <= 1e-12 * Math.max(100, Math.abs(value)), `${there} ${value} came back as ${returned}`);
    }),
  );
});

test('every unit word names one unit; bare gallons and pints name none', () => {
  for (const name of unitNames) for (const word of unitWords[name]) assert.equal(unitNamed(word), name, word);
  const words = unitNames.flatMap((name) => unitWords[name]);
  assert.equal(new Set(words).size, words.length);
  for (const word of ['gallon', 'gal', 'pint', 'quart', '', 'stone']) assert.equal(unitNamed(word), undefined, word);
  assert.equal(unitNamed('US Gal.'), 'us-gal');
  assert.equal(unitNamed('°C'), 'C');
});
