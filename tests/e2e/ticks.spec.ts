// Ticks of a checklist: stored by the step's own name, in this browser, for this list and this almanac alone.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import ICAL from 'ical.js';
import decodeQR from 'qr/decode.js';
import sharp from 'sharp';
import { shortOf } from '../../shared/address/short.ts';
import { test } from './fixtures.ts';
import { expect, type Browser, type BrowserContext, type Page } from '@playwright/test';
import { demoSite, type Site } from '../setup/built-site.ts';

let site: Site;
let browser: Browser;
let context: BrowserContext;
const list = '/lists/package-arrival/';
const other = '/lists/package-day-before/';
const dated = '/lists/package-first-six-weeks/';

test.beforeAll(async ({ browser: launched, demo }) => {
  site = demo;
  browser = launched;
});

async function reader(path: string, prepare: (page: Page) => Promise<void> = async () => {}): Promise<Page> {
  context = await browser.newContext();
  const page = await context.newPage();
  page.on('dialog', (dialog) => void dialog.accept());
  await prepare(page);
  await page.goto(site.at(path));
  return page;
}

const ticked = (page: Page): Promise<string[]> =>
  page.locator('input[data-tick]:checked').evaluateAll((boxes) => boxes.map((box) => (box as HTMLElement).dataset.tick!));
const names = (page: Page): Promise<string[]> =>
  page.locator('input[data-tick]').evaluateAll((boxes) => boxes.map((box) => (box as HTMLElement).dataset.tick!));
const keyOf = (page: Page): Promise<string> => page.evaluate(() => `almanac ${document.documentElement.dataset.shelf} lists`);
const startAgain = async (page: Page): Promise<void> => {
  await page.locator('summary', { hasText: 'More for this hive' }).click();
  await page.locator('[data-action=start-again]').click();
};
const openAll = (page: Page): Promise<void> =>
  page.locator('details').evaluateAll((folds) => folds.forEach((fold) => ((fold as HTMLDetailsElement).open = true)));
const stored = (page: Page): Promise<Record<string, string>> => page.evaluate(() => ({ ...localStorage }));

test('a tick is still there after a reload and after Back', async () => {
  const page = await reader(list);
  const [, second, third] = await names(page);
  await page.locator(`label:has(input[data-tick="${second}"])`).click();
  await page.locator(`input[data-tick="${third}"]`).press('Space');
  assert.match(await page.locator('[data-progress]').innerText(), /^2 of \d+ done\. Next: /);
  await page.reload();
  assert.deepEqual(await ticked(page), [second, third]);
  await page.goto(site.at(other));
  assert.deepEqual(await ticked(page), []);
  await page.goBack();
  assert.deepEqual(await ticked(page), [second, third]);
  await page.locator(`input[data-tick="${second}"]`).uncheck();
  await page.reload();
  assert.deepEqual(await ticked(page), [third]);
  await context.close();
});

test('a part folds with its last tick, the next one opens in its place, and links lead into folds', async () => {
  const page = await reader(list);
  const parts = page.locator('.part');
  const open = (): Promise<number[]> =>
    parts.evaluateAll((all) => all.flatMap((part, at) => ((part as HTMLDetailsElement).open ? [at] : [])));
  assert.deepEqual(await open(), [0]);
  const first = await parts
    .first()
    .locator('[data-tick]')
    .evaluateAll((boxes) => boxes.map((box) => (box as HTMLElement).dataset.tick!));
  for (const name of first.slice(0, -1)) await page.locator(`input[data-tick="${name}"]`).check();
  const second = parts.nth(1).locator('summary').first();
  const last = page.locator(`input[data-tick="${first.at(-1)}"]`);
  await last.scrollIntoViewIfNeeded();
  const before = (await second.boundingBox())!.y;
  await last.press('Space');
  await expect(parts.nth(1)).toHaveAttribute('open', '');
  assert.deepEqual(await open(), [1]);
  assert.ok(Math.abs((await second.boundingBox())!.y - before) < 2, 'the next part stays in its place');
  assert.equal(await page.evaluate(() => document.activeElement?.closest('.step')?.hasAttribute('data-next')), true);
  await expect(parts.first().locator('[data-count]')).toHaveText('6 of 6');
  // The reader may open it again and undo; nothing folds meanwhile.
  await parts.first().locator('summary').first().click();
  await last.uncheck();
  assert.deepEqual(await open(), [0, 1]);
  await last.check();
  await page.goto(site.at(`${list}#the-queen-is-missing`));
  await page.reload();
  await expect(page.getByText("If you still can't find her")).toBeVisible();
  await page.getByRole('link', { name: 'Back to step 15' }).filter({ visible: true }).click();
  await expect(page.locator('#step-look-queen')).toBeInViewport();
  await page.locator('#step-look-queen').getByRole('link', { name: 'Loose' }).click();
  await expect(page.getByText("Don't search tonight")).toBeInViewport();
  // The bar leads to the next step.
  await page.locator('[data-way]').click();
  await expect(page.locator('[data-next]')).toBeInViewport();
  await context.close();
});

test('at the end the next list starts for the same hive, on the day of the last tick', async () => {
  const page = await reader(list, (fresh) => fresh.clock.setFixedTime(new Date('2026-04-18T23:00:00Z')));
  await page.getByRole('button', { name: 'Add a hive' }).click();
  await expect(page.locator('[data-runs] option')).toHaveText(['Hive 1', 'Hive 2']);
  for (const name of await names(page)) await page.locator(`input[data-tick="${name}"]`).check();
  await page.getByRole('button', { name: /^Start, installed April\s18,\s2026$/ }).click();
  await page.waitForURL(`**${dated}`);
  await expect(page.locator('#own-day')).toHaveValue('April 18, 2026');
  await expect(page.locator('[data-runs]')).toHaveValue('run 1');
  const { lists } = JSON.parse((await stored(page))[await keyOf(page)]!) as {
    lists: Record<string, { open: string; runs: Record<string, object> }>;
  };
  const next = lists['package-first-six-weeks']!;
  assert.deepEqual(next.runs[next.open], { name: 'Hive 2', ticks: {}, day: '2026-04-18' });
  await context.close();
});

test('a tick belongs to its step, not to its place', async () => {
  const page = await reader(list);
  const all = await names(page);
  await page.locator(`input[data-tick="${all[1]}"]`).check();
  // The same list in a later edition: a new step comes first, the ticked one is reworded, and the order is reversed.
  await page.route(`**${list}`, async (route) => {
    const reply = await route.fetch();
    const html = await reply.text();
    const steps = [...html.matchAll(/<li class="step".*?<\/li>(?=\s*<li class="step"|\s*<\/ul>)/gs)].map((match) => match[0]);
    assert.ok(steps.length > 3, 'steps were found in the page');
    const first = `<li class="step" id="step-brand-new"><label><input type="checkbox" data-tick="brand-new" autocomplete="off"><span class="step-words">New</span></label></li>`;
    let turned = html.replace(steps[0]!, first + steps[0]!);
    turned = turned.replace(steps[1]!, steps[1]!.replace(/<strong>/, '<strong>Reworded '));
    await route.fulfill({ response: reply, body: turned });
  });
  await page.reload();
  assert.equal((await names(page))[0], 'brand-new');
  assert.deepEqual(await ticked(page), [all[1]]);
  assert.match(await page.locator(`label:has(input[data-tick="${all[1]}"])`).innerText(), /^Reworded /);
  await context.close();
});

test('the tick of a removed step stays in the store for its return', async () => {
  const page = await reader(list);
  const [first] = await names(page);
  const key = await keyOf(page);
  const before = {
    version: 2,
    lists: {
      'package-arrival': { open: 'the first', runs: { 'the first': { name: '', ticks: { 'long-gone': { on: '2026-04-18', of: '' } } } } },
    },
  };
  await page.evaluate(([where, text]) => localStorage.setItem(where!, text!), [key, JSON.stringify(before)]);
  await page.reload();
  assert.deepEqual(await ticked(page), []);
  await page
    .locator('[data-progress]')
    .filter({ hasText: /no longer in this list: 1\.$/ })
    .waitFor();
  await page.locator(`input[data-tick="${first}"]`).check();
  const now = JSON.parse((await stored(page))[key]!) as typeof before;
  assert.deepEqual(Object.keys(now.lists['package-arrival'].runs['the first'].ticks).sort(), [first, 'long-gone'].sort());
  await context.close();
});

test('start again clears this list and no other', async () => {
  const page = await reader(other);
  const [kept] = await names(page);
  await page.locator(`input[data-tick="${kept}"]`).check();
  await page.goto(site.at(list));
  const [one, two] = await names(page);
  for (const name of [one, two]) await page.locator(`input[data-tick="${name}"]`).check();
  await startAgain(page);
  await page.locator(`input[data-tick="${one}"]:not(:checked)`).waitFor();
  assert.deepEqual(await ticked(page), []);
  await page.reload();
  assert.deepEqual(await ticked(page), []);
  await page.goto(site.at(other));
  assert.deepEqual(await ticked(page), [kept]);
  await context.close();
});

test('start again asks first, and does nothing when the answer is no', async () => {
  const page = await reader(list);
  page.removeAllListeners('dialog');
  const asked: string[] = [];
  page.on('dialog', (dialog) => {
    asked.push(dialog.message());
    void dialog.dismiss();
  });
  const [one] = await names(page);
  await page.locator(`input[data-tick="${one}"]`).check();
  const asks = page.waitForEvent('dialog');
  await startAgain(page);
  await asks;
  assert.deepEqual(asked, ['Clear all ticks and notes for this hive? Other hives and lists keep theirs.']);
  assert.deepEqual(await ticked(page), [one]);
  await context.close();
});

test('two tabs agree', async () => {
  const first = await reader(list);
  const second = await context.newPage();
  await second.goto(site.at(list));
  const [one, two] = await names(first);
  await first.locator(`input[data-tick="${one}"]`).check();
  await second.locator(`input[data-tick="${one}"]:checked`).waitFor();
  await second.locator(`input[data-tick="${two}"]`).check();
  await first.locator(`input[data-tick="${two}"]:checked`).waitFor();
  assert.deepEqual(await ticked(first), [one, two]);
  assert.match(await first.locator('[data-progress]').innerText(), /^2 of /);
  await second.reload();
  assert.deepEqual(await ticked(second), [one, two]);
  await context.close();
});

test('two almanacs on one host do not mix', { tag: '@slow' }, async () => {
  const below = await demoSite({ base: '/club/' });
  const page = await reader(list);
  const [one] = await names(page);
  await page.locator(`input[data-tick="${one}"]`).check();
  const at = Object.keys(await stored(page));
  await page.goto(below.at(`/club${list}`));
  const [there] = await names(page);
  await page.locator(`input[data-tick="${there}"]`).check();
  const under = Object.keys(await stored(page));
  assert.deepEqual(
    at.filter((key) => under.includes(key)),
    [],
  );
  await context.close();
  await below.close();
});

for (const [how, block] of [
  [
    'throws when it is asked',
    'Object.defineProperty(window, "localStorage", { get() { throw new DOMException("denied", "SecurityError"); } })',
  ],
  ['is full', 'Storage.prototype.setItem = () => { throw new DOMException("full", "QuotaExceededError"); }'],
  ['forgets at once', 'Storage.prototype.setItem = () => {}'],
]) {
  test(`a browser whose storage ${how}: the boxes work, and the page says that ticks do not last`, async () => {
    const faults: string[] = [];
    const page = await reader(list, async (fresh) => {
      fresh.on('pageerror', (error) => faults.push(String(error)));
      await fresh.addInitScript(block!);
    });
    const [one, two] = await names(page);
    await page.locator(`input[data-tick="${one}"]`).check();
    await page.locator(`input[data-tick="${two}"]`).check();
    assert.deepEqual(await ticked(page), [one, two]);
    // The sentence of Progress.astro for a storage that keeps nothing, or is full.
    await expect(page.locator('[data-progress]')).toHaveText(
      /^2 of \d+ done\..* (This browser does not save this page\. Your ticks last until you leave it|This browser has no room left\. Your ticks last until you leave this page\. Save them to a file)\.$/,
    );
    assert.deepEqual(faults, []);
    await context.close();
  });
}

test('a storage with unknown content stays as it is until the reader moves it aside', async () => {
  const faults: string[] = [];
  const page = await reader(list);
  page.on('pageerror', (error) => faults.push(String(error)));
  const key = await keyOf(page);
  for (const [index, odd] of ['null', '[]', '{"a":'].entries()) {
    await page.evaluate(([where, what]) => localStorage.setItem(where!, what!), [key, odd] as const);
    await page.reload();
    assert.deepEqual(await ticked(page), [], `with ${odd}`);
    const [one] = await names(page);
    await page.locator(`input[data-tick="${one}"]`).check();
    await expect(page.locator('[data-progress]')).toHaveText(/cannot be read\. They are left as they are/);
    assert.equal((await stored(page))[key], odd);
    await page.locator('[data-action=set-aside]').click();
    await page.locator('[data-status]', { hasText: 'put aside' }).waitFor();
    assert.equal((await stored(page))[`${key} set aside ${index + 1}`], odd);
    await page.reload();
    assert.deepEqual(await ticked(page), [one], `with ${odd}`);
    await page.locator(`input[data-tick="${one}"]`).uncheck();
  }
  assert.deepEqual(faults, []);
  await context.close();
});

test('without script the boxes tick, and nothing offers what does not work', async () => {
  const own = await browser.newContext({ javaScriptEnabled: false });
  const page = await own.newPage();
  await page.goto(site.at(list));
  await page.locator('.step label').first().click();
  assert.equal(await page.locator('input[data-tick]:checked').count(), 1);
  assert.equal(await page.locator('button[data-action]').filter({ visible: true }).count(), 0);
  await own.close();
});

test('the name of each box is its step, and the page says where ticks are stored', async () => {
  const page = await reader(list);
  await openAll(page);
  // A screen reader announces a source mark as "Source 2".
  const steps = await page.locator('.step-words').evaluateAll((all) =>
    all.map((step) => {
      const heard = step.cloneNode(true) as HTMLElement;
      for (const mark of heard.querySelectorAll('[aria-label]')) mark.replaceWith(mark.getAttribute('aria-label')!);
      return heard.textContent!.trim();
    }),
  );
  assert.ok(steps.length > 10);
  for (const words of steps) assert.equal(await page.getByRole('checkbox', { name: words, exact: true }).count(), 1, words);
  assert.match((await page.locator('main').textContent())!, /Your ticks and the yard’s address stay in this browser, on this device\./);
  await context.close();
});

test('the reader gives her day: every step shows its own, a change keeps the ticks, and a wrong day stays as typed', async () => {
  const page = await reader(dated, (fresh) => fresh.clock.setFixedTime(new Date('2026-04-25T15:00:00Z')));
  await page.locator('#own-day').fill('soon');
  await page.locator('#own-day').press('Tab');
  await page.locator('#own-day-fault', { hasText: 'not a date' }).waitFor();
  assert.equal(await page.locator('#own-day').inputValue(), 'soon');
  await page.locator('#own-day').fill('18 April 2026');
  await page.locator('#own-day').press('Tab');
  const queen = page.locator('#step-queen-out .step-day');
  // Four to seven days after installing: the check that the queen is out.
  await expect(queen).toHaveText('Wed, Apr 22 – Sat, Apr 25 · due today');
  await openAll(page);
  await page.locator('input[data-tick="queen-out"]').check();
  await page.locator('#own-day').fill('2026-04-10');
  await page.locator('#own-day').press('Tab');
  await expect(queen).toHaveText('Tue, Apr 14 – Fri, Apr 17');
  assert.deepEqual(await ticked(page), ['queen-out']);
  await page.getByRole('radio', { name: 'let out at once' }).check();
  await expect(queen).toHaveText('not with this start');
  await page.reload();
  await expect(page.locator('#own-day')).toHaveValue('April 10, 2026');
  assert.deepEqual(await ticked(page), ['queen-out']);
  await context.close();
});

test('the dates of the list are those of the package calendar', async () => {
  const page = await reader(dated, (fresh) => fresh.clock.setFixedTime(new Date('2026-04-25T15:00:00Z')));
  await page.locator('#own-day').fill('18 April 2026');
  await page.locator('#own-day').press('Tab');
  const bees = page.locator('#step-first-bees .step-day');
  await expect(bees).toHaveText(/\s–\s/);
  const said = (await bees.textContent())!.replaceAll('\u00a0', ' ').replace(/ ·.*/, '');
  await page.goto(site.at('/work-it-out/package-calendar/#installed=2026-04-18&queen=candy&comb=drawn'));
  const [from, to] = await Promise.all(
    ['earliest', 'latest'].map((end) => page.locator(`output[name="first-bees-${end}"][data-value]`).getAttribute('data-value')),
  );
  const words = (day: string): string =>
    new Date(`${day}T12:00:00Z`).toLocaleDateString('en-US', { timeZone: 'UTC', weekday: 'short', day: 'numeric', month: 'short' });
  const [first, last] = said.split(' – ');
  assert.ok(words(from!).startsWith(first!), `${said} begins ${from}`);
  assert.equal(last, words(to!));
  await context.close();
});

test('dated steps stand by week, what is past due first, and a tick moves none of them', async () => {
  const page = await reader(dated, (fresh) => fresh.clock.setFixedTime(new Date('2026-04-25T15:00:00Z')));
  await page.locator('#own-day').fill('18 April 2026');
  await page.locator('#own-day').press('Tab');
  const groups = page.locator('[data-group]');
  await expect(groups.locator('h2')).toHaveText(['Past due', 'This week', 'Next week', 'Later']);
  await expect(groups.first()).toHaveAttribute('open', '');
  const order = await names(page);
  await page.locator(`input[data-tick="${order[0]}"]`).check();
  assert.deepEqual(await names(page), order);
  assert.equal(await page.locator('[data-next] [data-tick]').getAttribute('data-tick'), order[1]);
  // What was ticked and is past stands last the next time.
  await page.reload();
  await expect(groups.locator('h2')).toHaveText(['Past due', 'This week', 'Next week', 'Later', 'Earlier']);
  await context.close();
});

test('at a step that asks, the list pauses until the reader enters whom she asked', async () => {
  const page = await reader('/lists/disease-suspected/');
  const asking = await page.locator('.step[data-asks] input[data-tick]').first().getAttribute('data-tick');
  const all = await names(page);
  for (const name of all.slice(0, all.indexOf(asking!))) await page.locator(`input[data-tick="${name}"]`).check();
  const after = page.locator(`input[data-tick="${all[all.indexOf(asking!) + 1]}"]`);
  assert.equal(await after.isDisabled(), true);
  await expect(page.locator('[data-progress]')).toHaveText(/The list waits for/);
  // It says so once, after a reload too.
  await page.reload();
  await expect(page.locator('[data-progress]')).toHaveText(/^(?!.*waits for.*waits for).*The list waits for/);
  await page.locator(`#step-${asking} [data-action=asked]`).click();
  await page.locator(`#step-${asking} .step-note`).waitFor();
  assert.equal(await after.isDisabled(), false);
  await page.reload();
  assert.match(await page.locator(`#step-${asking} .step-note`).innerText(), /^I asked: /);
  await context.close();
});

/** The text of the QR code on the page, read by another library from what the screen shows. */
async function readCode(page: Page): Promise<string> {
  const { data, info } = await sharp(await page.locator('.qr').screenshot())
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return decodeQR({ width: info.width, height: info.height, data }, { timeLimit: 10_000 });
}
const offered = (page: Page) => page.locator('.notice.shared');

test('a checklist is shared by link and by QR code; the other phone has it at once, and undoes it', async () => {
  const page = await reader(dated);
  await page.evaluate(() => (document.documentElement.dataset.light = 'night'));
  const [one, two] = await names(page);
  await page.locator(`input[data-tick="${one}"]`).check();
  await page.locator(`input[data-tick="${two}"]`).check();
  await page.locator('#own-day').fill('18 April 2026');
  await page.locator('#own-day').press('Tab');
  await page.evaluate(() => Object.assign(navigator, { share: async (what: ShareData) => void Object.assign(window, { sent: what.url }) }));
  await page.getByRole('button', { name: 'Share', exact: true }).click();
  await page.getByRole('button', { name: 'Show QR code' }).click();
  await page.locator('.qr').waitFor();
  const link = await readCode(page);
  assert.match(link, /^http:[^#]*\/lists\/package-first-six-weeks\/#run=2026-04-18;[a-z,]*;[0-9a-z]{6};;[0-9a-z]{5}$/);
  assert.equal(await page.locator('.qr').getAttribute('aria-label'), link);
  await page.getByRole('button', { name: 'Send' }).click();
  await page.waitForFunction(() => 'sent' in window);
  assert.equal(await page.evaluate('window.sent'), link);
  // A new step makes another code, so the old one goes.
  await openAll(page);
  await page.locator(`input[data-tick="${two}"]`).uncheck();
  await page.locator('.qr').waitFor({ state: 'detached' });
  await page.evaluate(() => {
    navigator.clipboard.writeText = () => Promise.reject(new Error('denied'));
  });
  await page.getByRole('button', { name: 'Copy link' }).click();
  assert.match(await page.getByRole('textbox', { name: 'Link' }).inputValue(), /#run=/);
  await context.close();

  const tail = link.slice(link.indexOf('#'));
  const other = await reader(dated + tail);
  await offered(other).getByText('Someone shared this checklist with you: installed April 18, 2026, 2 of 21 steps done.').waitFor();
  const box = (await offered(other).boundingBox())!;
  assert.ok(box.y < 250 && box.y < (await other.locator('h1').boundingBox())!.y, 'it is above the title');
  assert.deepEqual(await ticked(other), [one, two]);
  assert.equal(new URL(other.url()).hash, '');
  await offered(other).getByRole('button', { name: 'Undo' }).click();
  await other.locator(`input[data-tick="${two}"]:not(:checked)`).waitFor();
  assert.deepEqual(await ticked(other), []);
  assert.deepEqual(JSON.parse((await stored(other))[await keyOf(other)]!), { version: 2, lists: {} });
  assert.equal(await offered(other).count(), 0);
  await context.close();
});

test('a phone that has the checklist is offered the shared one: it adds and takes nothing', async () => {
  const page = await reader(dated);
  const [one, two, three] = await names(page);
  await page.locator(`input[data-tick="${three}"]`).check();
  const before = await stored(page);
  const open = async (tail: string): Promise<void> => {
    await page.goto('about:blank');
    await page.goto(site.at(dated) + tail);
    await offered(page).waitFor();
  };
  const tail = `#run=2026-04-18;;${shortOf(one!)};green%20hive;k3x9z`;
  await open(tail);
  assert.match(await offered(page).innerText(), /Hive 1 here stays as it is\. The shared one is added as green hive\./);
  assert.deepEqual(await ticked(page), [three]);
  await offered(page).getByRole('button', { name: 'Not now' }).click();
  assert.deepEqual(await stored(page), before);
  await open(tail);
  await offered(page).getByRole('button', { name: 'Use it here' }).click();
  await page.locator(`input[data-tick="${one}"]:checked`).waitFor({ state: 'attached' });
  assert.deepEqual(await ticked(page), [one]);
  // The same hive, one step later: it is recognised, and gets that step.
  await open(`#run=2026-04-18;;${shortOf(one!)}${shortOf(two!)};green%20hive;k3x9z`);
  assert.match(await offered(page).innerText(), /It adds 1 step done \(“.+”\) to green hive\. What you have stays\./);
  await offered(page).getByRole('button', { name: 'Use it here' }).click();
  await page.locator(`input[data-tick="${two}"]:checked`).waitFor();
  // A step of the reader's own ends the undo, which would take it too.
  await page.locator(`input[data-tick="${three}"]`).check();
  assert.equal(await offered(page).getByRole('button').count(), 0);
  await open(`#run=2026-04-18;;${shortOf(one!)};green%20hive;k3x9z`);
  assert.match(await offered(page).innerText(), /green hive on this device already has all of it\./);
  const after = await stored(page);
  for (const bad of ['#run=2026-02-30;;', '#run=;;<b>', '#run=x']) {
    await open(bad);
    assert.match(await offered(page).innerText(), /can’t be read.*Nothing was changed\./s);
  }
  assert.deepEqual(await stored(page), after);
  await context.close();
});

test('a browser that keeps nothing shows the shared checklist and says so; the link opens it again', async () => {
  const page = await reader(
    `${dated}#run=2026-04-18;;${shortOf('watch')}`,
    (fresh) =>
      fresh.addInitScript(
        'Object.defineProperty(window, "localStorage", { get() { throw new DOMException("denied", "SecurityError"); } })',
      ) as unknown as Promise<void>,
  );
  await offered(page).getByText('This browser can’t keep it: open the link again next time.').waitFor();
  assert.deepEqual(await ticked(page), ['watch']);
  await page.reload();
  await offered(page).waitFor();
  assert.deepEqual(await ticked(page), ['watch']);
  await context.close();
});

test('the calendar of a hive has the steps that are left from today on, with their words and their reason', async () => {
  const page = await reader(dated, (fresh) => fresh.clock.setFixedTime(new Date('2026-04-25T15:00:00Z')));
  const press = page.getByRole('button', { name: 'Add to calendar' });
  await press.click();
  await page.getByText('Give the checklist its day first.').waitFor();
  await expect(page.locator('#own-day')).toBeFocused();
  await page.locator('#own-day').fill('18 April 2026');
  await page.locator('#own-day').press('Tab');
  await page.locator('[data-group]').first().waitFor();
  await openAll(page);
  await page.locator('input[data-tick="queen-out"]').check();
  const [saved] = await Promise.all([page.waitForEvent('download'), press.click()]);
  assert.equal(saved.suggestedFilename(), 'a-package-the-first-six-weeks-hive-1.ics');
  const calendar = new ICAL.Component(ICAL.parse(readFileSync((await saved.path())!, 'utf8')));
  assert.equal(calendar.getFirstPropertyValue('x-wr-calname'), 'A package: the first six weeks, Hive 1');
  const events = calendar.getAllSubcomponents('vevent').map((event) => new ICAL.Event(event));
  const named = (step: string): ICAL.Event | undefined => events.find(({ description }) => description.endsWith(`#step-${step}`));
  assert.equal(named('queen-out'), undefined, 'it is done');
  assert.equal(named('watch'), undefined, 'its days are over');
  const eggs = named('eggs')!;
  assert.equal(eggs.summary, `${(await page.locator('#step-eggs .step-words').innerText()).replace(/\s+/g, ' ')} (Hive 1)`);
  assert.match(eggs.description, /^[A-Z][^\n]+\.\n(.*\n)*http:[^#\n]+\/lists\/package-first-six-weeks\/#step-eggs$/);
  assert.equal(eggs.component.getAllSubcomponents('valarm').length, 1);
  await page.getByText(/Open the file to add \d+ events to your calendar\. \d+ steps are overdue and left out\./).waitFor();
  await context.close();
});

test('a run is saved to a file and opened elsewhere, with a summary of what it would add', async () => {
  const page = await reader(dated);
  const [one] = await names(page);
  await page.locator(`input[data-tick="${one}"]`).check();
  await page.locator('summary', { hasText: 'Save to a file' }).click();
  const [saved] = await Promise.all([page.waitForEvent('download'), page.locator('[data-action=save-file]').click()]);
  const path = await saved.path();
  await page.evaluate(() => localStorage.clear());
  await page.reload();
  assert.deepEqual(await ticked(page), []);
  await page.locator('summary', { hasText: 'Save to a file' }).click();
  await page.locator('#opened-file').setInputFiles(path);
  await page.locator('[data-status]', { hasText: 'adds 1 check mark' }).waitFor();
  await page.getByRole('button', { name: 'Use it here' }).click();
  await page.locator(`input[data-tick="${one}"]:checked`).waitFor({ state: 'attached' });
  await context.close();
});

test('words that changed since the tick are pointed out', async () => {
  const page = await reader(list);
  const [one] = await names(page);
  await page.locator(`input[data-tick="${one}"]`).check();
  await page.route(`**${list}`, async (route) => {
    const reply = await route.fetch();
    await route.fulfill({ response: reply, body: (await reply.text()).replace(/(id="step-[^>]*>.*?<strong>)/, '$1Reworded ') });
  });
  await page.reload();
  assert.deepEqual(await ticked(page), [one]);
  await expect(page.locator('.step').first()).toContainText('These words are new since you ticked.');
  await context.close();
});

test('the yard’s address is beside the emergency number of every list, in the file and in no address', async () => {
  const page = await reader(list);
  const said = '14 Mill Lane, behind the barn, second gate';
  await page.locator('summary', { hasText: 'More for this hive' }).click();
  await page.locator('#yard').fill(`  ${said} `);
  await page.locator('#yard').blur();
  await page.waitForFunction((words) => document.querySelector('[data-yard]')!.textContent === words, said);
  await page.locator('input[data-tick]').first().check();
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page
      .locator('summary', { hasText: 'Save to a file' })
      .click()
      .then(() => page.locator('[data-action=save-file]').click()),
  ]);
  const text = readFileSync((await saved.path())!, 'utf8');
  assert.equal(JSON.parse(text).yard, said);
  await page.getByRole('button', { name: 'Share', exact: true }).click();
  await page.getByRole('button', { name: 'Show QR code' }).click();
  const address = (await page.locator('.qr').getAttribute('aria-label'))!;
  assert.ok(address.includes('#run=') && !decodeURIComponent(address).includes('Mill'));
  await page.goto(site.at(other));
  const unwell = page.locator('.emergency');
  await expect(unwell).toContainText(/Call 911.*14 Mill Lane/);
  // It is in reach at the bottom of the list too.
  await page.locator('summary', { hasText: 'More for this hive' }).click();
  assert.ok(await unwell.locator('a').first().isVisible());
  const box = (await unwell.boundingBox())!;
  assert.ok(box.y >= 0 && box.y < 60, `the line stands at ${box.y}`);
  await page.locator('#yard').fill('');
  await page.locator('#yard').blur();
  await page.waitForFunction(() => document.querySelector('[data-yard]')!.textContent === '');
  await context.close();
});

for (const [how, script, said, pressed] of [
  [
    'lets it',
    "Object.defineProperty(Navigator.prototype, 'wakeLock', { get: () => ({ request: async () => ((window.locks = (window.locks ?? 0) + 1), { release: async () => { window.locks -= 1; } }) }) })",
    /^The screen stays on while this page is open/,
    'true',
  ],
  [
    'does not',
    "Object.defineProperty(Navigator.prototype, 'wakeLock', { get: () => undefined })",
    /^This browser does not let a page keep the screen on\.$/,
    'false',
  ],
] as const) {
  test(`the screen stays on where the browser ${how}, and only while it is wanted`, async () => {
    const page = await reader(list, async (fresh) => void (await fresh.addInitScript(script)));
    const button = page.locator('[data-action=screen]');
    await page.locator('summary', { hasText: 'More for this hive' }).click();
    await button.click();
    await page.locator('[data-status]').filter({ hasText: said }).waitFor();
    assert.equal(await button.getAttribute('aria-pressed'), pressed);
    if (pressed === 'true') {
      await button.click();
      await page.locator('[data-status]').filter({ hasText: 'The screen goes off as it always does.' }).waitFor();
      assert.equal(await page.evaluate('window.locks'), 0);
    }
    assert.equal(await button.getAttribute('aria-pressed'), 'false');
    await context.close();
  });
}
