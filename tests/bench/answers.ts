/* How long a reader waits for an answer, on a processor slowed to a quarter: a keystroke to its result, a search, the text without signal. */
import type { Browser, Page } from 'playwright-core';
import type { Site } from '../site/built-site.ts';
import { openHost, openReader } from '../site/kept.ts';
import { phone } from '../site/visit.ts';
import { median, type Row } from './row.ts';

const SLOWED = 4;
const TIMES = 9;

async function slowedPage(browser: Browser, address: string): Promise<Page> {
  const context = await browser.newContext({ viewport: phone });
  const page = await context.newPage();
  await page.goto(address);
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  return page;
}

/** A calculator with its form filled, the box that is typed into, and the output that follows. */
const CALCULATORS = [
  ['mite-count', 'mites=9&bees=300', 'mites'],
  ['syrup', 'sugar-parts=2&water-parts=1&by=weight&know=sugar&amount=4&unit=lb', 'amount'],
  ['winter-stores', 'deep=5&medium=4&shallow=0&target-kg=27.2&mix=2:1-weight', 'deep'],
] as const;

export async function keystrokes(site: Site, browser: Browser): Promise<Row[]> {
  const rows: Row[] = [];
  for (const [slug, values, box] of CALCULATORS) {
    const page = await slowedPage(browser, `${site.address}work-it-out/${slug}/#${values}`);
    await page.waitForFunction(() => (document.querySelector('[data-part="said"]')?.textContent ?? '') !== '');
    const took = await page.evaluate(async ([name, times]) => {
      const field = document.querySelector<HTMLInputElement>(`form [name="${name}"]`)!;
      const before = field.value;
      const found: number[] = [];
      for (let time = 0; time < Number(times); time += 1) {
        field.value = time % 2 === 0 ? before.replace(/\d$/, (digit) => String((Number(digit) + 1) % 10)) : before;
        const began = performance.now();
        field.dispatchEvent(new Event('input', { bubbles: true }));
        field.form!.requestSubmit();
        await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
        found.push(performance.now() - began);
      }
      return found;
    }, [box, String(TIMES)]);
    rows.push({ what: `${slug}: a keystroke to its result on the screen, processor slowed ${SLOWED} x`, value: median(took), unit: 'ms', budget: 50 });
    await page.context().close();
  }
  return rows;
}

// The first search fetches the engine: it is measured once.
export async function searches(site: Site, browser: Browser): Promise<Row[]> {
  const page = await slowedPage(browser, `${site.address}search/`);
  const ask = async (words: string): Promise<number> => {
    const began = performance.now();
    await page.locator('[data-search-page] input[type=search]').fill(words);
    await page.waitForFunction((asked) => document.querySelector('[data-search-list] a') !== null && location.search.includes(asked), words, { timeout: 20_000 }).catch(() => undefined);
    await page.locator('[data-search-list] a').first().waitFor();
    return performance.now() - began;
  };
  const first = await ask('varroa');
  const context = page.context();
  const rows: Row[] = [{ what: `first search, engine and index fetched, processor slowed ${SLOWED} x`, value: first, unit: 'ms' }];
  await context.close();
  return rows;
}

export async function withoutSignal(site: Site, browser: Browser): Promise<Row[]> {
  const host = await openHost();
  await host.put(site.base, site.folder);
  const { page, context, told } = await openReader(browser, `${host.origin}${site.base}about/`);
  await told(/^Saved on/);
  host.stop();
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  const took: number[] = [];
  for (const path of ['pests/varroa/', 'lists/mite-count-day/', 'work-it-out/mite-count/', 'year/', 'know-how/stings/']) {
    await page.goto(`${host.origin}${site.base}${path}`);
    took.push(await page.evaluate(() => new Promise<number>((resolve) => {
      const of = (): number | undefined => performance.getEntriesByName('first-contentful-paint')[0]?.startTime;
      const look = (): void => void (of() === undefined ? setTimeout(look, 10) : resolve(of()!));
      look();
    })));
  }
  await context.close();
  await host.close();
  return [{ what: `without signal, an address to its first text, processor slowed ${SLOWED} x, median of ${took.length}`, value: median(took), unit: 'ms' }];
}
