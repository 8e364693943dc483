// A number in the unit of a box: rounded for display, and parsed as exactly itself.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { optional, quantity } from '../../../src/calculators/form/kind.ts';
import type { System } from '../../../src/calculators/form/measures.ts';
import * as units from '../../../src/calculators/form/units.ts';

const measures = {
  hiveWeight: units.hiveWeight,
  packageWeight: units.packageWeight,
  smallWeight: units.smallWeight,
  canVolume: units.canVolume,
  temperature: units.temperature,
  perWeight: units.perWeight,
};
const what = { us: 'it, such as 60', metric: 'it, such as 27' };

// Pound, ounce, US quart and Fahrenheit: NIST Special Publication 811 (2008), appendix B.8; quart: NIST Handbook 44, appendix C.
const published: { measure: keyof typeof measures; fixed: number; us: string; metric: string }[] = [
  { measure: 'hiveWeight', fixed: 27.2155422, us: '60', metric: '27.2' },
  { measure: 'hiveWeight', fixed: 27.2, us: '60', metric: '27.2' },
  { measure: 'packageWeight', fixed: 3, us: '3', metric: '1.36' },
  { measure: 'smallWeight', fixed: 453.59237, us: '16', metric: '454' },
  { measure: 'smallWeight', fixed: 454, us: '16', metric: '454' },
  { measure: 'smallWeight', fixed: 460.67975078125, us: '16.25', metric: '461' },
  { measure: 'smallWeight', fixed: 200, us: '7.05', metric: '200' },
  { measure: 'canVolume', fixed: 0.946352946, us: '1', metric: '0.946' },
  { measure: 'temperature', fixed: 20, us: '68', metric: '20' },
  { measure: 'temperature', fixed: 18.3, us: '64.9', metric: '18.3' },
  { measure: 'temperature', fixed: 40.27777777777778, us: '104.5', metric: '40.3' },
  { measure: 'temperature', fixed: -40, us: '-40', metric: '-40' },
  { measure: 'perWeight', fixed: 3500, us: '3500', metric: '7720' },
];

for (const { measure, fixed, us, metric } of published) {
  test(`${measure}: ${fixed} is shown in a box as ${us} and as ${metric}`, () => {
    assert.equal(units.shownIn(measures[measure], fixed, 'us'), us);
    assert.equal(units.shownIn(measures[measure], fixed, 'metric'), metric);
  });
}

const system = fc.constantFrom<System>('us', 'metric');
const value = fc.double({ min: 0.001, max: 100_000, noNaN: true }).map((each) => Number(each.toPrecision(12)));

for (const [name, measure] of Object.entries(measures)) {
  const kind = quantity(measure, what);

  test(`${name}: a number that a form wrote is parsed as exactly itself in any units; what it shows is short and near`, () => {
    fc.assert(
      fc.property(value, system, system, (number, shown, read) => {
        const exact = kind.read(kind.exact!(number), read);
        assert.ok(exact.ok && exact.value === number, `${number} came back as ${JSON.stringify(exact)}`);
        const text = kind.show(number, shown);
        assert.ok(text.replace(/\D/g, '').replace(/^0+/, '').length <= 6, text);
        const back = kind.read(text, shown);
        assert.ok(back.ok);
        // Half a unit of the third digit of the displayed number.
        const [was, is] = [number, back.value].map(measure.boxes[shown].fromFixed);
        assert.ok(Math.abs(is! - was!) <= Math.abs(was!) * 0.0051, text);
      }),
    );
  });

  test(`${name}: a bare number is in the unit of the box, and a unit word overrides it`, () => {
    const [us, metric] = [kind.read('5', 'us'), kind.read('5', 'metric')];
    assert.ok(us.ok && metric.ok && us.value !== metric.value);
    const worded = kind.read(`5 ${measure.fixed}`, 'us');
    assert.deepEqual(worded, kind.read(`5 ${measure.fixed}`, 'metric'));
    assert.deepEqual(worded, { ok: true, value: 5 });
    assert.equal(kind.read('5 stone', 'us').ok, false);
  });
}

test('a box that may be empty stays empty in any units', () => {
  const kind = optional(quantity(units.hiveWeight, what));
  assert.deepEqual(kind.read('', 'us'), { ok: true, value: undefined });
  assert.equal(kind.show(undefined, 'metric'), '');
  assert.equal(kind.exact!(undefined), '');
});
