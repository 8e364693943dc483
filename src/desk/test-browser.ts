// The browser of a test. `npm test` finds one once and leaves the way to start it in the environment;
// a test file run by itself finds its own. A file that reaches this one is a browser test: `npm test`
// names it as not run where there is no browser.
import { chromium, type Browser, type LaunchOptions } from 'playwright-core';
import { findBrowser, launchVariable } from './browser.ts';

/** `workers`: pages may keep their offline copy; else none does, so that a test meets the host's files only. */
export async function openBrowser({ workers = false } = {}): Promise<Browser> {
  const handed = process.env[launchVariable];
  const options = handed ? (JSON.parse(handed) as LaunchOptions) : await findBrowser();
  if (!options) throw new Error('no browser was found for this test; set ALMANAC_BROWSER to one');
  const browser = await chromium.launch(options);
  if (workers) return browser;
  const open = browser.newContext.bind(browser);
  browser.newContext = async (given) => {
    const context = await open(given);
    await context.addInitScript("Object.defineProperty(Navigator.prototype, 'serviceWorker', { get: () => undefined })");
    return context;
  };
  return browser;
}
