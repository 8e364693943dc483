/*
 * Pages in the states that a reader creates: lists begun, paused and done, calculators with a result and with errors, a search with
 * results and without. Each passes the rules of a fresh page.
 */
import { test } from './fixtures.ts';
import type { Browser, Page } from '@playwright/test';
import type { Site } from '../setup/built-site.ts';
import { calculators } from './calculator-examples.ts';
import { paleEdges, paleLetters } from './edges.ts';
import { hiddenFocus } from './focus.ts';
import { axe } from './look.ts';
import { paleText, sideways, smallTargets, smallText } from './rules.ts';
import { cutText, widen } from './spacing.ts';
import { narrow, nothing, open, phone, resize } from './visit.ts';

export interface State {
  name: string;
  /** The path below the first page, with its fragment. */
  at: string;
  /** The reader's actions, until the page shows the state. */
  reach: (page: Page) => Promise<void>;
}

const told =
  (part: string) =>
  (page: Page): Promise<void> =>
    page.waitForFunction((name) => (document.querySelector(name)?.textContent ?? '') !== '', `[data-${part}]`).then(() => undefined);
const said = told('part="status"');
const begun = async (page: Page): Promise<void> => {
  for (const summary of await page.locator('.desk summary').all()) await summary.click();
  const box = page.locator('input[data-tick]');
  await box.first().check();
  await page.locator('#own-day').fill('18 April 2026');
  await page
    .locator('#yard')
    .fill('The gate with the bell, Long Lane 4, a mile past the church; the nearest crossing is Long Lane and Route 9');
  await page.locator('#yard').press('Tab');
  await page.locator('[data-action=notes]').click();
  await page.locator('.note-field').first().waitFor();
  await page.locator('[data-action=new-run]').click();
  await page.locator('[data-action=share]').click();
  await page.locator('[data-action=code]').click();
  await page.locator('.qr').waitFor();
};

export const lists: State[] = [
  { name: 'a list with a day, notes, two runs and its link', at: 'lists/package-first-six-weeks/', reach: begun },
  {
    name: 'a list that pauses at a step',
    at: 'lists/mite-count-day/',
    reach: (page) =>
      page.evaluate(() => {
        for (
          let box = document.querySelector<HTMLInputElement>('input[data-tick]:not(:checked)');
          box && !box.disabled && !box.closest<HTMLElement>('.step')!.querySelector('p.actions:not([hidden])');
          box = document.querySelector('input[data-tick]:not(:checked)')
        )
          box.click();
        if (!document.querySelector('.step p.actions:not([hidden])')) throw new Error('no step pauses');
      }),
  },
  {
    name: 'a list that is done',
    at: 'lists/package-arrival/',
    reach: (page) =>
      page.evaluate(() => {
        for (
          let box = document.querySelector<HTMLInputElement>('input[data-tick]:not(:checked)');
          box;
          box = document.querySelector('input[data-tick]:not(:checked)')
        ) {
          const answer = box.closest('.step')!.querySelector<HTMLElement>('p.actions:not([hidden]) button');
          if (answer) throw new Error('a step of this list pauses: choose another list');
          box.click();
        }
        if (!document.querySelector('[data-progress]')!.textContent!.includes('All done.')) throw new Error('the list is not done');
      }),
  },
  {
    name: 'a shared checklist',
    at: 'lists/package-first-six-weeks/#run=2026-04-18;candy;drawn;',
    reach: (page) => page.locator('.notice.shared').waitFor(),
  },
];

export const answers: State[] = [
  { name: 'a search with answers', at: 'search/?q=varroa', reach: (page) => page.locator('[data-search-list] a').first().waitFor() },
  {
    name: 'a search without an answer',
    at: 'search/?q=zzqqxx',
    reach: (page) =>
      page
        .waitForFunction(
          () =>
            document.querySelector<HTMLElement>('[data-search-none]')?.hidden === false ||
            document.querySelector('[data-search-status]')?.textContent !== '',
        )
        .then(() => undefined),
  },
  {
    name: 'signs with what to check',
    at: 'signs/',
    reach: async (page) => {
      await page.locator('details.signs summary').first().click();
      for (const place of [0, 1, 2]) await page.locator('details.signs input[type=checkbox]').nth(place).check();
      await said(page);
    },
  },
];

export const worked = (slug: string): State[] =>
  calculators
    .filter((each) => each.slug === slug)
    .flatMap(({ wide, faulty }) => [
      { name: `${slug} with its longest result`, at: `work-it-out/${slug}/#${wide}`, reach: said },
      { name: `${slug} with faults`, at: `work-it-out/${slug}/#${faulty}`, reach: said },
    ]);

/** Defines the tests for the file that calls it. `lights` are display options. */
export function testStates(states: readonly State[], lights: readonly string[]): void {
  if (states.length === 0) throw new Error('testStates: needs a state');
  let site: Site;
  let browser: Browser;
  test.beforeAll(async ({ browser: launched, demo }) => {
    site = demo;
    browser = launched;
  });
  test.describe('axe, contrast, sizes, focus, narrow windows and wide letters', () => {
    for (const { name, at, reach } of states) {
      test(name, async () => {
        const { page, context } = await open(browser, site.address + at, {});
        page.on('dialog', (dialog) => void dialog.accept());
        await reach(page);
        nothing(await faultsOf(page, lights));
        await context.close();
      });
    }
  });
}

async function faultsOf(page: Page, lights: readonly string[]): Promise<string[]> {
  const found: string[] = [];
  for (const light of lights) {
    await page.evaluate((form) => (document.documentElement.dataset.light = form), light);
    // What a line that stays covers depends on where the page is scrolled to.
    await page.evaluate(() => scrollTo(0, 0));
    const faults = [
      ...(await axe(page)),
      ...(await page.evaluate(paleText)),
      ...(await page.evaluate(paleEdges)),
      ...(await page.evaluate(paleLetters)),
    ];
    found.push(...faults.map((fault) => `by ${light}: ${fault}`));
  }
  for (const window of [phone, narrow]) {
    await resize(page, window);
    const faults = [
      ...(await page.evaluate(smallText)),
      ...(await page.evaluate(smallTargets)),
      ...(await page.evaluate(hiddenFocus)),
      ...(await page.evaluate(sideways)),
    ];
    found.push(...faults.map((fault) => `at ${window.width}: ${fault}`));
  }
  await widen(page);
  found.push(...[...(await page.evaluate(cutText)), ...(await page.evaluate(sideways))].map((fault) => `with wide letters: ${fault}`));
  return found;
}
