// Without signal, after one visit: every page opens, calculators calculate, search works, ticks stay, pages print.
import assert from 'node:assert/strict';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { EpubCheck } from '@likecoin/epubcheck-ts';
import { test } from './fixtures.ts';
import type { Browser } from '@playwright/test';
import { writeOfflineCopy } from '../../src/integration/offline-copy.ts';
import type { EditionRecord } from '../../src/integration/edition-record.ts';
import { demoSite, type Site } from '../setup/built-site.ts';
import { paleEdges } from './edges.ts';
import { hiddenFocus } from './focus.ts';
import { axe } from './look.ts';
import { openHost, openReader, settled, wrongWithoutSignal, type Host, type Reader } from './kept.ts';
import { paleText, sideways, smallTargets, smallText } from './rules.ts';
import { nothing, oneOfEachKind } from './visit.ts';

test.use({ offlineCopy: true });

let site: Site;
let browser: Browser;
let host: Host;
let reader: Reader;
const work = mkdtempSync(join(tmpdir(), 'offline-'));
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
      `^Available offline: all ${site.pages.length - 1} pages, search and calendars, \\d\\.\\d\\sMB, edition of [A-Z][a-z]+\\s\\d+,\\s\\d{4}\\s\\([0-9a-f]{6}\\)\\.`,
    ),
  );
  atFoot = await wrongInLine();
  await reader.page.waitForFunction(
    async () => (await navigator.serviceWorker.getRegistrations()).filter(({ active }) => active).length === 2,
  );
  host.stop();
});
test.afterAll(async () => {
  await host?.close();
  rmSync(work, { recursive: true, force: true });
  await site?.close();
});

test('a page of each kind opens as it was published, and says of which edition it is', async () => {
  const { page } = reader;
  assert.deepEqual(await wrongWithoutSignal(page, site, at(''), oneOfEachKind(site)), []);
  await page.goto(at('lists/'));
  assert.match(await reader.told(/No signal/), /^No signal: this is the saved edition of [A-Z][a-z]+\s\d+,\s\d{4}\s\([0-9a-f]{6}\)\./);
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
  // The worker of the site begins at that slash; a second one adds it.
  for (const query of ['', '?from=letter']) {
    await page.goto(`${host.origin}/club${query}`);
    assert.equal(page.url(), at(query));
    assert.ok(await page.locator('h1').isVisible());
  }
  const strange = await reader.context.newPage();
  await assert.rejects(strange.goto(`${host.origin}/clubhouse`), 'another address of the host is left alone');
  await strange.close();
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

const LIST = 'lists/mite-count-day/';
const GONE = 'lists/package-first-six-weeks/';
const FORM = 'files/membership-form.pdf';
/** The bytes of a form of several MB. Nothing in the copy reads them. */
const largeForm = Buffer.concat([Buffer.from('%PDF-1.7\n'), Buffer.alloc(4_000_000, 'a form with pictures '), Buffer.from('\n%%EOF\n')]);

/** The site as a later edition of the same day: another mark, another sentence in a list, no page GONE, and a larger form. */
async function laterEdition(mark: string): Promise<string> {
  const folder = join(work, mark);
  cpSync(site.folder, folder, { recursive: true });
  const { day, fingerprint, mark: before } = JSON.parse(site.read('edition.json')) as EditionRecord;
  const edition = { day, fingerprint: mark + fingerprint.slice(6) };
  for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((each) => each.endsWith('.html'))) {
    const file = join(folder, name);
    writeFileSync(file, readFileSync(file, 'utf8').replaceAll(fingerprint, edition.fingerprint).replaceAll(before!, mark));
  }
  const list = join(folder, LIST, 'index.html');
  writeFileSync(list, readFileSync(list, 'utf8').replace(/<main[^>]*>/, `$&<p id="corrected">corrected in ${mark}</p>`));
  rmSync(join(folder, GONE), { recursive: true });
  writeFileSync(join(folder, FORM), largeForm);
  await writeOfflineCopy({ site: folder, base: site.base, zone: 'America/New_York', edition });
  return folder;
}

test('one visit brings a new edition, in two tabs; ticks and half-typed numbers stay, and no page loads again', async () => {
  const { page, context } = reader;
  host.start();
  await page.goto(at(LIST));
  await page.locator('input[data-tick]').nth(1).check();
  await page.goto(at('work-it-out/syrup/'));
  await page.locator('[name=amount]').fill('12.');
  const before = await page.evaluate(() => performance.timeOrigin);
  await host.put('/club/', await laterEdition('e2e2e2'));
  const other = await context.newPage();
  await other.goto(at('about/'));
  const line = other.locator('[data-offline]');
  await line.filter({ hasText: /^Available offline.*\(e2e2e2\)\.\s*$/ }).waitFor({ state: 'attached' });
  host.stop();
  // The tab that was open: it says so, at the foot since it is in view, and works on.
  assert.match(await reader.told(/A new edition/), /\(e2e2e2\), is saved on this device\. This page is of another one\. Show it$/);
  assert.equal(await page.locator('[name=amount]').inputValue(), '12.');
  assert.ok(await page.locator('footer [data-offline] button').isVisible());
  await page.locator('[name=amount]').fill('12.5');
  await page.getByRole('button', { name: 'Calculate', exact: true }).first().click();
  await page.locator('output[name="syrup-kg"][data-value]').waitFor({ state: 'attached', timeout: 10_000 });
  assert.equal(await page.evaluate(() => performance.timeOrigin), before);
  // Without signal every page is of the new edition.
  await other.goto(at(LIST));
  assert.equal(await other.locator('#corrected').innerText(), 'corrected in e2e2e2');
  assert.ok(await other.locator('input[data-tick]').nth(1).isChecked());
  assert.match(await line.innerText(), /^No signal: this is the saved edition of [^(]+\(e2e2e2\)\./);
  assert.equal((await other.goto(at(GONE)))?.status(), 404);
  await other.close();
});

test('an update that is interrupted: what was read stays as it was read, the rest is one edition, and the next visit completes it', async () => {
  const { page } = reader;
  host.start();
  await host.put('/club/', await laterEdition('e3e3e3'));
  // The page, worker.js, and some of the files.
  const stopped = host.stopAfter(60);
  await page.goto(at(LIST));
  await stopped;
  await settled(page);
  await page.goto(at(LIST));
  assert.equal(await page.locator('#corrected').innerText(), 'corrected in e3e3e3');
  assert.match(await reader.told(/No signal/), /this page is as you last saw it, newer than the saved edition of [^(]+\(e2e2e2\)\./);
  await page.goto(at('year/'));
  assert.match(await reader.told(/No signal/), /this is the saved edition of [^(]+\(e2e2e2\)\./);
  host.start();
  await page.goto(at('about/'));
  await reader.told(/^Available offline.*\(e3e3e3\)\.\s*$/);
  host.stop();
  await page.goto(at('year/'));
  assert.match(await reader.told(/No signal/), /saved edition of [^(]+\(e3e3e3\)\./);
});

test('a form of 4 MB that was opened once opens without signal', async () => {
  const { page } = reader;
  const opened = async (): Promise<Buffer> => {
    const [download] = await Promise.all([page.waitForEvent('download'), page.locator(`a[href$="${FORM}"]`).first().click()]);
    return readFileSync(await download.path());
  };
  host.start();
  await page.goto(at('club/'));
  assert.ok((await opened()).equals(largeForm));
  host.stop();
  await page.goto(at('club/'));
  await reader.told(/No signal/);
  assert.ok((await opened()).equals(largeForm));
});
