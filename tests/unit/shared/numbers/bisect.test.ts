import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { bisect } from '../../../../shared/numbers/bisect.ts';

test('bisect finds the zero of a rising function, at either end too', () => {
  assert.ok(Math.abs(bisect((x) => x * x - 2, 0, 2) - Math.SQRT2) < 1e-15);
  fc.assert(
    fc.property(fc.double({ min: -50, max: 50, noNaN: true }), (zero) => {
      assert.ok(Math.abs(bisect((x) => x - zero, -50, 50) - zero) <= 1e-13);
    }),
  );
});

test('bisect throws where there is no zero between the ends', () => {
  assert.throws(() => bisect((x) => x + 0.5, 0, 1), /bisect: needs a sign change between 0 and 1/);
  assert.throws(() => bisect((x) => x - 1.5, 0, 1), /bisect: needs a sign change between 0 and 1/);
  assert.throws(() => bisect(() => NaN, 0, 1), /bisect: needs a sign change/);
});
