// Page weight: the bytes that a reader downloads, as a host sends them (gzip -9). A page over its budget is named with the excess.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { note, test } from './fixtures.ts';
import type { Browser } from '@playwright/test';
import type { Site } from '../setup/built-site.ts';
import { nothing, oneOfEachKind } from './visit.ts';
import {
  bytesOf,
  fileOf,
  firstView,
  formOf,
  keptFiles,
  kindOf,
  most,
  mostHtml,
  mostScript,
  placeOf,
  scriptBytes,
  scriptNamed,
  scriptsOf,
  withImports,
  zipped,
} from './weights.ts';

let site: Site;
let browser: Browser;
test.beforeAll(async ({ browser: launched, demo }) => {
  site = demo;
  browser = launched;
});

const over = (name: string, size: number, limit: number): string[] =>
  size > limit ? [`${name}: ${size} B, ${size - limit} B over ${limit}`] : [];

// The search page and the word list hold the whole book, for readers without script, so they may take a second flight.
test('a page is 14,000 B of HTML at most, the search page 18,500, the word list 16,500, and 95 of 100 pages 12,000', ({}) => {
  const sizes = site.pages.map((page) => ({ page, size: zipped(site.read(fileOf(site, page))) })).sort((a, b) => b.size - a.size);
  note(
    sizes
      .slice(0, 5)
      .map(({ page, size }) => `${page} ${size}`)
      .join(', '),
  );
  nothing(sizes.flatMap(({ page, size }) => over(page, size, mostHtml(site, page))));
  const large = sizes.filter(({ size }) => size > most.mostHtml);
  assert.ok(
    large.length <= sizes.length * 0.05,
    `${large.length} of ${sizes.length} pages are over ${most.mostHtml} B:\n${large.map(({ page, size }) => `  ${page}: ${size}`).join('\n')}`,
  );
});

test('script: 4 kB on a page to read, 6 kB on a list and on the search page, 8 kB on the signs and on a calculator until it is touched', ({}) => {
  const measured = site.pages.map((page) => ({
    page,
    size: scriptBytes(site, page),
    limit: mostScript(site, page),
    files: scriptsOf(site, page),
  }));
  for (const page of oneOfEachKind(site)) {
    const { size, files } = measured.find((each) => each.page === page)!;
    note(`${page} ${size} B in ${files.size}`);
  }
  assert.ok(
    measured.every(({ files }) => files.size > 0),
    'every page has script',
  );
  nothing(measured.flatMap(({ page, size, limit }) => over(page, size, limit)));
});

test('a list after a touch and with its share panel: 17.5 kB; a press may load 4 kB more for a QR code, or 10 kB for a calendar file', ({}) => {
  const bytes = (files: Iterable<string>): number =>
    [...files].reduce((sum, file) => sum + zipped(readFileSync(join(site.folder, file))), 0);
  const page = [...scriptsOf(site, `${site.base}lists/package-first-six-weeks/`)];
  const touched = withImports(site, [...page, ...['actions', 'share-panel'].map((module) => scriptNamed(site, module))]);
  /** What a press loads on top of that. */
  const more = (module: string): number => bytes([...withImports(site, [scriptNamed(site, module)])].filter((file) => !touched.has(file)));
  const [all, code, calendar] = [bytes(touched), more('qr'), more('steps-calendar')];
  note(`touched ${all} B, QR code ${code} B, calendar ${calendar} B`);
  nothing([...over('touched', all, 17_500), ...over('QR code', code, 4_000), ...over('calendar', calendar, 10_000)]);
});

test('the style sheet of the whole site is 15 kB at most, the fonts 45 kB', ({}) => {
  // The page of hand-outs alone loads the styles of its sheets.
  const handOut = bytesOf(site, '.css', 'hand-out');
  const [styles, fonts] = [bytesOf(site, '.css') - handOut, bytesOf(site, '.woff2')];
  note(`styles ${styles} B, of hand-outs ${handOut} B, fonts ${fonts} B`);
  assert.ok(styles > 0 && handOut > 0 && fonts > 0);
  nothing([
    ...over('styles', styles, most.styles),
    ...over('styles of hand-outs', handOut, most.handOutStyles),
    ...over('fonts', fonts, most.fonts),
  ]);
});

test('a first view takes 75 kB and 7 requests to read, 85 kB and 9 with a form', async ({}) => {
  const calculators = site.pages.filter((page) => page.startsWith(`${site.base}work-it-out/`));
  // The hall screen is opened on the computer of a projector.
  const left = [...new Set([...oneOfEachKind(site), ...calculators])].filter((page) => page !== `${site.base}hall/`);
  const found: string[] = [];
  // Most of each view is waiting for further requests, so some views run in parallel.
  const views = Array.from({ length: 4 }, async () => {
    for (let page = left.pop(); page !== undefined; page = left.pop()) {
      const { size, names } = await firstView(browser, site, page);
      const form = formOf(site, page);
      note(`${page} ${size} B, ${names.length} requests`);
      found.push(...over(page, size, most.view[form]));
      // A list that begins with a question loads the code of its hives at once.
      if (names.length > (placeOf(site, page).startsWith('lists/') ? most.requests.list : most.requests[form]))
        found.push(`${page}: ${names.length} requests: ${names.join(' ')}`);
    }
  });
  await Promise.all(views);
  nothing(found);
});

test('the whole club for use without signal, search and all, is 3.1 MB and 1,000 files at most', ({}) => {
  const files = keptFiles(site);
  const pages = site.pages.filter((page) => page !== `${site.base}404.html`);
  assert.deepEqual(
    pages.filter((page) => !files.some(({ file }) => file === fileOf(site, page))),
    [],
    'every page is kept',
  );
  const sums = Map.groupBy(files, kindOf);
  const sum = (of: readonly { size: number }[]): number => of.reduce((all, { size }) => all + size, 0);
  note(`${files.length} files, ${sum(files)} B: ${[...sums].map(([kind, of]) => `${kind} ${sum(of)}`).join(', ')}`);
  const heaviest = files
    .sort((a, b) => b.size - a.size)
    .slice(0, 5)
    .map(({ file, size }) => `${file} ${size}`)
    .join(', ');
  assert.ok(files.length <= most.keptFiles, `${files.length} files, ${files.length - most.keptFiles} over ${most.keptFiles}`);
  nothing(over(`the copy of ${pages.length} pages (heaviest: ${heaviest})`, sum(files), most.kept));
});
