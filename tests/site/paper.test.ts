// What a printer puts on paper: a page of each kind as a PDF on A4 and Letter, its sheets counted.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import type { Browser } from 'playwright-core';
import { demoSite, openBrowser, type Site } from './built-site.ts';
import { nothing, oneOfEachKind, open, visit } from './visit.ts';

let site: Site;
let browser: Browser;
before(async () => {
  site = await demoSite();
  browser = await openBrowser();
});
after(async () => {
  await browser?.close();
  await site?.close();
});

/** Sheets of a PDF: each is an object of the type Page. */
const sheetsOf = (pdf: Buffer): number => [...pdf.toString('latin1').matchAll(/\/Type\s*\/Page\b(?!s)/g)].length;

/** What is carried to the yard: a list, a pest, an article, a meeting. */
const carried = /^\/(lists|pests|know-how|meetings)\/./;
const most = 8;

test('every kind of page prints on A4 and Letter, what is carried on a few sheets, and says where it is from', async (t) => {
  const sheets: string[] = [];
  const found = await visit({ browser, site, pages: oneOfEachKind(site) }, async (page, address) => {
    const counts = [sheetsOf(await page.pdf({ format: 'A4' })), sheetsOf(await page.pdf({ format: 'Letter' }))];
    sheets.push(`${address} ${counts.join(' and ')}`);
    await page.emulateMedia({ media: 'print' });
    const text = await page.locator('body').innerText();
    await page.emulateMedia({ media: null });
    const words = ['The Tamarack Almanac', 'edition of ', 'A demonstration', ...(address === '/404.html' ? [] : [address])].filter(
      (each) => !text.includes(each),
    );
    return [
      ...words.map((each) => `no "${each}" on paper`),
      ...(counts.every((count) => count >= 1) ? [] : ['no sheet']),
      ...(carried.test(address) && counts.some((count) => count > most) ? [`${counts.join(' and ')} sheets`] : []),
    ];
  });
  t.diagnostic(`sheets of A4 and of Letter: ${sheets.sort().join(', ')}`);
  assert.ok(sheets.some((each) => carried.test(each)));
  nothing(found);
});

test('the sheets of a page are counted', async () => {
  const { page, context } = await open(browser, 'about:blank');
  await page.setContent('<p style="break-after: page">one</p><p style="break-after: page">two</p><p>three</p>');
  assert.equal(sheetsOf(await page.pdf({ format: 'A4' })), 3);
  await context.close();
});
