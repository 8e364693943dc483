// Every page of the demo club with the Tab key alone.
import { test } from './fixtures.ts';
import type { Browser } from '@playwright/test';
import type { Site } from '../setup/built-site.ts';
import { tabThrough } from './tab-through.ts';
import { desk, nothing, phone, visit } from './visit.ts';

let site: Site;
let browser: Browser;
test.beforeAll(async ({ browser: launched, demo }) => {
  site = demo;
  browser = launched;
});

for (const window of [phone, desk]) {
  test(
    `at ${window.width} px the Tab key reaches everything that can be pressed, once, in the order of the page, and Shift goes back`,
    { tag: '@slow' },
    async () => {
      test.setTimeout(1_200_000);
      nothing(await visit({ browser, site, context: { viewport: window } }, tabThrough));
    },
  );
}
