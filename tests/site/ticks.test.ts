// Ticks of a checklist: kept by the step's own name, in this browser, for this list and this almanac alone.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { demoSite, openBrowser, type Site } from './built-site.ts';
import { phone } from './visit.ts';

let site: Site;
let browser: Browser;
let context: BrowserContext;
const list = '/lists/package-arrival/';
const other = '/lists/package-day-before/';

before(async () => {
  site = await demoSite();
  browser = await openBrowser();
});
after(async () => {
  await browser?.close();
  await site?.close();
});

async function reader(path: string, prepare: (page: Page) => Promise<void> = async () => {}): Promise<Page> {
  context = await browser.newContext({ viewport: phone });
  const page = await context.newPage();
  page.on('dialog', (dialog) => void dialog.accept());
  await prepare(page);
  await page.goto(site.at(path));
  return page;
}

const ticked = (page: Page): Promise<string[]> => page.locator('input[data-tick]:checked').evaluateAll((boxes) => boxes.map((box) => (box as HTMLElement).dataset.tick!));
const names = (page: Page): Promise<string[]> => page.locator('input[data-tick]').evaluateAll((boxes) => boxes.map((box) => (box as HTMLElement).dataset.tick!));
const stored = (page: Page): Promise<Record<string, string>> => page.evaluate(() => ({ ...localStorage }));

test('a tick is there again after the page is loaded again, and after Back', async () => {
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

test('it is the step that is ticked, not its place', async () => {
  const page = await reader(list);
  const all = await names(page);
  await page.locator(`input[data-tick="${all[1]}"]`).check();
  // The same list in a later edition: a new step comes first, the ticked one is reworded, and all stand the other way round.
  await page.route(`**${list}`, async (route) => {
    const reply = await route.fetch();
    const html = await reply.text();
    const steps = [...html.matchAll(/<li class="step".*?<\/li>(?=<li class="step"|<\/ul>)/gs)].map((match) => match[0]);
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

test('a tick of a step that is gone waits in the store for its return', async () => {
  const page = await reader(list);
  const [first] = await names(page);
  const key = await page.evaluate(() => `almanac ${document.documentElement.dataset.shelf} ticks ${document.querySelector<HTMLElement>('[data-list]')!.dataset.list}`);
  await page.evaluate(([where]) => localStorage.setItem(where!, JSON.stringify({ 'long-gone': 'done' })), [key]);
  await page.reload();
  assert.deepEqual(await ticked(page), []);
  await page.locator(`input[data-tick="${first}"]`).check();
  assert.deepEqual(Object.keys(JSON.parse((await stored(page))[key]!)).sort(), [first, 'long-gone'].sort());
  await context.close();
});

test('start again clears this list and no other', async () => {
  const page = await reader(other);
  const [kept] = await names(page);
  await page.locator(`input[data-tick="${kept}"]`).check();
  await page.goto(site.at(list));
  const [one, two] = await names(page);
  for (const name of [one, two]) await page.locator(`input[data-tick="${name}"]`).check();
  await page.locator('[data-start-again]').click();
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
  await page.locator('[data-start-again]').click();
  assert.deepEqual(asked, ['Take all ticks off this list? Other lists keep theirs.']);
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

test('two almanacs on one host do not mix', async () => {
  const below = await demoSite({ base: '/club/' });
  const page = await reader(list);
  const [one] = await names(page);
  await page.locator(`input[data-tick="${one}"]`).check();
  const at = Object.keys(await stored(page));
  await page.goto(below.at(`/club${list}`));
  const [there] = await names(page);
  await page.locator(`input[data-tick="${there}"]`).check();
  const under = Object.keys(await stored(page));
  assert.deepEqual(at.filter((key) => under.includes(key)), []);
  await context.close();
  await below.close();
});

for (const [how, block] of [
  ['throws when it is asked', 'Object.defineProperty(window, "localStorage", { get() { throw new DOMException("denied", "SecurityError"); } })'],
  ['is full', 'Storage.prototype.setItem = () => { throw new DOMException("full", "QuotaExceededError"); }'],
  ['forgets at once', 'Storage.prototype.setItem = () => {}'],
]) {
  test(`a browser whose store ${how}: the boxes work, and the page says that they do not last`, async () => {
    const faults: string[] = [];
    const page = await reader(list, async (fresh) => {
      fresh.on('pageerror', (error) => faults.push(String(error)));
      await fresh.addInitScript(block!);
    });
    const [one, two] = await names(page);
    await page.locator(`input[data-tick="${one}"]`).check();
    await page.locator(`input[data-tick="${two}"]`).check();
    assert.deepEqual(await ticked(page), [one, two]);
    assert.match(await page.locator('[data-progress]').innerText(), /2 of \d+ done\..* This browser (keeps no ticks: they last until you leave the page|did not keep that tick)\.$/);
    await page.locator('button[data-form=light][value=night]').click();
    assert.equal(await page.evaluate(() => document.documentElement.dataset.light), 'night');
    assert.deepEqual(faults, []);
    await context.close();
  });
}

test('a store that holds something else does no harm', async () => {
  const faults: string[] = [];
  const page = await reader(list);
  page.on('pageerror', (error) => faults.push(String(error)));
  const key = await page.evaluate(() => `almanac ${document.documentElement.dataset.shelf} ticks ${document.querySelector<HTMLElement>('[data-list]')!.dataset.list}`);
  for (const odd of ['', 'null', '[]', '7', '"text"', '{', '{"a":']) {
    await page.evaluate(([where, what]) => localStorage.setItem(where!, what!), [key, odd]);
    await page.reload();
    assert.deepEqual(await ticked(page), [], `with ${odd}`);
    const [one] = await names(page);
    await page.locator(`input[data-tick="${one}"]`).check();
    await page.reload();
    assert.deepEqual(await ticked(page), [one], `with ${odd}`);
    await page.locator(`input[data-tick="${one}"]`).uncheck();
  }
  assert.deepEqual(faults, []);
  await context.close();
});

test('without script the boxes tick, and nothing offers what it cannot do', async () => {
  const own = await browser.newContext({ viewport: phone, javaScriptEnabled: false });
  const page = await own.newPage();
  await page.goto(site.at(list));
  await page.locator('.step label').first().click();
  assert.equal(await page.locator('input[data-tick]:checked').count(), 1);
  assert.equal(await page.locator('button[data-start-again], button[data-print]').filter({ visible: true }).count(), 0);
  await own.close();
});

test('each box is named by its step, and the page says where ticks live', async () => {
  const page = await reader(list);
  // A source's mark is heard as "Source 2".
  const steps = await page.locator('.step-words').evaluateAll((all) =>
    all.map((step) => {
      const heard = step.cloneNode(true) as HTMLElement;
      for (const mark of heard.querySelectorAll('[aria-label]')) mark.replaceWith(mark.getAttribute('aria-label')!);
      return heard.textContent!.trim();
    }),
  );
  assert.ok(steps.length > 10);
  for (const words of steps) assert.equal(await page.getByRole('checkbox', { name: words, exact: true }).count(), 1, words);
  assert.match(await page.locator('main').innerText(), /Ticks stay in this browser, on this device, and go nowhere else\./);
  await context.close();
});
