// What a printer puts on paper: every page of steps, pests and sums as a PDF on A4 and Letter, its sheets counted.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import type { Browser } from 'playwright-core';
import { demoSite, openBrowser, type Site } from './built-site.ts';
import { oneOfEachKind, visit } from './visit.ts';

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

for (const format of ['A4', 'Letter'] as const) {
  test(`on ${format} every kind of page prints on a few sheets, and none is blank`, async (t) => {
    const sheets = new Map<string, number>();
    await visit({ browser, site, pages: oneOfEachKind(site) }, async (page, address) => {
      sheets.set(address, sheetsOf(await page.pdf({ format, preferCSSPageSize: false })));
      return [];
    });
    t.diagnostic([...sheets].map(([address, count]) => `${address} ${count}`).join(', '));
    for (const [address, count] of sheets) assert.ok(count >= 1 && count <= (address === '/words/' ? 12 : 8), `${address}: ${count} sheets`);
  });
}

test('the sheet says which almanac, which edition and which address it is from', async () => {
  const { address } = site;
  const found = await visit({ browser, site, pages: oneOfEachKind(site) }, async (page, path) => {
    await page.emulateMedia({ media: 'print' });
    const text = await page.locator('body').innerText();
    await page.emulateMedia({ media: null });
    return ['The Tamarack Almanac', 'edition of ', ...(path === '/404.html' ? [] : [path.slice(1)]), 'A demonstration'].filter((words) => !text.includes(words)).map((words) => `no "${words}" on paper`);
  });
  assert.ok(address.length > 0);
  assert.deepEqual(found, []);
});
