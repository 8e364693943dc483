/* Page object of a calculator: opens an address, fills fields, presses buttons, and reads outputs by name. */
import { withPlainSpaces } from '../../shared/days/show-day.ts';
import assert from 'node:assert/strict';
import type { Browser, BrowserContextOptions, Page } from '@playwright/test';
import type { Site } from '../setup/built-site.ts';

export interface Sheet {
  page: Page;
  /** Values by the name of the output, absent where there is none. Rows are named by their mark: `A per-100`. */
  values: () => Promise<Record<string, string>>;
  /** The text of one output. */
  words: (name: string) => Promise<string>;
  said: () => Promise<string>;
  /** The error messages beside the fields, in order. */
  faults: () => Promise<string[]>;
  hash: () => Promise<string>;
  /** Fills a field by its name, in the row `row` (from 0) where it belongs to rows. */
  fill: (name: string, text: string, row?: number) => Promise<void>;
  choose: (name: string, word: string) => Promise<void>;
  press: (words: string) => Promise<void>;
  /** Presses the switch of units. */
  turn: (units: 'us' | 'metric') => Promise<void>;
  open: (values: string) => Promise<void>;
  close: () => Promise<void>;
}

/** `values` is the text after the #. '' opens the page without values. */
export async function openCalculator(
  browser: Browser,
  site: Site,
  slug: string,
  values = '',
  context: BrowserContextOptions = {},
): Promise<Sheet> {
  const own = await browser.newContext({ reducedMotion: 'reduce', ...context });
  const page = await own.newPage();
  const broken: string[] = [];
  page.on('pageerror', (error) => broken.push(String(error)));
  page.on('console', (message) => message.type() === 'error' && broken.push(message.text()));
  const address = `${site.address}work-it-out/${slug}/`;
  const settled = async (): Promise<void> => {
    await page.waitForFunction(() => (document.querySelector('[data-part="status"]')?.textContent ?? '') !== '');
    assert.deepEqual(broken, []);
    assert.doesNotMatch(await page.locator('main').innerText(), /NaN|Infinity|undefined|null|\[object/);
  };
  /** Opens the form that a result has folded, and its own folds. */
  const unfold = (): Promise<void> =>
    page.evaluate(() => {
      for (const fold of document.querySelectorAll<HTMLDetailsElement>('.asked, form details')) fold.open = true;
    });
  const sheet: Sheet = {
    page,
    values: () => page.evaluate(readValues),
    words: async (name) => withPlainSpaces((await page.locator(`output[name="${name}"]`).first().textContent())!),
    said: async () => withPlainSpaces(await page.locator('[data-part="status"]').innerText()),
    faults: async () => (await page.locator('form .fault:not(.fixes)').allInnerTexts()).map(withPlainSpaces),
    hash: () => page.evaluate(() => location.hash.slice(1)),
    fill: async (name, text, row = 0) => {
      await unfold();
      await page.locator(`form [name="${name}"]`).nth(row).fill(text);
    },
    choose: async (name, word) => {
      await unfold();
      const list = page.locator(`form select[name="${name}"]`);
      if ((await list.count()) > 0) await list.selectOption(word);
      else await page.locator(`form input[name="${name}"][value="${word}"]`).check();
    },
    press: async (words) => {
      if (!/^(Copy link|Print|Calendar file)$/.test(words)) await unfold();
      await page.getByRole('button', { name: words, exact: true }).click();
      if (words === 'Calculate') await settled();
    },
    turn: async (units) => {
      await unfold();
      await page.locator(`form button[data-form="units"][value="${units}"]`).click();
    },
    open: async (next) => {
      // Reset and given another address, which saves a page load. Nothing from before may remain.
      const isCleared =
        next !== '' &&
        page.url().startsWith(address) &&
        (await page.evaluate((values) => {
          if (!document.querySelector('[data-part="status"]')!.textContent) return false;
          document.querySelector<HTMLButtonElement>('[data-action="clear"]')!.click();
          location.hash = values;
          return true;
        }, next));
      if (!isCleared) {
        await page.goto('about:blank');
        await page.goto(next ? `${address}#${next}` : address);
      }
      if (next) await settled();
    },
    close: () => own.close(),
  };
  await sheet.open(values);
  return sheet;
}

function readValues(): Record<string, string> {
  const found: Record<string, string> = {};
  for (const output of document.querySelectorAll('output')) {
    const mark = output.closest<HTMLElement>('[data-sample], [data-line], [data-row], [data-plant]')?.dataset;
    const row = mark && (mark.sample ?? mark.line ?? mark.row ?? mark.plant);
    const name = (row === undefined ? '' : `${row} `) + output.name;
    if (name in found) found[name] = `${name} stands twice`;
    else if (output.dataset.value !== undefined) found[name] = output.dataset.value;
  }
  return found;
}

/** Numbers as printed, so that a value is right when it rounds to the published one. */
export function agrees(found: Record<string, string>, name: string, printed: number, places: number): void {
  assert.ok(found[name] !== undefined, `${name} has no value; there are ${Object.keys(found).join(', ')}`);
  assert.equal(Number(found[name]).toFixed(places), printed.toFixed(places), `${name} is ${found[name]}`);
}
