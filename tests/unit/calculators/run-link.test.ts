// A run as a fragment and as a file: it comes back unchanged, and nothing typed by hand gets in.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'vitest';
import fc from 'fast-check';
import { err, ok } from '../../../shared/result.ts';
import { shortOf } from '../../../shared/address/short.ts';
import { asTable, fromFile } from '../../../src/client/checklist/files.ts';
import type { Run } from '../../../src/client/checklist/record.ts';
import { LONGEST_LINK, linkTail, runFromTail } from '../../../src/client/checklist/share.ts';

const STEPS = [
  ...readFileSync('content/books/common/checklists/package-first-six-weeks.mdx', 'utf8').matchAll(/<Task id="([a-z0-9-]+)"/g),
].map((match) => match[1]!);

test('the demo list has steps, and no two share a short form', () => {
  assert.ok(STEPS.length >= 15);
  assert.equal(new Set(STEPS.map(shortOf)).size, STEPS.length);
});

test('a run fits into an address of at most 500 characters and comes back unchanged', () => {
  fc.assert(
    fc.property(
      fc.subarray(STEPS),
      fc.boolean(),
      fc.constantFrom('candy', 'released'),
      fc.string({ maxLength: 20 }),
      fc.boolean(),
      (ticked, dated, queen, name, withName) => {
        const run: Run = {
          name,
          ticks: Object.fromEntries(ticked.map((step) => [step, { on: '2026-04-20', of: '' }])),
          ...(dated ? { day: '2026-04-18', choices: { queen, comb: 'drawn' } } : {}),
        };
        const tail = linkTail(run, withName);
        assert.ok(tail && tail.length <= LONGEST_LINK);
        const back = runFromTail(tail, STEPS, '2026-04-20');
        assert.deepEqual(back?.run.ticks, run.ticks);
        assert.equal(back?.run.day, run.day);
        assert.deepEqual(back?.run.choices, run.choices);
        assert.equal(back?.unknown, 0);
        assert.equal(back?.run.name, withName ? name.slice(0, 60) : '');
      },
    ),
  );
});

test('a list that is too long for an address is reported', () => {
  const run: Run = {
    name: '',
    ticks: Object.fromEntries(Array.from({ length: 200 }, (_, index) => [`step-${index}`, { on: '2026-04-20', of: '' }])),
  };
  assert.equal(linkTail(run, false), null);
});

test('an address typed by hand adds no step that is not in the list, and no markup', () => {
  assert.equal(runFromTail('#run=;;<b>', STEPS, '2026-04-20'), null);
  assert.equal(runFromTail('#run=18/4/26;;', STEPS, '2026-04-20'), null);
  assert.equal(runFromTail('#run=2026-02-30;;', STEPS, '2026-04-20'), null);
  assert.equal(runFromTail(`#run=;;${'abc'.repeat(200)}`, STEPS, '2026-04-20'), null);
  assert.deepEqual(runFromTail('#run=;;zzz', ['dead'], '2026-04-20'), { run: { name: '', ticks: {} }, unknown: 1 });
  assert.equal(runFromTail('#run=;;;%E0%A4%A', STEPS, '2026-04-20')?.run.name, '');
});

test('the spreadsheet file quotes its cells, and no cell is run as a formula', () => {
  const table = asTable({
    version: 2,
    lists: {
      a: { open: 'x', runs: { x: { name: 'green, hive', ticks: { dead: { on: '2026-04-18', of: '' } }, notes: { dead: '=1+1' } } } },
    },
  });
  assert.equal(table, 'list,run,day,step,ticked on,note,asked\r\na,"green, hive",,dead,2026-04-18,\'=1+1,\r\n');
});

test('the reader distinguishes a file of another club, of a newer edition, and of another kind', () => {
  assert.deepEqual(fromFile('{}', 'tamarack-county'), err('not-a-record'));
  assert.deepEqual(fromFile('{"format":"almanac-runs","version":2,"club":"other","lists":{}}', 'tamarack-county'), err('other-club'));
  assert.deepEqual(fromFile('{"format":"almanac-runs","version":9,"club":"tamarack-county","lists":{}}', 'tamarack-county'), err('newer'));
  assert.deepEqual(
    fromFile('\uFEFF{"format":"almanac-runs","version":2,"club":"tamarack-county","saved":"2026-04-18","lists":{}}', 'tamarack-county'),
    ok({ state: { version: 2, lists: {} }, saved: '2026-04-18' }),
  );
});

test('the reader recognises a file with parts of the wrong type', () => {
  const file = (run: object, open: unknown = 'x'): string =>
    JSON.stringify({ format: 'almanac-runs', version: 2, club: 'c', lists: { a: { open, runs: { x: { name: '', ticks: {}, ...run } } } } });
  assert.equal(
    fromFile(file({ day: '2026-04-18', notes: { dead: 'two' }, ticks: { dead: { on: '2026-04-18', of: '', later: 1 } }, later: [1] }), 'c')
      .ok,
    true,
  );
  for (const run of [
    { name: 5 },
    { day: 'tomorrow' },
    { day: '2026-02-30' },
    { filed: true },
    { notes: { dead: 5 } },
    { asked: 'all' },
    { choices: [] },
    { ticks: { dead: null } },
    { ticks: { dead: { on: 5, of: '' } } },
    { ticks: { dead: { on: '2026-04-18' } } },
  ])
    assert.deepEqual(fromFile(file(run), 'c'), err('not-a-record'), JSON.stringify(run));
  assert.equal(fromFile(file({}, {}), 'c').ok, false);
});
