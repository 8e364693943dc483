// Hand-outs: pages are chosen, ordered, printed as one set and saved as an EPUB.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { EpubCheck } from '@likecoin/epubcheck-ts';
import { strFromU8, unzipSync } from 'fflate';
import type { Browser, Page } from '@playwright/test';
import { note, test } from './fixtures.ts';
import type { Site } from '../setup/built-site.ts';
import { codesAt, hasMargin, lettersOf, sheetsIn } from './printed.ts';
import { sideways, smallTargets, smallText, wrongOnPaper } from './rules.ts';
import { nothing, open, phone } from './visit.ts';

let site: Site;
let browser: Browser;
test.beforeAll(async ({ browser: launched, demo }) => {
  site = demo;
  browser = launched;
});

const EVENING = 'know-how/stings,lists/package-arrival,pests/american-foulbrood';
const chosen = (page: Page): Promise<string[]> => page.locator('[data-chosen] a').allInnerTexts();
const loaded = (page: Page, many: number): Promise<void> =>
  page.waitForFunction((count) => document.querySelectorAll('.set-page').length === count, many).then(() => undefined);

test('the choice is in the address: pages are added, moved and removed, and a reload keeps them', async () => {
  const { page, context } = await open(browser, site.at(`/hand-out/?of=${EVENING},no-such/page,../x`), { viewport: phone });
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(String(error)));
  await loaded(page, 3);
  assert.deepEqual(await chosen(page), [
    'Stings: what to do, in order',
    'A package of bees: the evening you install it',
    'American foulbrood',
    'no-such/page',
  ]);
  // What cannot be in the set is named, on the screen and on the sheets.
  await page.locator('[data-chosen] .wrong', { hasText: 'There is no page at this address' }).waitFor();
  assert.match(await page.locator('[data-set-status]').innerText(), /\.\.\/x/);
  assert.match((await page.locator('.set-missing').textContent())!, /Not in this set: no-such\/page/);
  await page.getByRole('button', { name: 'Remove: no-such/page' }).click();
  await page.getByRole('button', { name: 'Move up: American foulbrood' }).click();
  await page.locator('[data-filter]').fill('sting scrape');
  assert.equal(await page.locator('[data-hand-out] details li:visible').count(), 1);
  await page.locator('[data-hand-out] details li:visible input').check();
  await page.locator('[data-set-title]').fill('Yard evening');
  await page.locator('[data-set-title]').press('Tab');
  await loaded(page, 4);
  const order = ['Stings: what to do, in order', 'American foulbrood', 'A package of bees: the evening you install it'];
  assert.deepEqual((await chosen(page)).slice(0, 3), order);
  assert.match(
    page.url(),
    /\?of=know-how\/stings,pests\/american-foulbrood,lists\/package-arrival,know-how\/sting-scrape-or-pull&title=Yard%20evening$/,
  );
  await page.reload();
  await loaded(page, 4);
  assert.deepEqual((await chosen(page)).slice(0, 3), order);
  assert.equal(await page.locator('.set-title').textContent(), 'Yard evening');
  for (const rule of [smallText, smallTargets, sideways]) nothing(await page.evaluate(rule));
  nothing(faults);
  await context.close();
});

test('on A4 and Letter every page has its cautions and sources, no heading is last on a sheet, and the codes are read from paper', async () => {
  const { page, context } = await open(browser, site.at(`/hand-out/?of=${EVENING}`), { viewport: phone });
  await loaded(page, 3);
  await page.emulateMedia({ media: 'print' });
  nothing(await page.evaluate(wrongOnPaper));
  const cut = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('.sheets :not(.tick)')]
      .filter((each) => each.checkVisibility() && each.scrollWidth > each.clientWidth + 1 && getComputedStyle(each).overflowX !== 'visible')
      .map((each) => each.textContent!.slice(0, 40)),
  );
  nothing(cut);
  // The dark modules are 20 mm wide, at 96 pixels an inch, and four light modules are on each side (ISO/IEC 18004, 6.3.8).
  const sides = await page.locator('.qr-on-paper').evaluateAll((codes) =>
    codes.map((code) => {
      const modules = (code as SVGSVGElement).viewBox.baseVal.width;
      return (((code.getBoundingClientRect().width * 25.4) / 96) * (modules - 8)) / modules;
    }),
  );
  assert.equal(sides.length, 4);
  for (const side of sides) assert.ok(Math.abs(side - 20) < 0.1, `${side} mm`);
  const headings = await page.locator('.sheets :is(h2, h3, h4, h5)').allTextContents();
  await page.emulateMedia({ media: null });
  const list = await browser.newPage();
  await list.goto(site.at('/lists/package-arrival/'));
  const cautions = await list
    .locator('[data-hazard] li, li[data-hazard]')
    .evaluateAll((lines) => lines.map((line) => line.firstChild!.textContent!));
  await list.close();
  assert.ok(cautions.length > 8, `${cautions.length} cautions`);
  for (const format of ['A4', 'Letter']) {
    const sheets = await sheetsIn(await page.pdf({ format }));
    note(`${format}: ${sheets.length} sheets`);
    assert.ok(sheets.length >= 4 && sheets.length <= 7, `${format}: ${sheets.length} sheets`);
    assert.ok(
      sheets.every((sheet) => hasMargin(sheet, 8)),
      `${format}: drawn at the edge of the sheet`,
    );
    const all = sheets.map(({ letters }) => letters).join('');
    nothing(cautions.filter((line) => !all.includes(lettersOf(line))).map((line) => `${format} lacks "${line}"`));
    for (const each of ['Sources: ', 'Checked ', 'Call 911', 'Edition of ', 'Sheet 1 of '])
      assert.ok(all.includes(lettersOf(each)), `${format}: ${each}`);
    // The foot is drawn before the words.
    nothing(
      sheets.flatMap(({ letters }) =>
        headings.filter((heading) => letters.endsWith(lettersOf(heading))).map((heading) => `${format}: "${heading}" is last on its sheet`),
      ),
    );
    const codes = sheets.flatMap((sheet) => codesAt(sheet, 10));
    const root = site.at('/');
    assert.deepEqual(codes, [page.url(), ...EVENING.split(',').map((each) => `${root}${each}/`)], `${format}: ${codes.join(' ')}`);
  }
  await context.close();
});

test('the EPUB passes the checker, has the chosen pages with their cautions, and no number that was given until a day', async () => {
  const { page, context } = await open(browser, site.at(`/hand-out/?of=${EVENING},work-it-out/syrup`));
  await loaded(page, 4);
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as EPUB' }).click();
  const file = await coming;
  assert.equal(file.suggestedFilename(), 'hand-out.epub');
  const bytes = readFileSync(await file.path());
  const { valid, messages } = await EpubCheck.validate(bytes);
  nothing(messages.map(({ severity, id, message, location }) => `${severity} ${id}: ${message} (${location?.path})`));
  assert.ok(valid);
  const files = Object.entries(unzipSync(bytes)).map(([name, data]) => [name, strFromU8(data)] as const);
  const named = (name: string): string => files.find(([each]) => each === `book/${name}`)![1];
  assert.match(named('page-2.xhtml'), /Wear a veil, and take a sting out at once/);
  assert.match(named('page-2.xhtml'), /<b>Sources:<\/b>/);
  assert.match(named('page-3.xhtml'), /<svg[^>]*xmlns="http:\/\/www.w3.org\/2000\/svg"/);
  // A link to another page of the set leads there, and any other to the site.
  const links = files.flatMap(([, text]) => [...text.matchAll(/<a [^>]*href="([^"]+)"/g)].map(([, href]) => href!));
  assert.ok(links.some((href) => /^page-\d\.xhtml/.test(href)));
  nothing(links.filter((href) => !/^(page-\d+\.xhtml(#[\w-]+)?|tel:\+?\d+|mailto:.+|https?:.+)$/.test(href)));
  nothing(files.filter(([, text]) => /330-?555-?0111|<(script|form|input|button)\b| on\w+=/.test(text)).map(([name]) => name));
  await context.close();
});
