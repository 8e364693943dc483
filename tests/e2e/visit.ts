/* Visits the pages of a built almanac in a browser, some in parallel, and collects the faults by page. */
import assert from 'node:assert/strict';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from '@playwright/test';
import type { Built, Site } from '../setup/built-site.ts';

export const phone = { width: 390, height: 844 } as const;
export const narrow = { width: 320, height: 640 } as const;
export const desk = { width: 1280, height: 900 } as const;

export interface Visiting {
  browser: Browser;
  site: Site;
  /** Addresses such as /year/, by default all pages of the site. */
  pages?: readonly string[];
  /** Browser options: size, script, time zone, colours. */
  context?: BrowserContextOptions;
  /** Runs once in each tab, before its first page. */
  prepare?: (page: Page) => Promise<void>;
}

const TABS = 2;

/** Opens every page and calls `look` with the page and its address. Returns its faults as "address: fault". */
export async function visit(
  { browser, site, pages = site.pages, context = {}, prepare }: Visiting,
  look: (page: Page, address: string) => Promise<readonly string[]>,
): Promise<string[]> {
  if (pages.length === 0) throw new Error('visit: needs at least one page');
  const left = [...pages];
  const found = new Map<string, readonly string[]>();
  const tab = async (): Promise<void> => {
    const own = await browser.newContext({ reducedMotion: 'reduce', ...context });
    const page = await own.newPage();
    await prepare?.(page);
    for (let address = left.shift(); address !== undefined; address = left.shift()) {
      await page.goto(site.at(address));
      await arranged(page);
      found.set(address, await look(page, address));
      // The pages after the hall screen are those of a reader, who is in no hall.
      if (address.endsWith('/hall/')) await page.evaluate(() => sessionStorage.clear());
    }
    await own.close();
  };
  await Promise.all(Array.from({ length: Math.min(TABS, pages.length) }, tab));
  return pages.flatMap((address) => found.get(address)!.map((fault) => `${address}: ${fault}`));
}

/** The script of every page has chosen its rows and dates. A page without script is at once as it is. */
export const arranged = (page: Page): Promise<void> => page.locator('html.arranged, html:not(.js)').waitFor({ state: 'attached' });

/** Chooses a form of the pages, or a district, on the page of the display settings, and comes back. */
export async function choose(page: Page, site: Pick<Site, 'at'>, name: string, value: string): Promise<void> {
  const here = page.url();
  await page.goto(site.at('/about/access/'));
  await page.locator(`button[data-form=${name}][value=${value}]`).click();
  await page.goto(here);
}

/** Passes where there is no fault, and otherwise fails with all of them. */
export function nothing(found: readonly string[]): void {
  assert.ok(
    found.length === 0,
    `${found.length} found:\n${found
      .slice(0, 25)
      .map((each) => `  ${each}`)
      .join('\n')}${found.length > 25 ? '\n  ...' : ''}`,
  );
}

/**
 * Sample pages: the heaviest of each kind, and as many more as are needed to cover every element, custom element, class, data attribute
 * and input type of any page. Kinds differ by the first word of the address and by whether there is a second.
 */
export function oneOfEachKind(site: Built): string[] {
  const all = site.pages.map((page) => {
    const html = site.read(fileOf(site, page));
    return { page, size: html.length, holds: new Set([kindOf(site, page), ...marksIn(html)]) };
  });
  const left = new Set(all.flatMap(({ holds }) => [...holds]));
  const chosen: string[] = [];
  const take = (next: (typeof all)[number]): void => {
    chosen.push(next.page);
    for (const mark of next.holds) left.delete(mark);
  };
  const heavyFirst = all.toSorted((a, b) => b.size - a.size);
  for (const each of heavyFirst) if (left.has(kindOf(site, each.page))) take(each);
  while (left.size > 0) {
    const news = ({ holds }: (typeof all)[number]): number => [...holds].filter((mark) => left.has(mark)).length;
    take(heavyFirst.reduce((best, each) => (news(each) > news(best) ? each : best)));
  }
  return chosen.sort();
}

/** The parts of a page, such as `<winter-stores`, `.beside`, `data-asks` and `type=radio`. */
export function marksIn(html: string): Set<string> {
  const marks = new Set<string>();
  for (const [, element = '', attributes = ''] of html.matchAll(/<([a-z][a-z0-9-]*)((?:\s+[^\s=>]+(?:="[^"]*")?)*)\s*\/?>/g)) {
    marks.add(`<${element}`);
    for (const [, name = '', value = ''] of attributes.matchAll(/([^\s="]+)(?:="([^"]*)")?/g)) {
      if (name === 'class') for (const each of value.split(/\s+/)) marks.add(`.${each}`);
      else if (name.startsWith('data-')) marks.add(name);
      else if (name === 'type' && /^(input|button)$/.test(element)) marks.add(`type=${value}`);
    }
  }
  return marks;
}

const fileOf = (site: Built, page: string): string => {
  const path = page.slice(site.base.length);
  return path === '' || path.endsWith('/') ? `${path}index.html` : path;
};

const kindOf = (site: Built, page: string): string => {
  const [first, second] = page.slice(site.base.length).split('/');
  return `${first}${second ? '/*' : ''}`;
};

/** A new tab on one page. */
export async function open(
  browser: Browser,
  address: string,
  context: BrowserContextOptions = {},
): Promise<{ page: Page; context: BrowserContext }> {
  const own = await browser.newContext({ reducedMotion: 'reduce', ...context });
  const page = await own.newPage();
  await page.goto(address);
  return { page, context: own };
}

/** Resizes the window and waits for the frames in which the page reacts. */
export async function resize(page: Page, size: { width: number; height: number }): Promise<void> {
  await page.setViewportSize(size);
  await page.evaluate(() => new Promise<void>((done) => requestAnimationFrame(() => requestAnimationFrame(() => done()))));
}
