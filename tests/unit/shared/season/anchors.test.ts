// Anchors and phases of the year: the basis of each day, its width, and complete coverage of any such year.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { addMonthDays, dayOfCommonYear, monthDayAt, type MonthDay } from '../../../../shared/days/month-day.ts';
import { anchorIds, anchorRules, anchorsOf, type AnchorDate, type PlaceGiven } from '../../../../shared/season/anchors.ts';
import { bloomOf, inBloom, type Plant } from '../../../../shared/season/bloom.ts';
import { bloomsHere } from '../../../../shared/season/bloom-calendar.ts';
import { climateOf, inCelsius, publishedSumFits, spreadIn, type ClimateGiven } from '../../../../shared/season/climate.ts';
import { crossings } from '../../../../shared/season/crossings.ts';
import { daysApart, daysSeen } from '../../../../shared/season/observed-days.ts';
import { phases } from '../../../../shared/season/phases.ts';
import { seasonSums, sumOn } from '../../../../shared/season/season-sum.ts';
import { guessesFrom, phaseStarts, seasonFrom } from '../../../../shared/season/year.ts';
import { daysInWindow } from '../../../../shared/season/when.ts';
import { near } from '../../../near.ts';
import { rows } from '../../../rows.ts';
import * as tables from '../../../tables/season.ts';
import { aDay, aMonthDay } from '../../../days.ts';

const newYear = aMonthDay('01-01');
const usual = { days: 10, daysForSmallSums: 20 };
const figures = { freezeC: (41.5 - 32) / 1.8, clusterC: null, syrupC: null, doubt: usual, crossingDays: 21 };
const bare: PlaceGiven = { climate: null, observed: [], signs: {}, guesses: {}, figures };
const wooster: ClimateGiven = { scale: 'F', normals: tables.wooster, publishedSum: { sum: 2816, rule: { method: 'simple', base: 50 } } };
const daysOf = (date: AnchorDate | undefined) => date && [date.earliest, date.expected, date.latest, date.basis.kind];
const years = (id: string, days: string[]) => days.map((day) => ({ [id]: aDay(day) }));

rows('members\' dates', [
  { case: 'two years are too few', given: ['05-01', '05-03'], expect: null, from: 'three years at least' },
  { case: 'three: the middle one, and the usual days at least', given: ['05-09', '05-01', '05-03'], expect: ['04-23', '05-03', '05-13'], from: 'by hand' },
  { case: 'four: half-way, the earlier day', given: ['05-01', '05-04', '05-09', '05-30'], expect: ['04-26', '05-06', '05-30'], from: '4 and 9 May: 6.5' },
  { case: 'five: the span seen', given: ['05-01', '05-03', '05-04', '05-06', '05-09'], expect: ['05-01', '05-04', '05-09'], from: 'by hand' },
  { case: 'both sides of New Year', given: ['12-28', '01-06', '01-02', '12-20', '01-01'], expect: ['12-20', '01-01', '01-06'], from: 'by hand' },
  { case: 'all on one day', given: ['05-01', '05-01', '05-01', '05-01', '05-01'], expect: ['05-01', '05-01', '05-01'], from: 'by hand' },
  { case: '29 February counts as the day before', given: ['02-29', '02-28', '02-28', '02-27', '03-01'], expect: ['02-27', '02-28', '03-01'], from: 'normals have 365 days' },
], (days, expect) => {
  const seen = daysSeen((days as string[]).map(aMonthDay), 10);
  assert.deepEqual(seen && [seen.earliest, seen.middle, seen.latest], expect);
}); // prettier-ignore

test('the first way that there is gives the day: members, a date taken from a publication, a published freeze, a bloom, normals, another district, a guess', () => {
  const guess = { middle: aMonthDay('10-01'), earliest: aMonthDay('09-20'), latest: aMonthDay('10-10') };
  const published = climateOf({ ...wooster, freezes: { last: aMonthDay('05-01'), first: aMonthDay('10-07') } });
  const plant: Plant = { id: 'aster', sum: { sum: 2000, scale: 'F', rule: { method: 'simple', base: 50 }, from: newYear }, seen: [] };
  const other = {
    'first-freeze': {
      expected: aMonthDay('10-20'),
      earliest: aMonthDay('10-10'),
      latest: aMonthDay('10-30'),
      basis: { kind: 'guess' as const },
    },
  };
  const steps: [string, Partial<PlaceGiven>][] = [
    ['guess', { guesses: { 'first-freeze': guess } }],
    ['shifted', { like: { anchors: other, laterByDays: 9, fallLaterByDays: -6 } }],
    ['temperature', { climate: climateOf(wooster) }],
    ['degree-days', { signs: { 'first-freeze': plant } }],
    ['published', { climate: published }],
    ['printed', { printed: { 'first-freeze': guess } }],
    ['observed', { observed: years('first-freeze', ['2020-10-02', '2021-10-09', '2022-10-23']) }],
  ];
  let place = bare;
  assert.equal(anchorsOf(place)['first-freeze'], undefined);
  for (const [kind, added] of steps) {
    place = { ...place, ...added };
    assert.equal(anchorsOf(place)['first-freeze']?.basis.kind, kind);
  }
  assert.deepEqual(daysOf(anchorsOf({ ...bare, ...steps[0]![1] })['first-freeze']), ['09-20', '10-01', '10-10', 'guess']);
  assert.deepEqual(daysOf(anchorsOf({ ...bare, ...steps[1]![1] })['first-freeze']), ['10-04', '10-14', '10-24', 'shifted']);
});

test('Wooster, Ohio: the crossing of 41.5 F lies 3 and 4 days from the published freezes, ten days either way; the published date goes before it', () => {
  const anchors = anchorsOf({ ...bare, climate: climateOf(wooster) });
  assert.deepEqual(daysOf(anchors['last-freeze']), ['04-18', '04-28', '05-08', 'temperature']);
  assert.deepEqual(daysOf(anchors['first-freeze']), ['10-01', '10-11', '10-21', 'temperature']);
  assert.deepEqual([daysApart(aMonthDay('04-28'), aMonthDay('05-01')), daysApart(aMonthDay('10-11'), aMonthDay('10-07'))], [3, -4]);
  const published = anchorsOf({
    ...bare,
    climate: climateOf({ ...wooster, freezes: { last: aMonthDay('05-01'), first: aMonthDay('10-07') } }),
  });
  assert.deepEqual(daysOf(published['last-freeze']), ['04-21', '05-01', '05-11', 'published']);
});

test('without its figure a crossing gives no day; other crossings are three weeks wide', () => {
  const climate = climateOf(wooster);
  assert.equal(anchorsOf({ ...bare, climate, figures: { ...figures, freezeC: null } })['last-freeze'], undefined);
  assert.equal(anchorsOf({ ...bare, climate, figures: { ...figures, doubt: null } })['last-freeze'], undefined);
  const cluster = anchorsOf({ ...bare, climate, figures: { ...figures, clusterC: (57 - 32) / 1.8 } }).cluster;
  assert.ok(cluster);
  assert.equal(daysApart(cluster.earliest, cluster.expected), 21);
  // By hand: the high is 62.7 in mid-October and 50.7 in mid-November, so 57 about 14 days after the first.
  assert.ok(Math.abs(daysApart(aMonthDay('10-30'), cluster.expected)) <= 3, cluster.expected);
});

test('a place where it never freezes, or is never warm, has no such crossing', () => {
  const flat = (degrees: number) => Array.from({ length: 365 }, () => degrees);
  assert.deepEqual(crossings(flat(20), 5), { ok: false, reason: 'always-above' });
  assert.deepEqual(crossings(flat(2), 5), { ok: false, reason: 'never-above' });
  const melbourne = climateOf({ scale: 'C', normals: tables.places.melbourne });
  assert.deepEqual(anchorsOf({ ...bare, climate: melbourne })['last-freeze'], undefined);
  // A summer over New Year.
  const south = Array.from({ length: 365 }, (_, day) => (day < 59 || day >= 334 ? 20 : 5));
  assert.deepEqual(crossings(south, 10), { ok: true, value: { up: '12-01', down: '03-01' } });
});

test('where the spread comes from: a published sum, a region, what members saw; else none', () => {
  const { normals } = wooster;
  assert.equal(climateOf({ ...wooster, regionSpread: 9 }).spread?.from, 'published-sum');
  near(spreadIn('F', climateOf(wooster).spread!), 8.77, 0.02);
  assert.deepEqual(climateOf({ scale: 'F', normals, regionSpread: 9 }).spread, { degreesC: 5, from: 'region' });
  const sum = { sum: 83, scale: 'F' as const, rule: { method: 'simple' as const, base: 50 }, from: newYear };
  const cherry = climateOf({ scale: 'F', normals: tables.washington, seen: [{ sum, day: aMonthDay('04-01') }] }).spread!;
  assert.equal(cherry.from, 'observed');
  assert.ok(
    Math.abs(spreadIn('F', cherry) - 8.14) < 0.05,
    'Washington: mean peak bloom 1 April and 83 degree-days give the fitted spread back',
  );
  assert.equal(climateOf({ scale: 'F', normals, seen: [{ sum: { ...sum, sum: 1 }, day: aMonthDay('07-01') }] }).spread, null);
  assert.equal(climateOf({ scale: 'F', normals }).spread, null);
  assert.deepEqual(publishedSumFits({ ...wooster, publishedSum: { sum: 1000, rule: { method: 'simple', base: 50 } } }), {
    ok: false,
    reason: 'too-small',
  });
  assert.deepEqual(publishedSumFits({ ...wooster, publishedSum: { sum: 9000, rule: { method: 'simple', base: 50 } } }), {
    ok: false,
    reason: 'too-large',
  });
  assert.ok(publishedSumFits(wooster).ok);
});

test('a sum keeps its own scale: in C it is 5/9 of that in F and falls on the same day', () => {
  const sum = { sum: 90, scale: 'F' as const, rule: { method: 'modified' as const, base: 50, cap: 86 }, from: newYear };
  assert.deepEqual(inCelsius(sum), { sum: 50, rule: { method: 'modified', base: 10, cap: 30 }, from: newYear });
  const inF = seasonSums(tables.wooster, sum.rule, 9, newYear);
  const inC = seasonSums(climateOf(wooster).normalsC, inCelsius(sum).rule, 5, newYear);
  for (const day of ['03-01', '05-01', '08-01'].map(aMonthDay)) near(sumOn(inF, day) / 1.8, sumOn(inC, day), 1e-9);
});

test('bloom: members before sums; a list that does not say how it counts gives no date, nor does one without spread', () => {
  const climate = climateOf(wooster);
  const sum = { sum: 86, scale: 'F' as const, rule: { method: 'floored' as const, base: 50 }, from: newYear };
  const forsythia: Plant = { id: 'forsythia', sum, seen: [] };
  const reached = bloomOf(forsythia, climate, usual);
  assert.ok(reached.ok);
  assert.deepEqual(
    [reached.value.earliest, reached.value.middle, reached.value.latest, reached.value.lastsDays],
    ['03-20', '04-09', '04-29', null],
    'under 100 F-days: 20 days either way',
  );
  assert.deepEqual(inBloom(reached.value), { from: '03-20', to: '04-29' });
  const reason = (plant: Plant, given = climate as typeof climate | null, doubt: typeof usual | null = usual) => {
    const bloom = bloomOf(plant, given, doubt);
    return bloom.ok ? bloom.value.from : bloom.reason;
  };
  assert.equal(reason({ ...forsythia, sum: null }), 'no-sum');
  assert.equal(reason({ ...forsythia, sum: 'no-method' }), 'no-method');
  assert.equal(reason(forsythia, null), 'no-normals');
  assert.equal(reason(forsythia, { ...climate, spread: null }), 'no-spread');
  assert.equal(reason(forsythia, climate, null), 'no-doubt');
  assert.equal(reason({ ...forsythia, sum: { ...sum, sum: 9000 } }), 'not-reached');
  const seen = ['04-01', '04-05', '04-03'].map(aMonthDay).map((first, index) => ({ first, lastedDays: 10 + index }));
  const noted = bloomOf({ ...forsythia, sum: 'no-method', seen }, null, usual);
  assert.ok(noted.ok);
  assert.deepEqual(
    [noted.value.from, noted.value.middle, noted.value.lastsDays, inBloom(noted.value)],
    ['observed', '04-03', 11, { from: '04-03', to: '04-14' }],
  );
});

test('another district follows the main one, later in spring and, after the end of the flow, by the days of fall', () => {
  const plants: Plant[] = ['04-10', '09-05'].map(aMonthDay).map((day, index) => ({
    id: `plant-${index}`,
    sum: null,
    seen: [0, 1, 2].map(() => ({ first: day, lastedDays: null })),
  }));
  const main = bloomsHere(plants, { climate: null, usual });
  const hill = bloomsHere(
    plants.map((plant) => ({ ...plant, seen: [] })),
    { climate: null, usual, like: { blooms: main, laterByDays: 9, fallLaterByDays: -6, fallFrom: aMonthDay('07-05') } },
  );
  assert.deepEqual(
    hill.map(({ bloom }) => bloom.ok && [bloom.value.middle, bloom.value.basis.kind]),
    [
      ['04-19', 'shifted'],
      ['08-30', 'shifted'],
    ],
  );
});

test('parts of the year follow from anchors by the stated days; a part without a date or out of its order is named', () => {
  const starts = Object.fromEntries(
    ['11-16', '03-01', '04-21', '05-20', '07-06', '08-21'].map((day, index) => [phases[index]!, day]),
  ) as Record<(typeof phases)[number], MonthDay>;
  const anchors = anchorsOf({ ...bare, guesses: guessesFrom(starts) });
  assert.deepEqual([anchors.swarm?.expected, anchors['main-flow-end']?.expected], ['05-01', '07-05']);
  const year = seasonFrom(anchors);
  assert.ok(year.ok);
  for (const phase of phases) assert.equal(year.value.phases[phase].from, starts[phase]);
  assert.equal(year.value.anchors['first-freeze'], undefined);
  assert.deepEqual(seasonFrom({ ...anchors, swarm: undefined }), { ok: false, reason: 'no-date', text: 'swarming' });
  const late = { ...anchors.swarm!, expected: aMonthDay('06-18') };
  assert.deepEqual(seasonFrom({ ...anchors, swarm: late }), { ok: false, reason: 'out-of-order', text: 'main-flow' });
  const sameDay = { ...anchors.swarm!, expected: addMonthDays(aMonthDay('03-01'), 10) };
  assert.deepEqual(seasonFrom({ ...anchors, swarm: sameDay }), { ok: false, reason: 'out-of-order', text: 'swarming' });
});

test('any six starts in their order, wherever the year begins, make parts that fill it once; half a year later everything is half a year later', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 365 }),
      fc.uniqueArray(fc.integer({ min: 1, max: 364 }), { minLength: 5, maxLength: 5 }),
      (first, steps) => {
        const at = [0, ...steps.sort((a, b) => a - b)].map((step) => monthDayAt(first + step));
        const starts = Object.fromEntries(phases.map((phase, index) => [phase, at[index]!])) as Record<(typeof phases)[number], MonthDay>;
        const year = seasonFrom(anchorsOf({ ...bare, guesses: guessesFrom(starts) }));
        assert.ok(year.ok);
        assert.equal(
          phases.reduce((sum, phase) => sum + daysInWindow(year.value.phases[phase]), 0),
          365,
        );
        const moved = Object.fromEntries(phases.map((phase) => [phase, addMonthDays(starts[phase], 182)])) as typeof starts;
        const south = seasonFrom(anchorsOf({ ...bare, guesses: guessesFrom(moved) }));
        assert.ok(south.ok);
        for (const phase of phases)
          assert.equal(
            (dayOfCommonYear(aMonthDay(south.value.phases[phase].from)) - dayOfCommonYear(aMonthDay(year.value.phases[phase].from)) + 365) %
              365,
            182,
          );
      },
    ),
  );
});

test('the rules themselves: each anchor once, what it comes after is an anchor, every part begins at one', () => {
  assert.equal(new Set(anchorIds).size, anchorIds.length);
  for (const rule of anchorRules) if ('after' in rule) assert.ok(anchorIds.includes(rule.after));
  for (const phase of phases) assert.ok(anchorIds.includes(phaseStarts[phase].anchor));
});
