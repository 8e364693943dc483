// Search over the whole demo: every number as on its page; and a second engine's opinion on which pages hold a word.
import assert from 'node:assert/strict';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { close, createIndex } from 'pagefind';
import type { Browser } from 'playwright-core';
import { serve } from '../../src/desk/serve.ts';
import { openIndex } from '../../src/islands/search/engine.ts';
import { lookUp } from '../../src/islands/search/look-up.ts';
import { demoSite, openBrowser, type Site } from '../site/built-site.ts';
import { numbersUnlike } from '../site/index-numbers.ts';
import { nothing } from '../site/visit.ts';

let browser: Browser;
let site: Site;
before(async () => {
  [browser, site] = await Promise.all([openBrowser(), demoSite()]);
});
after(async () => {
  await browser?.close();
  await site?.close();
});

test('every number in the index reads as on its page, to the last sign', { timeout: 240_000 }, async () => {
  const { found, numbers } = await numbersUnlike({ browser, site }, () => true);
  nothing(found);
  assert.ok(numbers > 500, `${numbers} numbers`);
});

/** Words of the trade, plain ones, and some on few pages; without letters that other words begin with. */
const WORDS = [
  'varroa',
  'syrup',
  'smoker',
  'queen',
  'thermometer',
  'newspaper',
  'matchstick',
  'sacbrood',
  'hospital',
  'veterinarian',
  'refrigerator',
  'candy',
  'chimney',
  'pool',
  'mouse',
  'bears',
  'mesh',
  'excluder',
  'registered',
  'propolis',
  'gloves',
  'strips',
  'drones',
  'robbing',
  'moldy',
];

test('pages that Pagefind 1.6 finds for a word are found here too', { timeout: 120_000 }, async () => {
  const folder = mkdtempSync(join(tmpdir(), 'almanac-second-'));
  try {
    const { index } = await createIndex({ forceLanguage: 'en' });
    const { pages } = JSON.parse(site.read('search/index.json')) as { pages: [place: string, title: string][] };
    const whole = pages.filter(([place]) => !place.includes('#'));
    for (const [place, title] of whole) {
      const text = (JSON.parse(site.read(`search/text/${place.slice(0, -1)}.json`)) as Record<string, string>)['']!;
      await index!.addCustomRecord({ url: `/${place}`, content: `${title}. ${text}`, language: 'en' });
    }
    await index!.writeFiles({ outputPath: join(folder, 'pagefind') });
    writeFileSync(join(folder, 'index.html'), '<!doctype html><html lang="en"><title>Second</title></html>');
    const { address, close: shut } = await serve({ folder, base: '/', port: 0, gzip: true });
    const page = await browser.newPage();
    await page.goto(address);
    const second = await page.evaluate(async (words) => {
      const script = '/pagefind/pagefind.js';
      const engine = (await import(script)) as {
        search: (word: string) => Promise<{ results: { data: () => Promise<{ url: string; content: string }> }[] }>;
      };
      return Promise.all(words.map(async (word) => Promise.all((await engine.search(word)).results.map(async ({ data }) => data()))));
    }, WORDS);
    await page.close();
    await shut();
    const engine = await openIndex((path) => Promise.resolve(JSON.parse(site.read(path)) as unknown));
    let held = 0;
    for (const [at, word] of WORDS.entries()) {
      const ours = new Set((await lookUp(`${word} `, engine, 0)).hits.map(({ entry }) => `/${entry.place}`));
      // It also finds pages by the first letters of a word: those that hold the word itself count.
      const theirs = second[at]!.filter(({ content }) => new RegExp(`(?<!\\p{L})${word}(?!\\p{L})`, 'iu').test(content)).map(
        ({ url }) => url,
      );
      held += theirs.length;
      assert.deepEqual(
        theirs.filter((url) => !ours.has(url)),
        [],
        word,
      );
    }
    assert.ok(held > 150, `${held} pages were held against each other`);
  } finally {
    await close();
    rmSync(folder, { recursive: true, force: true });
  }
});
