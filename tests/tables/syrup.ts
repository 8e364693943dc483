import type { SourcedRow } from '../rows.ts';

const crc = { from: 'CRC Handbook of Chemistry and Physics, concentrative properties of aqueous solutions, sucrose, 20 C', basis: 'published' } as const;
const density = (brix: number, kgPerM3: number): SourcedRow<{ brix: number; temperatureC: number }, { kgPerM3: number; within: number }> => ({
  case: `${brix} Brix at 20 C`,
  given: { brix, temperatureC: 20 },
  expect: { kgPerM3, within: brix > 75 ? 0.6 : 0.5 },
  ...crc,
});
const warmth = { from: 'the same polynomial, computed independently', basis: 'recomputed' } as const;

export const densities: SourcedRow<{ brix: number; temperatureC: number }, { kgPerM3: number; within: number }>[] = [
  density(0, 998.2), density(10, 1038.1), density(20, 1081.0), density(22, 1089.9), density(30, 1127.0), density(34, 1146.4),
  density(40, 1176.5), density(46, 1207.9), density(50, 1229.5), density(60, 1286.4), density(62, 1298.3), density(66, 1322.4),
  density(70, 1347.2), density(74, 1372.6), density(80, 1411.7),
  { case: '50 Brix at 10 C', given: { brix: 50, temperatureC: 10 }, expect: { kgPerM3: 1233.9, within: 0.05 }, ...warmth },
  { case: '50 Brix at 30 C', given: { brix: 50, temperatureC: 30 }, expect: { kgPerM3: 1225.0, within: 0.05 }, ...warmth },
  { case: '65 Brix at 10 C', given: { brix: 65, temperatureC: 10 }, expect: { kgPerM3: 1321.5, within: 0.05 }, ...warmth },
  { case: '65 Brix at 40 C', given: { brix: 65, temperatureC: 40 }, expect: { kgPerM3: 1305.9, within: 0.05 }, ...warmth },
];

const vavrinecz = { from: 'from memory: the lines of Vavrinecz 1962 and Charles 1960; a Russian table agrees within 0.12', basis: 'memory' } as const;

export const saturation: SourcedRow<{ atC: number }, { brix: number; within: number }>[] = [
  { case: '0 C', given: { atC: 0 }, expect: { brix: 64.4, within: 0.12 }, ...vavrinecz },
  { case: '20 C', given: { atC: 20 }, expect: { brix: 66.7, within: 0.12 }, ...vavrinecz },
  { case: '40 C', given: { atC: 40 }, expect: { brix: 70.15, within: 0.12 }, ...vavrinecz },
  { case: '60 C', given: { atC: 60 }, expect: { brix: 74.25, within: 0.12 }, ...vavrinecz },
];

const herzfeld = { from: 'Herzfeld, as printed by Mohos 2010, Confectionery and Chocolate Engineering', basis: 'published' } as const;
const both = { from: 'derived from the two lines', basis: 'derived' } as const;

export const graining: SourcedRow<{ brix: number }, { state: string; leastC?: number; mostC?: number; within: number }>[] = [
  { case: '66.67: two of sugar to one of water', given: { brix: 66.67 }, expect: { state: 'below', leastC: 17.1, mostC: 19.6, within: 0.07 }, ...both },
  { case: '67.09: the older line at 20 C', given: { brix: 67.09 }, expect: { state: 'below', leastC: 20, within: 0.001 }, ...herzfeld },
  { case: '70.42: the older line at 40 C', given: { brix: 70.42 }, expect: { state: 'below', leastC: 40, within: 0.001 }, ...herzfeld },
  { case: '50: thin syrup', given: { brix: 50 }, expect: { state: 'never', within: 0 }, ...herzfeld, basis: 'derived' },
  { case: '64.3: just under', given: { brix: 64.3 }, expect: { state: 'never', within: 0 }, ...both },
  { case: '72: past the older line', given: { brix: 72 }, expect: { state: 'below-modern-only', within: 0 }, ...both },
  { case: '75: too much sugar', given: { brix: 75 }, expect: { state: 'cannot-all-dissolve', within: 0 }, ...both },
];

type Recipe = { sugarParts: number; waterParts: number; by: 'weight' | 'volume' | 'kilograms-to-litres' };
const masses = { from: 'derived from the CRC sucrose densities at 20 C; good to 0.5 %', basis: 'derived' } as const;

export const mixes: SourcedRow<Recipe, { brix: number; kgPerLitre?: number; litresPerKgSugar?: number; poundsPerUsGallon?: number }>[] = [
  { case: '1:1 by weight', given: { sugarParts: 1, waterParts: 1, by: 'weight' }, expect: { brix: 50, kgPerLitre: 1.2297, litresPerKgSugar: 1.626, poundsPerUsGallon: 5.13 }, ...masses },
  { case: '2:1 by weight', given: { sugarParts: 2, waterParts: 1, by: 'weight' }, expect: { brix: 66.67, kgPerLitre: 1.3268, litresPerKgSugar: 1.1305, poundsPerUsGallon: 7.38 }, ...masses },
  { case: '1:2 by weight', given: { sugarParts: 1, waterParts: 2, by: 'weight' }, expect: { brix: 33.33, kgPerLitre: 1.1431 }, ...masses },
  { case: '1:1 by volume, 200 g to the cup', given: { sugarParts: 1, waterParts: 1, by: 'volume' }, expect: { brix: 45.85, kgPerLitre: 1.2072 }, ...masses },
  { case: '2:1 by volume, 200 g to the cup', given: { sugarParts: 2, waterParts: 1, by: 'volume' }, expect: { brix: 62.88, kgPerLitre: 1.3037 }, ...masses },
  { case: '1 kg to 630 mL, the British strong syrup', given: { sugarParts: 1, waterParts: 0.63, by: 'kilograms-to-litres' }, expect: { brix: 61.39 }, ...masses },
];

/** Pounds of sugar and US gallons of water: US gallons of syrup. */
export const gallons: SourcedRow<{ sugarPounds: number; waterGallons: number }, { syrupGallons: number }>[] = [
  { case: '8 lb and 1 gallon', given: { sugarPounds: 8, waterGallons: 1 }, expect: { syrupGallons: 1.599 }, ...masses },
  {
    case: '50 lb and 3 gallons',
    given: { sugarPounds: 50, waterGallons: 3 },
    expect: { syrupGallons: 6.77 },
    from: 'disputed: a printed note claims about 6 gallons and 60 lb; the masses add to 75 lb', basis: 'derived',
  },
  { case: '25 lb and 3 gallons', given: { sugarPounds: 25, waterGallons: 3 }, expect: { syrupGallons: 4.87 }, ...masses },
];
