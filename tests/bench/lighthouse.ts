/*
 * Lighthouse on a page of each kind of a club that is no demonstration, served with our headers and with compression. Each page counts
 * with its worst of five views.
 */
import { spawn } from 'node:child_process';
import { cpSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { findBrowser } from '../../src/cli/browser.ts';
import { projectFolder } from '../../src/cli/paths.ts';
import { serve } from '../../src/cli/serve.ts';
import { builtFolder, fixtureFolder, type Built } from '../setup/built-site.ts';
import { oneOfEachKind } from '../e2e/visit.ts';
import { headersOf } from './headers.ts';
import { kindOf } from './kinds.ts';
import { ownPackages } from './own-packages.ts';
import type { Row } from './table.ts';

type View = {
  url: string;
  scores: Record<'performance' | 'accessibility' | 'best-practices' | 'seo', number>;
  largestPaint: number;
  blocked: number;
  shift: number;
  missed: string[];
};

export async function lighthouse(quick: boolean): Promise<Row[]> {
  const packages = await ownPackages('lighthouse', '180 MB');
  const site = await builtFolder(openClub(), 'open');
  const pages = oneOfEachKind(site).filter((page) => !movesOn(site, page));
  const { address, close } = await serve({ folder: site.folder, base: site.base, port: 0, gzip: true, headers: headersOf(site) });
  try {
    const views = await viewsOf(
      packages,
      pages.map((page) => new URL(page, address).href),
      quick ? 3 : 5,
    );
    const rows = [...Map.groupBy(views, ({ url }) => kindOf(site, new URL(url).pathname))].flatMap(([kind, of]) => rowsOf(kind, of));
    return [...worstOf(rows), ...rows];
  } finally {
    await close();
  }
}

/**
 * A demonstration asks robots to stay away, and this copy of a small club does not. Invented numbers and addresses are removed, and the
 * word itself, as checks require.
 */
function openClub(): string {
  const club = join(projectFolder, '.almanac', 'bench-club');
  rmSync(club, { recursive: true, force: true });
  cpSync(fixtureFolder('southern'), club, { recursive: true });
  for (const file of readdirSync(club, { recursive: true, encoding: 'utf8' }).filter((name) => /\.(yaml|mdx)$/.test(name))) {
    const path = join(club, file);
    writeFileSync(
      path,
      readFileSync(path, 'utf8')
        .replace(/^invented: .*\n/gm, '')
        .replace(/\binvented\b/gi, 'local'),
    );
  }
  const fields = join(club, 'club.yaml');
  const text = readFileSync(fields, 'utf8')
    .replace('demonstration: true', 'demonstration: false')
    .replace(/^ +email: .*\n/gm, '')
    .replace(/330-555-01\d\d/g, '1-800-222-1222')
    .replaceAll('example.org', 'club.invalid');
  writeFileSync(fields, text);
  return club;
}

const movesOn = (site: Built, page: string): boolean =>
  page.endsWith('/') && site.read(`${page.slice(site.base.length)}index.html`).includes('http-equiv="refresh"');

async function viewsOf(packages: string, urls: readonly string[], rounds: number): Promise<View[]> {
  const found = await findBrowser();
  if (!found) throw new Error('no browser was found; set ALMANAC_BROWSER to one');
  const browser = found.executablePath ?? (found.channel ? null : chromium.executablePath());
  const child = spawn(process.execPath, [join(packages, 'run.mjs'), JSON.stringify({ urls, rounds, browser, flags: found.args })], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  let output = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    output += text;
    const done = output.split('\n').length - 1;
    if (done % rounds === 0) console.log(`  ${done / rounds} of ${urls.length} pages`);
  });
  const code = await new Promise<number | null>((resolve, reject) => child.on('error', reject).on('close', resolve));
  const views = output
    .split('\n')
    .filter(Boolean)
    .map((line) => JSON.parse(line) as View);
  if (code !== 0 || views.length !== urls.length * rounds)
    throw new Error(`Lighthouse ended with ${code} after ${views.length} of ${urls.length * rounds} views`);
  return views;
}

const NAMES = {
  performance: ['performance', 98],
  accessibility: ['accessibility', 100],
  'best-practices': ['best practice', 100],
  seo: ['findability', 100],
} as const;

/** The worst of all views of a kind. Results within budget share one line for all kinds. */
function rowsOf(kind: string, views: readonly View[]): Row[] {
  const row = (name: string, measured: number, more: Partial<Row>): Row => ({
    part: 'lighthouse',
    name: `${name}, ${kind}`,
    measured,
    unit: 'points',
    inDetail: true,
    ...more,
  });
  const worst = (of: (view: View) => number): number => Math.max(...views.map(of));
  const missed = [...new Set(views.flatMap((view) => view.missed))].join(', ');
  return [
    ...Object.entries(NAMES).map(([id, [name, least]]) =>
      row(name, Math.min(...views.map(({ scores }) => scores[id as keyof View['scores']])), {
        least,
        note: missed && `not full: ${missed}`,
      }),
    ),
    row(
      'largest paint',
      worst(({ largestPaint }) => largestPaint),
      { unit: 'ms' },
    ),
    row(
      'blocked',
      worst(({ blocked }) => blocked),
      { unit: 'ms' },
    ),
    row(
      'layout shift',
      worst(({ shift }) => shift),
      { unit: '' },
    ),
  ];
}

/** The worst page of each measure. */
function worstOf(rows: readonly Row[]): Row[] {
  return [...Map.groupBy(rows, ({ name }) => name.split(', ')[0]!)].map(([name, of]) => {
    const sorted = of.toSorted((a, b) => (a.least === undefined ? b.measured - a.measured : a.measured - b.measured));
    return { ...sorted[0]!, name: `${name}, worst of ${of.length} kinds`, inDetail: false, note: sorted[0]!.name.split(', ')[1]! };
  });
}
