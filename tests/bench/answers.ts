/* Response times in a browser slowed to a quarter: a key in a calculator, a search, a page without signal. */
import type { Browser, BrowserContext, Page } from '@playwright/test';
import { demoSite, type Site } from '../setup/built-site.ts';
import { openBrowser } from './browser.ts';
import { openHost, openReader } from '../e2e/kept.ts';
import { oneOfEachKind, phone } from '../e2e/visit.ts';
import { median, type Row } from './table.ts';

/** A phone of some years compared with the measuring machine. */
const SLOWER = 4;

export async function answers(): Promise<Row[]> {
  return [...(await keyRows()), ...(await searchRows()), ...(await textRows())];
}

const row = (name: string, measured: number, more: Partial<Row> = {}): Row => ({ part: 'answers', name, measured, unit: 'ms', ...more });

async function slow(context: BrowserContext, page: Page): Promise<void> {
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
}

async function withDemo<T>(use: (browser: Browser, site: Site) => Promise<T>): Promise<T> {
  const site = await demoSite();
  const browser = await openBrowser();
  try {
    return await use(browser, site);
  } finally {
    await browser.close();
    await site.close();
  }
}

/** Forms with values, the box to type in, and the text to type there, one character at a time. */
const FORMS = [
  { slug: 'mite-count', values: 'samples=A:9/300;B:4/300&method=wash&phase=dearth', box: 'mites', typed: '12345678901234567890' },
  { slug: 'syrup', values: 'sugar-parts=2&water-parts=1&amount=25&unit=lb', box: 'amount', typed: '12345678901234567890' },
  { slug: 'winter-stores', values: 'deep=5&medium=4', box: 'deep', typed: '12345678901234567890' },
];

const keyRows = (): Promise<Row[]> =>
  withDemo(async (browser, site) => {
    const rows: Row[] = [];
    for (const { slug, values, box, typed } of FORMS) {
      const context = await browser.newContext({ viewport: phone });
      const page = await context.newPage();
      await page.goto(`${site.address}work-it-out/${slug}/#${values}`);
      await page.waitForFunction(() => document.querySelector('[data-part="status"]')?.textContent !== '');
      await slow(context, page);
      const times = await keyTimes(page, box, typed);
      for (const [words, of, more] of [
        ['to its result', times.map(({ result }) => result), {}],
        ['to the frame that shows it', times.map(({ frame }) => frame), { most: 50 }],
      ] as const) {
        rows.push(
          row(`a key in ${slug} ${words}`, median(of), { ...more, note: `median of ${of.length}; worst ${Math.max(...of).toFixed(0)} ms` }),
        );
      }
      await context.close();
    }
    return rows;
  });

type KeyTime = { result: number; frame: number };

/** From the key's own timestamp until the result is in the page and laid out, and until the browser requests a frame with it. */
async function keyTimes(page: Page, box: string, typed: string): Promise<KeyTime[]> {
  await page.evaluate(() => {
    const times: KeyTime[] = ((window as unknown as { times: KeyTime[] }).times = []);
    let pressed = 0;
    document.addEventListener('keydown', (event) => (pressed = event.timeStamp), true);
    // This is the last listener: the calculator's own, on its form, have run.
    window.addEventListener('input', () => {
      document.body.getBoundingClientRect();
      const result = performance.now() - pressed;
      requestAnimationFrame(() => times.push({ result, frame: performance.now() - pressed }));
    });
  });
  // With a result, the form is folded away until its reader changes it.
  await page.evaluate(() => document.querySelectorAll<HTMLDetailsElement>('details:has(form)').forEach((fold) => (fold.open = true)));
  await page.locator(`form [name="${box}"]`).first().focus();
  for (const [at, sign] of [...typed].entries()) {
    // A number of at most two digits, so that every key gives a result and none an error.
    if (at % 2 === 0) await page.keyboard.press('Control+A');
    await page.keyboard.press(sign);
    await page.waitForFunction((count) => (window as unknown as { times: KeyTime[] }).times.length > count, at);
  }
  const faults = await page.locator('form .fault').allInnerTexts();
  if (faults.length > 0) throw new Error(`the form of ${page.url()} has no result: ${faults.join(' ')}`);
  return page.evaluate(() => (window as unknown as { times: KeyTime[] }).times);
}

const searchRows = (): Promise<Row[]> =>
  withDemo(async (browser, site) => {
    const context = await browser.newContext({ viewport: phone });
    const page = await context.newPage();
    await page.goto(`${site.address}search/`);
    await slow(context, page);
    const [first, ...others] = [
      await searchTime(page, 'mites'),
      await searchTime(page, 'syrup'),
      await searchTime(page, 'swarm in a tree'),
      await searchTime(page, 'verroa'),
    ];
    await context.close();
    return [
      row('search: the first query', first!, { note: 'its engine is fetched with it' }),
      row('search: the next queries', median(others), { note: `${others.map((each) => each.toFixed(0)).join(', ')} ms` }),
    ];
  });

/** From submitting the form to the number of results. */
const searchTime = (page: Page, words: string): Promise<number> =>
  page.evaluate(async (typed) => {
    const [field, status] = [document.querySelector<HTMLInputElement>('#words')!, document.querySelector('[role=status]')!];
    status.textContent = '';
    field.value = typed;
    const began = performance.now();
    const found = new Promise<number>((resolve) =>
      new MutationObserver(() => status.textContent !== '' && resolve(performance.now() - began)).observe(status, {
        childList: true,
        characterData: true,
        subtree: true,
      }),
    );
    field.form!.requestSubmit();
    return found;
  }, words);

async function textRows(): Promise<Row[]> {
  const site = await demoSite({ base: '/club/' });
  const browser = await openBrowser({ workers: true });
  const host = await openHost();
  try {
    await host.put('/club/', site.folder);
    const { page, context, told } = await openReader(browser, `${host.origin}/club/`);
    await told(/^Available offline/);
    host.stop();
    const rows: Row[] = [];
    for (const [name, slower] of [
      ['', false],
      [', slowed', true],
    ] as const) {
      if (slower) await slow(context, page);
      const times: { place: string; time: number }[] = [];
      for (const place of oneOfEachKind(site).filter((each) => !each.endsWith('404.html')))
        times.push({ place, time: await firstText(page, host.origin + place) });
      const worst = times.toSorted((a, b) => b.time - a.time)[0]!;
      rows.push(
        row(`text without signal${name}`, median(times.map(({ time }) => time)), {
          note: `first paint with text, median of ${times.length} kinds; worst ${worst.time.toFixed(0)} ms, ${worst.place}`,
        }),
      );
    }
    await context.close();
    return rows;
  } finally {
    await browser.close();
    await host.close();
    await site.close();
  }
}

async function firstText(page: Page, address: string): Promise<number> {
  await page.goto(address);
  const handle = await page.waitForFunction(() => performance.getEntriesByName('first-contentful-paint')[0]?.startTime);
  return (await handle.jsonValue()) as number;
}
