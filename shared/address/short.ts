/** Three letters that stand for a name in an address. Two names may share them, so code that lists names together must refuse that. */
import { printOf } from './print.ts';

export function shortOf(name: string): string {
  return printOf(name).padStart(3, '0').slice(-3);
}
