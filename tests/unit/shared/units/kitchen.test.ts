// Amounts as a person measures them. NIST Handbook 44, appendix C: a US gallon is 4 quarts, 16 cups; a cup 16 tablespoons; a pound 16 ounces.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { kitchenCups, kitchenShare, kitchenVolume, kitchenVolumes, kitchenWeight } from '../../../../shared/units/kitchen.ts';
import { usGallonsToLitres } from '../../../../shared/units/volume.ts';
import { poundsToKilograms } from '../../../../shared/units/weight.ts';

const volumes: [gallons: number, words: string][] = [
  [0.5, 'about half a gallon'],
  [0.444, 'about 7 cups'],
  [0.25, 'about a quart'],
  [1, 'about a gallon'],
  [1.5, 'about 1½ gallons'],
  [3.386, 'about 3½ gallons'],
  [0.125, 'about 2 cups'],
  [1 / 16, 'about a cup'],
  [1 / 32, 'about ½ cup'],
  [1 / 128, 'about 2 tablespoons'],
  [26.4, 'about 26 gallons'],
];
for (const [gallons, words] of volumes) {
  test(`${gallons} US gallons are ${words}`, () => assert.equal(kitchenVolume(usGallonsToLitres(gallons), 'us'), words));
}

const weights: [pounds: number, words: string][] = [
  [4.47, 'about 4½ lb'],
  [25, 'about 25 lb'],
  [1, 'about 1 lb'],
  [0.5, 'about 8 oz'],
  [11.94, 'about 12 lb'],
];
for (const [pounds, words] of weights) {
  test(`${pounds} lb are ${words}`, () => assert.equal(kitchenWeight(poundsToKilograms(pounds), 'us'), words));
}

test('litres and kilograms, cups of sugar, and the two ends of one answer', () => {
  assert.equal(kitchenVolume(1.234, 'metric'), 'about 1.2 L');
  assert.equal(kitchenVolume(0.63, 'metric'), 'about 600 mL');
  assert.equal(kitchenWeight(0.2, 'metric'), 'about 200 g');
  assert.equal(kitchenCups(2.04), 'about 2 cups');
  assert.equal(kitchenVolumes(usGallonsToLitres(1.02), usGallonsToLitres(1.5), 'us'), 'about 1 to 1½ gallons');
  assert.equal(kitchenVolumes(usGallonsToLitres(0.49), usGallonsToLitres(0.51), 'us'), 'about half a gallon');
  assert.equal(kitchenVolumes(usGallonsToLitres(0.444), usGallonsToLitres(1.5), 'us'), 'about 7 cups to 1½ gallons');
  assert.equal(kitchenVolume(0, 'us'), undefined);
  assert.equal(kitchenWeight(0.001, 'us'), undefined);
});

/** The number that the words say, in the unit they name. */
function said(words: string): number {
  const sizes = {
    'half a gallon': 0.5,
    gallon: 1,
    quart: 1 / 4,
    cup: 1 / 16,
    tablespoon: 1 / 256,
    lb: 1,
    oz: 1 / 16,
    mL: 0.001,
    L: 1,
    kg: 1,
    g: 0.001,
  };
  if (words.includes('half a gallon')) return 0.5;
  const [, whole = '', part = '', unit = ''] = /^about (?:a |([\d.,]*)([½¼¾]?) )(\w+?)s?$/.exec(words)!;
  const number = Number(whole.replace(',', '') || (part ? 0 : 1)) + ({ '½': 0.5, '¼': 0.25, '¾': 0.75 }[part] ?? 0);
  return number * sizes[unit as keyof typeof sizes];
}

test('what is printed never lies further from the exact amount than the share that is named', () => {
  for (let exponent = -2; exponent < 3; exponent += 0.003) {
    const amount = 10 ** exponent;
    const all = [
      kitchenVolume(usGallonsToLitres(amount), 'us'),
      kitchenWeight(poundsToKilograms(amount), 'us'),
      kitchenVolume(amount, 'metric'),
      kitchenWeight(amount, 'metric'),
    ];
    for (const words of all) {
      if (words) assert.ok(Math.abs(said(words) / amount - 1) <= kitchenShare + 1e-9, `${amount}: ${words}`);
    }
    assert.ok(amount < 0.15 || all.every(Boolean), `${amount}: ${all.join('; ')}`);
  }
});
