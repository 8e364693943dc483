/* Going through the pages of a built almanac in a browser, some side by side, and saying what was wrong where. */
import assert from 'node:assert/strict';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import type { Built, Site } from './built-site.ts';

export const phone = { width: 390, height: 844 } as const;
export const narrow = { width: 320, height: 640 } as const;
export const desk = { width: 1280, height: 900 } as const;

export interface Visiting {
  browser: Browser;
  site: Site;
  /** Addresses such as /year/; all pages of the site where left out. */
  pages?: readonly string[];
  /** Of the browser: size, script, zone, colours. */
  context?: BrowserContextOptions;
  /** Done once in each tab, before its first page. */
  prepare?: (page: Page) => Promise<void>;
}

const TABS = 2;

/** Opens every page, and hands each with its address to `look`; what `look` finds wrong comes back as "address: fault". */
export async function visit(
  { browser, site, pages = site.pages, context = {}, prepare }: Visiting,
  look: (page: Page, address: string) => Promise<readonly string[]>,
): Promise<string[]> {
  if (pages.length === 0) throw new Error('visit: needs at least one page');
  const left = [...pages];
  const found = new Map<string, readonly string[]>();
  const tab = async (): Promise<void> => {
    const own = await browser.newContext({ viewport: phone, reducedMotion: 'reduce', ...context });
    const page = await own.newPage();
    await prepare?.(page);
    for (let address = left.shift(); address !== undefined; address = left.shift()) {
      await page.goto(site.at(address));
      found.set(address, await look(page, address));
    }
    await own.close();
  };
  await Promise.all(Array.from({ length: Math.min(TABS, pages.length) }, tab));
  return pages.flatMap((address) => found.get(address)!.map((fault) => `${address}: ${fault}`));
}

/** Passes where nothing was found, and else prints all of it. */
export function nothing(found: readonly string[]): void {
  assert.ok(
    found.length === 0,
    `${found.length} found:\n${found
      .slice(0, 25)
      .map((each) => `  ${each}`)
      .join('\n')}${found.length > 25 ? '\n  ...' : ''}`,
  );
}

/** The heaviest page of each kind: kinds differ by the first word of the address and by whether there is a second. */
export function oneOfEachKind(site: Built): string[] {
  const heaviest = new Map<string, { page: string; size: number }>();
  for (const page of site.pages) {
    const path = page.slice(site.base.length);
    const [first, second] = path.split('/');
    const kind = `${first}${second ? '/*' : ''}`;
    const size = site.read(path === '' || path.endsWith('/') ? `${path}index.html` : path).length;
    if (size > (heaviest.get(kind)?.size ?? 0)) heaviest.set(kind, { page, size });
  }
  return [...heaviest.values()].map(({ page }) => page).sort();
}

/** A tab of its own on one page. */
export async function open(
  browser: Browser,
  address: string,
  context: BrowserContextOptions = {},
): Promise<{ page: Page; context: BrowserContext }> {
  const own = await browser.newContext({ viewport: phone, reducedMotion: 'reduce', ...context });
  const page = await own.newPage();
  await page.goto(address);
  return { page, context: own };
}

/** Gives the window another size, and waits for what follows it in the frames after. */
export async function resize(page: Page, size: { width: number; height: number }): Promise<void> {
  await page.setViewportSize(size);
  await page.evaluate(() => new Promise<void>((done) => requestAnimationFrame(() => requestAnimationFrame(() => done()))));
}
