/**
 * Mites that fall on a sticky board per day. The count supports no other statement: published factors from daily fall to the mites in a
 * colony differ tenfold. A fall is never compared with a level per 100 bees. Units: mites, days.
 */
import { ok, err, type Result } from '../result.ts';

export type BoardReason = 'no-days' | 'mites-not-whole' | 'mites-negative' | 'too-many';

const longestDays = 366;
const mostMites = 1_000_000;

export function mitesFallenPerDay(mites: number, days: number): Result<number, BoardReason> {
  if (mites < 0) return err('mites-negative');
  if (!Number.isInteger(mites)) return err('mites-not-whole');
  if (!(days > 0)) return err('no-days');
  return mites > mostMites || days > longestDays || mites / days > mostMites ? err('too-many') : ok(mites / days);
}
