/*
 * Fixtures of the browser tests: the demo club, built and served once per worker, browsers without service workers, and notes for the
 * report.
 */
import { test as base } from '@playwright/test';
import { demoSite, type Site } from '../setup/built-site.ts';

interface WorkerFixtures {
  /** `test.use({ offlineCopy: true })`: pages may store their offline copy. Without it a test gets the files of the host only. */
  offlineCopy: boolean;
  demo: Site;
}

export const test = base.extend<object, WorkerFixtures>({
  offlineCopy: [false, { option: true, scope: 'worker' }],
  browser: [
    async ({ browser, offlineCopy }, use) => {
      const open = browser.newContext.bind(browser);
      if (!offlineCopy)
        browser.newContext = async (options) => {
          const context = await open(options);
          // A browser without service workers logs less than one that refuses them, because a refusal is written to the console.
          await context.addInitScript("Object.defineProperty(Navigator.prototype, 'serviceWorker', { get: () => undefined })");
          return context;
        };
      await use(browser);
      browser.newContext = open;
    },
    { scope: 'worker' },
  ],
  demo: [
    async ({}, use) => {
      const site = await demoSite();
      await use(site);
      await site.close();
    },
    { scope: 'worker', timeout: 300_000 },
  ],
});

/** Adds a measured value to the report of the current test. */
export function note(description: string): void {
  test.info().annotations.push({ type: 'note', description });
}
