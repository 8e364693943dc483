/** Three letters for a name in an address. Two names may share one, so whoever lists names together must refuse that. */
import { printOf } from './print.ts';

export function shortOf(name: string): string {
  return printOf(name).padStart(3, '0').slice(-3);
}
