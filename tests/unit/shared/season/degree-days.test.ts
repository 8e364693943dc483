import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { addMonthDays, dayOfCommonYear, monthDayAt } from '../../../../shared/days/month-day.ts';
import { dailyFromMonthly } from '../../../../shared/season/daily-curve.ts';
import { degreeDay, degreeDayMethods, type DegreeDayRule } from '../../../../shared/season/degree-day.ts';
import { sumGivenDays } from '../../../../shared/season/given-days.ts';
import { dateReached, doubtInDays, seasonSums, spreadForYear, sumOn, totalOf, type Normals } from '../../../../shared/season/season-sum.ts';
import { meanDegreeDay } from '../../../../shared/season/spread.ts';
import { near } from '../../../near.ts';
import { frozen, rows } from '../../../rows.ts';
import * as tables from '../../../tables/season.ts';
import { aMonthDay } from '../../../days.ts';

const newYear = aMonthDay('01-01');
const simple50: DegreeDayRule = { method: 'simple', base: 50 };

rows('one day', tables.oneDay, ({ method, base, cap, max, min }, { degreeDays, within }) =>
  near(degreeDay(cap === undefined ? { method, base } : { method, base, cap }, { max, min }), degreeDays, within),
);
rows('a spread day', tables.spreads, ({ base, spread, mean }, { degreeDays }) =>
  near(meanDegreeDay({ method: 'simple', base }, spread)({ max: mean + 8, min: mean - 8 }), degreeDays, 5.1e-5),
);
rows('daily curve', tables.curves, ({ means, days }, { values, within }) => {
  const daily = dailyFromMonthly(means);
  days.forEach((day, index) => near(daily[day - 1] ?? NaN, values[index] ?? NaN, within, `day ${day}`));
});

rows('a year at a station', tables.stations, ({ stateSpread, ...normals }, { base50, base40, simpleAlone }) => {
  const year = (base: number, spread: number) => totalOf(seasonSums(normals, { method: 'simple', base }, spread, newYear));
  near(year(50, 0), simpleAlone, 1.5, 'without spread');
  assert.ok(year(50, 0) < base50, 'a curve of normals alone adds up too few');
  near(year(50, stateSpread), base50, base50 * 0.05, 'with the spread of the state');
  const fitted = spreadForYear(normals, simple50, base50);
  assert.ok(fitted.ok);
  near(year(50, fitted.value), base50, 1e-6, 'fitted');
  near(year(40, fitted.value), base40, 60, 'base 40 from the spread fitted at 50');
});

rows('day a sum is reached', tables.reached, ({ place, from, base, method, spread, sum }, { meanOfYears, alone, withSpread }) => {
  const dayOn = (width: number) => {
    const reached = dateReached(seasonSums(tables.places[place], { method, base }, width, aMonthDay(from)), sum, 0);
    assert.ok(reached.ok);
    return ((dayOfCommonYear(reached.value.expected) - dayOfCommonYear(aMonthDay(from)) + 365) % 365) + 1;
  };
  near(dayOn(0), alone, 1, 'normals alone');
  near(dayOn(spread), withSpread, 1, 'with spread');
  // Two days for sums from 50 C up; one row of the printed 45 is off by 3.5, in the independent program too, and stays.
  const off = place === 'england' && method === 'floored' && base === 10 && sum === 50 ? 3.5 : 2;
  near(dayOn(spread), meanOfYears, sum >= 50 ? off : 3, 'mean of the years');
});

test('apples at Wenatchee: 1160 F-days over 43 by 1 May (22 years: 1156), 920 in the week before the mean full bloom of 27 April', () => {
  const season = seasonSums(tables.wenatchee, { method: 'maximum', base: 43 }, 6, newYear);
  near(sumOn(season, aMonthDay('05-01')), 1160, 2, 'an independent program');
  near(sumOn(season, aMonthDay('05-01')), 1156, 1156 * 0.05, 'treefruit.wsu.edu');
  const bloom = dateReached(season, 920, 0);
  assert.equal(bloom.ok && bloom.value.expected, '04-22');
});

/** An independent program with coarser shifts; a day either way is the width of its steps. */
rows('Wooster, Ohio: the method changes a date by three weeks', tables.woosterDays, ({ method, spread, sum }, { monthDay }) => {
  const reached = dateReached(seasonSums(tables.wooster, { method, base: 50 }, spread, newYear), sum, 0);
  assert.ok(reached.ok);
  near(dayOfCommonYear(reached.value.expected), dayOfCommonYear(aMonthDay(monthDay)), 1);
});

test('Grand Rapids, Michigan: 120 F-days over 43 from 1 March, by three methods (an independent program)', () => {
  const day = (method: 'simple' | 'sine' | 'floored') =>
    dateReached(seasonSums(tables.grandRapids, { method, base: 43 }, 8.48, aMonthDay('03-01')), 120, 0);
  assert.deepEqual(
    (['simple', 'sine', 'floored'] as const).map(day).map((reached) => reached.ok && reached.value.expected),
    ['04-18', '04-13', '04-09'],
  );
});

test('cherry of Washington: the sum on an observed day gives that day back', () => {
  const season = seasonSums(tables.washington, simple50, 8.14, newYear);
  near(sumOn(season, aMonthDay('04-01')), 83, 0.5, 'mean peak 1 April, National Park Service');
  for (let day = 60; day < 300; day += 1) {
    const observed = monthDayAt(day);
    const back = dateReached(season, sumOn(season, observed), 0);
    assert.equal(back.ok && back.value.expected, observed);
  }
});

test('the same year moved by six months, counted from 1 July, comes 181 to 184 days later', () => {
  const turned = (months: readonly number[]) => [...months.slice(6), ...months.slice(0, 6)];
  const north = tables.places.england;
  const south: Normals = { maxByMonth: turned(north.maxByMonth), minByMonth: turned(north.minByMonth) };
  for (const sum of [50, 100, 300, 500]) {
    const first = dateReached(seasonSums(north, { method: 'simple', base: 5 }, 3, newYear), sum, 0);
    const second = dateReached(seasonSums(south, { method: 'simple', base: 5 }, 3, aMonthDay('07-01')), sum, 0);
    assert.ok(first.ok && second.ok);
    const later = (dayOfCommonYear(second.value.expected) - dayOfCommonYear(first.value.expected) + 365) % 365;
    assert.ok(later >= 181 && later <= 184, `${later}`);
  }
});

test('a date comes as a window; a sum that a normal year never reaches says so', () => {
  const season = seasonSums(tables.wooster, simple50, 8.77, newYear);
  const reached = dateReached(season, 200, 10);
  assert.ok(reached.ok);
  assert.equal(reached.value.earliest, addMonthDays(reached.value.expected, -10));
  assert.equal(reached.value.latest, addMonthDays(reached.value.expected, 10));
  const part = dateReached(season, 200, 2.1);
  assert.equal(part.ok && part.value.latest, addMonthDays(reached.value.expected, 3), 'a part of a day of doubt is a day');
  assert.deepEqual(dateReached(season, 9999, 10), { ok: false, reason: 'not-reached' });
  assert.deepEqual(dateReached(season, 0, 10), { ok: false, reason: 'no-sum' });
  assert.deepEqual(spreadForYear(tables.wooster, simple50, 1000), { ok: false, reason: 'published-sum-does-not-fit' });
});

test("the doubt is the club's own where it has five years, else the usual one, wider for small sums", () => {
  const usual = { fewestYears: 5, days: 10, daysForSmallSums: 20, smallSumsUnder: 100 };
  assert.equal(doubtInDays(200, [], usual), 10);
  assert.equal(doubtInDays(99, [100, 110, 120, 130], usual), 20);
  near(doubtInDays(99, [100, 102, 104, 106, 108], usual), Math.sqrt(10), 1e-12);
});

test('given days add up; a bad row or rule is named', () => {
  const days = frozen([
    { max: 63, min: 43 },
    { max: 54, min: 40 },
    { max: 70, min: 50 },
  ]);
  assert.deepEqual(sumGivenDays(days, simple50), { ok: true, value: { total: 13, eachDay: [3, 0, 10] } });
  const reason = (rule: DegreeDayRule, list = [...days], spread = 0) => {
    const sum = sumGivenDays(list, rule, spread);
    return sum.ok ? 'a sum' : [sum.reason, sum.row];
  };
  assert.deepEqual(reason(simple50, []), ['no-days', undefined]);
  assert.deepEqual(reason(simple50, [...days, { max: 40, min: 50 }]), ['max-under-min', 4]);
  assert.deepEqual(reason(simple50, [{ max: NaN, min: 50 }]), ['impossible-temperature', 1]);
  assert.deepEqual(reason(simple50, [{ max: 400, min: 50 }]), ['impossible-temperature', 1]);
  assert.deepEqual(reason({ method: 'modified', base: 50 }), ['no-cap', undefined]);
  assert.deepEqual(reason({ method: 'sine', base: 50, cap: 50 }), ['cap-not-over-base', undefined]);
  assert.deepEqual(reason({ method: 'simple', base: NaN }), ['impossible-base', undefined]);
  assert.deepEqual(reason(simple50, [...days], -1), ['impossible-spread', undefined]);
  assert.throws(() => degreeDay(simple50, { max: 1, min: 2 }), /degreeDay: needs a highest not under the lowest/);
  assert.throws(() => dailyFromMonthly([1, 2]), /needs twelve finite means/);
});

const weather = fc
  .tuple(fc.double({ min: -40, max: 120, noNaN: true }), fc.double({ min: 0, max: 50, noNaN: true }))
  .map(([min, range]) => ({ min, max: min + range }));
const anyRule = fc.record({
  method: fc.constantFrom(...degreeDayMethods),
  base: fc.integer({ min: 0, max: 60 }),
  cap: fc.integer({ min: 61, max: 95 }),
});

test('no method is ever below 0 or not a number; warmer is never less, a higher base never more; spread never takes away', () => {
  fc.assert(
    fc.property(anyRule, weather, fc.double({ min: 0, max: 12, noNaN: true }), (rule, day, spread) => {
      const plain = degreeDay(rule, day);
      assert.ok(Number.isFinite(plain) && plain >= 0);
      assert.ok(degreeDay(rule, { max: day.max + 2, min: day.min + 2 }) >= plain - 1e-9);
      assert.ok(degreeDay({ ...rule, base: rule.base - 1 }, day) >= plain - 1e-9);
      const wide = meanDegreeDay(rule, spread)(day);
      assert.ok(Number.isFinite(wide) && wide >= 0);
      if (rule.method === 'simple' || rule.method === 'maximum') assert.ok(wide >= plain - 1e-9);
    }),
  );
});

test('simple is never over sine without a cap, nor sine over floored', () => {
  fc.assert(
    fc.property(weather, fc.integer({ min: 0, max: 60 }), (day, base) => {
      const [simple, sine, floored] = (['simple', 'sine', 'floored'] as const).map((method) => degreeDay({ method, base }, day));
      assert.ok((simple ?? 1) <= (sine ?? 0) + 1e-9 && (sine ?? 1) <= (floored ?? 0) + 1e-9);
    }),
  );
});

test('the closed form of the simple method is what many shifts of the day come to', () => {
  fc.assert(
    fc.property(fc.integer({ min: 20, max: 80 }), fc.integer({ min: 2, max: 12 }), (mean, spread) => {
      const closed = meanDegreeDay(simple50, spread)({ max: mean, min: mean });
      const shifted = meanDegreeDay({ method: 'maximum', base: 50 }, spread)({ max: mean, min: mean });
      near(shifted, closed, spread * 0.002);
    }),
  );
});

test('the curve keeps the mean of every month, for any twelve means', () => {
  const lengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  for (const {
    given: { means },
  } of tables.curves) {
    const daily = [...dailyFromMonthly(means)];
    assert.equal(daily.length, 365);
    lengths.forEach((length, month) => {
      const days = daily.splice(0, length);
      near(days.reduce((sum, value) => sum + value, 0) / length, means[month] ?? NaN, 0.002);
    });
  }
});
