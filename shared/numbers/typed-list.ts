/**
 * Parses a list of numbers from one form field. New lines, tabs and `;` separate the items, so that a column or row pasted from a
 * spreadsheet works. Blank items are skipped. A comma between items on one line is refused, because `4,5` is one number here. An item may
 * have a unit from `units`, which maps each unit to its conversion; '' is the conversion of a bare number. An error names the first bad
 * item: `row` counts the non-blank items from 1, and `text` is the item as typed.
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
