/* The Spanish sentences about packages, syrup, weights and stores with values in them: whole, and without an English word. */
import assert from 'node:assert/strict';
import { afterAll, beforeAll, test, vi } from 'vitest';
import { setLanguageHere } from '../../../shared/country/language-here.ts';
import { planPackage, type Package, type PackageFigures } from '../../../src/calculators/package-calendar/model.ts';
import * as calendar from '../../../src/calculators/package-calendar/text.es.ts';
import { reckon, type Ordered } from '../../../src/calculators/package-order/model.ts';
import * as order from '../../../src/calculators/package-order/text.es.ts';
import { mix, type Mixed } from '../../../src/calculators/syrup/model.ts';
import * as syrup from '../../../src/calculators/syrup/text.es.ts';
import { judgeWeights, type Weighed } from '../../../src/calculators/weight-check/model.ts';
import * as weights from '../../../src/calculators/weight-check/text.es.ts';
import { planStores, type Hive, type StoresFigures } from '../../../src/calculators/winter-stores/model.ts';
import * as stores from '../../../src/calculators/winter-stores/text.es.ts';
import * as form from '../../../src/calculators/form/text.es.ts';
import * as formRows from '../../../src/calculators/form/rows.es.ts';
import { unwrap } from '../../../shared/result.ts';
import { aDay } from '../../days.ts';

// A build takes these in place of the English ones.
vi.mock('../../../src/calculators/form/measures.en.ts', () => import('../../../src/calculators/form/measures.es.ts'));
vi.mock('../../../shared/units/kitchen.en.ts', () => import('../../../shared/units/kitchen.es.ts'));

beforeAll(() => setLanguageHere('es'));
afterAll(() => setLanguageHere('en-US'));

const ENGLISH = /\b(?:the|of|and|with|your|is|to|by|about|from|in)\b/i;

/** Every text of a module that has no values in it. */
const constants = (value: unknown): string[] =>
  typeof value === 'string' ? [value] : typeof value === 'object' && value !== null ? Object.values(value).flatMap(constants) : [];

const given: Package = {
  installed: aDay('2026-04-18'),
  shaken: undefined,
  pounds: 3,
  queen: 'candy',
  comb: 'foundation',
  'bees-per-pound': 3500,
};
const figures: PackageFigures = {
  units: 'metric',
  habits: {
    candyReleaseDays: { least: 2, most: 7 },
    firstEggDays: { least: 1, most: 3 },
    foundationDays: { least: 2, most: 5 },
    lookAgainDays: 9,
    requeenDays: 14,
  },
  colony: null,
  trialBees: { least: 2316, most: 37_061 },
  shakenBeforeDays: 3,
};
const plan = unwrap(planPackage(given, figures));
const ordered: Ordered = { lines: [{ count: 10, pounds: 3 }, { count: 1, pounds: 2 }], allowance: 10, hours: 5, 'bees-per-pound': 3500, 'spare-queens': 1, 'cage-lb': 1.5, 'can-lb': 3, 'syrup-l-each': 1 }; // prettier-ignore
const reckoned = unwrap(reckon(ordered));
const mixed: Mixed = {
  'sugar-parts': 2,
  'water-parts': 1,
  by: 'volume',
  know: 'sugar',
  amount: 10,
  unit: 'kg',
  temperature: 20,
  'sugar-per-cup': 200,
};
const made = unwrap(mix(mixed));
const weighed: Weighed = { rule: 'eu', 'label-g': 454, lot: 12, 'weights-g': [451, 456, 449, 100] };
const judged = unwrap(judgeWeights(weighed, { units: 'metric', rules: { eu: null, ca: null, us: null } }));
const hive: Hive = {
  'gross-kg': undefined,
  'empty-kg': undefined,
  deep: 5,
  medium: 4,
  shallow: undefined,
  'target-kg': 27.2,
  mix: '2:1-weight',
};
const held: StoresFigures = {
  units: 'metric',
  frameKg: { deep: 2.72, medium: 1.81, shallow: null },
  feeding: { sugarShareOfStores: 0.82, efficiencyLeast: 0.76, efficiencyMost: 1 },
  sugarPerCup: 200,
  feedBy: [],
};
const planned = unwrap(planStores(hive, held));

const says: Record<string, () => string[]> = {
  'package calendar': () => [
    ...constants(calendar),
    calendar.headline(given, plan, 'es'),
    calendar.questionWords(given, figures, 'es'),
    calendar.noEggsWords(plan, 'es'),
    calendar.noCurveWords({ ...plan, noCurve: 'beyond-trials' }, figures),
    calendar.sumWords(given, plan, figures, 'es'),
    calendar.next('Busque huevos', aDay('2026-04-27'), aDay('2026-05-04'), aDay('2026-04-18'), 'es'),
    calendar.faultWords('no-bees-per-pound', 'us'),
  ],
  'package order': () => [
    ...constants(order),
    order.headline(reckoned, { units: 'metric', members: 8 }),
    order.questionWords(ordered, 'metric'),
    order.queensWords(reckoned.all, 1),
    order.syrupWords(reckoned.all, 'metric'),
    order.roadWords(ordered, 'metric'),
    order.sheetsWords(reckoned, { units: 'metric', members: 8 }),
    order.sumWords(ordered, reckoned, 'us'),
    order.faultWords('too-much', ordered, 'us')[1],
  ],
  syrup: () => [
    ...constants(syrup),
    syrup.headline(made, 'metric'),
    syrup.questionWords(mixed),
    syrup.kitchenWords(mixed, made, 'us'),
    syrup.grainingWords({ state: 'below', leastC: 17, mostC: 20 }, 'metric'),
    syrup.sumWords(mixed, made, 'us'),
    syrup.faultWords('impossible-cup', 'us'),
  ],
  'weight check': () => [
    ...constants(weights),
    weights.headline(weighed, judged, 'metric'),
    weights.questionWords(weighed, 'metric'),
    weights.meanWords(judged, 'us'),
    weights.farOffWords(weighed),
    weights.sumWords(weighed, judged, 'metric'),
    weights.faultWords('lot-not-in-rule', undefined, weighed, 'us')[1],
  ],
  'winter stores': () => [
    ...constants(stores),
    stores.headline(hive, planned, held),
    stores.questionWords(hive, 'metric'),
    stores.kitchenWords(planned, held),
    stores.sumWords(hive, planned, held),
    stores.faultWords('no-target', 'us')!,
  ],
  'every form': () => [
    form.noResult(2),
    form.twoWays('1,500', '1500', '1,5'),
    form.unknownUnit('codos', 'un peso'),
    formRows.wrongLine(2, 'x', '10 3'),
    formRows.commaList('Peso', 2, '16,15', '.'),
  ],
};

for (const [room, all] of Object.entries(says))
  test(`${room}: each Spanish sentence is whole, and none has an English word`, () => {
    const wrong = all().filter((sentence) => sentence === '' || /undefined|NaN|\[object|\$\{/.test(sentence) || ENGLISH.test(sentence));
    assert.deepEqual(wrong, []);
  });

// 3 lb is 1.36 kg (NIST Special Publication 811, appendix B.8); 27.2 − 5 × 2.72 − 4 × 1.81 = 6.36.
test('values in Spanish sentences have a decimal comma', () => {
  assert.match(calendar.questionWords(given, figures, 'es'), /Un paquete de 1,36 kg/);
  assert.match(stores.headline(hive, planned, held), /^Faltan 6,36 kg\. Eso es \d,\d+ a \d,\d+ L de jarabe\.$/);
});
