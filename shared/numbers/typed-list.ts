/**
 * Reads a list of numbers from one box: items parted by a new line, a tab or `;`, so that a column or a row pasted from a
 * spreadsheet works. Blank items are passed over. A comma between items on one line is refused, since `4,5` is a number here.
 * A unit may stand behind an item if it is the one asked for; the words handed in must all mean that one, since units are not told apart.
 * The first bad item is named: `row` counts the items that are not blank, from 1, and `text` is the item as typed.
 */
import { accept, refuse, type Outcome } from '../outcome.ts';
import { readTypedNumber, type TypedNumberReason } from './typed-number.ts';

export type TypedListReason = TypedNumberReason | 'comma-list';

export function readTypedList(text: string, wordsOfOneUnit: readonly string[] = []): Outcome<readonly number[], TypedListReason> {
  const items = text
    .split(/[\n\r\t;]/u)
    .map((item) => item.trim())
    .filter((item) => item !== '');
  if (items.length === 0) return refuse('empty');
  const numbers: number[] = [];
  for (const [index, item] of items.entries()) {
    const where = { row: index + 1, text: item };
    if (hasCommaBetweenItems(item)) return refuse('comma-list', where);
    const read = readTypedNumber(item, wordsOfOneUnit);
    if (!read.ok) return refuse(read.reason, where);
    numbers.push(read.value);
  }
  return accept(numbers);
}

function hasCommaBetweenItems(item: string): boolean {
  return /,\s/u.test(item) || /,.*,/u.test(item) || /\d\.\d+,|,\d+\.\d/u.test(item);
}
