/**
 * The number of bees in a package when it was shaken: label weight times bees per pound. Published sources put bees per pound anywhere
 * from 2,800 to 4,000, so the caller passes it. Units: pounds (the unit of the label), bees per pound, bees.
 */
import { ok, err, type Result } from '../result.ts';

export type StartReason = 'no-weight' | 'no-bees-per-pound' | 'too-much';

/** No cage holds more. A larger number is a typing error. */
const heaviestPounds = 20;
const mostBeesPerPound = 10_000;

export function beesInPackage(pounds: number, beesPerPound: number): Result<number, StartReason> {
  if (!(pounds > 0)) return err('no-weight');
  if (!(beesPerPound > 0)) return err('no-bees-per-pound');
  return pounds > heaviestPounds || beesPerPound > mostBeesPerPound ? err('too-much') : ok(pounds * beesPerPound);
}
