/* Five-number summary: worked by hand, and properties that apply to any list. */
import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { spreadOf, type Five } from '../../../../shared/numbers/spread-of.ts';
import { rows, type Row } from '../../../rows.ts';

const from = 'worked by hand, definition 7 of Hyndman and Fan 1996';
const table: Row<number[], Five>[] = [
  { case: 'one number is all five', given: [2], expect: { lowest: 2, quarter: 2, middle: 2, threeQuarters: 2, highest: 2 }, from },
  { case: 'two', given: [4, 0], expect: { lowest: 0, quarter: 1, middle: 2, threeQuarters: 3, highest: 4 }, from },
  { case: 'five, unsorted', given: [5, 1, 4, 2, 3], expect: { lowest: 1, quarter: 2, middle: 3, threeQuarters: 4, highest: 5 }, from },
  {
    case: 'four: cuts between neighbours',
    given: [1, 2, 4, 8],
    expect: { lowest: 1, quarter: 1.75, middle: 3, threeQuarters: 5, highest: 8 },
    from,
  },
  { case: 'all alike', given: [3, 3, 3], expect: { lowest: 3, quarter: 3, middle: 3, threeQuarters: 3, highest: 3 }, from },
];
rows('spread', table, (given, expected) => assert.deepEqual(spreadOf(given), expected));

test('an empty list throws', () => assert.throws(() => spreadOf([]), /needs at least one number/));

test('the five rise, the ends are in the list, and the order of the list does not matter', () => {
  fc.assert(
    fc.property(fc.array(fc.double({ min: 0, max: 1000, noNaN: true }), { minLength: 1, maxLength: 40 }), (numbers) => {
      const { lowest, quarter, middle, threeQuarters, highest } = spreadOf(numbers);
      assert.ok(lowest <= quarter && quarter <= middle && middle <= threeQuarters && threeQuarters <= highest);
      assert.deepEqual([lowest, highest], [Math.min(...numbers), Math.max(...numbers)]);
      assert.deepEqual(spreadOf([...numbers].reverse()), spreadOf(numbers));
    }),
  );
});
