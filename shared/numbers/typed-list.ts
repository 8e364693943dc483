/**
 * Parses a list of numbers from one form field: a column or a row pasted from a spreadsheet, or typed with commas or blanks. New lines,
 * tabs and `;` always separate. A comma separates where it cannot be a decimal: before a blank, or more than once. `16,15` alone is refused
 * in a country with a decimal point and is one number in a country with a decimal comma (`mark`). A name before a number is skipped. An
 * item may have a unit from `units`, which maps each unit to its conversion; '' is the conversion of a bare number. An error names the
 * first bad item: `row` counts the items from 1, and `text` is the item as typed.
 */
import { ok, err, type Result } from '../result.ts';
import { readTypedNumber, type TypedNumberReason } from './typed-number.ts';

export type TypedListReason = TypedNumberReason | 'comma-list';

export function readTypedList(
  text: string,
  units: Readonly<Record<string, (value: number) => number>> = {},
  mark: '.' | ',' = '.',
): Result<readonly number[], TypedListReason> {
  const items = text
    .split(/[\n\r]/u)
    .flatMap((line) => itemsOf(line, mark))
    .map((item) => item.trim())
    .filter((item) => item !== '');
  if (items.length === 0) return err('empty');
  const words = Object.keys(units).filter((word) => word !== '');
  const numbers: number[] = [];
  for (const [index, item] of items.entries()) {
    const where = { row: index + 1, text: item };
    if (isTwoWays(item, mark)) return err('comma-list', where);
    const read = readTypedNumber(item, words);
    if (!read.ok) return err(read.reason, where);
    numbers.push(units[read.unit]?.(read.value) ?? read.value);
  }
  return ok(numbers);
}

function itemsOf(line: string, mark: '.' | ','): string[] {
  const cells = line.split(/[\t;]/u);
  const first = cells[0]!.trim();
  // A name before its number: "Package 3", or "A" in a column of its own.
  const unnamed = cells.length > 1 && /^\p{L}/u.test(first) ? cells.slice(1) : cells;
  return unnamed.flatMap((cell) =>
    commaItems(cell.replace(/^\s*\p{L}[\p{L}\d.]*[:,]? +(?=[\d.,]+\s*\p{L}*\s*$)/u, ''), mark).flatMap(blankItems),
  );
}

function commaItems(cell: string, mark: '.' | ','): string[] {
  if (/,\s/u.test(cell)) return cell.split(/,\s+/u).flatMap((part) => commaItems(part, mark));
  if (!cell.includes(',') || mark === ',' || looksGrouped(cell)) return [cell];
  const many = /,.*,|\.\d+,|,\d+\.|^\s*\d{3,},\d{3,}\s*$/u.test(cell);
  return many ? cell.split(',') : [cell];
}

/** "1,361" may be one thousand three hundred sixty-one. */
const looksGrouped = (cell: string): boolean => /(?<![\d.,])[1-9]\d?,\d{3}(?!\d)/u.test(cell);

function blankItems(item: string): string[] {
  const parts = item.trim().split(/ +/u);
  const isList = parts.length > 1 && parts.every((part) => /^[\d.,]*\d$/u.test(part)) && !/(?<![\d.,])[1-9]\d? \d{3}(?!\d)/u.test(item);
  return isList ? parts : [item];
}

function isTwoWays(item: string, mark: '.' | ','): boolean {
  if (mark === ',') return /,.*,/u.test(item);
  return /^\d+,\d+$/u.test(item) && !/^0*,|,\d{3}$/u.test(item) && !item.startsWith('0');
}
