import { test } from 'vitest';

/** One row of a published table: the input, the expected output, and its source. */
export type Row<Given, Expect> = { case: string; given: Given; expect: Expect; from: string };

/**
 * Basis of an expected value. `published`: its source prints it. `recomputed`: an independent program computed it by a published method
 * or from published data. `derived`: computed by hand from published figures. `rule`: a rule of this project. `memory`: from memory or
 * common practice, with no publication opened.
 */
export const BASES = ['published', 'recomputed', 'derived', 'rule', 'memory'] as const;
export type Basis = (typeof BASES)[number];

/** A row of tests/tables. */
export type SourcedRow<Given, Expect> = Row<Given, Expect> & { basis: Basis };

/** Runs a table, one test per row, on frozen inputs. An empty table is an error. */
export function rows<Given, Expect>(
  title: string,
  table: readonly Row<Given, Expect>[],
  check: (given: Given, expect: Expect) => void,
): void {
  if (table.length === 0) throw new Error(`rows: "${title}" has an empty table`);
  for (const row of table) test(`${title}: ${row.case} (${row.from})`, () => check(frozen(row.given), row.expect));
}

export function frozen<Thing>(thing: Thing): Thing {
  if (typeof thing === 'object' && thing !== null && !Object.isFrozen(thing)) {
    Object.freeze(thing);
    for (const part of Object.values(thing)) frozen(part);
  }
  return thing;
}
