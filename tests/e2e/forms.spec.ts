// A page of each kind in large print. forms.slow tests every page with every display option.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import type { Browser } from '@playwright/test';
import type { Site } from '../setup/built-site.ts';
import { testForms } from './forms.ts';
import { oneOfEachKind, open } from './visit.ts';

testForms(oneOfEachKind);

let site: Site;
let browser: Browser;
test.beforeAll(async ({ browser: launched, demo }) => {
  site = demo;
  browser = launched;
});

test('each form looks as it says, is kept, and can be taken back', async () => {
  const { page, context } = await open(browser, site.at('/about/access/'));
  const look = (): Promise<Record<string, string>> =>
    page.evaluate(() => {
      const { backgroundColor, color, fontSize } = getComputedStyle(document.body);
      return {
        paper: backgroundColor,
        ink: color,
        size: fontSize,
        tap: `${document.querySelector('.forms button')!.getBoundingClientRect().height}`,
      };
    });
  const press = (name: string): Promise<void> => page.getByRole('button', { name, exact: true }).click();
  const day = { paper: 'rgb(250, 247, 238)', ink: 'rgb(31, 38, 31)', size: '18px', tap: '48' };
  assert.deepEqual(await look(), day);
  await press('Night');
  assert.deepEqual(await look(), { ...day, paper: 'rgb(18, 29, 27)', ink: 'rgb(242, 236, 221)' });
  await press('Bright sun');
  assert.deepEqual(await look(), { ...day, paper: 'rgb(255, 255, 255)', ink: 'rgb(0, 0, 0)', size: '22px' });
  await page.reload();
  assert.deepEqual(await look(), { ...day, paper: 'rgb(255, 255, 255)', ink: 'rgb(0, 0, 0)', size: '22px' });
  await press('Bright sun');
  await press('Large print');
  await press('Gloves');
  assert.deepEqual(await look(), { ...day, size: '24px', tap: '96' });
  await press('Large print');
  await press('Gloves');
  await page.reload();
  assert.deepEqual(await look(), day);
  await context.close();
});

test('where colours are forced, what is pressed and where the reader is are still told apart', async () => {
  const { page, context } = await open(browser, site.at('/about/access/'), { forcedColors: 'active' });
  const outline = (selector: string): Promise<string> =>
    page
      .locator(selector)
      .first()
      .evaluate((element) => getComputedStyle(element).outlineStyle);
  await page.getByRole('button', { name: 'Gloves', exact: true }).click();
  await page.mouse.click(5, 5);
  assert.deepEqual([await outline('button[aria-pressed=true]'), await outline('button[aria-pressed=false]')], ['solid', 'none']);
  assert.deepEqual([await outline('.bottom-nav a[aria-current]'), await outline('.bottom-nav a:not([aria-current])')], ['solid', 'none']);
  await context.close();
});

test('a system set to dark gets the night form, unless the reader took another', async () => {
  const { page, context } = await open(browser, site.at('/about/access/'), { colorScheme: 'dark' });
  const paper = (): Promise<string> => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
  assert.equal(await paper(), 'rgb(18, 29, 27)');
  await page.getByRole('button', { name: 'Night', exact: true }).click();
  assert.equal(await paper(), 'rgb(250, 247, 238)');
  await page.reload();
  assert.equal(await paper(), 'rgb(250, 247, 238)');
  await context.close();
});
