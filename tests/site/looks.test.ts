// Every page of the demo club as a reader with script sees it: at three widths, by axe, by keyboard, on paper.
import { after, before, test } from 'node:test';
import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, Page } from 'playwright-core';
import { demoSite, openBrowser, type Site } from './built-site.ts';
import { hiddenFocus, sideways, smallTargets, smallText, wrongOnPaper } from './rules.ts';
import { desk, narrow, nothing, phone, visit } from './visit.ts';

// The printed width of A4 and Letter between our margins of 14 mm, in CSS pixels; A4 is the narrower.
const a4 = { width: 688, height: 1009 };

const rules = {
  'nothing is written to the console, nothing fails to load': [],
  'no other host is asked for anything': [],
  'axe finds nothing at 390 px': [],
  'no page is pushed sideways at 320, 390 or 1280 px': [],
  'no letters are under 18 px': [],
  'what a finger presses is large enough': [],
  'what a keyboard reaches shows its focus, clear of the bar': [],
  'on paper: dark on white, empty boxes, nothing cut in two, nothing too wide': [],
} satisfies Record<string, string[]> as Record<string, string[]>;
const [quiet, hosts, axe, wide, small, targets, focus, paper] = Object.values(rules) as [string[], string[], string[], string[], string[], string[], string[], string[]];

let site: Site;
let browser: Browser;

before(async () => {
  site = await demoSite();
  browser = await openBrowser();
  await visit({ browser, site, prepare: listen }, look);
});
after(async () => {
  await browser?.close();
  await site?.close();
});

for (const [name, found] of Object.entries(rules)) test(name, () => nothing(found.sort()));

async function listen(page: Page): Promise<void> {
  const at = (): string => new URL(page.url()).pathname;
  page.on('console', (message) => quiet.push(`${at()}: ${message.type()}: ${message.text()}`));
  page.on('pageerror', (error) => quiet.push(`${at()}: ${error}`));
  page.on('response', (response) => response.status() >= 400 && !response.url().endsWith('/404.html') && quiet.push(`${at()}: ${response.url()} answers ${response.status()}`));
  page.on('request', (request) => {
    const { origin, protocol } = new URL(request.url());
    if (origin !== new URL(site.address).origin && !/^(data|blob):$/.test(protocol)) hosts.push(`${at()}: ${request.url()}`);
  });
}

async function look(page: Page, address: string): Promise<string[]> {
  const add = (list: string[], faults: string[], where = ''): unknown => list.push(...faults.map((fault) => `${address}${where}: ${fault}`));
  const { violations } = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']).setLegacyMode().analyze();
  add(axe, violations.flatMap(({ id, nodes }) => nodes.map(({ target, failureSummary }) => `${id} at ${target.join(' ')}: ${failureSummary?.split('\n')[1]?.trim()}`)));
  for (const size of [phone, narrow, desk]) {
    await page.setViewportSize(size);
    add(wide, await page.evaluate(sideways), ` at ${size.width}`);
    add(small, await page.evaluate(smallText), ` at ${size.width}`);
    add(targets, await page.evaluate(smallTargets), ` at ${size.width}`);
  }
  await page.setViewportSize(phone);
  add(focus, await page.evaluate(hiddenFocus));
  await page.setViewportSize(a4);
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  add(paper, await page.evaluate(wrongOnPaper));
  add(paper, await page.evaluate(sideways));
  await page.emulateMedia({ media: null, colorScheme: null });
  await page.setViewportSize(phone);
  return [];
}
