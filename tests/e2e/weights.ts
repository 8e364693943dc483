/* Bytes that a reader downloads, as a host sends them (gzip -9): a file, a page's script, a first view, the whole offline copy. */
import assert from 'node:assert/strict';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, extname, join, posix } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Browser, Request } from '@playwright/test';
import { PAGEFIND_FOLDER } from '../../shared/words/search-files.ts';
import { contentTypeOf, isWorthCompressing } from '../../src/cli/content-types.ts';
import type { Built, Site } from '../setup/built-site.ts';
import { phone } from './visit.ts';

/** The budgets in bytes, and for requests in numbers. `read` is a page to read, `form` one to fill in. */
export const most = {
  html: 14_000,
  /** Spanish takes more letters, and the frame of such a page is in the club's language. */
  translatedHtml: 15_000,
  // They list the whole book, for readers without script.
  listHtml: { 'search/': 18_500, 'words/': 16_500 } as Readonly<Record<string, number>>,
  mostHtml: 12_000,
  styles: 15_000,
  handOutStyles: 2_000,
  fonts: 45_000,
  // 2.0 MB held for 180 pages. The book has over 215 since increase, harvest, winter and the days after a bad find have pages.
  // 2.5 MB in one language; the demo club has 50 pages in a second one, with a search of their own.
  kept: 3_100_000,
  // 1,000 files, because translated pages lie beside their originals.
  keptFiles: 1_000,
  view: { read: 75_000, form: 85_000 },
  requests: { read: 7, form: 9, list: 12 },
} as const;

/** The address of a page inside the site, without the folder of another language. */
export const placeOf = (site: Built, page: string): string => page.slice(site.base.length).replace(/^es\//, '');

/** The script that loads with a page before any press. */
export function mostScript(site: Built, page: string): number {
  const path = placeOf(site, page);
  if (/^lists\/./.test(path)) return 6_000;
  if (path === 'search/') return 6_000;
  return /^(work-it-out\/.|signs\/|hand-out\/)/.test(path) ? 8_000 : 4_000;
}

export const zipped = (bytes: string | Buffer): number => gzipSync(bytes, { level: 9 }).length;

/** The file of a page: `year/index.html`. */
export const fileOf = (site: Built, page: string): string =>
  page.endsWith('/') ? `${page.slice(site.base.length)}index.html` : page.slice(site.base.length);

export const formOf = (site: Built, page: string): 'read' | 'form' =>
  /^(work-it-out\/.|lists\/.|signs\/|search\/|hand-out\/|about\/access\/)/.test(placeOf(site, page)) ? 'form' : 'read';

/** For all files of the site with this ending, or those made of one module. */
export const bytesOf = (site: Built, ending: string, module = ''): number =>
  readdirSync(site.folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith(ending) && (module === '' || name.startsWith(join('assets', `${module}.`))))
    .reduce((sum, name) => sum + onTheWire(site, name), 0);

/** The script files of a page: those it names, and their static imports. */
export function scriptsOf(site: Built, page: string): Set<string> {
  const html = site.read(fileOf(site, page));
  const named = [
    ...html.matchAll(/<script[^>]*\ssrc="([^"]+)"/g),
    ...html.matchAll(/<link[^>]*rel="modulepreload"[^>]*href="([^"]+)"/g),
  ].map(([, source]) => source!.slice(site.base.length));
  return withImports(site, named);
}

/** Script files with their static imports. */
export function withImports(site: Built, named: readonly string[]): Set<string> {
  const files = new Set<string>();
  const take = (file: string): void => {
    if (files.has(file)) return;
    assert.ok(existsSync(join(site.folder, file)), `a page names ${file}`);
    files.add(file);
    const text = readFileSync(join(site.folder, file), 'utf8');
    for (const [, from] of text.matchAll(/(?:\bfrom|\bimport)\s*["'](\.[^"']+)["']/g)) take(posix.normalize(`${dirname(file)}/${from}`));
  };
  for (const file of named) take(file);
  return files;
}

/** The script file that was made of a module: `share-panel` gives `assets/share-panel.Bx1.js`. */
export function scriptNamed(site: Built, module: string): string {
  const found = readdirSync(join(site.folder, 'assets')).filter((name) => name.startsWith(`${module}.`) && name.endsWith('.js'));
  assert.equal(found.length, 1, `one script is named ${module}`);
  return `assets/${found[0]!}`;
}

export const scriptBytes = (site: Built, page: string): number =>
  [...scriptsOf(site, page)].reduce((sum, file) => sum + zipped(readFileSync(join(site.folder, file))), 0);

/** Bytes of an answer as sent. A request that ends after the page was closed is no part of what was measured, and counts as none. */
export const bodySize = (request: Request): Promise<number> =>
  request.sizes().then(
    ({ responseBodySize }) => responseBodySize,
    () => 0,
  );

/** Everything that is fetched until the page is idle, except icon and manifest. `elsewhere`: requests to other hosts. */
export async function firstView(
  browser: Browser,
  site: Pick<Site, 'at'>,
  page: string,
): Promise<{ size: number; names: string[]; elsewhere: string[] }> {
  const context = await browser.newContext({ viewport: phone });
  const tab = await context.newPage();
  const sizes: Promise<{ name: string; size: number }>[] = [];
  const elsewhere: string[] = [];
  const { origin } = new URL(site.at(page));
  tab.on('request', (request) => {
    if (!request.url().startsWith(`${origin}/`)) elsewhere.push(request.url());
  });
  tab.on('requestfinished', (request) => {
    if (/icon\.svg|manifest/.test(request.url())) return;
    sizes.push(bodySize(request).then((size) => ({ name: new URL(request.url()).pathname, size })));
  });
  await tab.goto(site.at(page), { waitUntil: 'networkidle' });
  const all = await Promise.all(sizes);
  await context.close();
  assert.ok(
    all.some(({ name }) => name === page),
    `${page} itself was measured`,
  );
  return { size: all.reduce((sum, { size }) => sum + size, 0), names: all.map(({ name }) => name), elsewhere };
}

export type Kept = { file: string; size: number };

/** Files of the offline copy in every reader's browser, with the worker itself. Pictures are stored only when viewed. */
export function keptFiles(site: Built): Kept[] {
  const [, list] = /^const offlineCopy=(\{.*\});\n/.exec(site.read('worker.js')) ?? [];
  const { files } = JSON.parse(list!) as { files: [place: string, digest: string][] };
  return ['worker.js', ...files.map(([place]) => (place === '' || place.endsWith('/') ? `${place}index.html` : place))].map((file) => ({
    file,
    size: onTheWire(site, file),
  }));
}

/** Hosts compress text. Compressed files and pictures are sent as they are. */
function onTheWire(site: Built, file: string): number {
  const bytes = readFileSync(join(site.folder, file));
  return isWorthCompressing(contentTypeOf(file)) ? zipped(bytes) : bytes.length;
}

/** The purpose of an offline file: pages, search, script, other. */
export const kindOf = ({ file }: Kept): string =>
  file.endsWith('.html')
    ? 'pages'
    : file.startsWith('search/') || file.startsWith(PAGEFIND_FOLDER)
      ? 'search'
      : extname(file) === '.js'
        ? 'script'
        : 'other';

/** The most bytes of a page's HTML. */
export const mostHtml = (site: Built, page: string): number => {
  const path = page.slice(site.base.length);
  return most.listHtml[path] ?? (path.startsWith('es/') ? most.translatedHtml : most.html);
};
