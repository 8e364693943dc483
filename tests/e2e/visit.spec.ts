// The sample pages of the short tests cover every element that any page is made of.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { test } from './fixtures.ts';
import type { Site } from '../setup/built-site.ts';
import { brokenWords } from './rules.ts';
import { desk, marksIn, narrow, nothing, oneOfEachKind, phone, visit } from './visit.ts';

let site: Site;
test.beforeAll(async ({ demo }) => {
  site = demo;
});

const textOf = (page: string): string => site.read(`${page.slice(site.base.length)}${page.endsWith('/') ? 'index.html' : ''}`);

test('every element, class and mark of every page is on a sample page, and those are few', () => {
  const chosen = oneOfEachKind(site);
  const seen = new Set(chosen.flatMap((page) => [...marksIn(textOf(page))]));
  assert.ok(seen.size > 250, `${seen.size} marks`);
  nothing(site.pages.flatMap((page) => [...marksIn(textOf(page))].filter((mark) => !seen.has(mark)).map((mark) => `${mark} of ${page}`)));
  assert.ok(chosen.length < site.pages.length / 3, `${chosen.length} of ${site.pages.length}`);
});

test('every custom element in the code is on a sample page', () => {
  const code = ['src/calculators', 'src/client'].flatMap((room) =>
    readdirSync(room, { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.ts'))
      .map((file) => readFileSync(`${room}/${file}`, 'utf8')),
  );
  const tags = code.flatMap((text) =>
    [...text.matchAll(/(?:defineCalculator<[^(]*>|customElements\.define)\(\s*'([a-z]+-[a-z-]+)'/g)].map(([, tag]) => tag!),
  );
  assert.ok(tags.length >= 11, tags.join(', '));
  const html = oneOfEachKind(site).map(textOf).join('');
  assert.deepEqual(
    tags.filter((tag) => !html.includes(`<${tag}`)),
    [],
  );
});

test('the test detects a button squeezed beside its field, and there is none', async ({ browser }) => {
  for (const viewport of [narrow, phone, desk]) {
    const pages = oneOfEachKind(site).filter((page) => marksIn(textOf(page)).has('.day-box'));
    assert.ok(pages.length > 0);
    nothing(await visit({ browser, site, pages, context: { viewport } }, (page) => page.evaluate(brokenWords)));
    const squeezed = await visit({ browser, site, pages, context: { viewport } }, async (page) => {
      await page.evaluate(() =>
        document.querySelectorAll<HTMLElement>('.day-box button').forEach((button) => (button.style.width = '2.5rem')),
      );
      return page.evaluate(brokenWords);
    });
    assert.match(squeezed.join(), /"Today" of "Today" is broken in two/);
  }
});
