/**
 * Parses a count (bees, mites, colonies) from a form field: a whole number, not below 0, without a unit. `300.0` is whole, `3,5` is not.
 */
import { ok, err, type Result } from '../result.ts';
import { readTypedNumber, type TypedNumberReason } from './typed-number.ts';

export type TypedCountReason = TypedNumberReason | 'not-whole' | 'negative';

export function readTypedCount(text: string): Result<number, TypedCountReason> {
  const read = readTypedNumber(text);
  if (!read.ok) return read;
  if (read.value < 0) return err('negative');
  return Number.isInteger(read.value) ? ok(read.value) : err('not-whole');
}
