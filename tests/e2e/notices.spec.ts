// Notices at the top of the pages they concern, from their first day to their last, by the club's own clock.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import type { Browser } from '@playwright/test';
import { readFolder } from '../../src/source/folder.ts';
import { demoSite, type Site } from '../setup/built-site.ts';

let site: Site;
let browser: Browser;
test.beforeAll(async ({ browser: launched }) => {
  // The notices of the demo club are of this spring, so an edition of April contains them.
  site = await demoSite({ edition: '2026-04-30' });
  browser = launched;
});
test.afterAll(async () => {
  await site?.close();
});

const FOULBROOD = /Disease near by: American foulbrood on the hill/;
const OFF = /Called off: No meeting on June 11/;

/** The visible notices at the top of a page at an instant, with a reader's clock in `zone`. */
async function seen(path: string, instant: string, zone = 'America/New_York', offline = false): Promise<string> {
  const context = await browser.newContext({ timezoneId: zone });
  const page = await context.newPage();
  await page.clock.setFixedTime(new Date(instant));
  await page.goto(site.at(path));
  if (offline) {
    await context.setOffline(true);
    await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
  }
  const text = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('[data-holds]')]
      .filter((notice) => notice.checkVisibility())
      .map(({ innerText }) => innerText)
      .join('\n'),
  );
  await context.close();
  return text;
}

test("shown from the first moment of its first day to the last of its last, in the club's zone", async () => {
  // New York in spring is four hours behind.
  assert.doesNotMatch(await seen('/pests/american-foulbrood/', '2026-04-20T03:59:00Z'), FOULBROOD);
  assert.match(await seen('/pests/american-foulbrood/', '2026-04-20T04:00:00Z'), FOULBROOD);
  assert.match(await seen('/pests/american-foulbrood/', '2026-06-01T03:59:00Z'), FOULBROOD);
  assert.doesNotMatch(await seen('/pests/american-foulbrood/', '2026-06-01T04:00:00Z'), FOULBROOD);
});

for (const zone of ['Pacific/Kiritimati', 'Pacific/Pago_Pago', 'Asia/Kolkata']) {
  test(`a reader's clock in ${zone} changes nothing`, async () => {
    assert.match(await seen('/signs/', '2026-06-01T03:30:00Z', zone), FOULBROOD);
    assert.equal(await seen('/signs/', '2026-06-01T04:30:00Z', zone), '');
  });
}

test('it says what to do, until when, for where, whom to ask, and which duty put it out', async () => {
  const text = await seen('/pests/american-foulbrood/', '2026-05-02T12:00:00Z');
  for (const words of [
    "Don't move bees",
    'Until May 31, 2026, for the hill',
    'State apiary inspection office, 330-555-0101',
    'From the disease officer',
  ])
    assert.ok(text.replaceAll('\u00a0', ' ').includes(words), words);
});

test('only on the pages it concerns', async () => {
  assert.equal(await seen('/pests/wax-moth/', '2026-05-02T12:00:00Z'), '');
  const { entries } = readFolder(site.content);
  for (const { fields } of entries.filter(({ collection }) => collection === 'notices')) {
    const { concerns, title, from } = fields.value as { concerns: string[]; title: string; from: string };
    for (const path of concerns) assert.ok((await seen(path, `${from}T12:00:00Z`)).includes(title), `${path}: ${title}`);
  }
});

test('two at once on the first page, each for its own days', async () => {
  const both = await seen('/', '2026-05-28T12:00:00Z');
  assert.match(both, FOULBROOD);
  assert.match(both, OFF);
  const one = await seen('/', '2026-06-05T12:00:00Z');
  assert.doesNotMatch(one, FOULBROOD);
  assert.match(one, OFF);
});

test('a page that was left open decides again when it becomes visible, without a network', async () => {
  const context = await browser.newContext({ timezoneId: 'America/New_York' });
  const page = await context.newPage();
  await page.clock.setFixedTime(new Date('2026-05-31T23:00:00Z'));
  await page.goto(site.at('/signs/'));
  assert.equal(await page.locator('[data-holds]:visible').count(), 1);
  await context.setOffline(true);
  await page.clock.setFixedTime(new Date('2026-06-01T12:00:00Z'));
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
  assert.equal(await page.locator('[data-holds]:visible').count(), 0);
  await context.close();
});

test('without script no notice is shown as current, and a link leads to all with their days', async () => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(site.at('/pests/american-foulbrood/'));
  assert.equal(await page.locator('[data-holds]:visible').count(), 0);
  await page.getByRole('link', { name: 'Notices, and the days they hold for' }).click();
  const text = await page.locator('main').innerText();
  assert.match(text, /April\s20 to May\s31,\s2026/);
  assert.match(text, /May\s26 to June\s11,\s2026/);
  await context.close();
});

test('the page of notices lists the current ones, and says when there are none', async () => {
  assert.match(await seen('/notices/', '2026-05-02T12:00:00Z'), FOULBROOD);
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.clock.setFixedTime(new Date('2026-09-01T12:00:00Z'));
  await page.goto(site.at('/notices/'));
  assert.match(await page.locator('main').innerText(), /There is no notice today/);
  await context.close();
});
