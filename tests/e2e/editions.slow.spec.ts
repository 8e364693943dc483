// Successive editions on one host: with signal the next view shows the new text, and without signal exactly one edition.
import assert from 'node:assert/strict';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from './fixtures.ts';
import type { Browser, Page } from '@playwright/test';
import { builtFixture, builtFolder, fixtureFolder, type Built } from '../setup/built-site.ts';
import { openHost, openReader, settled, type Host, type Reader } from './kept.ts';

test.use({ offlineCopy: true });

const LIST = 'lists/first-look/';
const work = mkdtempSync(join(tmpdir(), 'editions-'));
let first: Built;
let second: Built;
let browser: Browser;
let host: Host;
const readers: Reader[] = [];

test.beforeAll(async ({ browser: launched }) => {
  first = await builtFixture('southern');
  const content = join(work, 'later');
  cpSync(fixtureFolder('southern'), content, { recursive: true });
  const figure = join(content, 'figures', 'look-in-temperature.yaml');
  writeFileSync(
    figure,
    readFileSync(figure, 'utf8').replace('value: 15', 'value: 17').replace('checked: 2026-03-02', 'checked: 2026-09-01'),
  );
  second = await builtFolder(content, 'southern-later');
  browser = launched;
});
test.beforeEach(async () => {
  host = await openHost();
  await host.put('/', first.folder);
});
test.afterEach(async () => {
  for (const { context } of readers.splice(0)) await context.close();
  await host.close();
});
test.afterAll(async () => {
  rmSync(work, { recursive: true, force: true });
});

const at = (path: string): string => `${host.origin}/${path}`;
const read = async (path: string, options = {}): Promise<Reader> => {
  const reader = await openReader(browser, at(path), options);
  readers.push(reader);
  return reader;
};
const temperature = async (page: Page): Promise<string> => /(\d+)\s°C/.exec(await page.locator('.step-words').first().innerText())![1]!;
/** Views follow one another until the page says that the second edition is stored. */
async function changedOver(page: Page): Promise<void> {
  for (let view = 0; view < 10; view += 1) {
    await settled(page);
    await page.goto(at('about/'));
    const said = page.locator('[data-offline]').filter({ hasText: /edition of 1\sSeptember\s2026\s\([0-9a-f]{6}\)\.\s*$/ });
    if (
      await said.waitFor({ state: 'attached', timeout: 2000 }).then(
        () => true,
        () => false,
      )
    )
      return;
  }
  assert.fail('the second edition did not take over');
}
/** A copy of a built folder, to be changed as a host might. */
function changed(built: Built, name: string, change: (folder: string) => void): string {
  const folder = join(work, name);
  cpSync(built.folder, folder, { recursive: true });
  change(folder);
  return folder;
}

test(
  'with signal the next view is the new text and the new search; ticks stay; without, the new edition is whole',
  { tag: '@slow' },
  async () => {
    const { page, told } = await read(LIST);
    assert.equal(await temperature(page), '15');
    await told(/^Available offline/);
    await page.locator('input[data-tick]').first().check();
    await host.put('/', second.folder);
    await page.goto(at(LIST));
    assert.equal(await temperature(page), '17', 'the very next view');
    assert.ok(await page.locator('input[data-tick]').first().isChecked());
    await settled(page);
    await page.goto(at('search/?q=thermometer'));
    await page.locator('[data-search-list] a').first().waitFor();
    assert.match(await page.locator('[data-search-list]').innerText(), /First look/);
    // The new edition is fetched in the background, and takes over when it is complete.
    await changedOver(page);
    host.stop();
    await page.goto(at(LIST));
    assert.equal(await temperature(page), '17');
    assert.ok(await page.locator('input[data-tick]').first().isChecked());
    assert.match(await told(/No signal/), /saved edition of 1\sSeptember\s2026/);
  },
);

test('without signal the old edition stays complete and states its day', { tag: '@slow' }, async () => {
  const { page, told } = await read(LIST);
  await told(/^Available offline/);
  await host.put('/', second.folder);
  host.stop();
  for (const path of [LIST, 'search/?q=thermometer']) {
    await page.goto(at(path));
    assert.doesNotMatch(await told(/No signal/), /September/);
  }
  await page.locator('[data-search-list] a').first().waitFor();
  await page.goto(at(LIST));
  assert.equal(await temperature(page), '15');
});

test(
  'where another page of the old edition is open, a line tells, nothing is loaded again unasked, and what the old page needs is still there',
  { tag: '@slow' },
  async () => {
    const { page, context, told } = await read(LIST);
    await told(/^Available offline/);
    await page.locator('input[data-tick]').first().check();
    await page.locator('.desk summary').first().click();
    await page.locator('#yard').fill('half typed');
    const other = await context.newPage();
    await host.put('/', second.folder);
    await other.goto(at('about/'));
    const line = page.locator('[data-offline]');
    await line.filter({ hasText: /^A new edition, of 1\sSeptember\s2026\s\([0-9a-f]{6}\), is saved on this device\./ }).waitFor();
    assert.equal(await page.locator('#yard').inputValue(), 'half typed');
    await settled(other);
    assert.ok(await line.getByRole('button', { name: 'Show it' }).isVisible());
    // The first page is unchanged and loads its parts from the saved ones, with signal or without.
    assert.equal(await page.locator('#yard').inputValue(), 'half typed');
    assert.equal(await temperature(page), '15');
    host.stop();
    if (!(await page.locator('[data-action=notes]').isVisible())) await page.locator('.desk summary').first().click();
    await page.locator('[data-action=notes]').click();
    await page.locator('.note-field').first().waitFor();
    await other.goto(at(LIST));
    assert.equal(await temperature(other), '17');
  },
);

test('a new edition fetches only the changed files', { tag: '@slow' }, async () => {
  const { page, told } = await read('about/');
  await told(/^Available offline/);
  host.asked();
  await host.put('/', second.folder);
  await page.goto(at('about/'));
  await changedOver(page);
  const fetched = host.asked();
  assert.ok(fetched.includes('/lists/first-look/'));
  const assets = fetched.filter((path) => path.startsWith('/assets/'));
  assert.deepEqual(assets, [], 'scripts, styles and letters are the same files');
});

test('a half-updated host gives no mixed edition: the old one stays', { tag: '@slow' }, async () => {
  const { page, told } = await read(LIST);
  await told(/^Available offline/);
  const half = changed(second, 'half', (folder) => cpSync(join(first.folder, 'words', 'index.html'), join(folder, 'words', 'index.html')));
  await host.put('/', half);
  await page.goto(at('about/'));
  await told(/is not complete/);
  await settled(page);
  assert.equal(await page.evaluate(async () => Boolean((await navigator.serviceWorker.getRegistration())?.waiting)), false);
  host.stop();
  await page.goto(at(LIST));
  assert.equal(await temperature(page), '15');
  // The host is repaired, and the next visits continue.
  host.start();
  await host.put('/', second.folder);
  await changedOver(page);
});

test('a first visit to a host with a missing file says so, and the next visit continues', { tag: '@slow' }, async () => {
  await host.put(
    '/',
    changed(first, 'lacking', (folder) => rmSync(join(folder, 'words', 'index.html'))),
  );
  const { page, told } = await read('about/');
  await told(/is not complete\. A file did not arrive/);
  await host.put('/', first.folder);
  await page.goto(at('about/'));
  await told(/^Available offline/);
});

test('two almanacs on one host have separate copies', { tag: '@slow' }, async () => {
  const below = await builtFixture('sub-folder', { base: '/bees/' });
  await host.put('/bees/', below.folder);
  const { page, told } = await read('about/');
  await told(/^Available offline/);
  await page.goto(at('bees/about/'));
  const name = await page.locator('.name').innerText();
  await told(/^Available offline/);
  host.stop();
  await page.goto(at('about/'));
  assert.notEqual(await page.locator('.name').innerText(), name);
  await page.goto(at('bees/about/'));
  assert.equal(await page.locator('.name').innerText(), name);
  assert.equal((await page.evaluate(() => caches.keys())).filter((key) => key.endsWith(' copy')).length, 2);
});

test('worker-off.js in place of worker.js ends the offline copy on the next visit, and ticks stay', { tag: '@slow' }, async () => {
  const { page, told } = await read(LIST);
  await told(/^Available offline/);
  await page.locator('input[data-tick]').first().check();
  await host.put(
    '/',
    changed(first, 'off', (folder) => cpSync(join(folder, 'worker-off.js'), join(folder, 'worker.js'))),
  );
  await page.goto(at('about/'));
  await page.waitForFunction(async () => (await caches.keys()).length === 0);
  await page.waitForFunction(
    async () =>
      (await navigator.serviceWorker.getRegistrations()).every(({ active }) => !active || active.state !== 'activated') ||
      (await navigator.serviceWorker.getRegistrations()).length === 0,
  );
  await page.goto(at(LIST));
  assert.ok(await page.locator('input[data-tick]').first().isChecked());
  host.stop();
  await assert.rejects(page.goto(at('meetings/')), 'nothing answers in the host’s place');
});

for (const [how, script] of [
  ['has no workers', "Object.defineProperty(Navigator.prototype, 'serviceWorker', { get: () => undefined })"],
  ['refuses them', "ServiceWorkerContainer.prototype.register = () => Promise.reject(new DOMException('denied', 'SecurityError'))"],
] as const) {
  test(`a browser that ${how} shows the page, and nothing breaks`, { tag: '@slow' }, async () => {
    const broken: string[] = [];
    const reader = await read('about/', { script });
    reader.page.on('pageerror', (error) => broken.push(String(error)));
    await reader.page.goto(at(LIST));
    await reader.page.locator('input[data-tick]').first().check();
    assert.match(await reader.page.locator('[data-progress]').innerText(), /^1 of/);
    assert.ok(await reader.page.locator('[data-offline]').isHidden());
    assert.deepEqual(broken, []);
  });
}

test('a page withdrawn in the new edition is not served from the old copy', { tag: '@slow' }, async () => {
  const { page, told } = await read('about/');
  await told(/^Available offline/);
  await host.put(
    '/',
    changed(first, 'withdrawn', (folder) => rmSync(join(folder, 'lists', 'first-look'), { recursive: true })),
  );
  const answer = await page.goto(at(LIST));
  assert.equal(answer?.status(), 404);
  assert.equal(await page.locator('h1').innerText(), 'No page at this address');
});
