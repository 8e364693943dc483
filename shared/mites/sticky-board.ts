/**
 * Mites that fall on a board, per day. Nothing more can be said: published factors from a daily fall to the mites of a colony differ
 * tenfold, and a fall is never compared with a level per 100 bees. Units: mites, days.
 */
import { accept, refuse, type Outcome } from '../outcome.ts';

export type BoardReason = 'no-days' | 'mites-not-whole' | 'mites-negative' | 'too-many';

const longestDays = 366;
const mostMites = 1_000_000;

export function mitesFallenPerDay(mites: number, days: number): Outcome<number, BoardReason> {
  if (mites < 0) return refuse('mites-negative');
  if (!Number.isInteger(mites)) return refuse('mites-not-whole');
  if (!(days > 0)) return refuse('no-days');
  return mites > mostMites || days > longestDays || mites / days > mostMites ? refuse('too-many') : accept(mites / days);
}
