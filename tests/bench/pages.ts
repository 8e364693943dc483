/* The bytes of the demo club: pages and first views by kind, script, styles, letters, and the whole copy for use without signal. */
import type { Browser } from 'playwright-core';
import { demoSite, openBrowser, type Site } from '../site/built-site.ts';
import { fileOf, firstView, hasForm, keptFiles, kindOf as kindOfFile, scriptsOf, zipped } from '../site/weights.ts';
import { byKind } from './kinds.ts';
import { median, type Row } from './table.ts';

export async function pages(): Promise<Row[]> {
  const site = await demoSite();
  const browser = await openBrowser();
  try {
    return [...pageRows(site), ...(await viewRows(browser, site)), ...keptRows(site)];
  } finally {
    await browser.close();
    await site.close();
  }
}

const row = (name: string, measured: number, more: Partial<Row> = {}): Row => ({ part: 'pages', name, measured, unit: 'B', ...more });

function pageRows(site: Site): Row[] {
  const sizes = new Map(site.pages.map((page) => [page, zipped(site.read(fileOf(site, page)))] as const));
  const sorted = [...sizes.values()].sort((a, b) => a - b);
  const kinds = [...byKind(site)].map(([kind, of]) => {
    const [worst, ...others] = of.toSorted((a, b) => sizes.get(b)! - sizes.get(a)!);
    const middle = median(of.map((page) => sizes.get(page)!));
    return row(`HTML, ${kind}`, sizes.get(worst!)!, { most: 14_000, note: others.length > 0 ? `${worst}; median of ${of.length} is ${middle.toFixed(0)} B` : '' });
  });
  return [...kinds, row('HTML, 95 of 100 pages', sorted[Math.ceil(sorted.length * 0.95) - 1]!, { most: 12_000, note: `${sorted.length} pages, median ${median(sorted).toFixed(0)} B` })];
}

/** The heaviest page of each kind, and every calculator. */
async function viewRows(browser: Browser, site: Site): Promise<Row[]> {
  const rows: Row[] = [];
  for (const [kind, of] of byKind(site)) {
    const heaviest = kind === 'work-it-out/*' ? of : [of.toSorted((a, b) => site.read(fileOf(site, b)).length - site.read(fileOf(site, a)).length)[0]!];
    for (const page of heaviest) {
      const { size, names } = await firstView(browser, site, page);
      const form = hasForm(site, page);
      const script = [...scriptsOf(site, page)].length;
      rows.push(row(`first view, ${page}`, size, { most: form ? 52_000 : 45_000, note: `${script} of script` }));
      rows.push(row(`requests, ${page}`, names.length, { unit: 'requests', most: form ? 7 : 5 }));
    }
  }
  return rows;
}

function keptRows(site: Site): Row[] {
  const files = keptFiles(site);
  const sum = (of: readonly { size: number }[]): number => of.reduce((all, { size }) => all + size, 0);
  const kinds = [...Map.groupBy(files, kindOfFile)].map(([kind, of]) => `${kind} ${(sum(of) / 1e6).toFixed(2)}`);
  return [row('the whole copy for use without signal', sum(files) / 1e6, { unit: 'MB', most: 2, note: `${files.length} files; MB: ${kinds.join(', ')}` })];
}
