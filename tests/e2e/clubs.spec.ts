// Odd but valid words are shown as typed. clubs.slow tests the look of the small clubs.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import type { Browser } from '@playwright/test';
import { fixtureSite, type Site } from '../setup/built-site.ts';
import { nothing, open, visit } from './visit.ts';

let browser: Browser;
test.beforeAll(async ({ browser: launched }) => {
  browser = launched;
});

test.describe('odd but legal words', () => {
  let site: Site;
  test.beforeAll(async () => {
    site = await fixtureSite('hostile');
  });
  test.afterAll(() => site?.close());

  test('are shown as typed', async () => {
    const { page, context } = await open(browser, site.at('/know-how/odd-prose/'), { javaScriptEnabled: false });
    const text = (await page.locator('main').innerText()).replace(/\s+/g, ' ');
    for (const words of [
      'Prose: <3, {name}, 2~3, 5\'10" & é',
      'Act at <3 mites per 100 bees; store at <= 20 C. Is 1 < 2 and 3 > 2? Yes: a<b.',
      'Write {name} on the lid. Write {colony name} on the lid. {Both} of {{them}}.',
      'Feed 2~3 L in April and 4~5 L in May; ~10 or ~20 will do',
      'import the queen early, and export nothing. Then import again.',
      'export is a word too.',
      'Stars: 2 * 3, under_score, snake_case_word, C:\\bees.',
      'What\'s "this"? <3 & {more}!',
      '👩‍🌾',
      '$5 and $6, $x, #5, @mention',
    ])
      assert.ok(text.includes(words), `the page does not show: ${words}`);
    assert.equal(await page.locator('main s, main script').count(), 0);
    assert.deepEqual(await page.locator('main del').allInnerTexts(), ['old']);
    await context.close();
  });

  test('are words in fields, never tags', async () => {
    const tags = (): string[] =>
      [...document.querySelectorAll('i, b.x, nope, them, why, word, thick, night')]
        .map((tag) => tag.outerHTML)
        .filter((html) => /Apis|Malum|night|<(nope|them|why|word|thick)/.test(html));
    nothing(await visit({ browser, site }, (page) => page.evaluate(tags)));
    const { page, context } = await open(browser, site.at('/lists/constructor/'));
    assert.equal(await page.locator('h1').innerText(), 'Steps: odd <b>but</b> legal & "quoted"');
    await context.close();
  });

  test('a step may have any name, and each tick belongs to its own step', async () => {
    const { page, context } = await open(browser, site.at('/lists/constructor/'));
    assert.equal(await page.locator('input[data-tick]').count(), 6);
    assert.equal(await page.locator('input[data-tick]:checked').count(), 0);
    await page.locator('input[data-tick=to-string]').check();
    await page.reload();
    assert.deepEqual(
      await page.locator('input[data-tick]:checked').evaluateAll((boxes) => boxes.map((box) => (box as HTMLElement).dataset.tick)),
      ['to-string'],
    );
    await context.close();
  });
});
