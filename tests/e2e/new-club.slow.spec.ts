// A club of answers alone is built: every page opens without a fault, and every link has a target.
import assert from 'node:assert/strict';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from './fixtures.ts';
import type { Browser } from '@playwright/test';
import { serve } from '../../src/cli/serve.ts';
import { writeNewClub } from '../fixtures/new-club.ts';
import { builtFolder, type Site } from '../setup/built-site.ts';
import { linksOf } from './links.ts';
import { nothing, visit } from './visit.ts';

const folder = mkdtempSync(join(tmpdir(), 'club-'));
let site: Site;
let browser: Browser;
test.beforeAll(async ({ browser: launched }) => {
  writeNewClub(folder, 'devon');
  const built = await builtFolder(folder, 'new-club');
  const { address, close } = await serve({ folder: built.folder, base: built.base, port: 0, gzip: true });
  site = { ...built, address, at: (page) => new URL(address).origin + page, close };
  browser = launched;
});
test.afterAll(async () => {
  await site?.close();
  rmSync(folder, { recursive: true, force: true });
});

test('every link, form and file has a target', { tag: '@slow' }, async () => {
  const { named, faults } = await linksOf(site);
  assert.ok(named > site.pages.length, `${named} addresses`);
  nothing(faults);
});

test('every page opens with its heading and the emergency line, and no script fails', { tag: '@slow' }, async () => {
  const failed: string[] = [];
  nothing(
    await visit(
      { browser, site, prepare: async (page) => void page.on('pageerror', (error) => failed.push(`${page.url()}: ${error.message}`)) },
      async (page) => {
        const [headings, text] = [await page.locator('h1').count(), await page.locator('body').innerText()];
        return [
          ...(headings === 1 ? [] : [`${headings} headings`]),
          ...(text.includes('999') ? [] : ['no number to ring']),
          ...(/undefined|NaN|\[object/.test(text) ? ['a value that is none'] : []),
        ];
      },
    ),
  );
  nothing(failed);
});

test('its own meeting and contact are on its pages, and none says that the club is invented', { tag: '@slow' }, () => {
  assert.ok(site.pages.includes('/meetings/2027-01-14-club-meeting/'));
  assert.match(site.read('who-to-ask/index.html'), /Bee inspection office/);
  for (const page of site.pages)
    assert.doesNotMatch(
      site.read(page.endsWith('/') ? `${page.slice(1)}index.html` : page.slice(1)),
      /A demonstration: this club|Tamarack/,
      page,
    );
});
