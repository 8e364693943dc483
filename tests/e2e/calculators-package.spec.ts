// Package calendar in a browser: published dates, odd and impossible days, the band, the calendar file.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from './fixtures.ts';
import ICAL from 'ical.js';
import { expect, type Browser } from '@playwright/test';
import { fixtureSite, type Site } from '../setup/built-site.ts';
import { agrees, openCalculator, type Sheet } from './calculator-page.ts';

let browser: Browser;
let site: Site;
let sheet: Sheet;
test.beforeAll(async ({ browser: launched, demo }) => {
  site = demo;
  browser = launched;
  sheet = await openCalculator(browser, site, 'package-calendar');
});

const delaware =
  'University of Delaware: a look on day 7 to 9; eggs 1 to 3 days after release, sealed 8 to 9 and adult 21 days after the egg';

const dates: { case: string; values: string; expect: Record<string, [earliest: string, latest: string] | undefined> }[] = [
  {
    case: 'queen behind candy, foundation',
    values: 'installed=2026-04-18&pounds=3&queen=candy&comb=foundation',
    expect: {
      'queen-look': ['2026-04-22', '2026-04-25'],
      'egg-look': ['2026-04-27', '2026-05-04'],
      capped: ['2026-05-01', '2026-05-12'],
      'first-bees': ['2026-05-14', '2026-05-24'],
      'first-mite-count': ['2026-05-30', '2026-06-13'],
    },
  },
  {
    case: 'queen let out, drawn comb',
    values: 'installed=2026-04-18&pounds=3&queen=released&comb=drawn',
    expect: {
      'queen-look': undefined,
      'egg-look': ['2026-04-25', '2026-04-27'],
      capped: ['2026-04-27', '2026-04-30'],
      'first-bees': ['2026-05-10', '2026-05-12'],
    },
  },
  {
    case: 'over a leap day',
    values: 'installed=2028-02-20&pounds=3&queen=released&comb=drawn',
    expect: { 'egg-look': ['2028-02-27', '2028-02-29'], capped: ['2028-02-29', '2028-03-03'], 'first-bees': ['2028-03-13', '2028-03-15'] },
  },
];

for (const { case: name, values, expect } of dates) {
  test(`package calendar: ${name} (${delaware})`, async () => {
    await sheet.open(values);
    const found = await sheet.values();
    for (const [event, pair] of Object.entries(expect))
      assert.deepEqual([found[`${event}-earliest`], found[`${event}-latest`]], pair ?? [undefined, undefined], event);
  });
}

test('package calendar: bees at the start and at the fewest (Delaware; Harbo in Khoury 2013)', async () => {
  await sheet.open('installed=2026-04-18&pounds=3&queen=released&comb=drawn');
  const found = await sheet.values();
  assert.equal(found['bees-at-start'], '10500');
  const [least, most] = [Number(found['low-point-bees-least']), Number(found['low-point-bees-most'])];
  // 55 to 64 % were alive on day 22, and the low point lies some days later.
  assert.ok(least > 0.45 * 10_500 && most < 0.64 * 10_500 && least < most, `${least} to ${most}`);
  assert.ok(found['low-point-earliest']! < found['first-bees-earliest']!);
  assert.ok(found['back-to-start-earliest']! > found['low-point-latest']!);
  assert.equal(await sheet.page.locator('[data-part="result"] svg .column').count(), 57);
  await sheet.open('installed=2026-04-18&pounds=2&bees-per-pound=4000');
  agrees(await sheet.values(), 'bees-at-start', 8000, 0);
});

test('package calendar: outside the range of the trials there is no low point', async () => {
  await sheet.open('installed=2026-04-18&pounds=20&bees-per-pound=10000&queen=candy&comb=foundation');
  const found = await sheet.values();
  assert.equal(found['bees-at-start'], '200000');
  assert.equal(found['low-point-earliest'], undefined);
  assert.equal(await sheet.words('low-point-bees-least'), 'The trials had 2,316 to 37,061 bees, so nothing is said for this number.');
  assert.ok(found['first-bees-earliest']);
  for (const pounds of [0.67, 10.5]) {
    await sheet.open(`installed=2026-04-18&shaken=2026-03-29&pounds=${pounds}&queen=candy&comb=foundation`);
    assert.ok((await sheet.values())['low-point-latest'], `${pounds} lb`);
  }
});

test('package calendar: the whole day is shown back while it is typed, and what is wrong is said and kept', async () => {
  const box = sheet.page.locator('form [name="installed"]');
  const back = sheet.page.locator('#box-installed-back');
  await sheet.open('');
  for (const [text, shown] of [
    ['4/5/26', 'Sunday, April 5, 2026'],
    ['18.4.26', 'Saturday, April 18, 2026'],
    ['18 april 2026', 'Saturday, April 18, 2026'],
    ['soon', ''],
  ] as const) {
    await sheet.fill('installed', text);
    await expect(back).toHaveText(shown);
  }
  await sheet.press('Calculate');
  assert.deepEqual(await sheet.faults(), ['“soon” is not a date. Write it like April 18.']);
  assert.equal(await box.inputValue(), 'soon');
  assert.deepEqual(await sheet.values(), {});
});

test('package calendar: the browser’s own calendar opens on the day in the box, and writes into it', async () => {
  const page = sheet.page;
  await sheet.open('installed=2026-04-18&pounds=3&queen=candy&comb=foundation');
  await page.evaluate(() => {
    HTMLInputElement.prototype.showPicker = function (this: HTMLInputElement) {
      this.dataset.opened = this.value;
      this.value = '2026-05-02';
      this.dispatchEvent(new Event('change', { bubbles: true }));
    };
  });
  await page.locator('.asked > summary').click();
  await page.getByRole('button', { name: 'Day the package goes in: choose in a calendar' }).click();
  assert.equal(await page.locator('[data-day-picker]').first().getAttribute('data-opened'), '2026-04-18');
  await expect(page.locator('form [name="installed"]')).toHaveValue('May 2, 2026');
  await expect(page.locator('#box-installed-back')).toHaveText('Saturday, May 2, 2026');
  assert.match(await sheet.hash(), /^installed=2026-05-02&/);
});

test('package calendar: days and numbers that contradict each other are named', async () => {
  const cases: [values: string, says: string][] = [
    ['installed=2026-04-18&shaken=2026-04-19', 'The bees cannot have been shaken after they went in.'],
    ['installed=2026-04-18&shaken=2026-03-01', 'More than 21 days lie between the shaking and the install. Check both days.'],
    ['installed=2026-04-18&pounds=0', 'The weight must be more than 0.'],
    ['installed=2026-04-18&pounds=300', 'A package weighs at most 20 lb, with at most 10,000 bees a pound.'],
    ['installed=2026-04-18&bees-per-pound=-1', 'The bees in a pound must be more than 0.'],
    ['installed=18%20April%202026', 'In an address this is written 2026-04-18. Press “Calculate” to use it.'],
    ['installed=2026-02-31', '“2026-02-31” is not in the calendar.'],
    ['installed=2026-04-18&queen=caged', '“caged” is not one of the choices.'],
  ];
  for (const [values, says] of cases) {
    await sheet.open(values);
    assert.deepEqual(await sheet.faults(), [says], values);
    assert.deepEqual(await sheet.values(), {});
  }
});

test('package calendar: today is the day in the club’s time zone, not in the reader’s', async () => {
  const own = await openCalculator(browser, site, 'package-calendar', '', { timezoneId: 'Pacific/Kiritimati' });
  await own.page.clock.setFixedTime('2026-04-18T02:00:00Z');
  await own.open('');
  await own.page.locator('form [name="installed"]').focus();
  await own.page.waitForFunction(() => customElements.get('package-calendar') !== undefined);
  await own.press('Today');
  assert.equal(await own.page.locator('form [name="installed"]').inputValue(), 'April 17, 2026');
  await own.close();
});

test('package calendar: the calendar file has all-day events, an end on the day after, and stable names', async () => {
  const own = await openCalculator(browser, site, 'package-calendar', 'installed=2026-04-18&pounds=3&queen=candy&comb=foundation', {
    timezoneId: 'Asia/Tokyo',
  });
  const saved = async (): Promise<string> => {
    const [download] = await Promise.all([own.page.waitForEvent('download'), own.press('Calendar file')]);
    assert.equal(download.suggestedFilename(), 'package-2026-04-18.ics');
    return readFileSync(await download.path(), 'utf8');
  };
  const text = await saved();
  assert.equal(await saved(), text);
  const events = new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((event) => new ICAL.Event(event));
  assert.deepEqual(
    events.map(({ uid }) => uid),
    ['queen-look', 'egg-look', 'capped', 'first-bees', 'low-point', 'back-to-start', 'first-mite-count'].map(
      (name) => `package-2026-04-18-${name}@tamarack-county`,
    ),
  );
  const [look] = events;
  assert.ok(look!.startDate.isDate && look!.endDate.isDate);
  assert.deepEqual([look!.startDate.toString(), look!.endDate.toString()], ['2026-04-22', '2026-04-26']);
  assert.match(look!.description, /#installed=2026-04-18&pounds=3/);
  await own.close();
});

test('package calendar: an address that a form wrote gives the same again; a club without figures says so', async () => {
  await sheet.open('');
  await sheet.fill('installed', 'april 18 2026');
  await sheet.fill('shaken', '16 April 2026');
  await sheet.fill('pounds', '1.5 kg');
  await sheet.choose('queen', 'released');
  await sheet.choose('comb', 'drawn');
  await sheet.press('Calculate');
  const [hash, found] = [await sheet.hash(), await sheet.values()];
  await sheet.open(hash);
  assert.deepEqual(await sheet.values(), found);
  const other = await fixtureSite('southern');
  const own = await openCalculator(browser, other, 'package-calendar', 'installed=2026-10-18');
  assert.equal(await own.words('first-bees-earliest'), 'No figure for this club.');
  assert.deepEqual(await own.values(), { 'bees-at-start': '10500' });
  await own.close();
  await other.close();
});
