/* Pages of the demo club as a reader with script sees them: at three widths, by axe, by keyboard, on paper. */
import { after, before, test } from 'node:test';
import type { Browser } from 'playwright-core';
import { demoSite, openBrowser, type Site } from './built-site.ts';
import { lookAt, lookedFor, type Looks } from './look.ts';
import { nothing } from './visit.ts';

/** Makes the tests of the file that calls it. */
export function testLooks(pagesOf: (site: Site) => readonly string[]): void {
  let site: Site;
  let browser: Browser;
  let found: Looks;

  before(async () => {
    site = await demoSite();
    browser = await openBrowser();
    found = await lookAt({ browser, site, pages: pagesOf(site) });
  });
  after(async () => {
    await browser?.close();
    await site?.close();
  });

  for (const [rule, name] of Object.entries(lookedFor)) test(name, () => nothing(found[rule as keyof Looks]));
}
