// No tick is lost or moved: 10,000 generated runs of ticks, edits of the list, reloads, a second tab, a storage that is full, blocked or
// damaged, and reopened files. Each is compared with a plain model of what the reader did.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { unwrap } from '../../../shared/result.ts';
import { asFile, fromFile } from '../../../src/client/checklist/files.ts';
import {
  inOpenRun,
  emptyState,
  openRun,
  readState,
  tickOf,
  VERSION,
  withTick,
  type ChecklistState,
} from '../../../src/client/checklist/record.ts';
import { addHive, begin, carryOn, file, freshId, merge, open, runsOf, startAgain } from '../../../src/client/checklist/runs.ts';
import { setAside } from '../../../src/client/checklist/set-aside.ts';
import { openStore, type Store } from '../../../src/client/checklist/store.ts';

const KEY = 'almanac tamarack-county/ lists';
const LIST = 'package-arrival';

/** A browser storage that can be full or blocked. */
function shelf() {
  const held = new Map<string, string>();
  const state = { full: false, blocked: false };
  const guard = (): void => {
    if (state.blocked) throw new Error('blocked');
  };
  return {
    held,
    state,
    getItem: (key: string): string | null => (guard(), held.get(key) ?? null),
    setItem: (key: string, value: string): void => {
      guard();
      if (state.full) throw new Error('full');
      held.set(key, value);
    },
  };
}

const steps = fc.constantFrom('thermometer', 'dead', 'queen-alive', 'can', 'constructor', '__proto__x', 'toString');
const action = fc.oneof(
  { weight: 6, arbitrary: fc.record({ does: fc.constant('tick' as const), tab: fc.nat(1), step: steps }) },
  { weight: 3, arbitrary: fc.record({ does: fc.constant('untick' as const), tab: fc.nat(1), step: steps }) },
  fc.record({ does: fc.constantFrom('reload', 'reword', 'remove', 'insert', 'carry', 'older'), tab: fc.nat(1) }),
);

test('the ticks are those that the reader made, whatever happens between', () => {
  fc.assert(
    fc.property(fc.array(action, { maxLength: 25 }), (actions) => {
      const storage = shelf();
      const tabs: Store[] = [openStore(() => storage, KEY), openStore(() => storage, KEY)];
      const model = new Set<string>();
      let words = 'as they were';
      for (const each of actions) {
        const store = tabs[each.tab]!;
        if (each.does === 'tick' || each.does === 'untick') {
          const { step } = each as { step: string };
          const tick = each.does === 'tick' ? { on: '2026-04-18', of: words } : null;
          store.change((kept) => inOpenRun(kept, LIST, (run) => withTick(run, step, tick)));
          if (tick) model.add(step);
          else model.delete(step);
        }
        if (each.does === 'reload') tabs[each.tab] = openStore(() => storage, KEY);
        if (each.does === 'reword') words = `${words}, reworded`;
        // A list with a new or removed step changes nothing in the store.
        if (each.does === 'carry') {
          const text = asFile(store.read(), 'tamarack-county', '2026-04-18');
          const opened = unwrap(fromFile(text, 'tamarack-county'));
          store.change((kept) => merge(kept, opened.state).state);
        }
        // An older edition wrote the same with a lower version.
        if (each.does === 'older' && storage.held.has(KEY))
          storage.held.set(KEY, storage.held.get(KEY)!.replace(`"version":${VERSION}`, '"version":1'));
        for (const tab of tabs) assert.deepEqual(new Set(Object.keys(openRun(tab.read(), LIST).ticks)), model);
      }
    }),
    { numRuns: 10_000 },
  );
});

test('a storage that is full, blocked or damaged loses no tick while the page is open', () => {
  fc.assert(
    fc.property(
      fc.array(fc.record({ step: steps, then: fc.constantFrom('nothing', 'full', 'room', 'blocked') }), { maxLength: 15 }),
      fc.boolean(),
      (actions, damaged) => {
        const storage = shelf();
        if (damaged) storage.held.set(KEY, '{"version":2,"lists":');
        const store = openStore(() => storage, KEY);
        const model = new Set<string>();
        for (const { step, then } of actions) {
          store.change((kept) => inOpenRun(kept, LIST, (run) => withTick(run, step, { on: '2026-04-18', of: '' })));
          model.add(step);
          assert.deepEqual(new Set(Object.keys(openRun(store.read(), LIST).ticks)), model);
          if (then !== 'nothing') Object.assign(storage.state, { full: then === 'full', blocked: then === 'blocked' });
        }
        if (damaged) assert.equal(storage.held.get(KEY), '{"version":2,"lists":', 'what cannot be read is left as it is');
      },
    ),
    { numRuns: 2_000 },
  );
});

test('ticks made while the storage was full are stored as soon as there is space', () => {
  const storage = shelf();
  const store = openStore(() => storage, KEY);
  const tick = (step: string) => store.change((kept) => inOpenRun(kept, LIST, (run) => withTick(run, step, { on: '2026-04-18', of: '' })));
  tick('dead');
  storage.state.full = true;
  tick('can');
  assert.equal(store.trouble(), 'full');
  storage.state.full = false;
  tick('thermometer');
  assert.equal(store.trouble(), null);
  assert.deepEqual(Object.keys(openRun(openStore(() => storage, KEY).read(), LIST).ticks), ['dead', 'can', 'thermometer']);
});

test('a damaged record is moved away complete, and ticks made meanwhile are then stored', () => {
  const storage = shelf();
  storage.held.set(KEY, 'not a record');
  const store = openStore(() => storage, KEY);
  store.change((kept) => inOpenRun(kept, LIST, (run) => withTick(run, 'dead', { on: '2026-04-18', of: '' })));
  assert.equal(store.trouble(), 'damaged');
  setAside(storage, KEY);
  store.mended();
  store.change((kept) => kept);
  assert.equal(storage.held.get(`${KEY} set aside 1`), 'not a record');
  assert.deepEqual(Object.keys(openRun(openStore(() => storage, KEY).read(), LIST).ticks), ['dead']);
});

test('a record of a newer edition is neither read nor written', () => {
  const newer = JSON.stringify({ version: VERSION + 1, lists: {}, more: 1 });
  const storage = shelf();
  storage.held.set(KEY, newer);
  const store = openStore(() => storage, KEY);
  store.change((kept) => inOpenRun(kept, LIST, (run) => withTick(run, 'dead', { on: '2026-04-18', of: '' })));
  assert.equal(store.trouble(), 'newer');
  assert.equal(storage.held.get(KEY), newer);
  assert.deepEqual(Object.keys(openRun(store.read(), LIST).ticks), ['dead']);
});

test('a tick belongs to the words of its step', () => {
  const run = withTick({ name: '', ticks: {} }, 'dead', { on: '2026-04-18', of: 'abc' });
  assert.equal(tickOf(run, 'dead', 'abc'), 'done');
  assert.equal(tickOf(run, 'dead', 'xyz'), 'changed');
  assert.equal(tickOf(run, 'can', 'abc'), null);
});

const someKept: fc.Arbitrary<ChecklistState> = fc
  .array(
    fc.record({
      run: fc.constantFrom('the first', 'run 2', 'run 3'),
      name: fc.constantFrom('', 'green hive', 'blue hive'),
      step: steps,
      note: fc.string({ maxLength: 8 }),
    }),
    { maxLength: 8 },
  )
  .map((all) =>
    all.reduce<ChecklistState>((kept, { run, name, step, note }) => {
      const held = kept.lists[LIST] ?? { open: run, runs: {} };
      const before = held.runs[run] ?? { name, ticks: {} };
      return {
        ...kept,
        lists: {
          [LIST]: {
            ...held,
            runs: {
              ...held.runs,
              [run]: {
                ...before,
                ticks: { ...before.ticks, [step]: { on: '2026-04-18', of: '' } },
                notes: { ...before.notes, [step]: note },
              },
            },
          },
        },
      };
    }, emptyState()),
  );
const ticksIn = (kept: ChecklistState): string[] =>
  Object.values(kept.lists[LIST]?.runs ?? {})
    .flatMap((run) => Object.keys(run.ticks))
    .sort();

test('two merged records contain every tick of both, and a second merge changes nothing', () => {
  fc.assert(
    fc.property(someKept, someKept, (ours, theirs) => {
      const { state: kept } = merge(ours, theirs);
      for (const [id, run] of Object.entries(ours.lists[LIST]?.runs ?? {}))
        for (const [step, tick] of Object.entries(run.ticks)) assert.deepEqual(kept.lists[LIST]!.runs[id]!.ticks[step], tick);
      const all = ticksIn(kept);
      for (const step of ticksIn(theirs)) assert.ok(all.includes(step));
      const again = merge(kept, ours);
      assert.deepEqual(again.state, kept);
      assert.equal(again.difference.ticks, 0);
    }),
    { numRuns: 2_000 },
  );
});

test('beginning, opening, filing and restarting a run changes no other run', () => {
  const ticked = inOpenRun(emptyState(), LIST, (run) => withTick(run, 'dead', { on: '2026-04-18', of: '' }));
  const second = begin(ticked, LIST, freshId(ticked, LIST), { name: 'blue hive', ticks: {} });
  assert.deepEqual(openRun(second, LIST), { name: 'blue hive', ticks: {} });
  assert.deepEqual(Object.keys(openRun(open(second, LIST, 'the first'), LIST).ticks), ['dead']);
  const filed = file(open(second, LIST, 'the first'), LIST, '2026-06-01', freshId(second, LIST));
  assert.equal(filed.lists[LIST]!.runs['the first']!.filed, '2026-06-01');
  assert.deepEqual(Object.keys(filed.lists[LIST]!.runs['the first']!.ticks), ['dead']);
  const changed = inOpenRun(open(filed, LIST, 'the first'), LIST, (run) => withTick(run, 'dead', null));
  assert.deepEqual(Object.keys(changed.lists[LIST]!.runs['the first']!.ticks), ['dead'], 'a filed run is read, not changed');
  assert.deepEqual(startAgain(filed, LIST).lists[LIST]!.runs['the first'], filed.lists[LIST]!.runs['the first']);
});

test('text that is no record is reported, never an exception', () => {
  fc.assert(
    fc.property(fc.oneof(fc.string(), fc.json()), (text) => ['damaged', 'newer', null].includes(readState(text).trouble)),
    { numRuns: 2_000 },
  );
  assert.equal(readState('[]').trouble, 'damaged');
  assert.equal(readState('{"version":2,"lists":{"a":{"runs":{"b":{"ticks":[]}}}}}').trouble, 'damaged');
});

test("the yard's address is in the file, is imported where there is none, and is never overwritten without notice", () => {
  const ours: ChecklistState = { ...emptyState(), yard: 'Mill Lane' };
  const opened = unwrap(fromFile(asFile(ours, 'tamarack-county', '2026-04-18'), 'tamarack-county'));
  assert.equal(merge(emptyState(), opened.state).state.yard, 'Mill Lane');
  const { state: kept, difference } = merge({ ...emptyState(), yard: 'Hill Road' }, opened.state);
  assert.equal(kept.yard, 'Hill Road');
  assert.deepEqual(difference.clashes, ['the yard’s address']);
  assert.equal(begin(ours, LIST, 'run 2', { name: '', ticks: {} }).yard, 'Mill Lane');
});

test('an added hive stands beside the first, and a hive that is filed keeps its name', () => {
  const two = addHive(emptyState(), LIST);
  const hives = (state: ChecklistState): string[] => runsOf(state, LIST).map(({ name }) => name);
  assert.deepEqual(hives(two), ['Hive 1', 'Hive 2']);
  assert.deepEqual(hives(addHive(file(two, LIST, '2026-06-01', freshId(two, LIST)), LIST)), ['Hive 1', 'Hive 2', 'Hive 3', 'Hive 2']);
});

test('the next list gets the day for the same hive, and a run with ticks keeps its own', () => {
  const NEXT = 'package-first-six-weeks';
  const first = carryOn(emptyState(), LIST, NEXT, '2026-04-18');
  assert.deepEqual(openRun(first, NEXT), { name: '', ticks: {}, day: '2026-04-18' });
  const second = carryOn(addHive(first, LIST), LIST, NEXT, '2026-04-25');
  assert.deepEqual(
    runsOf(second, NEXT).map(({ name, run, open }) => [name, run.day, open]),
    [
      ['Hive 1', '2026-04-18', false],
      ['Hive 2', '2026-04-25', true],
    ],
  );
  const ticked = inOpenRun(second, NEXT, (run) => withTick(run, 'watch', { on: '2026-04-26', of: '' }));
  assert.equal(openRun(carryOn(ticked, LIST, NEXT, '2026-05-01'), NEXT).day, '2026-04-25');
  assert.equal(openRun(carryOn(emptyState(), LIST, NEXT, undefined), NEXT).day, undefined);
});
