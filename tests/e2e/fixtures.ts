/* The fixtures of the browser tests: the demo club built and served once a worker, and a note that the report shows. */
import { test as base } from '@playwright/test';
import { demoSite, type Site } from '../setup/built-site.ts';

export const test = base.extend<object, { demo: Site }>({
  demo: [
    async ({}, use) => {
      const site = await demoSite();
      await use(site);
      await site.close();
    },
    { scope: 'worker', timeout: 300_000 },
  ],
});

/** Adds a measured value to the report of the test that runs. */
export function note(description: string): void {
  test.info().annotations.push({ type: 'note', description });
}
