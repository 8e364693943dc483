/* One comparison of numbers for all tests: within an absolute distance, or within a part of the expected value. */
import assert from 'node:assert/strict';

/** Passes where `found` is at most `within` from `expected`; rounding of binary fractions is forgiven. */
export function near(found: number | null | undefined, expected: number, within: number, what = ''): void {
  const rounding = 1e-12 * Math.max(1, Math.abs(expected));
  assert.ok(
    typeof found === 'number' && Math.abs(found - expected) <= within + rounding,
    `${what} found ${found}, expected ${expected} within ${within}`.trimStart(),
  );
}

/** The same with a part of the expected value, such as 1e-9; values under 0.001 count as 0.001. */
export function nearInPart(found: number, expected: number, part: number, what = ''): void {
  assert.ok(
    Math.abs(found - expected) <= part * Math.max(1e-3, Math.abs(expected)),
    `${what} found ${found}, expected ${expected} within ${part} of it`.trimStart(),
  );
}
