/* Display options of the pages, chosen as a reader does: with the buttons of the display settings, once. */
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import type { Browser, BrowserContextOptions } from '@playwright/test';
import type { Site } from '../setup/built-site.ts';
import { lookAt, lookedFor, type Looks } from './look.ts';
import { narrow, nothing, open, phone } from './visit.ts';

interface Form {
  name: string;
  presses: string[];
  context?: BrowserContextOptions;
}

const forms: Form[] = [{ name: 'large print', presses: ['Large print'] }];
const further: Form[] = [
  { name: 'night', presses: ['Night'] },
  { name: 'bright sun', presses: ['Bright sun'] },
  { name: 'gloves', presses: ['Gloves'] },
  { name: "colours forced by the reader's system", presses: [], context: { forcedColors: 'active', colorScheme: 'dark' } },
  { name: 'night, large print and gloves together', presses: ['Night', 'Large print', 'Gloves'] },
  { name: 'a system set to dark', presses: [], context: { colorScheme: 'dark' } },
];

/** Tests of the option that changes most, on the pages that `choose` picks. `all` adds the other options, and combinations. */
export function testForms(choose: (site: Site) => string[], all = false): void {
  let site: Site;
  let browser: Browser;
  test.beforeAll(async ({ browser: launched, demo }) => {
    site = demo;
    browser = launched;
  });

  for (const { name, presses, context } of all ? [...forms, ...further] : forms) {
    test.describe(name, () => {
      let found: Looks;
      test.beforeAll(async () => {
        found = await lookAt({
          browser,
          site,
          pages: choose(site),
          windows: [phone, narrow],
          context: { ...context, storageState: await chosen(browser, site, presses) },
        });
      });
      for (const [rule, words] of Object.entries(lookedFor).filter(([rule]) => context?.forcedColors !== 'active' || rule !== 'paper'))
        test(words, () => nothing(found[rule as keyof Looks]));
    });
  }
}

/** Presses the buttons of the display settings. The browser stores the choice for the other pages. */
async function chosen(
  browser: Browser,
  site: Site,
  presses: readonly string[],
): Promise<Awaited<ReturnType<import('@playwright/test').BrowserContext['storageState']>>> {
  const { page, context } = await open(browser, site.at('/about/access/'));
  for (const words of presses) {
    const button = page.getByRole('button', { name: words, exact: true });
    await button.click();
    assert.equal(await button.getAttribute('aria-pressed'), 'true', words);
  }
  const state = await context.storageState();
  assert.equal(state.origins.length > 0, presses.length > 0);
  await context.close();
  return state;
}
