/* Visual tests of the demo club with script: three widths, axe, keyboard, print. */
import { test } from './fixtures.ts';
import type { Browser } from '@playwright/test';
import type { Site } from '../setup/built-site.ts';
import { lookAt, lookedFor, type Looks } from './look.ts';
import { nothing } from './visit.ts';

/** Defines the tests for the file that calls it. */
export function testLooks(pagesOf: (site: Site) => readonly string[]): void {
  let site: Site;
  let browser: Browser;
  let found: Looks;

  test.beforeAll(async ({ browser: launched, demo }) => {
    site = demo;
    browser = launched;
    found = await lookAt({ browser, site, pages: pagesOf(site), lengths: true });
  });

  for (const [rule, name] of Object.entries(lookedFor)) test(name, () => nothing(found[rule as keyof Looks]));
  test('no page is longer than its kind may be, at 390 px with its folds shut', () => nothing(found.long));
}
