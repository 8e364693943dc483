// Print: a page of each kind as a PDF on A4 and Letter, with its sheets counted.
import assert from 'node:assert/strict';
import { note, test } from './fixtures.ts';
import { inflateSync } from 'node:zlib';
import type { Browser } from '@playwright/test';
import type { Site } from '../setup/built-site.ts';
import { wrongOnPaper } from './rules.ts';
import { desk, nothing, oneOfEachKind, open, phone, visit } from './visit.ts';

let site: Site;
let browser: Browser;
test.beforeAll(async ({ browser: launched, demo }) => {
  site = demo;
  browser = launched;
});

/** Sheets of a PDF: each is an object of the type Page. */
const sheetsOf = (pdf: Buffer): number => [...pdf.toString('latin1').matchAll(/\/Type\s*\/Page\b(?!s)/g)].length;

/** The most sheets of a page: a checklist with its cases is one sheet, printed on both sides. */
function mostSheets(address: string): number {
  // Cases and long notes do not fit beside the steps on one sheet. The shorter lists do, on Letter.
  if (/^\/(lists|pests)\/.+\/$/.test(address)) return 2;
  if (address === '/card/') return 2;
  if (/^\/(sheets\/.+|meetings)\/$/.test(address)) return 1;
  if (/^\/(work-it-out\/.+\/|year\/)?$/.test(address)) return 1;
  return /^\/(know-how|meetings)\/./.test(address) ? 4 : Infinity;
}

test('each sheet states its origin, and pages keep to their number of sheets on A4 and Letter, printed from the middle of the page', async ({}) => {
  const sheets: string[] = [];
  const pages = [
    ...new Set([...oneOfEachKind(site), ...site.pages.filter((page) => /^\/(lists|work-it-out|sheets)\/.|^\/meetings\/$/.test(page))]),
  ];
  const found = await visit({ browser, site, pages }, async (page, address) => {
    await page.evaluate(() => window.scrollTo(0, document.body.scrollHeight / 2));
    const counts = [sheetsOf(await page.pdf({ format: 'A4' })), sheetsOf(await page.pdf({ format: 'Letter' }))];
    sheets.push(`${address} ${counts.join(' and ')}`);
    // The browser draws this text in the margin of each sheet (CSS Paged Media 3, margin boxes).
    await page.emulateMedia({ media: 'print' });
    const foot = await page.evaluate(() => getComputedStyle(document.documentElement).getPropertyValue('--foot'));
    await page.emulateMedia({ media: null });
    const words = ['The Tamarack Almanac (demo)', 'Edition of ', ...(address === '/404.html' ? [] : [address])];
    return [
      ...words.filter((each) => !foot.includes(each)).map((each) => `no "${each}" at the foot`),
      ...(counts.every((count) => count >= 1 && count <= mostSheets(address)) ? [] : [`${counts.join(' and ')} sheets`]),
    ];
  });
  note(`sheets of A4 and of Letter: ${sheets.sort().join(', ')}`);
  assert.ok(sheets.some((each) => each.startsWith('/pests/')));
  nothing(found);
});

/** The drawing operations of a PDF, without its creation date. Lengths to a hundredth: the browser adds the scroll position and takes it off again. */
function paperOf(pdf: Buffer): string {
  const text = pdf.toString('latin1');
  const drawn = [...text.matchAll(/(?<!end)stream\r?\n/g)].flatMap(({ 0: start, index }) => {
    const data = pdf.subarray(index + start.length, text.indexOf('endstream', index + start.length));
    // Uncompressed streams are fonts and pictures.
    return data[0] === 0x78 ? [inflateSync(data).toString('latin1')] : [];
  });
  const sheets = drawn.filter((stream) => /\bBT\b/.test(stream));
  assert.ok(sheets.length >= sheetsOf(pdf), `${sheets.length} drawings of ${sheetsOf(pdf)} sheets`);
  return sheets.join('\n').replace(/\d+\.\d+/g, (length) => Number(length).toFixed(2));
}

// A sheet folded twice: pages 8 and 1, and above them 5 and 4 upside down; on the back 2 and 7, and above them 3 and 6 (common practice,
// no source).
test('the sides of the pocket card lie so that the folded sheet reads from 1 to 8, and hold all their words', async () => {
  for (const size of [
    { width: 794, height: 1123 },
    { width: 816, height: 1056 },
  ]) {
    const { page, context } = await open(browser, site.at('/card/'), { viewport: size });
    await page.emulateMedia({ media: 'print' });
    const sides = await page.locator('.side').evaluateAll((all) =>
      all.map((side) => {
        const { x, y } = side.getBoundingClientRect();
        const isWhole = side.scrollHeight <= side.clientHeight + 1 && side.scrollWidth <= side.clientWidth + 1;
        return { side: (side as HTMLElement).dataset.side!, x, y, turned: getComputedStyle(side).rotate === '180deg', isWhole };
      }),
    );
    assert.deepEqual(
      sides.filter(({ isWhole }) => !isWhole).map(({ side }) => side),
      [],
      `cut off at ${size.width}`,
    );
    const inOrder = sides.toSorted((a, b) => Math.round(a.y - b.y) || a.x - b.x);
    assert.equal(inOrder.map(({ side }) => side).join(' '), '5 4 8 1 3 6 2 7');
    assert.equal(inOrder.map(({ turned }) => (turned ? 'down' : 'up')).join(' '), 'down down up up down down up up');
    await context.close();
  }
});

test('a programme of twenty meetings is one sheet, and blanks have lines of 8 mm and no word that is cut off', async () => {
  const { page, context } = await open(browser, site.at('/meetings/'));
  await page.evaluate(() => {
    const list = document.querySelector('.programme')!;
    const rows = [...list.children, ...document.querySelectorAll('[data-past] li')];
    list.replaceChildren(...Array.from({ length: 20 }, (_, at) => rows[at % rows.length]!.cloneNode(true)));
  });
  for (const format of ['A4', 'Letter']) assert.equal(sheetsOf(await page.pdf({ format, preferCSSPageSize: true })), 1, format);
  // The pocket card has no margins. All style sheets are one, and its rule for the sheet must not reach other pages.
  await page.emulateMedia({ media: 'print' });
  const bare = await page.evaluate(() => {
    const rules = (list: CSSRuleList): CSSRule[] =>
      [...list].flatMap((rule) => [rule, ...('cssRules' in rule ? rules(rule.cssRules as CSSRuleList) : [])]);
    const sheetRules = [...document.styleSheets].flatMap((sheet) => rules(sheet.cssRules)).filter((rule) => rule instanceof CSSPageRule);
    return sheetRules.map((rule) => `${rule.selectorText} ${rule.style.marginTop}`);
  });
  assert.deepEqual(
    bare.filter((rule) => rule.startsWith(' ')),
    [' 7mm'],
  );
  const sheets = site.pages.filter((address) => /^\/sheets\/./.test(address));
  assert.ok(sheets.length >= 5);
  await page.setViewportSize({ width: 710, height: 970 }); // Letter without its margins, in CSS pixels
  for (const address of sheets) {
    await page.goto(site.at(address));
    const wrong = await page.locator('.blanks').evaluate((blanks) => {
      const low = [...blanks.querySelectorAll('tbody tr')].filter((row) => row.getBoundingClientRect().height < (8 * 96) / 25.4);
      const cut = [...blanks.querySelectorAll<HTMLElement>('th, td, .blank-fields span')].filter(
        (cell) => cell.scrollWidth > cell.clientWidth + 1,
      );
      return [...low.map(() => 'a low line'), ...cut.map((cell) => cell.textContent)];
    });
    assert.deepEqual(wrong, [], address);
  }
  await context.close();
});

test('a page prints the same from any scroll position, so no sticky element covers the text', async () => {
  const pages = oneOfEachKind(site).filter((page) => /^\/($|lists\/.|work-it-out\/mite-count|pests\/.|year\/)/.test(page));
  assert.ok(pages.some((page) => page.startsWith('/lists/')));
  for (const viewport of [phone, desk]) {
    const found = await visit({ browser, site, pages, context: { viewport } }, async (page) => {
      await page.locator('html.arranged').waitFor();
      const first = await page.pdf({ format: 'Letter' });
      await page.evaluate(() => window.scrollTo(0, document.body.scrollHeight / 2));
      await page.waitForFunction(() => window.scrollY > 0);
      const scrolled = await page.pdf({ format: 'Letter' });
      // The scroll position places sticky elements, so a sheet that differs contains one.
      return paperOf(first) === paperOf(scrolled) ? [] : ['printed after scrolling it is another paper'];
    });
    nothing(found);
  }
});

test('the test detects a sticky strip in print, and a total at the bottom of each sheet', async () => {
  const { page, context } = await open(browser, site.at('/lists/package-first-six-weeks/'));
  const first = await page.pdf({ format: 'Letter' });
  await page.evaluate(() => document.querySelector<HTMLElement>('.in-reach')!.style.setProperty('position', 'sticky', 'important'));
  await page.evaluate(() => window.scrollTo(0, document.body.scrollHeight / 2));
  assert.notEqual(paperOf(await page.pdf({ format: 'Letter' })), paperOf(first));
  await page.emulateMedia({ media: 'print' });
  assert.match((await page.evaluate(wrongOnPaper)).join(), /Emergency.*sticks to the sheet/);
  await page.goto(site.at('/work-it-out/mite-count/'));
  assert.doesNotMatch((await page.evaluate(wrongOnPaper)).join(), /repeated at the foot/);
  await page.evaluate(() =>
    document.querySelectorAll<HTMLElement>('tfoot').forEach((foot) => {
      foot.hidden = false;
      foot.style.setProperty('display', 'table-footer-group', 'important');
    }),
  );
  assert.match((await page.evaluate(wrongOnPaper)).join(), /repeated at the foot/);
  await context.close();
});

test('the mark of a source never joins the number before it, neither copied nor on paper', async () => {
  const { page, context } = await open(browser, site.at('/know-how/sting-scrape-or-pull/'));
  const line = page.locator('main p', { hasText: 'square millimeters' });
  assert.ok((await line.locator('.mark').count()) > 1);
  await line.evaluate((paragraph) => getSelection()!.selectAllChildren(paragraph));
  // Visscher, Vetter and Camazine 1996, Lancet 348:301-302: 80 and 74 square millimeters.
  assert.match(await page.evaluate(() => String(getSelection())), /measured 80 square .* it measured 74\. /);
  await page.emulateMedia({ media: 'print' });
  assert.ok(await line.locator('.mark').first().isHidden());
  await context.close();
});

test('the test counts the sheets of a page', async () => {
  const { page, context } = await open(browser, 'about:blank');
  await page.setContent('<p style="break-after: page">one</p><p style="break-after: page">two</p><p>three</p>');
  assert.equal(sheetsOf(await page.pdf({ format: 'A4' })), 3);
  await context.close();
});
