/*
 * Count day: the counts of one evening. The quarters are those of R's quantile(x, type = 7), by Hyndman and Fan 1996, worked out by hand
 * from its rule; the file is read back by the almanac's own reader of counts.
 */
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { countsFile, putTogether, spreadWords, type Evening } from '../../../src/calculators/count-day/model.ts';
import { drawTogether } from '../../../src/calculators/count-day/chart.ts';
import { headline, overWords } from '../../../src/calculators/count-day/text.en.ts';
import { counts } from '../../../src/schemas/counts.ts';
import { unwrap } from '../../../shared/result.ts';
import { aDay } from '../../days.ts';

const evening = (found: readonly number[], phase: Evening['phase'] = 'dearth'): Evening => ({
  counts: found.map((mites, index) => ({ label: index === 0 ? 'Oak' : '', mites, bees: 300 })),
  date: aDay('2026-08-15'),
  district: 'valley',
  method: 'wash',
  phase,
});
const figures = { levels: [{ levelPer100: 2, phases: ['dearth'] as const, words: 'A source.' }] };

test('a level that is met exactly is reached, and each colony over it is named', () => {
  const together = unwrap(putTogether(evening([6, 3, 0, 9]), figures));
  assert.deepEqual(together.colonies.map(({ isOver }) => isOver), [true, false, false, true]); // prettier-ignore
  assert.equal(headline(together), '2 of 4 colonies are at or over 2 per hundred bees.');
  assert.equal(overWords(together), 'Oak, 4');
  // Rates 2, 1, 0, 3: the quarters of 0, 1, 2, 3 are 0.75, 1.5 and 2.25.
  const { lowest, quarter, middle, threeQuarters, highest } = together.spread;
  assert.deepEqual([lowest, quarter, middle, threeQuarters, highest], [0, 0.75, 1.5, 2.25, 3]);
  assert.equal(spreadWords(together), '0.0, 1.5, 3.0');
});

test('a rate just under the level is not shown as the level', () => {
  const together = unwrap(putTogether({ ...evening([0]), counts: [{ label: '', mites: 5999, bees: 300_000 }] }, figures));
  assert.equal(together.over, 0);
  assert.ok(!spreadWords(together).includes('2.0'), spreadWords(together));
});

test('without a level nobody is judged, and a wrong count names its row', () => {
  const together = unwrap(putTogether(evening([30], 'winter-rest'), figures));
  assert.equal(together.level, undefined);
  assert.equal(overWords(together), 'No level for this part of the year.');
  assert.deepEqual(putTogether({ ...evening([1, 2]), counts: [{ label: '', mites: 1, bees: 300 }, { label: '', mites: 1, bees: 0 }] }, figures), {
    ok: false,
    reason: 'no-bees',
    row: 2,
  }); // prettier-ignore
});

test('the file is one that the counts of a club take, without names', () => {
  const [names, ...lines] = countsFile(evening([6, 3]))
    .trim()
    .split('\n');
  const columns = names!.split(',');
  const rows = lines.map((line) => {
    const [date, district, mites, bees, method] = line.split(',');
    return { date: date!, district: district!, mites: Number(mites), bees: Number(bees), method: method! };
  });
  assert.deepEqual(rows[0], { date: '2026-08-15', district: 'valley', mites: 6, bees: 300, method: 'wash' });
  const read = counts.safeParse({ columns, rows });
  assert.ok(read.success, JSON.stringify(read.error));
});

test('every colony is a dot within the drawing, and dots of one rate do not hide each other', () => {
  const drawing = drawTogether(unwrap(putTogether(evening(Array.from({ length: 80 }, () => 3)), figures)));
  const dots = drawing.shapes.filter(({ tag }) => tag === 'circle');
  assert.equal(new Set(dots.map(({ at }) => `${at.cx} ${at.cy}`)).size, 80);
  for (const { at } of dots) assert.ok(parseFloat(String(at.cy)) > 0 && parseFloat(String(at.cy)) < drawing.heightRem);
});
