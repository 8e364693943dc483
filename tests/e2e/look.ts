/* Applies the visual rules to pages with script, on a small phone, a phone, a desktop and a printer, and sorts the faults by rule. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Browser, BrowserContextOptions, Page } from '@playwright/test';
import type { Site } from '../setup/built-site.ts';
import { paleEdges, paleLetters } from './edges.ts';
import { hiddenFocus } from './focus.ts';
import { tooLong } from './lengths.ts';
import { brokenWords, paleText, sideways, smallTargets, smallText, wrongOnPaper } from './rules.ts';
import { desk, narrow, phone, resize, visit } from './visit.ts';

export const lookedFor = {
  quiet: 'nothing is written to the console, nothing fails to load',
  hosts: 'no other host is asked for anything',
  axe: 'axe finds nothing at 390 px',
  wide: 'no page scrolls sideways at 320, 390 or 1280 px',
  broken: 'no word of a button is broken in two',
  small: 'no letters are under 16 px, and none in the bar of the parts under 14',
  pale: 'text contrast is 7 to 1',
  edges: 'edges of controls, shapes of statuses and letters in drawings have enough contrast',
  targets: 'touch targets are large enough',
  focus: 'every keyboard stop shows its focus, and no sticky element covers it',
  paper: 'on paper: dark on white, empty boxes, nothing cut in two, nothing too wide',
} as const;
/** `long` is empty without the option `lengths`. */
export type Looks = Record<keyof typeof lookedFor | 'long', string[]>;

// The printed width of A4 between our margins of 14 mm, in CSS pixels; Letter is wider.
const a4 = { width: 688, height: 1009 };

export interface Looking {
  browser: Browser;
  site: Site;
  /** All pages by default. */
  pages?: readonly string[];
  context?: BrowserContextOptions;
  /** The sizes of window, by default those of a small phone, a phone and a desktop. */
  windows?: readonly { width: number; height: number }[];
  /** Measures the pages too, on the day of the edition, as they are before a reader changes their size. */
  lengths?: boolean;
}

export async function lookAt({ browser, site, pages, context, windows = [phone, narrow, desk], lengths = false }: Looking): Promise<Looks> {
  const found: Looks = {
    quiet: [],
    hosts: [],
    axe: [],
    wide: [],
    broken: [],
    small: [],
    pale: [],
    edges: [],
    targets: [],
    focus: [],
    paper: [],
    long: [],
  };
  const day = JSON.parse(site.read('edition.json')).day as string;
  const prepare = async (page: Page): Promise<void> => {
    listen(page, site, found);
    // What is past its day gets a line more.
    if (lengths) await page.clock.setFixedTime(new Date(`${day}T17:00Z`));
  };
  await visit({ browser, site, pages, context, prepare }, async (page, address) => {
    const add = (list: string[], faults: readonly string[], where = ''): unknown =>
      list.push(...faults.map((fault) => `${address}${where}: ${fault}`));
    // axe reads the written colours, not those that the system has forced.
    add(found.axe, await axe(page, context?.forcedColors === 'active' ? ['color-contrast'] : []));
    add(found.pale, await page.evaluate(paleText));
    add(found.edges, [...(await page.evaluate(paleEdges)), ...(await page.evaluate(paleLetters))]);
    for (const size of windows) {
      await resize(page, size);
      add(found.wide, await page.evaluate(sideways), ` at ${size.width}`);
      add(found.broken, await page.evaluate(brokenWords), ` at ${size.width}`);
      add(found.small, await page.evaluate(smallText), ` at ${size.width}`);
      add(found.targets, await page.evaluate(smallTargets), ` at ${size.width}`);
    }
    await resize(page, phone);
    if (lengths) add(found.long, await tooLong(page, address.slice(site.base.length)));
    add(found.focus, await page.evaluate(hiddenFocus));
    // Forced colours apply to screens.
    if (context?.forcedColors === 'active') return [];
    await resize(page, a4);
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    add(found.paper, [...(await page.evaluate(wrongOnPaper)), ...(await page.evaluate(sideways))]);
    await page.emulateMedia({ media: null, colorScheme: null });
    await resize(page, phone);
    return [];
  });
  for (const list of Object.values(found)) list.sort();
  return found;
}

// Run separately, and only for violations, it takes half the time.
const axeSource = readFileSync(createRequire(import.meta.resolve('@axe-core/playwright')).resolve('axe-core/axe.min.js'), 'utf8');
const standards = ['wcag2a', 'wcag2aa', 'wcag2aaa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

interface Axe {
  run: (
    page: Document,
    options: object,
  ) => Promise<{ passes: unknown[]; violations: { id: string; nodes: { target: string[]; failureSummary?: string }[] }[] }>;
}

export async function axe(page: Page, without: readonly string[] = []): Promise<string[]> {
  await page.evaluate(axeSource);
  return page.evaluate(
    async ([values, off]) => {
      const { axe: engine } = globalThis as unknown as { axe: Axe };
      const rules = Object.fromEntries(off!.map((rule) => [rule, { enabled: false }]));
      const { violations, passes } = await engine.run(document, {
        runOnly: { type: 'tag', values: values! },
        rules,
        resultTypes: ['violations'],
      });
      if (passes.length < 10) return [`only ${passes.length} rules were looked at`];
      return violations.flatMap(({ id, nodes }) =>
        nodes.map(({ target, failureSummary }) => `${id} at ${target.join(' ')}: ${failureSummary?.split('\n')[1]?.trim()}`),
      );
    },
    [standards, [...without]],
  );
}

function listen(page: Page, site: Site, { quiet, hosts }: Looks): void {
  const at = (): string => new URL(page.url()).pathname;
  page.on('console', (message) => quiet.push(`${at()}: ${message.type()}: ${message.text()}`));
  page.on('pageerror', (error) => quiet.push(`${at()}: ${error}`));
  // The 404 page is requested by its own name here and answers like an existing page.
  page.on('response', (response) => response.status() >= 400 && quiet.push(`${at()}: ${response.url()} answers ${response.status()}`));
  page.on('request', (request) => {
    const { origin, protocol } = new URL(request.url());
    if (origin !== new URL(site.address).origin && !/^(data|blob):$/.test(protocol)) hosts.push(`${at()}: ${request.url()}`);
  });
}
