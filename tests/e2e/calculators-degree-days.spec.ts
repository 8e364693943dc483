// Degree-days: published days by every method in a browser, pasted lists, wrong input, and normals in the model itself.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import type { Browser } from '@playwright/test';
import { planDegreeDays, type Asked, type DegreeDayFigures, type Normals, type Plant } from '../../src/calculators/degree-days/model.ts';
import { addMonthDays, dayOfCommonYear } from '../../shared/days/month-day.ts';
import { fixtureSite, type Site } from '../setup/built-site.ts';
import { openCalculator, type Sheet } from './calculator-page.ts';
import { oneDay, wooster, woosterDays } from '../tables/season.ts';
import { aMonthDay } from '../days.ts';

let browser: Browser;
let site: Site;
let sheet: Sheet;
test.beforeAll(async ({ browser: launched, demo }) => {
  site = demo;
  browser = launched;
  sheet = await openCalculator(browser, site, 'degree-days');
});

for (const { case: name, given, expect, from } of oneDay) {
  test(`degree-days: ${name} (${from})`, async () => {
    const scale = / C\b/.test(`${name}${from}`) ? 'C' : 'F';
    const cap = given.cap === undefined ? '' : `&cap=${given.cap}`;
    await sheet.open(`days=${given.min}/${given.max}&base=${given.base}${cap}&scale=${scale}&method=${given.method}`);
    const found = await sheet.values();
    assert.ok(Math.abs(Number(found.total) - expect.degreeDays) <= expect.within + 1e-9, `total is ${found.total}`);
    assert.deepEqual(Object.keys(found), ['total']);
    assert.match(await sheet.words('total'), new RegExp(`degree-days \\(°${scale}\\)$`));
    assert.equal(await sheet.words('date-reached-earliest'), 'Days given here have no dates.');
  });
}

test('degree-days: several days are added, and the day a sum is reached is named', async () => {
  await sheet.open('days=40/54;43/63;45/70&base=50&scale=F&method=simple&sum=9');
  assert.equal((await sheet.values()).total, '10.5');
  assert.equal(await sheet.said(), '10.5 degree-days (°F), simple, base 50 °F. 9 is reached on day 3 of 3.');
  assert.match(
    (await sheet.page.locator('[data-text="sum"]').textContent())!,
    /The day of 43 to 63: \(43 \+ 63\) ÷ 2 − 50 = 3\. All days: 0 \+ 3 \+ 7\.5 = 10\.5\.$/,
  );
  assert.equal(await sheet.page.locator('[data-part="result"] svg .column').count(), 4);
  await sheet.open('days=40/54;43/63;45/70&base=50&scale=F&method=simple&sum=90');
  assert.match(await sheet.said(), /That is under 90\.$/);
});

test('degree-days: a spread entered with days counts', async () => {
  // Base 50, spread 9, mean 50: 3.5905.
  await sheet.open('days=42/58&base=50&scale=F&method=simple&spread=9');
  assert.ok(Math.abs(Number((await sheet.values()).total) - 3.5905) < 5.1e-5);
});

const lists: { text: string; hash?: string; says?: string; total?: string }[] = [
  { text: '40/54\n43/63', hash: 'days=40/54;43/63' },
  { text: 'Low\tHigh\n40\t54\n\n43\t63\t', hash: 'days=40/54;43/63' },
  { text: '40;54', hash: 'days=40/54' },
  { text: '40,5;54\n43;63,25', hash: 'days=40.5/54;43/63.25' },
  { text: '40/54; 43 / 63', hash: 'days=40/54;43/63' },
  { text: '−5/8', hash: 'days=-5/8' },
  { text: '54/40', says: 'Line 1: the highest is under the lowest. The lowest comes first.' },
  { text: '40, 54\n43 63\n2026-04-19,45,70', hash: 'days=40/54;43/63;45/70' },
  { text: '40/54\n43', says: 'Line 2: found “43”. Write the lowest, then the highest of one day, such as 40 54.' },
  { text: '4/5/26', says: 'Line 1: found “4/5/26”. Write the lowest, then the highest of one day, such as 40 54.' },
  { text: '40 47 54', says: 'Line 1: found “40 47 54”. Write the lowest, then the highest of one day, such as 40 54.' },
  { text: '40\t54\n43\tcold', says: 'Line 2: “cold” is not a number. Write a temperature, such as 54.' },
  { text: '40/54\n43/', says: 'Line 2: found “43/”. Write the lowest, then the highest of one day, such as 40 54.' },
  { text: '40/1,500', says: 'Line 1: “1,500” can be read two ways. Write 1500, or 1.5.' },
  { text: '40/54\n43/900', says: 'Line 2: no weather goes past 150 degrees.' },
  { text: Array.from({ length: 367 }, () => '40/54').join('\n'), says: 'The list takes 366 days at most, and these are 367.' },
];

for (const { text, hash, says } of lists) {
  test(`degree-days: days as “${text.slice(0, 30).replaceAll('\n', '⏎').replaceAll('\t', '⇥')}”`, async () => {
    await sheet.open('');
    await sheet.fill('days', text);
    await sheet.choose('method', 'floored');
    await sheet.press('Calculate');
    assert.deepEqual(await sheet.faults(), says ? [says] : []);
    assert.equal(await sheet.page.locator('form [name="days"]').inputValue(), text);
    if (says) return assert.deepEqual(await sheet.values(), {});
    assert.equal(await sheet.hash(), `${hash}&base=50&scale=F&method=floored`);
    const total = (await sheet.values()).total;
    await sheet.open(await sheet.hash());
    assert.equal((await sheet.values()).total, total);
  });
}

const typed: { fill: Record<string, string>; method?: string; says: string[] }[] = [
  { fill: { days: '40/54' }, says: ['Choose a method: each gives another sum.'] },
  { fill: { days: '40/54' }, method: 'modified', says: ['The modified method needs a cap, such as 86.'] },
  { fill: { days: '40/54', cap: '40' }, method: 'sine', says: ['The cap must be over the base.'] },
  { fill: { days: '40/54', cap: '86' }, method: 'simple', says: ['Only sine and modified have a cap. Empty it, or choose one of them.'] },
  { fill: { days: '40/54', base: '' }, method: 'simple', says: ['Write the base, such as 50.'] },
  { fill: { days: '40/54', base: '500' }, method: 'simple', says: ['The base lies from −150 to 150 degrees.'] },
  { fill: { days: '40/54', sum: '0' }, method: 'simple', says: ['The sum to reach must be more than 0.'] },
  { fill: { days: '40/54', sum: '-8' }, method: 'simple', says: ['The sum to reach must be more than 0.'] },
  { fill: { days: '40/54', spread: '-1' }, method: 'simple', says: ['The spread lies from 0 to 50 degrees.'] },
  { fill: { days: '40/54', from: 'soon' }, method: 'simple', says: ['“soon” is not a day of the year. Write it like March 1.'] },
  {
    fill: { days: '40/54', from: 'February 30' },
    method: 'simple',
    says: ['“February 30” is not a day of the year. Write it like March 1.'],
  },
];

for (const { fill, method, says } of typed) {
  test(`degree-days: ${JSON.stringify(fill)} ${method ?? ''}`, async () => {
    await sheet.open('');
    await sheet.page.locator('form details summary').click();
    for (const [name, text] of Object.entries(fill)) await sheet.fill(name, text);
    if (method) await sheet.choose('method', method);
    await sheet.press('Calculate');
    assert.deepEqual(await sheet.faults(), says);
    assert.deepEqual(await sheet.values(), {});
  });
}

test('degree-days: a start is typed in words and is month and day in the address', async () => {
  await sheet.open('days=40/54&base=50&scale=F&method=simple&from=03-01');
  assert.equal(await sheet.page.locator('form [name="from"]').inputValue(), 'March 1');
  assert.equal(await sheet.hash(), 'days=40/54&base=50&scale=F&method=simple&from=03-01');
});

test('degree-days: the form names days in a spelling that addresses do not allow, and keeps them', async () => {
  await sheet.open('days=40-54;43/63&base=50&scale=F&method=simple');
  assert.deepEqual(await sheet.faults(), ['Line 1: found “40-54”. Write the lowest, then the highest of one day, such as 40 54.']);
  assert.equal(await sheet.hash(), 'days=40-54;43/63&base=50&scale=F&method=simple');
  await sheet.open('days=40,5/54&base=50&scale=F&method=simple');
  assert.deepEqual(await sheet.faults(), ['In an address these days are written 40.5/54. Press “Calculate” to use them.']);
});

test('degree-days: each plant has its row without any days, with its own method and place', async () => {
  await sheet.open('base=50&scale=F&sum=86');
  const rows = sheet.page.locator('[data-plant]');
  assert.ok((await rows.count()) >= 8);
  assert.match(
    await sheet.page.locator('[data-plant="border-forsythia"] th').innerText(),
    /first bloom at 86, base 50 °F, low-floored, from January\s1; Wooster, Ohio\./,
  );
  const found = await sheet.values();
  assert.ok(Number(found.total) > 2000 && Number(found.total) < 4000, `a year of Ohio over 50 °F is ${found.total}`);
  for (const mark of ['', 'border-forsythia ']) {
    const [earliest, latest] = [found[`${mark}date-reached-earliest`]!, found[`${mark}date-reached-latest`]!];
    assert.match(`${earliest} ${latest}`, /^\d\d-\d\d \d\d-\d\d$/);
    assert.ok(earliest < latest, mark);
  }
  // Low-floored the same sum is reached weeks before simple.
  assert.ok(found['border-forsythia date-reached-earliest']! < found['date-reached-earliest']!);
});

test('degree-days: a year of Melbourne, 1981 to 1990, from July, gives its published sum', async () => {
  const southern = await fixtureSite('southern');
  const other = await openCalculator(browser, southern, 'degree-days', 'base=10&scale=C&sum=50');
  const found = await other.values();
  assert.equal(Number(found.total).toFixed(0), '2085');
  assert.ok(found['date-reached-earliest']! > '07-01' && found['date-reached-latest']! < '10-01', JSON.stringify(found));
  assert.equal(await other.page.locator('#hint-from').textContent(), 'Left empty: 1\u00a0July.');
  await other.close();
  await southern.close();
});

test('degree-days: a club without normals has no figure, and the arithmetic is still shown', async () => {
  const hostile = await fixtureSite('hostile');
  const other = await openCalculator(browser, hostile, 'degree-days', 'base=10&scale=C&sum=50');
  assert.deepEqual(await other.values(), {});
  assert.equal(await other.words('total'), 'No figure for this club.');
  assert.match(await other.said(), /^No figure for this club: it holds no normals\./);
  assert.match(
    (await other.page.locator('[data-text="sum"]').textContent())!,
    /^Simple: the mean of lowest and highest, less the base\. Base 10 °C\./,
  );
  await other.close();
  await hostile.close();
});

// The model itself, with a club that has normals.
const normals: Normals = { maxima: wooster.maxByMonth, minima: wooster.minByMonth, scale: 'F', spread: 8.77 };
const figures: DegreeDayFigures = { normals, doubt: { days: 10, daysForSmallSums: 20 }, plants: [], from: aMonthDay('01-01') };
const asked: Asked = {
  days: [],
  base: 50,
  cap: undefined,
  scale: 'F',
  method: undefined,
  spread: undefined,
  from: undefined,
  sum: undefined,
};
const plan = (other: Partial<Asked>, held: Partial<DegreeDayFigures> = {}) => {
  const planned = planDegreeDays({ ...asked, ...other }, { ...figures, ...held });
  assert.ok(planned.ok);
  return planned.value;
};

for (const {
  case: name,
  given: { method, spread, sum },
  expect,
  from,
} of woosterDays) {
  test(`degree-days: ${name} from normals, less and plus its doubt (${from})`, () => {
    const { reached } = plan({ method, spread, sum });
    assert.ok(typeof reached === 'object');
    const doubt = sum < 100 ? 20 : 10;
    for (const [day, off] of [
      [reached.earliest, -doubt],
      [reached.latest, doubt],
    ] as const) {
      // An independent program with coarser shifts: a day either way.
      assert.ok(Math.abs(dayOfCommonYear(addMonthDays(day, -off)) - dayOfCommonYear(aMonthDay(expect.monthDay))) <= 1, `${day}`);
    }
  });
}

test('degree-days: normals use the simple method, the club’s spread and first day, and either scale gives the same days', () => {
  const f = plan({ sum: 142 });
  assert.deepEqual([f.rule.method, f.spread], ['simple', 8.77]);
  assert.ok(Math.abs(f.total! - 2816) < 2816 * 0.01, `NOAA prints 2816, found ${f.total}`);
  const c = plan({ base: 10, scale: 'C', sum: (142 * 5) / 9 });
  assert.deepEqual(c.reached, f.reached);
  assert.ok(Math.abs(c.total! * 1.8 - f.total!) < 1e-6);
  assert.equal(plan({ sum: 99_999 }).reached, 'not-reached');
  assert.equal(plan({}).reached, 'no-sum');
  assert.equal(plan({ sum: 142 }, { doubt: null }).reached, 'no-figure');
});

test('degree-days: a club without normals has no figure, and nothing replaces it', () => {
  const { total, reached } = plan({ sum: 142 }, { normals: null });
  assert.equal(total, undefined);
  assert.equal(reached, 'no-figure');
});

test('degree-days: a plant uses the method of its own list; five years of notes set its window; without a method all of them count', () => {
  const plant: Plant = {
    id: 'p',
    name: 'P',
    sum: 142,
    scale: 'F',
    base: 50,
    from: aMonthDay('01-01'),
    method: 'floored',
    stage: 'first bloom',
    place: 'Wooster',
    fromMemory: false,
    note: 1,
    observed: [],
  };
  const windowOf = (other: Partial<Plant>) => {
    const { reached } = plan({ base: 43, scale: 'C', method: 'sine' }, { plants: [{ ...plant, ...other }] }).plants[0]!;
    return typeof reached === 'object' ? [reached.earliest, reached.latest] : reached;
  };
  assert.deepEqual(windowOf({}), ['04-09', '04-29']);
  // Days 100, 102, 104, 106, 108: standard deviation 3.16, so 4 whole days.
  assert.deepEqual(windowOf({ observed: [100, 102, 104, 106, 108] }), ['04-15', '04-23']);
  assert.deepEqual(windowOf({ observed: [100, 102, 104, 106] }), ['04-09', '04-29']);
  const [earliest, latest] = windowOf({ method: 'not stated' });
  assert.ok(earliest! < '04-09' && latest! > '05-05');
  assert.equal(windowOf({ method: 'modified' }), 'no-cap');
  assert.deepEqual(windowOf({ method: 'modified', cap: 86 }), ['04-09', '04-29']);
});
