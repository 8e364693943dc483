// The bloom calendar of a made-up club: days, reasons and sums in words. 20 April and ten days are 30 April.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { err, ok } from '../../../shared/result.ts';
import type { BloomHere } from '../../../shared/season/bloom-calendar.ts';
import { plantsHere } from '../../../src/lib/bloom.ts';
import { almanacOf, district, entry, monthDay, source } from './almanac.ts';

const blooms = (lastsDays: number | null): BloomHere[] => [
  { plant: 'aster', bloom: err('no-sum') },
  {
    plant: 'plum',
    bloom: ok({
      middle: monthDay('04-20'),
      earliest: monthDay('04-13'),
      latest: monthDay('04-27'),
      from: 'degree-days',
      years: 0,
      lastsDays,
      basis: { kind: 'degree-days', plant: 'plum' },
    }),
  },
];
const sum = { 'degree-days': 42, base: 50, scale: 'F', from: '01-01', method: 'floored', stage: 'full bloom', place: 'Hilltown', source: 'list', certainty: 'likely' }; // prettier-ignore
const plant = (id: string, title: string, other: object = {}) =>
  entry(id, { title, botanical: 'Planta', worth: 'much', gives: ['nectar', 'pollen'], ...other });
const shown = (lastsDays: number | null, bloom: object = sum) =>
  plantsHere(
    almanacOf({
      forage: [plant('aster', 'Aster'), plant('plum', 'Plum', { bloom })],
      seasons: [{ ...district('valley'), blooms: blooms(lastsDays) }],
      sources: { list: source('A university', { year: 2012 }) },
    }),
  );

test('a plant has its days with their basis, and one without a date comes last with the reason', () => {
  const [plum, aster] = shown(10);
  assert.deepEqual(plum!.windows, [
    { district: 'valley', name: 'The valley', window: { from: '04-20', to: '04-30' }, basis: 'about April\u00a020, from monthly normals by degree-days, about 7 days either way' },
  ]); // prettier-ignore
  assert.deepEqual([plum!.gives, plum!.stage, plum!.without], [['nectar', 'pollen'], 'in bloom', null]);
  assert.deepEqual(
    [aster!.windows, aster!.without, aster!.sum],
    [null, 'No sum was found, and nobody here has three years of notes.', null],
  );
});

test('where nobody knows how long it lasts, the days are those of the stage that the sum names', () => {
  const [full] = shown(null);
  assert.deepEqual([full!.stage, full!.windows![0]!.window], ['full bloom', { from: '04-13', to: '04-27' }]);
  assert.equal(shown(null, { ...sum, stage: 'first bloom' })[0]!.stage, 'first flowers');
});

for (const [change, words] of [
  [
    {},
    'Full bloom at 42 degree-days over 50 F from January\u00a01, with the daily low raised to the base (low-floored); Hilltown. A university 2012. Likely.',
  ],
  [
    { method: 'modified', cap: 86, source: 'gone' },
    'Full bloom at 42 degree-days over 50 F, up to 86 F, from January\u00a01, with high and low brought between base and cap (modified); Hilltown. gone. Likely.',
  ],
] as const)
  // prettier-ignore
  test(`a sum reads: ${words}`, () => assert.equal(shown(10, { ...sum, ...change })[0]!.sum, words));
