// Single-file book, opened from a memory stick: alone, without a network, on a phone, on a desktop, in print.
import assert from 'node:assert/strict';
import { copyFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from './fixtures.ts';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from '@playwright/test';
import { builtDemo, type Built } from '../setup/built-site.ts';
import { paleText, sideways, smallTargets, smallText, wrongOnPaper } from './rules.ts';
import { desk, narrow, nothing, phone } from './visit.ts';

let demo: Built;
let browser: Browser;
let page: Page;
let stick: string;
const told: string[] = [];
const asked: string[] = [];

test.beforeAll(async ({ browser: launched }) => {
  demo = await builtDemo();
  stick = mkdtempSync(join(tmpdir(), 'almanac-stick-'));
  copyFileSync(join(demo.folder, 'handbook.html'), join(stick, 'handbook.html'));
  browser = launched;
  page = await (await browser.newContext({ viewport: phone, offline: true, javaScriptEnabled: true })).newPage();
  page.on('console', (message) => told.push(message.text()));
  page.on('request', (request) => asked.push(request.url()));
  await page.goto(pathToFileURL(join(stick, 'handbook.html')).href);
});
test.afterAll(async () => {
  if (stick) rmSync(stick, { recursive: true, force: true });
});

test('it opens alone, with its own style, without a request and without an error', async () => {
  assert.deepEqual(
    asked.map((url) => url.replace(/.*\//, '')),
    ['handbook.html'],
  );
  assert.deepEqual(told, []);
  assert.equal(await page.evaluate(() => getComputedStyle(document.body).backgroundColor), 'rgb(250, 247, 238)');
});

test('from the contents to a chapter, and from there to a source', async () => {
  const topOf = (id: string): Promise<number> => page.evaluate((name) => document.getElementById(name)!.getBoundingClientRect().top, id);
  await page.click('.bottom-nav a:has-text("Contents")');
  await page.click('#contents a:text-is("Mite count day")');
  assert.equal(await page.evaluate(() => location.hash), '#mite-count-day');
  assert.ok(Math.abs((await topOf('mite-count-day')) - 90) < 60, `${await topOf('mite-count-day')} px from the top`);
  const mark = page.locator('#mite-count-day sup a').first();
  const number = await mark.textContent();
  await mark.click();
  assert.equal(await page.evaluate(() => location.hash), `#s${number}`);
  assert.match((await page.textContent(`#s${number}`))!, /\d{4}/);
});

test('its letters, links and tables follow the rules of every page', async () => {
  for (const size of [narrow, phone, desk]) {
    await page.setViewportSize(size);
    nothing(await page.evaluate(sideways));
    nothing(await page.evaluate(smallText));
    // The number of a source is in its line, like a mark on a page.
    nothing((await page.evaluate(smallTargets)).filter((fault) => !/^<a> "\d+"/.test(fault)));
  }
  nothing(await page.evaluate(paleText));
  await page.emulateMedia({ colorScheme: 'dark' });
  nothing(await page.evaluate(paleText));
});

test('printed: dark on white, boxes whole, no bar at the edge', async () => {
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  await page.setViewportSize({ width: 688, height: 1009 });
  nothing([...(await page.evaluate(wrongOnPaper)), ...(await page.evaluate(sideways))]);
  assert.equal(await page.isVisible('.bottom-nav'), false);
  await page.emulateMedia({ media: null, colorScheme: null });
});

test('under the policy in our header file it looks the same', async () => {
  const policy = /Content-Security-Policy: (.*)/.exec(demo.read('_headers'))![1]!;
  const served = await browser.newPage();
  await served.route('**/handbook.html', (route) =>
    route.fulfill({ body: demo.read('handbook.html'), contentType: 'text/html', headers: { 'Content-Security-Policy': policy } }),
  );
  await served.goto('https://club.example/handbook.html');
  assert.equal(await served.evaluate(() => getComputedStyle(document.body).backgroundColor), 'rgb(250, 247, 238)');
  await served.close();
});
