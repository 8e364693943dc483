/**
 * Single numbers, lists (`452,455.5,449`) and records (`A:9/300;B:4/310`) in a web address. The spelling is stricter than in a form
 * field: a decimal point only, no thousands mark, no unit, no space. `marks` separate the fields of a record, in order: [':', '/']. A
 * label comes first in its record. Marks inside a label are percent-encoded once more.
 */
import { ok, err, type Result } from '../result.ts';
import { plainDecimal } from '../numbers/show-number.ts';
import { decode } from './address.ts';

export type AddressNumberReason = 'empty' | 'not-a-number' | 'too-many-digits';

export function readAddressNumber(text: string): Result<number, AddressNumberReason> {
  if (text === '') return err('empty');
  if (!/^-?(\d+\.?\d*|\.\d+)$/.test(text) || text.endsWith('.')) return err('not-a-number');
  if (text.replace(/[-.]/g, '').replace(/^0+/, '').length > 17) return err('too-many-digits');
  return ok(Number(text) === 0 ? 0 : Number(text));
}

export function readAddressNumbers(text: string): Result<readonly number[], AddressNumberReason> {
  const numbers: number[] = [];
  for (const [index, item] of text.split(',').entries()) {
    const read = readAddressNumber(item);
    if (!read.ok) return err(read.reason, { row: index + 1, text: item });
    numbers.push(read.value);
  }
  return ok(numbers);
}

/** Splits each record into fields, one more than there are marks. The split goes from right to left, so that a label may contain a mark. */
export function readAddressRecords(
  text: string,
  marks: readonly string[],
): Result<readonly (readonly string[])[], 'empty' | 'wrong-fields'> {
  if (text === '') return err('empty');
  const records: string[][] = [];
  for (const [index, record] of text.split(';').entries()) {
    const fields = cutFromRight(record, marks);
    if (!fields) return err('wrong-fields', { row: index + 1, text: record });
    records.push(fields);
  }
  return ok(records);
}

export function writeAddressNumber(value: number): string {
  return plainDecimal(value);
}

export function writeAddressNumbers(values: readonly number[]): string {
  return values.map(writeAddressNumber).join(',');
}

export function writeAddressRecords(records: readonly (readonly string[])[], marks: readonly string[]): string {
  return records.map((fields) => fields.map((field, at) => encodeMarks(field) + (marks[at] ?? '')).join('')).join(';');
}

function cutFromRight(record: string, marks: readonly string[]): string[] | undefined {
  const fields: string[] = [];
  let left = record;
  for (const mark of marks.toReversed()) {
    const cut = left.lastIndexOf(mark);
    if (cut < 0) return undefined;
    fields.unshift(decode(left.slice(cut + mark.length)));
    left = left.slice(0, cut);
  }
  return [decode(left), ...fields];
}

function encodeMarks(field: string): string {
  return field.replace(/[%:;/,]/g, encodeURIComponent);
}
