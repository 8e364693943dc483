/**
 * Reads a list of numbers from one box: items parted by a new line, a tab or `;`, so that a column or a row pasted from a
 * spreadsheet works. Blank items are passed over. A comma between items on one line is refused, since `4,5` is a number here.
 * A unit may stand behind an item if it is one of those handed in, each with the sum to the one unit of the numbers; '' is the sum of
 * a number alone.
 * The first bad item is named: `row` counts the items that are not blank, from 1, and `text` is the item as typed.
 */
import { ok, err, type Result } from '../result.ts';
import { readTypedNumber, type TypedNumberReason } from './typed-number.ts';

export type TypedListReason = TypedNumberReason | 'comma-list';

export function readTypedList(
  text: string,
  units: Readonly<Record<string, (value: number) => number>> = {},
): Result<readonly number[], TypedListReason> {
  const items = text
    .split(/[\n\r\t;]/u)
    .map((item) => item.trim())
    .filter((item) => item !== '');
  if (items.length === 0) return err('empty');
  const words = Object.keys(units).filter((word) => word !== '');
  const numbers: number[] = [];
  for (const [index, item] of items.entries()) {
    const where = { row: index + 1, text: item };
    if (hasCommaBetweenItems(item)) return err('comma-list', where);
    const read = readTypedNumber(item, words);
    if (!read.ok) return err(read.reason, where);
    numbers.push(units[read.unit]?.(read.value) ?? read.value);
  }
  return ok(numbers);
}

function hasCommaBetweenItems(item: string): boolean {
  return /,\s/u.test(item) || /,.*,/u.test(item) || /\d\.\d+,|,\d+\.\d/u.test(item);
}
