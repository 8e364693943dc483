/**
 * How many bees a package held when it was shaken: its label weight times bees to the pound, a figure that published sources put
 * anywhere from 2,800 to 4,000, so it is handed in. Units: pounds (the unit of the label), bees a pound, bees.
 */
import { ok, err, type Result } from '../result.ts';

export type StartReason = 'no-weight' | 'no-bees-per-pound' | 'too-much';

/** No cage holds so much; larger is a slip of the finger. */
const heaviestPounds = 20;
const mostBeesPerPound = 10_000;

export function beesInPackage(pounds: number, beesPerPound: number): Result<number, StartReason> {
  if (!(pounds > 0)) return err('no-weight');
  if (!(beesPerPound > 0)) return err('no-bees-per-pound');
  return pounds > heaviestPounds || beesPerPound > mostBeesPerPound ? err('too-much') : ok(pounds * beesPerPound);
}
