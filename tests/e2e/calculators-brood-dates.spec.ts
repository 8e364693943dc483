// Brood dates in a browser: the common table from address and form, queens, stopped laying, wrong days.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import type { Browser } from '@playwright/test';
import { addDays } from '../../shared/days/day.ts';
import type { Site } from '../setup/built-site.ts';
import { openCalculator, type Sheet } from './calculator-page.ts';
import { looks } from '../tables/brood.ts';
import { aDay } from '../days.ts';

let browser: Browser;
let site: Site;
let sheet: Sheet;
test.beforeAll(async ({ browser: launched, demo }) => {
  site = demo;
  browser = launched;
  sheet = await openCalculator(browser, site, 'brood-dates');
});

const date = aDay('2026-05-10');

for (const { case: name, given, expect, from } of looks) {
  test(`brood dates: ${name} (${from})`, async () => {
    await sheet.open(`caste=${given.caste}&seen=${given.seen}&date=${date}`);
    const found = await sheet.values();
    for (const [stage, [earliest, latest]] of Object.entries(expect)) {
      assert.deepEqual([found[`${stage}-earliest`], found[`${stage}-latest`]], [addDays(date, earliest), addDays(date, latest)], stage);
    }
    for (const stage of ['mates', 'lays']) assert.equal(found[`${stage}-earliest`] !== undefined, given.caste === 'queen', stage);
    assert.equal(found['broodless-worker'], given.seen === 'caged' ? addDays(date, 21) : undefined);
    assert.equal(found['broodless-drone'], given.seen === 'caged' ? addDays(date, 24) : undefined);
  });
}

test('brood dates: laying stopped over a leap day, and on to the label rows of then', async () => {
  await sheet.open('caste=worker&seen=caged&date=2028-02-20');
  const found = await sheet.values();
  assert.equal(found['broodless-worker'], '2028-03-12');
  assert.equal(found['broodless-drone'], '2028-03-15');
  assert.equal(
    await sheet.said(),
    'Laying stopped on February 20, 2028: the last workers emerge by March 12, 2028, the last drones by March 15, 2028.',
  );
  assert.match(
    (await sheet.page.locator('[data-to="treatment-window"] a').getAttribute('href'))!,
    /work-it-out\/treatment-window\/#start=2028-03-15&brood=no$/,
  );
  await sheet.open('caste=worker&seen=egg&date=2028-02-20');
  assert.ok(await sheet.page.locator('[data-to="treatment-window"]').isHidden());
});

test('brood dates: a sealed queen cell in words, with the sum', async () => {
  await sheet.open('caste=queen&seen=sealed&date=2026-05-20');
  assert.equal(await sheet.said(), 'Sealed queen cells, May 20, 2026: a queen from them lays from May 28 to June 11, 2026.');
  assert.equal(await sheet.words('lays-earliest'), 'Thursday, May 28, 2026');
  assert.match(
    (await sheet.page.locator('[data-text="sum"]').textContent())!,
    /is sealed on day 7\.5 to 8 and emerges on day 15\.5 to 17\. She mates on day 22 to 26 and lays from day 24 to 29\..* Half days are rounded outward\.$/,
  );
  assert.equal(await sheet.page.locator('[data-part="result"] svg .bar').count(), 5);
});

test('brood dates: without values in the address the worker and the egg are chosen', async () => {
  await sheet.open('date=2026-05-10');
  assert.equal(await sheet.hash(), 'caste=worker&seen=egg&date=2026-05-10');
});

// Every form that people type is a row of tests/tables/days.ts.
const days: { text: string; says?: string; day?: string }[] = [
  { text: '5/10/26', day: '2026-05-10' },
  { text: '', says: 'Write the day of the look, such as April 18.' },
  { text: '30 February 2026', says: '“30 February 2026” is not in the calendar.' },
  { text: 'Monday 10 May 2026', says: '“Monday 10 May 2026”: that date is not on that weekday.' },
];

for (const { text, says, day } of days) {
  test(`brood dates: “${text}” as a day`, async () => {
    await sheet.open('');
    await sheet.choose('caste', 'drone');
    await sheet.choose('seen', 'sealed');
    await sheet.fill('date', text);
    await sheet.press('Calculate');
    assert.deepEqual(await sheet.faults(), says ? [says] : []);
    assert.equal(await sheet.page.locator('form [name="date"]').inputValue(), text);
    if (says) assert.deepEqual(await sheet.values(), {});
    else assert.equal(await sheet.hash(), `caste=drone&seen=sealed&date=${day}`);
  });
}

test('brood dates: wrong words in the address are named, and stay', async () => {
  await sheet.open('caste=king&seen=sealed&date=2026-02-30');
  assert.deepEqual(await sheet.faults(), ['“king” is not one of the choices.', '“2026-02-30” is not in the calendar.']);
  assert.equal(await sheet.hash(), 'caste=king&seen=sealed&date=2026-02-30');
  assert.deepEqual(await sheet.values(), {});
});

test('brood dates: today is the club’s own day', async () => {
  const early = await openCalculator(browser, site, 'brood-dates', '', { timezoneId: 'Asia/Tokyo' });
  await early.page.clock.setFixedTime('2026-05-11T01:00:00Z');
  await early.page.locator('form [name="date"]').focus();
  await early.page.waitForFunction(() => customElements.get('brood-dates') !== undefined);
  await early.press('Today');
  assert.equal(await early.page.locator('form [name="date"]').inputValue(), 'May 10, 2026');
  await early.close();
});
