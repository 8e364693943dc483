// Every page of the demo club gone through with the Tab key alone.
import { after, before, test } from 'node:test';
import type { Browser } from 'playwright-core';
import { demoSite, openBrowser, type Site } from '../site/built-site.ts';
import { tabThrough } from '../site/tab-through.ts';
import { desk, nothing, phone, visit } from '../site/visit.ts';

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

for (const window of [phone, desk]) {
  test(`at ${window.width} px the Tab key reaches everything that can be pressed, once, in the order of the page, and Shift goes back`, async () => {
    nothing(await visit({ browser, site, context: { viewport: window } }, tabThrough));
  });
}
