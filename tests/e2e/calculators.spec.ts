// Properties of all calculators: the page before the form, without script, on a narrow screen, in print, and its weight.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import type { Browser } from '@playwright/test';
import type { Site } from '../setup/built-site.ts';
import { calculators } from './calculator-examples.ts';
import { openCalculator } from './calculator-page.ts';
import { tooLong } from './lengths.ts';
import { narrow, phone } from './visit.ts';

let browser: Browser;
let site: Site;
test.beforeAll(async ({ browser: launched, demo }) => {
  site = demo;
  browser = launched;
});

for (const { slug, values, wide, example, table } of calculators) {
  test(`${slug}: without script the worked example and the table are there, and no button is useless`, async () => {
    const context = await browser.newContext({ javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto(`${site.address}work-it-out/${slug}/`);
    assert.match(await page.locator('[data-part="example"]').innerText(), table);
    assert.ok(await page.locator('noscript b').isVisible());
    assert.ok(await page.locator('form button:has-text("Calculate")').isHidden());
    assert.equal(await page.locator('output[data-value]').count(), 0);
    assert.equal(await page.locator('[data-part="example"] output').count(), 0);
    await context.close();
  });

  test(`${slug}: the example goes into the form with one press`, async () => {
    const sheet = await openCalculator(browser, site, slug);
    await sheet.page.getByRole('link', { name: 'Try these numbers' }).click();
    await sheet.page.waitForSelector('output[data-value]');
    assert.ok((await sheet.hash()).startsWith(example));
    await sheet.close();
  });

  test(`${slug}: printed, a result leaves the form and the example out; its address is copied even from a place on the page; the longest fits 320 px`, async () => {
    const sheet = await openCalculator(browser, site, slug, values, {
      viewport: narrow,
      permissions: ['clipboard-read', 'clipboard-write'],
    });
    const { page } = sheet;
    await page.emulateMedia({ media: 'print' });
    assert.ok(await page.locator('form.asks').isHidden());
    assert.ok(await page.locator('[data-part="example"]').isHidden());
    assert.ok(await page.locator('[data-part="result"]').isVisible());
    await page.emulateMedia({ media: null });

    const whole = await sheet.hash();
    await page.evaluate(() => (location.hash = 'text'));
    await sheet.press('Copy link');
    await page.getByRole('button', { name: 'Copied' }).waitFor();
    assert.equal(await page.evaluate(() => navigator.clipboard.readText()), `${site.address}work-it-out/${slug}/#${whole}`);

    // With a result the page is longest.
    await page.setViewportSize(phone);
    assert.deepEqual(await tooLong(page, `work-it-out/${slug}/`), []);
    // The form is folded to the question, and opens with what was typed.
    const line = page.locator('.asked > summary');
    assert.match(await line.innerText(), /Change numbers$/);
    assert.ok(await page.locator('form.asks').isHidden());
    assert.equal(
      (await page.locator('[data-part="question-printed"]').textContent())!,
      (await page.locator('[data-part="question"]').textContent())!,
    );
    assert.ok((await page.locator('.next :is(.rows li, .call):visible').count()) >= 3, 'two links and a call');
    assert.notEqual(await page.locator('[data-text="again"]').innerText(), '');
    await line.click();
    assert.ok(await page.locator('form.asks').isVisible());
    await page.setViewportSize(narrow);

    await sheet.open(wide);
    assert.equal(await page.evaluate(() => document.documentElement.scrollWidth), narrow.width);
    const small = await page.evaluate(() =>
      [...document.querySelectorAll('main svg text, main .result *')]
        .filter((each) => each.textContent && !each.closest('sup') && parseFloat(getComputedStyle(each).fontSize) < 16)
        .map((each) => each.textContent),
    );
    assert.deepEqual(small, []);
    const tight = await page.evaluate(
      () =>
        [
          ...document.querySelectorAll(
            'main .calculator button, main .calculator .button, main .calculator input:not([type=radio], [type=date]), main .calculator select',
          ),
        ]
          .map((each) => each.getBoundingClientRect())
          .filter(({ width, height }) => height > 0 && (height < 48 || width < 48)).length,
    );
    assert.equal(tight, 0);
    await sheet.close();
  });
}

for (const [slug, values] of [
  ['sticky-board', 'mites=999999&days=0.999'],
  ['mite-count', 'samples=A:1/300&method=wash&recovery=0'],
  ['degree-days', 'days=54/40&method=simple'],
] as const)
  test(`${slug}: values in an address that cannot go together are answered`, async () => {
    const sheet = await openCalculator(browser, site, slug, values);
    await sheet.page
      .locator('[data-part="status"]')
      .filter({ hasText: /^No result yet\. There is 1 problem\.$/ })
      .waitFor({ timeout: 20_000 });
    assert.equal(await sheet.page.locator('.fault').count(), 1);
    await sheet.close();
  });
