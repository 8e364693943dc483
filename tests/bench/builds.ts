/*
 * Our whole build compared with three bare projects of the same pages, in turns in one run: time, processor, memory. Of the sites also
 * the bytes, a first view and a first search.
 */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from '@playwright/test';
import { serve } from '../../src/cli/serve.ts';
import { bodySize, firstView, zipped } from '../e2e/weights.ts';
import { open } from '../e2e/visit.ts';
import { openBrowser } from './browser.ts';
import { articleAt } from './club.ts';
import type { Run } from './measured-run.ts';
import { BARE, NAMES, openSides, SIDES, type Side, type Sides } from './sides.ts';
import { median, type Row } from './table.ts';

/** How often each is built. The largest is built once, because it takes minutes. */
const ROUNDS: Record<number, number> = { 100: 3, 1000: 3, 5000: 1 };
/** The size whose sites are looked at. */
const LOOKED_AT = 1000;

type Built = { seconds: number; processorSeconds: number; peakMB: number };
type Times = Record<Side, Built> & { book: number };

const row = (name: string, measured: number, unit: Row['unit'], more: Partial<Row> = {}): Row => ({
  part: 'builds',
  name,
  measured,
  unit,
  ...more,
});

export async function builds(quick: boolean): Promise<Row[]> {
  const sizes = quick ? [100, 1000] : [100, 1000, 5000];
  const times = new Map<number, Times>();
  const rows: Row[] = [];
  for (const pages of sizes) {
    const rounds = quick ? 1 : ROUNDS[pages]!;
    console.log(`  ${pages} pages, ${rounds} ${rounds === 1 ? 'time' : 'times'} ...`);
    const sides = await openSides(pages);
    const of = await inTurns(sides, rounds);
    times.set(pages, of);
    rows.push(...timeRows(pages, of), ...(pages === LOOKED_AT ? await siteRows(sides, pages) : []));
    sides.remove();
  }
  return [...rows, ...growth(times)];
}

async function inTurns(sides: Sides, rounds: number): Promise<Times> {
  const runs: Record<Side, Run[]> = { ours: [], same: [], usual: [], eleventy: [] };
  for (let round = 0; round < rounds; round += 1) for (const side of SIDES) runs[side].push(await sides.build(side));
  const built = Object.fromEntries(SIDES.map((side) => [side, middle(runs[side])])) as Record<Side, Built>;
  return { ...built, book: median(runs.ours.map(bookSeconds)) };
}

const middle = (runs: readonly Run[]): Built => ({
  seconds: median(runs.map(({ seconds }) => seconds)),
  processorSeconds: median(runs.map(({ processorSeconds }) => processorSeconds)),
  peakMB: Math.max(...runs.map(({ peakMB }) => peakMB)),
});

/** From the line before to the line that names the book. */
export function bookSeconds({ lines }: Run): number {
  const at = lines.findIndex(({ text }) => text.startsWith('Book: '));
  if (at < 1) throw new Error(`the build names no book:\n${lines.map(({ text }) => text).join('\n')}`);
  return lines[at]!.second - lines[at - 1]!.second;
}

function timeRows(pages: number, times: Times): Row[] {
  const apart = times.ours.seconds - times.book;
  const name = (words: string): string => `${pages} pages: ${words}`;
  return [
    row(name('ours, the book apart'), apart, 's'),
    row(name('the book'), times.book, 's'),
    ...BARE.map((side) => row(name(NAMES[side]), times[side].seconds, 's')),
    ...BARE.map((side) =>
      row(name(`ours / ${NAMES[side]}`), apart / times[side].seconds, 'times', side === 'same' && pages === 1000 ? { most: 1.5 } : {}),
    ),
    row(name('processor, ours with the book'), times.ours.processorSeconds, 's', {
      note: others((side) => `${times[side].processorSeconds.toFixed(2)} s`),
    }),
    row(name('most memory, ours'), times.ours.peakMB, 'MB', {
      ...(pages === 5000 ? { most: 3000 } : {}),
      note: others((side) => `${times[side].peakMB.toFixed(0)} MB`),
    }),
  ];
}

const others = (shown: (side: Side) => string): string => BARE.map((side) => `${NAMES[side]} ${shown(side)}`).join('; ');

function growth(times: ReadonlyMap<number, Times>): Row[] {
  const [least, few, many] = [times.get(100), times.get(1000), times.get(5000)];
  if (!least || !few || !many) return [];
  const grows = (of: (each: Times) => number): number => of(many) / 5000 / (of(few) / 1000);
  // Without the fixed cost of every build before its first page.
  const further = (of: (each: Times) => number): number => (of(many) - of(few)) / 4000 / ((of(few) - of(least)) / 900);
  const apart = ({ ours, book }: Times): number => ours.seconds - book;
  const name = 'a page at 5000 / at 1000';
  return [
    row(`${name}: ours, the book apart`, grows(apart), 'times', { most: 1.1 }),
    row('a further page from 1000 to 5000 / from 100 to 1000: ours, the book apart', further(apart), 'times', { most: 1.1 }),
    row(
      `${name}: ours, processor, with the book`,
      grows(({ ours }) => ours.processorSeconds),
      'times',
    ),
    row(
      `${name}: the book`,
      grows(({ book }) => book),
      'times',
    ),
    ...BARE.map((side) =>
      row(
        `${name}: ${NAMES[side]}`,
        grows((each) => each[side].seconds),
        'times',
      ),
    ),
  ];
}

/** What readers get of each site. A bare page has no style sheet, no fonts and no script. */
async function siteRows(sides: Sides, pages: number): Promise<Row[]> {
  const browser = await openBrowser();
  const rows: Row[] = [];
  try {
    for (const side of SIDES) {
      const folder = sides.site(side);
      const name = (words: string): string => `${pages} pages: ${words}, ${NAMES[side]}`;
      const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((each) => each.isFile());
      const bytes = files.reduce((sum, { parentPath, name: file }) => sum + statSync(join(parentPath, file)).size, 0);
      rows.push(row(name('the site'), bytes / 1e6, 'MB', { note: `${files.length} files` }));
      rows.push(row(name('HTML of an article'), zipped(readFileSync(join(folder, articleAt(), 'index.html'))), 'B'));
      const { address, close } = await serve({ folder, base: '/', port: 0, gzip: true });
      const at = (page: string): string => new URL(page, address).href;
      try {
        const view = await firstView(browser, { at }, `/${articleAt()}`);
        rows.push(row(name('first view of an article'), view.size, 'B', { note: `${view.names.length} requests` }));
        const search = await firstSearch(browser, at, side);
        rows.push(row(name('first search'), search.bytes, 'B', { note: `${search.milliseconds.toFixed(0)} ms on this machine` }));
      } finally {
        await close();
      }
    }
  } finally {
    await browser.close();
  }
  return rows;
}

const ASKED = 'swarm';

/** Fetches everything that a first question needs, with the text of its first three results: our page, which shows three of a kind, or the engine without a page. */
async function firstSearch(browser: Browser, at: (page: string) => string, side: Side): Promise<{ bytes: number; milliseconds: number }> {
  const { page, context } = await open(browser, at(side === 'ours' ? '/search/' : `/${articleAt()}`));
  await page.waitForLoadState('networkidle');
  const fetched: Promise<number>[] = [];
  page.on('requestfinished', (request) => fetched.push(bodySize(request)));
  const began = performance.now();
  if (side === 'ours') {
    await page.locator('#words').fill(ASKED);
    await page.locator('[data-search-list] a').nth(2).waitFor();
  } else
    await page.evaluate(async (asked) => {
      const engine = (await import('/pagefind/pagefind.js' as string)) as {
        search: (words: string) => Promise<{ results: { data: () => Promise<unknown> }[] }>;
      };
      const { results } = await engine.search(asked);
      if (results.length < 3) throw new Error(`${results.length} results`);
      await Promise.all(results.slice(0, 3).map((result) => result.data()));
    }, ASKED);
  const milliseconds = performance.now() - began;
  await page.waitForLoadState('networkidle');
  const bytes = (await Promise.all(fetched)).reduce((sum, each) => sum + each, 0);
  await context.close();
  return { bytes, milliseconds };
}
