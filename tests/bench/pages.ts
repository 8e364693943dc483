/* Bytes of the demo club: pages and first views by kind, script, styles, fonts, and the whole offline copy. */
import type { Browser } from '@playwright/test';
import { demoSite, type Site } from '../setup/built-site.ts';
import { openBrowser } from './browser.ts';
import {
  bytesOf,
  fileOf,
  firstView,
  formOf,
  keptFiles,
  kindOf as kindOfFile,
  most,
  mostScript,
  scriptBytes,
  zipped,
} from '../e2e/weights.ts';
import { byKind } from './kinds.ts';
import { median, type Row } from './table.ts';

export async function pages(): Promise<Row[]> {
  const site = await demoSite();
  const browser = await openBrowser();
  try {
    return [...pageRows(site), ...scriptRows(site), ...(await viewRows(browser, site)), ...keptRows(site)];
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
    return row(`HTML, ${kind}`, sizes.get(worst!)!, {
      most: most.html,
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
  return [
    ...scripts,
    row('style sheets', bytesOf(site, '.css'), { most: most.styles }),
    row('letters', bytesOf(site, '.woff2'), { most: most.fonts }),
  ];
}

/** The heaviest page of each kind, and every calculator. */
async function viewRows(browser: Browser, site: Site): Promise<Row[]> {
  const rows: Row[] = [];
  for (const [kind, of] of byKind(site)) {
    const heaviest =
      kind === 'work-it-out/*' ? of : [of.toSorted((a, b) => site.read(fileOf(site, b)).length - site.read(fileOf(site, a)).length)[0]!];
    for (const page of heaviest) {
      const { size, names } = await firstView(browser, site, page);
      const form = formOf(site, page);
      rows.push(row(`first view, ${page}`, size, { most: most.view[form], note: `${names.length} requests` }));
      rows.push(row(`requests, ${page}`, names.length, { unit: 'requests', most: most.requests[form], inDetail: true }));
    }
  }
  return rows;
}

function keptRows(site: Site): Row[] {
  const files = keptFiles(site);
  const sum = (of: readonly { size: number }[]): number => of.reduce((all, { size }) => all + size, 0);
  const kinds = [...Map.groupBy(files, kindOfFile)].map(([kind, of]) => `${kind} ${(sum(of) / 1e6).toFixed(2)}`);
  return [
    row('the whole copy for use without signal', sum(files) / 1e6, {
      unit: 'MB',
      most: most.kept / 1e6,
      note: `${files.length} files; MB: ${kinds.join(', ')}`,
    }),
  ];
}
