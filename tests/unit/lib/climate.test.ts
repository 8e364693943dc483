// The normals of a district in words and as a chart. Expected values are worked out by hand: 4 C of difference are 7.2 F, and a year whose
// every day is 5 C warmer than the base has 5 × 365 = 1825 degree-days of C, 3285 of F.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import type { Climate, Spread } from '../../../shared/season/climate.ts';
import { climatesOf, climatesSaid } from '../../../src/lib/climate-words.ts';
import { CURVE, seasonCurve } from '../../../src/lib/season-curve.ts';
import { near } from '../../near.ts';
import { almanacOf, district, monthDay, source } from './almanac.ts';

const always = (degrees: number): number[] => Array<number>(12).fill(degrees);
const climate = (spread: Spread | null): Climate => ({
  normalsC: { minByMonth: always(12), maxByMonth: always(18) },
  spread,
  freezes: null,
});

const fields = {
  scale: 'F',
  period: '1991-2020',
  source: 'service',
  'degree-days': { sum: 3285, base: 50, period: '1981-2010', source: 'university' },
  spread: { sigma: 7.2, source: 'paper' },
};
const almanac = (spread: Spread | null) =>
  almanacOf({
    club: { climate: fields, districts: [{ id: 'valley' }, { id: 'hill' }] },
    seasons: [{ ...district('valley'), climate: climate(spread) }, district('hill')],
    sources: { service: source('A weather service'), university: source('A university', { year: 2012 }) },
  });

const NORMALS = 'monthly normals of 1991-2020 (A weather service).';
for (const [spread, words] of [
  [
    { degreesC: 4, from: 'published-sum' },
    'One day’s mean differs from its normal by about 7.2 F, so that the published 3285 degree-days over 50 F are met (1981-2010, A university 2012).',
  ],
  [{ degreesC: 4, from: 'region' }, 'One day’s mean differs from its normal by about 7.2 F in this region (paper).'],
  [{ degreesC: 4, from: 'observed' }, 'One day’s mean differs from its normal by about 7.2 F, so that plants bloom when members saw them.'],
  [null, 'How much days differ from year to year is not known here, so no date is worked out from degree-days.'],
] as const)
  test(`the normals of a district, with a spread ${spread ? `from: ${spread.from}` : 'that nobody knows'}`, () =>
    assert.deepEqual(climatesSaid(almanac(spread)), [{ name: 'The valley', words: `${NORMALS} ${words}` }]));

test('only a district with normals of its own is listed, with its source as a sentence', () =>
  assert.deepEqual(
    climatesOf(almanac(null)).map(({ season, source: words }) => [season.id, words]),
    [['valley', 'A weather service.']],
  ));

test('the chart of a year of 12 to 18 C: its scale, its band, its sum and a plant in the middle of it', () => {
  const curve = seasonCurve(climate({ degreesC: 1, from: 'region' }), 'C', [monthDay('07-02')]);
  assert.deepEqual(curve.lines, [{ y: CURVE.bottom, words: '10' }, { y: CURVE.top, words: '20' }]); // prettier-ignore
  // The scale is 192 units high; 12 C is a fifth of the way up, 18 C four fifths.
  assert.match(curve.low, /^M40\.4 177\.6L.*L335\.6 177\.6$/);
  assert.match(curve.high, /^M40\.4 62\.4L.*L335\.6 62\.4$/);
  assert.equal(curve.band, `M${curve.high.slice(1)}L${curve.low.slice(1).split('L').reverse().join('L')}Z`);
  near(curve.total, 1825, 0.1);
  assert.ok(curve.sum!.endsWith(`L335.6 ${CURVE.top}`));
  // 2 July is the middle of a common year, and 15 C the middle of the band.
  assert.deepEqual(curve.blooms, [{ x: (CURVE.left + CURVE.right) / 2, y: (CURVE.top + CURVE.bottom) / 2 }]);
  assert.deepEqual([curve.months.length, curve.base, curve.spread], [12, 10, 1]);
});

test('the same year in F: from 53.6 on a scale from 40 to 80, and no sum where the spread is unknown', () => {
  const curve = seasonCurve(climate(null), 'F', []);
  assert.deepEqual(curve.lines.map(({ words }) => words), ['40', '60', '80']); // prettier-ignore
  // 53.6 is 0.34 of the way up: 216 less 65.3.
  assert.match(curve.low, /^M40\.4 150\.7L/);
  assert.deepEqual([curve.sum, curve.total, curve.base, curve.spread], [null, 0, 50, null]);
  near(seasonCurve(climate({ degreesC: 1, from: 'region' }), 'F', []).total, 3285, 0.2);
});
