/* What a reader waits for on the demo club's site: bytes by kind of page, first views, the whole copy for use without signal. */
import { join } from 'node:path';
import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import type { Browser } from 'playwright-core';
import type { Site } from '../site/built-site.ts';
import { oneOfEachKind, phone } from '../site/visit.ts';
import { median, type Row } from './row.ts';

const zipped = (bytes: Buffer): number => gzipSync(bytes, { level: 9 }).length;

export function pageBytes(site: Site): Row[] {
  const kinds = new Map<string, number[]>();
  for (const page of site.pages) {
    const path = page.slice(site.base.length);
    const [first, second] = path.split('/');
    const kind = first === '' ? 'first page' : `${first}/${second ? '*' : ''}`;
    const size = zipped(readFileSync(join(site.folder, path === '' || path.endsWith('/') ? `${path}index.html` : path)));
    kinds.set(kind, [...(kinds.get(kind) ?? []), size]);
  }
  return [...kinds].sort().flatMap(([kind, sizes]): Row[] => [
    ...(sizes.length > 2 ? [{ what: `HTML of ${kind}, median of ${sizes.length}`, value: median(sizes), unit: 'B' }] : []),
    { what: `HTML of ${kind}, largest`, value: Math.max(...sizes), unit: 'B', budget: 14_000 },
  ]);
}

export function offlineTotal(site: Site): Row[] {
  const copy = JSON.parse(/^const offlineCopy=(\{.*?\});\n/s.exec(site.read('worker.js'))![1]!) as { files: [string, string][] };
  const files = copy.files.map(([place]) => (place === '' || place.endsWith('/') ? `${place}index.html` : place));
  const bytes = files.reduce((sum, file) => sum + zipped(readFileSync(join(site.folder, file))), 0) + zipped(readFileSync(join(site.folder, 'worker.js')));
  return [
    { what: `the whole copy of ${site.pages.length} pages, compressed`, value: bytes / 1e6, unit: 'MB', budget: 2 },
    { what: 'of that the worker with its list', value: zipped(readFileSync(join(site.folder, 'worker.js'))) / 1000, unit: 'kB' },
  ];
}

export async function firstViews(site: Site, browser: Browser): Promise<Row[]> {
  const rows: Row[] = [];
  for (const page of oneOfEachKind(site)) {
    const context = await browser.newContext({ viewport: phone });
    const tab = await context.newPage();
    const sizes: Promise<number>[] = [];
    tab.on('requestfinished', (request) => {
      if (!/icon|manifest/.test(request.url())) sizes.push(request.sizes().then(({ responseBodySize }) => responseBodySize));
    });
    await tab.goto(site.at(page), { waitUntil: 'networkidle' });
    const all = await Promise.all(sizes);
    const form = /^(work-it-out\/.|lists\/.|signs\/|search\/)/.test(page.slice(site.base.length));
    rows.push({ what: `first view of ${page}, ${all.length} requests`, value: all.reduce((sum, size) => sum + size, 0) / 1000, unit: 'kB', budget: form ? 52 : 45 });
    await context.close();
  }
  return rows;
}
