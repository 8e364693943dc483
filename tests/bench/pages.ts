/*
 * Bytes of the demo club: pages and first views by kind, script before and after a touch, styles, fonts, a first search and the whole
 * offline copy; and the length of a page of each kind on a phone.
 */
import type { Browser } from '@playwright/test';
import { questions } from '../tables/questions.ts';
import { demoSite, type Site } from '../setup/built-site.ts';
import { lengthOf, limitOf } from '../e2e/lengths.ts';
import { oneOfEachKind, open, phone } from '../e2e/visit.ts';
import { openBrowser } from './browser.ts';
import {
  bodySize,
  bytesOf,
  fileOf,
  firstView,
  formOf,
  keptFiles,
  kindOf as kindOfFile,
  most,
  mostHtml,
  mostScript,
  placeOf,
  scriptBytes,
  zipped,
} from '../e2e/weights.ts';
import { byKind } from './kinds.ts';
import { median, type Row } from './table.ts';

export async function pages(): Promise<Row[]> {
  const site = await demoSite();
  const browser = await openBrowser();
  try {
    return [
      ...pageRows(site),
      ...scriptRows(site),
      ...(await touchedRows(browser, site)),
      ...(await viewRows(browser, site)),
      ...(await searchRows(browser, site)),
      ...keptRows(site),
      ...(await lengthRows(browser, site)),
    ];
  } finally {
    await browser.close();
    await site.close();
  }
}

const row = (name: string, measured: number, more: Partial<Row> = {}): Row => ({ part: 'pages', name, measured, unit: 'B', ...more });

const pathOf = (site: Site, page: string): string => page.slice(site.base.length);

function pageRows(site: Site): Row[] {
  const sizes = new Map(site.pages.map((page) => [page, zipped(site.read(fileOf(site, page)))] as const));
  const sorted = [...sizes.values()].sort((a, b) => a - b);
  const kinds = [...byKind(site)].map(([kind, of]) => {
    const [worst, ...others] = of.toSorted((a, b) => sizes.get(b)! - sizes.get(a)!);
    const middle = median(of.map((page) => sizes.get(page)!));
    return row(`HTML, ${kind}`, sizes.get(worst!)!, {
      most: mostHtml(site, worst!),
      note: others.length > 0 ? `${worst}; median of ${of.length} is ${middle.toFixed(0)} B` : '',
    });
  });
  return [
    ...kinds,
    row('HTML, 95 of 100 pages', sorted[Math.ceil(sorted.length * 0.95) - 1]!, {
      most: most.mostHtml,
      note: `${sorted.length} pages, median ${median(sorted).toFixed(0)} B`,
    }),
  ];
}

/** The page with the most script among those with the same limit, the style sheets and the fonts. */
function scriptRows(site: Site): Row[] {
  const scripts = [...Map.groupBy(site.pages, (page) => mostScript(site, page))]
    .sort(([a], [b]) => a - b)
    .map(([least, of]) => {
      const [worst] = of.map((page) => ({ page, size: scriptBytes(site, page) })).sort((a, b) => b.size - a.size);
      return row(`script, most of ${of.length} pages`, worst!.size, { most: least, note: worst!.page });
    });
  // The page of hand-outs alone loads the styles of its sheets.
  const handOut = bytesOf(site, '.css', 'hand-out');
  return [
    ...scripts,
    row('style sheets', bytesOf(site, '.css') - handOut, { most: most.styles }),
    row('style sheets of hand-outs', handOut, { most: most.handOutStyles }),
    row('letters', bytesOf(site, '.woff2'), { most: most.fonts }),
  ];
}

/** Without a further script for so long, a touch has fetched all that it needs. */
const QUIET_MS = 500;

/** All script of a calculator once somebody has asked for a result, and of a list once a box is ticked. */
async function touchedRows(browser: Browser, site: Site): Promise<Row[]> {
  const measured: { page: string; size: number; limit: number }[] = [];
  for (const page of site.pages.filter((each) => /^(work-it-out|lists)\/./.test(pathOf(site, each)))) {
    const isList = placeOf(site, page).startsWith('lists/');
    const context = await browser.newContext({ viewport: phone });
    const tab = await context.newPage();
    const sizes: Promise<number>[] = [];
    tab.on('requestfinished', (request) => {
      if (request.resourceType() === 'script') sizes.push(bodySize(request));
    });
    await tab.goto(site.at(page), { waitUntil: 'networkidle' });
    const touched = tab.locator(isList ? 'main input[type=checkbox]' : 'form.asks :is(input, select)').filter({ visible: true });
    const hasAny = (await touched.count()) > 0;
    if (hasAny && isList) await touched.first().check({ force: true });
    // A calculator loads the rest of its script with its first result.
    if (hasAny && !isList)
      await tab
        .locator('form.asks')
        .first()
        .evaluate((form) => (form as HTMLFormElement).requestSubmit());
    // The page was idle before, so its state says nothing of what the touch fetches.
    for (let count = -1; count < sizes.length; await tab.waitForTimeout(QUIET_MS)) count = sizes.length;
    const size = (await Promise.all(sizes)).reduce((sum, each) => sum + each, 0);
    if (hasAny) measured.push({ page, size, limit: isList ? 16_400 : 28_000 });
    await context.close();
  }
  return [...Map.groupBy(measured, ({ limit }) => limit)].map(([limit, of]) => {
    const worst = of.toSorted((a, b) => b.size - a.size)[0]!;
    return row(`script after a touch, most of ${of.length} pages`, worst.size, { most: limit, note: worst.page });
  });
}

/** The heaviest page of each kind, and every calculator. */
async function viewRows(browser: Browser, site: Site): Promise<Row[]> {
  const rows: Row[] = [];
  const elsewhere = new Set<string>();
  for (const [kind, of] of byKind(site)) {
    // The hall screen is opened on the computer of a projector.
    if (kind.startsWith('hall/')) continue;
    const heaviest =
      kind === 'work-it-out/*' ? of : [of.toSorted((a, b) => site.read(fileOf(site, b)).length - site.read(fileOf(site, a)).length)[0]!];
    for (const page of heaviest) {
      const { size, names, elsewhere: others } = await firstView(browser, site, page);
      for (const other of others) elsewhere.add(other);
      const form = formOf(site, page);
      const requests = placeOf(site, page).startsWith('lists/') ? most.requests.list : most.requests[form];
      rows.push(row(`first view, ${page}`, size, { most: most.view[form], note: `${names.length} requests` }));
      rows.push(row(`requests, ${page}`, names.length, { unit: 'requests', most: requests, inDetail: true }));
    }
  }
  const pages = rows.length / 2;
  rows.push(
    row('requests to other hosts', elsewhere.size, { unit: 'requests', most: 0, note: [...elsewhere].join(' ') || `${pages} pages` }),
  );
  return rows;
}

/** Everything that a first question fetches: the page's script, the engine, the words, the pieces of the index and the results. */
async function searchRows(browser: Browser, site: Site): Promise<Row[]> {
  const measured: { typed: string; size: number }[] = [];
  for (const { typed } of questions.filter((_, at) => at % 3 === 0)) {
    const { page, context } = await open(browser, site.at('/year/'));
    const fetched: Promise<number>[] = [];
    page.on('requestfinished', (request) => {
      if (/\.(js|json|pagefind|pf_\w+)(\?|$)/.test(request.url())) fetched.push(bodySize(request));
    });
    await page.goto(site.at(`/search/?q=${encodeURIComponent(typed)}`));
    await page.waitForFunction(() => document.querySelector('[role=status]')!.textContent !== '');
    await page.waitForLoadState('networkidle');
    measured.push({ typed, size: (await Promise.all(fetched)).reduce((sum, each) => sum + each, 0) });
    await context.close();
  }
  const worst = measured.toSorted((a, b) => b.size - a.size)[0]!;
  return [
    row('first search, the middle', median(measured.map(({ size }) => size)), { most: 127_000, note: `${measured.length} questions` }),
    row('first search, the worst', worst.size, { most: 140_000, note: `"${worst.typed}"` }),
  ];
}

/** A slow mobile network. */
const BITS_A_SECOND = 1.6e6;

function keptRows(site: Site): Row[] {
  const files = keptFiles(site);
  const sum = (of: readonly { size: number }[]): number => of.reduce((all, { size }) => all + size, 0);
  const kinds = [...Map.groupBy(files, kindOfFile)].map(([kind, of]) => `${kind} ${(sum(of) / 1e6).toFixed(2)}`);
  return [
    row('the whole copy for use without signal', sum(files) / 1e6, {
      unit: 'MB',
      most: most.kept / 1e6,
      note: `MB: ${kinds.join(', ')}`,
    }),
    row('files of the whole copy', files.length, { unit: '', most: most.keptFiles }),
    row('the whole copy at 1.6 Mbit/s', (sum(files) * 8) / BITS_A_SECOND, { unit: 's', most: 20, note: 'from its bytes alone' }),
  ];
}

/** A page of each kind at 390 px, with its folds shut; the summary names the one that is nearest to its limit. */
async function lengthRows(browser: Browser, site: Site): Promise<Row[]> {
  const rows: Row[] = [];
  const context = await browser.newContext({ viewport: phone, reducedMotion: 'reduce' });
  const tab = await context.newPage();
  for (const page of oneOfEachKind(site).filter((each) => !pathOf(site, each).startsWith('hall/'))) {
    const { pixels } = limitOf(pathOf(site, page));
    if (pixels === Infinity) continue;
    await tab.goto(site.at(page));
    rows.push(row(`length, ${page}`, await lengthOf(tab), { unit: 'px', most: pixels, inDetail: true }));
  }
  await context.close();
  const nearest = rows.toSorted((a, b) => b.measured / b.most! - a.measured / a.most!)[0]!;
  return [
    { ...nearest, name: `length, nearest to its limit of ${rows.length} pages`, inDetail: false, note: nearest.name.slice(8) },
    ...rows,
  ];
}
