/*
 * A newcomer who reads no English does the first week of a package with the almanac of a Spanish club. What the browser shows in Spanish has
 * no English sentence, before and after each press.
 */
import { expect, type Page } from '@playwright/test';
import { fixtureSite, type Site } from '../setup/built-site.ts';
import { test } from './fixtures.ts';
import { nothing, phone } from './visit.ts';

/** Common words of English that are no words of Spanish. */
const ENGLISH =
  /\b(?:the|of|and|with|your|you|this|that|these|from|which|are|were|when|what|have|has|each|every|not|for|next|done|steps?|sheet)\b/i;

let site: Site;
let page: Page;
const found: string[] = [];

test.describe.configure({ mode: 'serial' });
test.beforeAll(async ({ browser }) => {
  test.setTimeout(300_000);
  site = await fixtureSite('spanish');
  const context = await browser.newContext({ ...phone, reducedMotion: 'reduce', locale: 'es-ES', timezoneId: 'Europe/Madrid' });
  page = await context.newPage();
  await page.clock.setFixedTime('2026-04-18T10:00Z');
});
test.afterAll(async () => {
  await page.context().close();
  await site.close();
});

async function open(path: string): Promise<void> {
  await page.goto(site.address + path);
  await look(path);
}

/** Every text that the page shows outside an element in English, and every name that a screen reader would say there. */
async function look(where: string): Promise<void> {
  const words = await page.evaluate(() => {
    const texts: string[] = [];
    const walk = document.createTreeWalker(document.documentElement, NodeFilter.SHOW_ELEMENT | NodeFilter.SHOW_TEXT);
    for (let node = walk.nextNode(); node; node = walk.nextNode()) {
      const element = node instanceof Element ? node : node.parentElement!;
      if (element.closest('script, style, head, noscript, code') || element.closest('[lang]')!.getAttribute('lang')!.startsWith('en'))
        continue;
      if (node instanceof Element)
        texts.push(
          node.getAttribute('aria-label') ?? '',
          node.getAttribute('placeholder') ?? '',
          node.getAttribute('title') ?? '',
          // Words that a style sheet adds.
          ...['::before', '::after'].map((added) => getComputedStyle(node, added).content),
        );
      else texts.push(node.textContent!);
    }
    return texts.map((each) => each.trim().replace(/\s+/g, ' '));
  });
  found.push(...words.filter((each) => ENGLISH.test(each)).map((each) => `${where}: ${each}`));
}

test('the first page, the lists and the day before', { tag: '@slow' }, async () => {
  for (const path of ['', 'lists/', 'lists/package-order/', 'lists/package-day-before/', 'know-how/stings/', 'who-to-ask/', 'year/'])
    await open(path);
  nothing(found);
});

test('the package arrives: steps are checked off, a note is written, and what goes wrong has an answer', { tag: '@slow' }, async () => {
  await open('lists/package-arrival/');
  const unfold = (): Promise<void> => page.evaluate(() => document.querySelectorAll('details').forEach((each) => (each.open = true)));
  await unfold();
  await look('the open list');
  const boxes = page.locator('main [data-tick]');
  for (let at = 0; at < (await boxes.count()); at += 1) {
    // A part that is done folds.
    await unfold();
    await boxes.nth(at).check({ force: true });
  }
  await expect(page.locator('#all-done')).toBeVisible();
  await look('the finished list');
  await page.getByRole('button', { name: 'Compartir' }).click();
  await look('shared');
  nothing(found);
});

test('the days of six weeks follow from the day that is typed in Spanish', { tag: '@slow' }, async () => {
  await open('lists/package-first-six-weeks/');
  await page.locator('#own-day').fill('18 de abril');
  await page.locator('#own-day').press('Tab');
  await expect(page.locator('main')).toContainText(/21\s(?:de\s)?abril|24\s(?:de\s)?abril|de\sabril/);
  await look('six weeks');
  await page.locator('#own-day').fill('31 de abril');
  await page.locator('#own-day').press('Tab');
  await look('a day that does not exist');
  nothing(found);
});

test('the calculators of the first week answer in Spanish, and say in Spanish what is wrong', { tag: '@slow' }, async () => {
  await open('work-it-out/package-calendar/');
  await page.locator('form input[type=text]').first().fill('18 de abril');
  await page.getByRole('button', { name: 'Calcular' }).click();
  await expect(page.locator('main')).toContainText('de abril');
  await look('the calendar of a package');
  await open('work-it-out/syrup/');
  await page.locator('form [name=amount]').fill('2,5 kg');
  await page.getByRole('button', { name: 'Calcular' }).click();
  await expect(page.locator('main')).toContainText('2,5 kg');
  await look('syrup');
  await page.locator('form [name=amount]').fill('mucho', { force: true });
  await page.locator('form [name=amount]').press('Enter');
  await look('syrup without a number');
  nothing(found);
});

test('the search finds a page by its Spanish words', { tag: '@slow' }, async () => {
  await open('search/?q=jarabe');
  await expect(page.locator('main')).toContainText(/jarabe/i);
  await look('search');
  await page.locator('main input[type=search]').first().fill('xyzxyz');
  await expect(page.locator('[data-search-none]')).toBeVisible();
  await look('search without a result');
  nothing(found);
});
