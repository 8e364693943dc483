/*
 * Zoom and text spacing as WCAG 2.2 requires. A window of 1280 by 1024 px enlarged four times shows 320 by 256 CSS pixels (1.4.10), and
 * enlarged twice 640 by 512 (1.4.4).
 */
import { test } from './fixtures.ts';
import type { Browser, Page } from '@playwright/test';
import type { Site } from '../setup/built-site.ts';
import { hiddenFocus } from './focus.ts';
import { sideways } from './rules.ts';
import { cutText, moving, widen, wordsSeen } from './spacing.ts';
import { desk, narrow, nothing, resize, visit } from './visit.ts';

const ENLARGED = [
  { times: 2, window: { width: 640, height: 512 } },
  { times: 4, window: { width: 320, height: 256 } },
] as const;

const lookedFor = {
  lost: 'enlarged two and four times, no word is lost',
  wide: 'enlarged two and four times, no page scrolls sideways',
  focus: 'enlarged four times, every keyboard stop is completely visible',
  spaced: 'with the text spacing of 1.4.12, nothing is cut off, covered or pushed out',
  still: 'nothing moves for a reader who asked for less motion',
} as const;
type Found = Record<keyof typeof lookedFor, string[]>;

/** Enlarged, the hall screen is the page of a phone, which has no bar of the hall. */
const isNoWall = (page: string): boolean => !page.endsWith('/hall/');

/** Defines the tests for the file that calls it. */
export function testZoom(pagesOf: (site: Site) => readonly string[]): void {
  let site: Site;
  let browser: Browser;
  const found: Found = { lost: [], wide: [], focus: [], spaced: [], still: [] };
  test.beforeAll(async ({ browser: launched, demo }) => {
    site = demo;
    browser = launched;
    await visit({ browser, site, pages: pagesOf(site).filter(isNoWall), context: { viewport: desk } }, async (page, address) => {
      for (const [rule, faults] of Object.entries(await zoomed(page)))
        found[rule as keyof Found].push(...faults.map((fault) => `${address}: ${fault}`));
      await resize(page, desk);
      return [];
    });
  });
  for (const [rule, name] of Object.entries(lookedFor)) test(name, () => nothing(found[rule as keyof Found].sort()));
}

async function zoomed(page: Page): Promise<Found> {
  // Until its script has put the first page in order, an animation keeps it out of sight.
  await page.locator('html.arranged').waitFor({ state: 'attached' });
  const found: Found = { lost: [], wide: [], focus: [], spaced: [], still: await page.evaluate(moving) };
  const whole = await page.evaluate(wordsSeen);
  for (const { times, window } of ENLARGED) {
    await resize(page, window);
    const told = (fault: string): string => `${times} times: ${fault}`;
    const lost = missing(whole, await page.evaluate(wordsSeen));
    if (lost.length > 0) found.lost.push(told(lost.slice(0, 12).join(' ')));
    found.wide.push(...(await page.evaluate(sideways)).map(told));
    if (times === 4) found.focus.push(...(await page.evaluate(hiddenFocus)));
  }
  await widen(page);
  for (const window of [narrow, desk]) {
    await resize(page, window);
    found.spaced.push(
      ...[...(await page.evaluate(cutText)), ...(await page.evaluate(sideways))].map((fault) => `at ${window.width}: ${fault}`),
    );
  }
  return found;
}

/** Words of the first list that the second does not contain as often. */
export function missing(whole: readonly string[], part: readonly string[]): string[] {
  const left = new Map<string, number>();
  for (const word of part) left.set(word, (left.get(word) ?? 0) + 1);
  return whole.filter((word) => {
    const count = left.get(word) ?? 0;
    left.set(word, count - 1);
    return count <= 0;
  });
}
