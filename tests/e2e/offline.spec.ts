// Without signal, after one visit: every page opens, calculators calculate, search works, ticks stay, pages print.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { EpubCheck } from '@likecoin/epubcheck-ts';
import { test } from './fixtures.ts';
import type { Browser } from '@playwright/test';
import { demoSite, type Site } from '../setup/built-site.ts';
import { paleEdges } from './edges.ts';
import { hiddenFocus } from './focus.ts';
import { axe } from './look.ts';
import { openHost, openReader, wrongWithoutSignal, type Host, type Reader } from './kept.ts';
import { paleText, sideways, smallTargets, smallText } from './rules.ts';
import { nothing, oneOfEachKind } from './visit.ts';

test.use({ offlineCopy: true });

let site: Site;
let browser: Browser;
let host: Host;
let reader: Reader;
const at = (path: string): string => `${host.origin}/club/${path}`;
const pathOf = (page: string): string => page.slice(site.base.length);

/** Faults of the offline line, or of the page because of it. */
let atFoot: string[];
async function wrongInLine(): Promise<string[]> {
  const { page } = reader;
  const live = await page.locator('[data-offline]').getAttribute('role');
  const found = [...(live === 'status' ? [] : ['it is not told to those who hear the page']), ...(await axe(page))];
  for (const rule of [smallText, smallTargets, paleText, paleEdges, hiddenFocus, sideways]) found.push(...(await page.evaluate(rule)));
  return found;
}

test.beforeAll(async ({ browser: launched }) => {
  site = await demoSite({ base: '/club/' });
  browser = launched;
  host = await openHost();
  await host.put('/club/', site.folder);
  reader = await openReader(browser, at('reading/'));
  const said = await reader.told(/^Available offline/);
  // The page states what the folder contains.
  assert.match(
    said,
    new RegExp(
      `^Available offline: all ${site.pages.length - 1} pages, search and calendars, \\d\\.\\d\\sMB, edition of [A-Z][a-z]+\\s\\d+,\\s\\d{4}\\.`,
    ),
  );
  atFoot = await wrongInLine();
  host.stop();
});
test.afterAll(async () => {
  await host?.close();
  await site?.close();
});

test('a page of each kind opens as it was published, and says of which edition it is', async () => {
  const { page } = reader;
  assert.deepEqual(await wrongWithoutSignal(page, site, at(''), oneOfEachKind(site)), []);
  await page.goto(at('lists/'));
  assert.match(await reader.told(/No signal/), /^No signal: this is the saved edition of [A-Z][a-z]+\s\d+,\s\d{4}\./);
});

test('the offline line follows the rules of the page, with signal and without', async () => {
  nothing(atFoot);
  await reader.page.goto(at('lists/mite-count-day/'));
  await reader.told(/No signal/);
  nothing(await wrongInLine());
});

test('an address with its slash missing, index.html, a tail, other letters or none of ours', async () => {
  const { page } = reader;
  for (const [typed, shown] of [
    ['lists/mite-count-day', 'lists/mite-count-day/'],
    ['lists/mite-count-day/index.html', 'lists/mite-count-day/'],
    ['lists/mite-count-day/?utm_source=letter', 'lists/mite-count-day/?utm_source=letter'],
    ['Lists/Mite-Count-Day/', 'lists/mite-count-day/'],
    ['index.html', ''],
    ['year/?x=1#half-5-1', 'year/?x=1#half-5-1'],
  ] as const) {
    const answer = await page.goto(at(typed));
    assert.deepEqual([answer?.status(), page.url()], [200, at(shown)], typed);
  }
  for (const typed of ['no-such-page/', 'lists/%E0%A4%A/', 'lists/..%2f..%2fx']) {
    const answer = await page.goto(at(typed));
    assert.equal(answer?.status(), 404, typed);
    assert.equal(await page.locator('h1').innerText(), 'No page at this address');
    assert.ok(await page.locator('main input[type=search]').isVisible());
  }
});

test('every calculator loads, and a count is calculated', async () => {
  const { page } = reader;
  const broken: string[] = [];
  page.on('pageerror', (error) => broken.push(String(error)));
  const calculators = site.pages.map(pathOf).filter((path) => /^work-it-out\/./.test(path));
  assert.ok(calculators.length >= 11, `${calculators.length} calculators`);
  for (const path of calculators) {
    await page.goto(at(path));
    await page.locator('main form input:visible, main form select:visible').first().focus();
    await page.getByRole('button', { name: 'Calculate', exact: true }).first().click();
    await page
      .waitForFunction(() => (document.querySelector('[data-part="status"]')?.textContent ?? '') !== '', undefined, { timeout: 5000 })
      .catch(() => broken.push(`${path} says nothing`));
  }
  await page.goto(at('work-it-out/mite-count/#samples=A:9/300&method=wash'));
  // 9 in 300 are 3 in 100.
  await page.locator('output[name="per-100"][data-value="3"]').first().waitFor({ timeout: 10_000 });
  assert.deepEqual(broken, []);
});

test('search works, a tick stays, a list prints', async () => {
  const { page } = reader;
  await page.goto(at('search/?q=verroa'));
  await page.locator('[data-search-list] a').first().waitFor();
  assert.ok(
    (await page.locator('[data-search-list] a').evaluateAll((links) => links.map((link) => link.getAttribute('href'))))
      .slice(0, 3)
      .includes('/club/pests/varroa/'),
  );
  await page.goto(at('lists/mite-count-day/'));
  const box = page.locator('input[data-tick]').first();
  await box.check();
  // Scripts that load on a press are in the copy too.
  await page.locator('.desk summary').first().click();
  await page.locator('[data-action=notes]').click();
  await page.locator('.note-field').first().waitFor();
  await page.reload();
  assert.ok(await box.isChecked());
  await page.locator('[data-action=share]').click();
  await page.locator('[data-action=code]').click();
  await page.locator('.qr').waitFor();
  await page.goto(at('lists/package-first-six-weeks/#run=2026-04-18;candy,drawn;'));
  await page.locator('.notice.shared', { hasText: 'It is now on this device.' }).waitFor();
  const paper = await page.pdf({ format: 'Letter' });
  assert.ok(paper.length > 10_000);
});

test('a hand-out is made of the copy: its sheets, its file, and the name of what is not there', async () => {
  const { page } = reader;
  await page.goto(at('hand-out/?of=know-how/stings,lists/package-arrival,pests/not-in-the-copy'));
  await page.locator('.set-page').nth(1).waitFor({ state: 'attached' });
  assert.match((await page.locator('[data-chosen] .wrong').innerText())!, /not in the copy on this device.*with signal/);
  assert.match((await page.locator('.set-missing').textContent())!, /pests\/not-in-the-copy/);
  assert.equal(await page.locator('.qr-on-paper').count(), 3);
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as EPUB' }).click();
  const { valid } = await EpubCheck.validate(readFileSync(await (await coming).path()));
  assert.ok(valid);
});

test('a calendar and the season tables are in the copy', async () => {
  const { page } = reader;
  await page.goto(at('meetings/'));
  const calendar = await page.evaluate(async () => (await fetch('/club/club.ics')).text());
  assert.equal(calendar, site.read('club.ics'));
});
