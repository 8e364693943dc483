// Pages with controls, used with the Tab key alone on a phone. keyboard.slow tests every page and a desktop too. looks.spec.ts tests the
// focus of every page.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import { expect, type Browser } from '@playwright/test';
import type { Site } from '../setup/built-site.ts';
import { hiddenFocus } from './focus.ts';
import { reached, tabThrough } from './tab-through.ts';
import { choose, nothing, oneOfEachKind, open, visit } from './visit.ts';

let site: Site;
let browser: Browser;
test.beforeAll(async ({ browser: launched, demo }) => {
  site = demo;
  browser = launched;
});

test('the first Tab stop skips the header of the page', async () => {
  const { page, context } = await open(browser, site.at('/lists/package-arrival/'));
  await page.keyboard.press('Tab');
  assert.equal(await reached(page), 'a Skip to main content');
  const skip = page.locator('.skip');
  assert.ok((await skip.boundingBox())!.x >= 0, 'it shows when it is reached');
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  assert.ok(await page.evaluate(() => document.querySelector('main')!.contains(document.activeElement)), await reached(page));
  await context.close();
});

test('on a phone the Tab key reaches every control once, in page order, and Shift+Tab goes back', async () => {
  const kinds = [/^\/$/, /^\/year\/$/, /^\/signs\/$/, /^\/search\/$/, /^\/lists\/.+/, /^\/pests\/.+/, /^\/work-it-out\/.+/];
  const pages = kinds.flatMap((kind) => oneOfEachKind(site).find((page) => kind.test(page)) ?? []);
  assert.equal(pages.length, kinds.length);
  nothing(await visit({ browser, site, pages }, tabThrough));
});

test('on a list the sticky line covers no keyboard stop, with any yard address and any size of print', async () => {
  const { page, context } = await open(browser, site.at('/lists/package-arrival/'));
  await choose(page, site, 'hands', 'gloves');
  await choose(page, site, 'size', 'large');
  await page.getByText('More for this hive').click();
  const height = (): Promise<number> => page.locator('.in-reach').evaluate((line) => line.getBoundingClientRect().height);
  const before = await height();
  await page
    .locator('#yard')
    .fill(
      'The green gate on Long Lane, a mile past the church, first left, behind the red barn; the second yard: the hill, gate 4, the nearest crossing is Route 9 and Long Lane',
    );
  await page.locator('#yard').press('Tab');
  await page.waitForFunction((least) => document.querySelector('.in-reach')!.getBoundingClientRect().height > least, before + 60);
  await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))));
  nothing(await page.evaluate(hiddenFocus));
  await context.close();
});

test('a source mark opens its note in place, on the screen and beside the mark; Esc, Tab and a press outside give the focus back', async () => {
  const { page, context } = await open(browser, site.at('/pests/american-foulbrood/'), { viewport: { width: 320, height: 640 } });
  await choose(page, site, 'hands', 'gloves');
  await choose(page, site, 'size', 'large');
  const marks = page.locator('main .text .mark a:visible');
  const note = page.getByRole('dialog', { name: /^Source / });
  const address = page.url();
  const isFocused = (mark: number) => marks.nth(mark).evaluate((link) => document.activeElement === link);
  assert.ok((await marks.count()) > 2);
  for (const mark of [0, 1, (await marks.count()) - 1]) {
    await marks.nth(mark).focus();
    await page.keyboard.press('Enter');
    await note.waitFor();
    const words = await page.locator(`.notes ${await marks.nth(mark).getAttribute('href')}`).textContent();
    assert.ok((await note.textContent())!.startsWith(words!), 'it says what the list says');
    assert.equal(await marks.nth(mark).getAttribute('aria-expanded'), 'true');
    const [at, over] = [(await marks.nth(mark).boundingBox())!, (await note.boundingBox())!];
    assert.ok(over.x >= 0 && over.x + over.width <= 320, `inside the screen: ${JSON.stringify(over)}`);
    assert.ok(over.y >= at.y + at.height || over.y + over.height <= at.y, `beside the mark: ${JSON.stringify({ at, over })}`);
    const close = note.getByRole('button', { name: 'Close' });
    await close.focus();
    await close.click({ trial: true });
    await page.keyboard.press('Escape');
    assert.equal(await note.count(), 0);
    assert.ok(await isFocused(mark), 'Esc');
  }
  await marks.first().click();
  await note.waitFor();
  await page.locator('h1').click();
  assert.equal(await note.count(), 0);
  assert.ok(await isFocused(0), 'a press outside');
  await marks.first().click();
  await note.getByRole('button', { name: 'Close' }).focus();
  await page.keyboard.press('Tab');
  assert.equal(await note.count(), 0);
  await expect(marks.first()).toHaveAttribute('aria-expanded', 'false');
  assert.equal(page.url(), address);
  await context.close();
});

test('the arrow keys scroll a wide table sideways, and the table has a name', async () => {
  const { page, context } = await open(browser, site.at('/about/'), { viewport: { width: 320, height: 640 } });
  const frame = page.locator('.scroll-x').first();
  assert.match((await frame.getAttribute('aria-label'))!, /^Table: /);
  await frame.focus();
  const isWide = await frame.evaluate((element) => element.scrollWidth > element.clientWidth);
  if (isWide) {
    await page.keyboard.press('ArrowRight');
    await page.waitForFunction(() => document.querySelector('.scroll-x')!.scrollLeft > 0);
  }
  assert.equal(await page.evaluate(() => document.documentElement.scrollWidth), 320);
  await context.close();
});
