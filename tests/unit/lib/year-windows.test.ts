// Windows of the year in words, where dates come from, the ring of half-months, and the club's counts in them.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { aDay } from '../../days.ts';
import type { AnchorDate, Basis } from '../../../shared/season/anchors.ts';
import { countSeasons } from '../../../src/lib/counts.ts';
import { meetingTime } from '../../../src/lib/meetings.ts';
import { bands, months, RING } from '../../../src/lib/ring.ts';
import { anchorTitle, basisOfAnchors, basisWords, datedWords, doubtDays } from '../../../src/lib/season-words.ts';
import { byDistrict, partChoices, phaseTitle, windowsOf, windowsText, windowWords } from '../../../src/lib/season.ts';
import { seasonTasks } from '../../../src/lib/season-tasks.ts';
import { halfId, halfOf, halves, yearOf } from '../../../src/lib/year.ts';
import { near } from '../../near.ts';
import { almanacOf, district, entry, figure, monthDay, row } from './almanac.ts';

const seasons = [district('valley'), district('hill', { 'main-flow': '05-30' })];

test('the window of a `when:` in each district; none for any time, for nothing and for what is no form', () => {
  assert.equal(windowsText(windowsOf('in main flow', seasons)!), 'valley 05-20 07-05;hill 05-30 07-05');
  assert.equal(windowsText(windowsOf('3 May to 17 May', seasons)!), 'valley 05-03 05-17;hill 05-03 05-17');
  for (const when of ['any time', 'some day', undefined]) assert.equal(windowsOf(when, seasons), null, when);
});

for (const [from, to, words] of [
  ['05-03', '05-17', 'May\u00a03 to 17'],
  ['12-28', '01-09', 'December\u00a028 to January\u00a09'],
] as const)
  test(`a window reads ${words}`, () => assert.equal(windowWords({ from: monthDay(from), to: monthDay(to) }), words));

test('words that are alike in all districts are not told apart', () => {
  const byPlace = (words: string[]) => words.map((each, at) => ({ district: `d${at}`, words: each }));
  assert.equal(byDistrict(byPlace(['now', 'now'])), undefined);
  assert.equal(byDistrict(byPlace(['now', '9 days|later'])), 'd0=now|d1=9 days/later');
});

test('the parts of the year to choose among carry their days, and those of other districts where they differ', () => {
  const choices = partChoices(seasons, { words: 'uk' });
  const [, words, others] = choices.find(([phase]) => phase === 'main-flow')!;
  assert.equal(words, 'main flow: May\u00a020 to July\u00a05');
  assert.equal(others, 'valley=main flow: May\u00a020 to July\u00a05|hill=main flow: May\u00a030 to July\u00a05');
  assert.equal(choices.find(([phase]) => phase === 'build-up')![2], undefined);
  assert.equal(phaseTitle('fall-preparation', { words: 'uk' }), 'autumn preparation');
  assert.equal(phaseTitle('fall-preparation', { words: 'us' }), 'fall preparation');
  assert.equal(anchorTitle('first-freeze', { words: 'uk' }), 'first frost');
});

const names = { titles: new Map([['plum', 'the plum']]), main: 'the valley' };
const bases: [Basis, string][] = [
  [{ kind: 'observed', years: 6 }, 'from 6 years of members’ dates'],
  [{ kind: 'bloom-seen', years: 4, plant: 'plum' }, 'from 4 years of members’ notes on the plum'],
  [{ kind: 'bloom-seen', years: 4, plant: 'unnamed' }, 'from 4 years of members’ notes on unnamed'],
  [{ kind: 'shifted', days: -1, of: { kind: 'guess' } }, '1 day earlier than in the valley, there a guess'],
  [{ kind: 'shifted', days: 9, of: { kind: 'temperature', degreesC: 0 } }, '9 days later than in the valley, there from monthly normals'],
];
for (const [basis, words] of bases) test(`a date is ${words}`, () => assert.equal(basisWords(basis, names), words));

const dated = (earliest: string, expected: string, latest: string, basis: Basis = { kind: 'degree-days', plant: 'plum' }): AnchorDate => ({
  earliest: monthDay(earliest),
  expected: monthDay(expected),
  latest: monthDay(latest),
  basis,
});

test('the doubt of a date is the wider side, over New Year too; a guess without a range has none', () => {
  assert.equal(doubtDays(dated('05-01', '05-10', '05-12')), 9);
  assert.equal(doubtDays(dated('12-28', '01-02', '01-04')), 5);
  assert.equal(datedWords(dated('05-01', '05-10', '05-12'), names), 'from monthly normals by degree-days, about 9 days either way');
  assert.equal(datedWords(dated('05-10', '05-10', '05-10', { kind: 'guess' }), names), 'a guess');
});

test('a window that hangs on several anchors names each basis once, with the widest doubt', () => {
  const anchors = { 'main-flow-start': dated('05-18', '05-20', '05-22'), 'main-flow-end': dated('07-01', '07-06', '07-08') };
  assert.equal(basisOfAnchors(['main-flow', 'main-flow-end'], anchors, names), 'from monthly normals by degree-days, about 5 days either way');
  assert.equal(basisOfAnchors([], anchors, names), null);
}); // prettier-ignore

test('the 24 half-months follow one another through the whole year', () => {
  assert.deepEqual([halves[0], halves[3], halves[23]], [
    { from: '01-01', to: '01-15' },
    { from: '02-16', to: '02-28' },
    { from: '12-16', to: '12-31' },
  ]); // prettier-ignore
  for (const [day, half, id] of [['01-15', 0, 'half-1-1'], ['01-16', 1, 'half-1-2'], ['12-31', 23, 'half-12-2']] as const) {
    assert.equal(halfOf(monthDay(day)), half);
    assert.equal(halfId(half), id);
  } // prettier-ignore
});

test('each thing of the year stands in the half-month in which it begins', () => {
  const almanac = almanacOf({
    seasons,
    checklists: [entry('flow', { title: 'Flow', when: 'in main flow', why: 'Why.' })],
    meetings: [entry('walk', { title: 'Walk', day: '2026-05-16', start: '10:00', finish: '12:30' })],
  });
  const halfMonth = yearOf(almanac, '/')[9]!;
  assert.deepEqual(halfMonth.items.map(({ kind, href, time }) => [kind, href, time]), [
    ['meeting', '/meetings/walk/', 'Saturday, May\u00a016,\u00a02026, 10\u00a0am to 12:30\u00a0pm'],
    ['list', '/lists/flow/', undefined],
  ]); // prettier-ignore
});

for (const [fields, words] of [
  [{}, 'Saturday, May\u00a016,\u00a02026'],
  [{ start: '10:00' }, 'Saturday, May\u00a016,\u00a02026, 10\u00a0am'],
  [{ 'last-day': aDay('2026-05-17') }, 'May\u00a016 to 17,\u00a02026'],
] as const)
  test(`a meeting is on ${words}`, () => assert.equal(meetingTime({ day: aDay('2026-05-16'), ...fields }), words));

test('the ring: 12 months inside, and parts of the year as long as their days around them', () => {
  assert.equal(months().length, 12);
  for (const { x, y } of months()) assert.ok(Math.hypot(x - 200, y - 200) > RING.inner && Math.hypot(x - 200, y - 200) < RING.months);
  const lengths = bands(seasons[0]!.days).map(({ length }) => length);
  // All parts together are once round the middle of their ring.
  near(lengths.reduce((sum, length) => sum + length, 0), Math.PI * (RING.months + RING.outer), 0.5); // prettier-ignore
});

test('a change to a list or to the dates of the season counts for the calendar', () => {
  const club = { season: { history: [{}, {}] }, contacts: [], districts: [{ id: 'valley' }] };
  const checklists = [
    entry('flow', { title: 'Flow', when: 'in main flow', why: 'Why.', history: [{}] }),
    entry('always', { when: 'any time' }),
  ];
  const [valley] = seasonTasks(almanacOf({ club, seasons, checklists }));
  assert.deepEqual(valley!.tasks.map(({ list, from, to, changes }) => [list, from, to, changes]), [['flow', '05-20', '07-05', 3]]); // prettier-ignore
});

const count = (date: string, mites: number, other: object = {}) => ({
  date,
  mites,
  bees: 300,
  district: 'valley',
  method: 'wash',
  ...other,
});

test('counts by half-month: colonies over the level of their own district and day', () => {
  const level = figure([row('spring', { value: 1, phases: ['build-up', 'swarming', 'main-flow'] }), row('late', { value: 3, phases: ['dearth', 'fall-preparation'] })], { 'also-follows': ['late'] }); // prettier-ignore
  const rows = [
    count('2026-08-20', 6),
    count('2026-05-20', 6),
    count('2026-05-21', 0, { district: 'hill', method: 'roll' }),
    count('2026-08-16', 9),
  ];
  const [season] = countSeasons(almanacOf({ seasons, figures: { 'mite-action-level': level }, counts: [entry('2026', { rows }), entry('none', { rows: [] })] }), '2026-09-01'); // prettier-ignore
  assert.equal(season!.title, 'Counts of 2026');
  assert.deepEqual(season!.halves.map(({ name, colonies, over, levelPer100, methods }) => [name, colonies, over, levelPer100, methods]), [
    ['Second half of May', 2, 1, 1, ['roll', 'wash']],
    ['Second half of August', 2, 1, 3, ['wash']],
  ]); // prettier-ignore
  near(season!.together.per100, (21 / 1200) * 100, 1e-9);
});

test('over is not said where one colony has no level, and a season over New Year names its years', () => {
  const [season] = countSeasons(almanacOf({ seasons, counts: [entry('winter', { title: 'A winter', rows: [count('2026-12-20', 1), count('2027-01-05', 2)] })] }), '2027-02-01'); // prettier-ignore
  assert.deepEqual(season!.halves.map(({ name, over }) => [name, over]), [
    ['Second half of December 2026', null],
    ['First half of January 2027', null],
  ]); // prettier-ignore
});
