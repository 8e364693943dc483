/* Browser of a benchmark, started as the tests start it. Pages store no offline copy unless `workers` is set. */
import { chromium, type Browser, type LaunchOptions } from '@playwright/test';
import { findBrowser, launchVariable } from '../../src/cli/browser.ts';

export async function openBrowser({ workers = false } = {}): Promise<Browser> {
  const given = process.env[launchVariable];
  const options = given ? (JSON.parse(given) as LaunchOptions) : await findBrowser();
  if (!options) throw new Error('no browser was found for this measurement; set ALMANAC_BROWSER to one');
  const browser = await chromium.launch(options);
  if (workers) return browser;
  const open = browser.newContext.bind(browser);
  browser.newContext = (given) => open({ serviceWorkers: 'block', ...given });
  return browser;
}
