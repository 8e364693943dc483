/**
 * Single numbers, lists (`452,455.5,449`) and records (`A:9/300;B:4/310`) as an address spells them, which is stricter than a box:
 * decimal point only, no thousands mark, no unit, no space. `marks` are what parts the fields of a record, in order: [':', '/'].
 * A label comes first in its record; where it holds a mark itself it is percent-encoded once more when written.
 */
import { accept, refuse, type Outcome } from '../outcome.ts';
import { plainDecimal } from '../numbers/show-number.ts';
import { decode } from './address.ts';

export type AddressNumberReason = 'empty' | 'not-a-number' | 'too-many-digits';

export function readAddressNumber(text: string): Outcome<number, AddressNumberReason> {
  if (text === '') return refuse('empty');
  if (!/^-?(\d+\.?\d*|\.\d+)$/.test(text) || text.endsWith('.')) return refuse('not-a-number');
  if (text.replace(/[-.]/g, '').replace(/^0+/, '').length > 17) return refuse('too-many-digits');
  return accept(Number(text) === 0 ? 0 : Number(text));
}

export function readAddressNumbers(text: string): Outcome<readonly number[], AddressNumberReason> {
  const numbers: number[] = [];
  for (const [index, item] of text.split(',').entries()) {
    const read = readAddressNumber(item);
    if (!read.ok) return refuse(read.reason, { row: index + 1, text: item });
    numbers.push(read.value);
  }
  return accept(numbers);
}

/** Each record as its fields, one more than there are marks; cut from the right, so that a label may hold a mark. */
export function readAddressRecords(
  text: string,
  marks: readonly string[],
): Outcome<readonly (readonly string[])[], 'empty' | 'wrong-fields'> {
  if (text === '') return refuse('empty');
  const records: string[][] = [];
  for (const [index, record] of text.split(';').entries()) {
    const fields = cutFromRight(record, marks);
    if (!fields) return refuse('wrong-fields', { row: index + 1, text: record });
    records.push(fields);
  }
  return accept(records);
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
