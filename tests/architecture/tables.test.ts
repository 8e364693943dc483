// Every row of tests/tables names its source and the basis of its expected value, and the two agree.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { BASES, type Basis, type SourcedRow } from '../rows.ts';
import { files } from './tree.ts';

type Kept = SourcedRow<unknown, unknown>;

/** Words of a source that decide the basis. */
const SETTLED: [words: RegExp, basis: Basis[]][] = [
  [/from memory|no source|common table/, ['memory']],
  [/^our rule|worked by hand/, ['rule']],
  [/computed independently|independent (program|simulation|gamma)/, ['recomputed', 'published']],
  [/^derived/, ['derived', 'memory', 'rule']],
];

async function keptRows(): Promise<Kept[]> {
  const modules = (await Promise.all(
    files('tests/tables')
      .flatMap((path) => /^tests\/tables\/([\w-]+)\.ts$/.exec(path)?.[1] ?? [])
      .map((name) => import(`../tables/${name}.ts`)),
  )) as Record<string, unknown>[];
  return modules
    .flatMap((module) => Object.values(module))
    .flatMap((value) => (Array.isArray(value) ? (value as Kept[]) : []))
    .filter((row) => typeof row === 'object' && row !== null && 'given' in row && 'expect' in row);
}

const faultOf = ({ case: name, from, basis }: Kept): string[] => {
  if (!from || !BASES.includes(basis)) return [`${name}: no source or no basis`];
  const settled = SETTLED.find(([words]) => words.test(from));
  return settled && !settled[1].includes(basis) ? [`${name}: ${basis}, but “${from}”`] : [];
};

test('every row of a table states its basis, as its source does', async ({ annotate }) => {
  const kept = await keptRows();
  assert.ok(kept.length > 450, `${kept.length} rows`);
  assert.deepEqual(kept.flatMap(faultOf), []);
  const counts = BASES.map((basis) => `${basis} ${kept.filter((row) => row.basis === basis).length}`);
  await annotate(`${kept.length} rows: ${counts.join(', ')}`);
});

test('the test detects a row whose basis contradicts its source', () => {
  const row = { case: 'a', given: 1, expect: 2 };
  assert.equal(faultOf({ ...row, from: 'from memory', basis: 'published' }).length, 1);
  assert.equal(faultOf({ ...row, from: '', basis: 'rule' }).length, 1);
  assert.equal(faultOf({ ...row, from: 'Garwood 1936, computed independently', basis: 'recomputed' }).length, 0);
});
