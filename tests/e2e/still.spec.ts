// No layout shift: a page's script fills, sorts and announces without moving what the reader reads. The measure is Cumulative Layout
// Shift (web.dev/articles/cls), of which at most 0.1 counts as good. Our limit is below that.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import type { Browser, Page } from '@playwright/test';
import type { Site } from '../setup/built-site.ts';
import { phone } from './visit.ts';

const MOST = 0.02; // one line of one paragraph may wrap otherwise until the fonts are there; 0.1 is what the Web Vitals call good

let browser: Browser;
let site: Site;
test.beforeAll(async ({ browser: launched, demo }) => {
  browser = launched;
  site = demo;
});

const isParsed = () => document.readyState !== 'loading';
/** The browser paints between one frame and the next. Its own record of paints is not there under the fixed clock. */
const twoFrames = () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));

/** A page whose script comes late, after the first paint, or never. */
async function opened(path: string, script: 'late' | 'never'): Promise<Page> {
  const context = await browser.newContext({ viewport: phone });
  const page = await context.newPage();
  // A day with a current notice, which appears above the text.
  await page.clock.setFixedTime(new Date('2026-05-28T12:00:00Z'));
  await page.route('**/assets/leaf.*.js', async (route) => {
    if (script === 'never') return route.abort();
    await page.waitForFunction(isParsed);
    await page.evaluate(twoFrames);
    return route.continue();
  });
  await page.goto(site.address + path, { waitUntil: 'load' });
  return page;
}

type Shift = { value: number; sources: { node: Element | null }[] };

/** Each shift with the element that moved. A shift is reported after the frame in which it happened. */
const shifts = (page: Page): Promise<{ value: number; moved: string }[]> =>
  page.evaluate(async () => {
    await document.fonts.ready;
    const found: Shift[] = [];
    const add = (entries: PerformanceEntryList): void => void found.push(...(entries as unknown as Shift[]));
    const observer = new PerformanceObserver((list) => add(list.getEntries()));
    observer.observe({ type: 'layout-shift', buffered: true });
    for (let frame = 0; frame < 2; frame += 1) await new Promise(requestAnimationFrame);
    add(observer.takeRecords());
    return found.map(({ value, sources }) => ({
      value,
      moved: sources.map(({ node }) => node?.textContent?.trim().slice(0, 40)).join(' | '),
    }));
  });

for (const path of [
  '',
  'meetings/',
  'pests/varroa/',
  'pests/american-foulbrood/',
  'who-to-ask/',
  'lists/package-arrival/',
  'lists/package-first-six-weeks/',
  'lists/disease-suspected/',
  'hand-out/',
]) {
  test(`/${path} does not move when its script comes late`, async () => {
    const page = await opened(path, 'late');
    await page.waitForFunction(() => document.documentElement.classList.contains('arranged'));
    assert.ok(await page.locator('main .text').isVisible());
    const found = await shifts(page);
    const sum = found.reduce((all, { value }) => all + value, 0);
    assert.ok(sum <= MOST, `moved by ${sum.toFixed(3)}: ${found.map(({ value, moved }) => `${value.toFixed(3)} ${moved}`).join('; ')}`);
    await page.context().close();
  });
}

test('a page without its script is shown as it came, after two seconds', async () => {
  for (const path of ['', 'meetings/']) {
    const page = await opened(path, 'never');
    assert.equal(await page.locator('main h1').isVisible(), false);
    await page.locator('main h1').waitFor({ state: 'visible', timeout: 4000 });
    await page.context().close();
  }
});

test('a part that needs the script keeps its place for two seconds and shows nothing', async () => {
  for (const [path, part] of [
    ['lists/package-arrival/', '.for-hive'],
    ['hand-out/', '[data-hand-out]'],
  ] as const) {
    const page = await opened(path, 'never');
    const place = page.locator(part);
    assert.equal(await place.isVisible(), false);
    assert.ok((await place.evaluate((element: HTMLElement) => element.offsetHeight)) > 40, path);
    await page.waitForFunction((one) => document.querySelector<HTMLElement>(one)!.offsetHeight === 0, part, { timeout: 4000 });
    await page.context().close();
  }
});
