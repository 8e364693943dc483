import { defineConfig } from '@playwright/test';
import { launchVariable } from './src/cli/browser.ts';
import { desk, phone } from './tests/e2e/visit.ts';

/* `npm test` finds a browser and passes its launch options in the environment. Without them Playwright uses its own browser. */
const launchOptions = JSON.parse(process.env[launchVariable] ?? '{}') as Record<string, unknown>;

export default defineConfig({
  testDir: 'tests/e2e',
  testMatch: '**/*.spec.ts',
  globalSetup: './tests/setup/build-demo.ts',
  outputDir: '.almanac/playwright',
  workers: 2,
  fullyParallel: false,
  timeout: 300_000,
  // A failed test runs once more, with a trace. One that then passes is named at the end of `npm test`.
  retries: 1,
  use: {
    browserName: 'chromium',
    trace: 'on-first-retry',
    launchOptions,
  },
  // A phone reads every page. At a desk those are used again that a member fills in or ticks.
  projects: [
    { name: 'phone', use: { viewport: phone } },
    { name: 'desktop', use: { viewport: desk }, testMatch: /\/(ticks|signs|calculators-(mite-count|syrup))\.spec\.ts$/ },
  ],
});
