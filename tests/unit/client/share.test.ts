// A hive's checklist as a link and as a file: it comes back unchanged, links of older editions work, and nothing typed by hand gets in.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'vitest';
import fc from 'fast-check';
import ICAL from 'ical.js';
import { err, ok } from '../../../shared/result.ts';
import { shortOf } from '../../../shared/address/short.ts';
import { accept } from '../../../src/client/checklist/accept.ts';
import { fileWords } from '../../../src/client/checklist/download.ts';
import { asTable, fromFile } from '../../../src/client/checklist/files.ts';
import { hiveName } from '../../../src/client/checklist/hive-name.ts';
import { emptyState, openRun, type ChecklistState, type Run } from '../../../src/client/checklist/record.ts';
import { stepsCalendar } from '../../../src/client/checklist/steps-calendar.ts';
import { LONGEST_LINK, linkTail, runFromTail } from '../../../src/client/checklist/share.ts';
import { aDay } from '../../days.ts';
import { remindersOf } from '../../reminders.ts';
import { rows, type Row } from '../../rows.ts';

const STEPS = [
  ...readFileSync('content/books/common/checklists/package-first-six-weeks.mdx', 'utf8').matchAll(/<Task id="([a-z0-9-]+)"/g),
].map((match) => match[1]!);

test('the demo list has steps, and no two share a short form', () => {
  assert.ok(STEPS.length >= 15);
  assert.equal(new Set(STEPS.map(shortOf)).size, STEPS.length);
});

const ALL = { name: true, notes: true };
const NONE = { name: false, notes: false };
const DAY = '2026-04-20';

test('a hive fits into a link and comes back unchanged', () => {
  fc.assert(
    fc.property(
      fc.subarray(STEPS),
      fc.dictionary(fc.constantFrom(...STEPS), fc.string({ minLength: 1, maxLength: 12, unit: 'grapheme' }), { maxKeys: 4 }),
      fc.boolean(),
      fc.constantFrom('candy', 'released'),
      fc.string({ maxLength: 20 }),
      fc.constantFrom(undefined, 'k3x9z'),
      fc.constantFrom(ALL, NONE),
      (ticked, notes, dated, queen, name, shared, extras) => {
        const run: Run = {
          name,
          ticks: Object.fromEntries(ticked.map((step) => [step, { on: DAY, of: '' }])),
          notes,
          ...(shared ? { shared } : {}),
          ...(dated ? { day: '2026-04-18', choices: { queen, comb: 'drawn' } } : {}),
        };
        const tail = linkTail(run, extras);
        assert.ok(tail && tail.length <= LONGEST_LINK);
        const back = runFromTail(tail, STEPS, DAY);
        assert.deepEqual(back?.run.ticks, run.ticks);
        assert.equal(back?.run.day, run.day);
        assert.deepEqual(back?.run.choices, run.choices);
        assert.equal(back?.unknown, 0);
        assert.equal(back?.run.name, extras.name ? name.trim() : '');
        if (shared) assert.equal(back?.run.shared, shared);
        const trimmed = Object.entries(notes).flatMap(([step, note]) => (note.trim() ? [[step, note.trim()]] : []));
        assert.deepEqual(back?.run.notes ?? {}, extras.notes ? Object.fromEntries(trimmed) : {});
      },
    ),
  );
});

test('a list that is too long for a link is reported', () => {
  const run: Run = {
    name: '',
    ticks: Object.fromEntries(Array.from({ length: 700 }, (_, index) => [`step-${index}`, { on: DAY, of: '' }])),
  };
  assert.equal(linkTail(run, NONE), null);
});

// As editions before the marks wrote them: the day, the way of starting, the steps, and the name on request.
const older: Row<string, Partial<Run>>[] = [
  { case: 'a day alone', given: '#run=2026-04-18;;', expect: { name: '', day: '2026-04-18' }, from: 'edition 0.1.0' },
  {
    case: 'a day and the way of starting',
    given: '#run=2026-04-18;candy,drawn;',
    expect: { name: '', day: '2026-04-18', choices: { queen: 'candy', comb: 'drawn' } },
    from: 'edition 0.1.0',
  },
  {
    case: 'steps alone',
    given: `#run=;;${shortOf('watch')}`,
    expect: { name: '', ticks: { watch: { on: DAY, of: '' } } },
    from: 'edition 0.1.0',
  },
  {
    case: 'steps and a name',
    given: `#run=2026-04-18;;${shortOf('watch')};green%20hive`,
    expect: { name: 'green hive', day: '2026-04-18', ticks: { watch: { on: DAY, of: '' } } },
    from: 'edition 0.1.0',
  },
  { case: 'nothing', given: '#run=;;', expect: { name: '' }, from: 'edition 0.1.0' },
];
rows('links of older editions', older, (given, expect) => {
  const read = runFromTail(given, STEPS, DAY)!;
  const { shared, ...run } = read.run;
  assert.deepEqual({ run, unknown: read.unknown }, { run: { ticks: {}, ...expect }, unknown: 0 });
  // The same message, opened twice, is the same hive.
  assert.match(shared!, /^[0-9a-z]{1,8}$/);
  assert.equal(runFromTail(given, STEPS, '2026-05-01')!.run.shared, shared);
});

test('a link typed by hand adds no step that is not in the list, and no markup', () => {
  for (const bad of [
    '#run=;;<b>',
    '#run=18/4/26;;',
    '#run=2026-02-30;;',
    '#run=',
    '#run=;;;;;;',
    '#run=;;;;LONG',
    `#run=;;${'abc'.repeat(700)}`,
  ])
    assert.equal(runFromTail(bad, STEPS, DAY), null, bad);
  const { run, unknown } = runFromTail('#run=;;zzz;;k3x9z;zzzA%20note', ['dead'], DAY)!;
  assert.deepEqual({ run, unknown }, { run: { name: '', ticks: {}, shared: 'k3x9z' }, unknown: 1 });
  assert.equal(runFromTail('#run=;;;%E0%A4%A', STEPS, DAY)?.run.name, '');
  assert.equal(runFromTail(`#run=;;;;k3x9z;${shortOf('watch')}%E0%A4%A`, STEPS, DAY)?.run.notes, undefined);
});

const LIST = 'package-first-six-weeks';
const of = (...steps: string[]): Run['ticks'] => Object.fromEntries(steps.map((step) => [step, { on: DAY, of: '' }]));
const withRuns = (runs: Record<string, Run>): ChecklistState => ({ version: 2, lists: { [LIST]: { open: Object.keys(runs)[0]!, runs } } });

test('where nothing of the list is kept, the shared hive becomes the first', () => {
  const theirs: Run = { name: '', ticks: of('watch'), day: '2026-04-18', shared: 'k3x9z' };
  for (const ours of [emptyState(), withRuns({ 'the first': { name: '', ticks: {} } })]) {
    const { state, as, hive } = accept(ours, LIST, theirs);
    assert.deepEqual([as, hive], ['first', 'the first']);
    assert.deepEqual(openRun(state, LIST), theirs);
  }
});

test('a hive without the mark becomes another, and the same mark adds what is missing', () => {
  const ours = withRuns({ 'the first': { name: '', ticks: of('watch'), notes: { watch: 'mine' }, day: '2026-04-17' } });
  const theirs: Run = { name: '', ticks: of('watch', 'gap'), notes: { watch: 'theirs', gap: 'new' }, day: '2026-04-18', shared: 'k3x9z' };
  const more = accept(ours, LIST, theirs);
  assert.deepEqual([more.as, hiveName(more.state, LIST, more.hive)], ['more', 'Hive 2']);
  assert.deepEqual(more.state.lists[LIST]!.runs['the first'], ours.lists[LIST]!.runs['the first']);
  assert.deepEqual(openRun(more.state, LIST), theirs);
  const marked = withRuns({ 'the first': { ...ours.lists[LIST]!.runs['the first']!, shared: 'k3x9z' } });
  const same = accept(marked, LIST, theirs);
  assert.deepEqual([same.as, same.ticks, same.notes, same.adds, same.differs], ['same', ['gap'], ['gap'], true, true]);
  const run = openRun(same.state, LIST);
  assert.deepEqual([Object.keys(run.ticks).sort(), run.notes, run.day], [['gap', 'watch'], { watch: 'mine', gap: 'new' }, '2026-04-17']);
  assert.equal(accept(same.state, LIST, theirs).adds, false);
  // What is in the history stays as it is.
  const filed = withRuns({ 'the first': { ...marked.lists[LIST]!.runs['the first']!, filed: '2026-06-01' } });
  assert.equal(accept(filed, LIST, theirs).as, 'more');
});

test('no tick, note or day of the reader is lost, whatever is shared', () => {
  const run = fc.record(
    {
      name: fc.constantFrom('', 'green hive'),
      ticks: fc.subarray(STEPS.slice(0, 5)).map((steps) => of(...steps)),
      notes: fc.dictionary(fc.constantFrom(...STEPS.slice(0, 5)), fc.constantFrom('a', 'b')),
      day: fc.constantFrom('2026-04-17', '2026-04-18'),
      shared: fc.constantFrom('k3x9z', 'other'),
      filed: fc.constant('2026-06-01'),
    },
    { requiredKeys: ['name', 'ticks'] },
  ) as fc.Arbitrary<Run>;
  fc.assert(
    fc.property(fc.dictionary(fc.constantFrom('the first', 'run 2', 'run 3'), run, { minKeys: 1 }), run, (runs, theirs) => {
      const { filed: _, ...shared } = { shared: 'k3x9z', ...theirs };
      const { state, hive } = accept(withRuns(runs), LIST, shared);
      const after = state.lists[LIST]!;
      for (const [id, before] of Object.entries(runs)) {
        const kept = after.runs[id]!;
        for (const step of Object.keys(before.ticks)) assert.deepEqual(kept.ticks[step], before.ticks[step]);
        for (const [step, note] of Object.entries(before.notes ?? {})) assert.equal(kept.notes![step], note);
        if (before.day) assert.equal(kept.day, before.day);
        if (before.name) assert.equal(kept.name, before.name);
        if (before.filed) assert.deepEqual(kept, before);
      }
      for (const step of Object.keys(shared.ticks)) assert.ok(after.runs[hive]!.ticks[step]);
      assert.equal(after.open, hive);
    }),
    { numRuns: 2_000 },
  );
});

test('a hive has its own name, or its number in the order in which it was added', () => {
  const state = withRuns({
    'the first': { name: '', ticks: {} },
    'run 2': { name: 'green hive', ticks: {} },
    'run 3': { name: '', ticks: {} },
  });
  assert.deepEqual(
    ['the first', 'run 2', 'run 3', 'run 4'].map((run) => hiveName(state, LIST, run)),
    ['Hive 1', 'green hive', 'Hive 3', 'Hive 4'],
  );
  assert.equal(hiveName(emptyState(), LIST, 'the first'), 'Hive 1');
});

test('the table has the words of the steps, quotes its cells, and no cell is run as a formula', () => {
  const steps = [
    { id: 'dead', words: 'Judge the dead bees: ½ in, "more" is much', days: () => null },
    { id: 'look', words: 'Look', days: () => ({ from: aDay('2026-04-22'), to: aDay('2026-04-25') }) },
  ];
  const run: Run = {
    name: 'green, hive',
    ticks: { ...of('dead'), gone: { on: '2026-04-19', of: '' } },
    notes: { look: '=1+1' },
    asked: { look: 'I asked: the club.' },
  };
  assert.equal(
    asTable('First look', [{ name: 'green, hive', run }], steps),
    [
      'checklist,hive,step,due from,due by,done,note',
      'First look,"green, hive","Judge the dead bees: ½ in, ""more"" is much",,,2026-04-20,',
      'First look,"green, hive",Look,2026-04-22,2026-04-25,,\'=1+1 I asked: the club.',
      'First look,"green, hive",gone (no longer in this checklist),,,2026-04-19,',
      '',
    ].join('\r\n'),
  );
});

test('a file name is in words', () => {
  assert.equal(fileWords('A package: the first six weeks Hive 1'), 'a-package-the-first-six-weeks-hive-1');
  assert.equal(fileWords('Mānuka’s “½” list'), 'manukas-1-2-list');
  assert.equal(fileWords('蜂'), 'checklist');
});

const calendarOf = (run: string, hive: string): ICAL.Component =>
  new ICAL.Component(
    ICAL.parse(
      stepsCalendar({
        club: 'tamarack-county',
        list: LIST,
        title: 'A package: the first six weeks',
        run,
        hive,
        stamp: aDay(DAY),
        steps: [
          {
            id: 'queen-out',
            words: 'Look; whether the queen, alive, has left her cage — and a backslash \\ too, in one very long line of words',
            why: 'Take care: Veil on.\nNothing else.',
            url: 'https://club.example/lists/package-first-six-weeks/#step-queen-out',
            from: aDay('2026-04-22'),
            to: aDay('2026-04-25'),
          },
          {
            id: 'watch',
            words: 'Watch',
            why: '',
            url: 'https://club.example/#step-watch',
            from: aDay('2026-12-31'),
            to: aDay('2026-12-31'),
          },
        ],
      }),
    ),
  );

test('the calendar of a hive: the words of the step, its reason, its address and one reminder', () => {
  const calendar = calendarOf('', 'Hive 1');
  assert.equal(calendar.getFirstPropertyValue('x-wr-calname'), 'A package: the first six weeks, Hive 1');
  const [look, watch] = calendar.getAllSubcomponents('vevent').map((event) => new ICAL.Event(event));
  const words = 'Look; whether the queen, alive, has left her cage — and a backslash \\ too, in one very long line of words (Hive 1)';
  assert.equal(look!.summary, words);
  assert.equal(look!.description, 'Take care: Veil on.\nNothing else.\nhttps://club.example/lists/package-first-six-weeks/#step-queen-out');
  assert.equal(look!.component.getFirstPropertyValue('url'), 'https://club.example/lists/package-first-six-weeks/#step-queen-out');
  assert.ok(look!.startDate.isDate && look!.endDate.isDate);
  assert.deepEqual([look!.startDate.toString(), look!.endDate.toString()], ['2026-04-22', '2026-04-26']);
  assert.deepEqual(remindersOf(look!.component), [{ at: '2026-04-21T18:00:00', says: words }]);
  assert.equal(watch!.endDate.toString(), '2027-01-01');
  assert.deepEqual(remindersOf(watch!.component), [{ at: '2026-12-30T18:00:00', says: 'Watch (Hive 1)' }]);
});

test('an event keeps its UID in its hive, as older editions wrote it', () => {
  const uids = (run: string, hive: string): unknown[] =>
    calendarOf(run, hive)
      .getAllSubcomponents('vevent')
      .map((event) => event.getFirstPropertyValue('uid'));
  assert.deepEqual(uids('', 'Hive 1'), [
    'package-first-six-weeks--queen-out@tamarack-county',
    'package-first-six-weeks--watch@tamarack-county',
  ]);
  assert.equal(uids('green hive', 'green hive')[0], 'package-first-six-weeks-green-hive-queen-out@tamarack-county');
  assert.notDeepEqual(uids('run 2', 'Hive 2'), uids('', 'Hive 1'));
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
