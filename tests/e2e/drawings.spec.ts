// Drawings of the demo club: on a page, with a name and a text version, black in print, adapted in dark mode, and small.
import assert from 'node:assert/strict';
import { test } from './fixtures.ts';
import type { Browser, Page } from '@playwright/test';
import { readFolder, type Entry } from '../../src/source/folder.ts';
import type { Site } from '../setup/built-site.ts';
import { narrow, nothing, visit } from './visit.ts';

let site: Site;
let browser: Browser;
let pages: string[];
test.beforeAll(async ({ browser: launched, demo }) => {
  site = demo;
  browser = launched;
  pages = site.pages.filter(
    (page) => page.endsWith('/') && site.read(`${page.slice(site.base.length)}index.html`).includes('<figure class="drawing"'),
  );
});

const drawings = (): Entry[] => readFolder(site.content).entries.filter(({ collection }) => collection === 'drawings');

test('each drawing is on a page', () => {
  const shown = pages.map((page) => site.read(`${page.slice(site.base.length)}index.html`)).join('\n');
  const titles = drawings().map(({ fields }) => (fields.value as { title: string }).title);
  assert.ok(titles.length >= 14, `${titles.length} drawings`);
  nothing(titles.filter((title) => !shown.includes(`<title>${title.replaceAll("'", '&#39;')}</title>`)));
});

test('each weighs less than 6 kB', () => {
  nothing(
    drawings().flatMap(({ path, body }) => {
      const size = Buffer.byteLength(body);
      return size > 0 && size < 6144 ? [] : [`${path}: ${size} B`];
    }),
  );
});

test('each drawing has the role of a picture, and its text version below has the same part numbers', async () => {
  nothing(
    await visit({ browser, site, pages }, async (page) => {
      const found: string[] = [];
      await page.evaluate(() => document.querySelectorAll('details').forEach((fold) => (fold.open = true)));
      for (const figure of await page.locator('.drawing').all()) {
        const title = await figure.locator('svg > title').textContent();
        if (!title || (await figure.getByRole('img', { name: title, exact: true }).count()) !== 1)
          found.push(`no picture named "${title}"`);
        if ((await figure.locator('figcaption p').innerText()).length < 80) found.push(`"${title}" has few words`);
        const numbers = new Set(await figure.locator('svg text').allTextContents());
        const parts = await figure.locator('figcaption li').count();
        if (numbers.size !== parts) found.push(`"${title}" has ${numbers.size} numbers and ${parts} parts`);
      }
      return found;
    }),
  );
});

/** The paint of the lines and the white parts of the first drawing. */
const paints = (page: Page): Promise<{ line: string; number: string; white: string[] }> =>
  page.evaluate(() => {
    const paint = (element: Element | null, property: string): string =>
      element ? getComputedStyle(element).getPropertyValue(property) : '';
    return {
      line: paint(document.querySelector('.drawing path:not([stroke="none"])'), 'stroke'),
      number: paint(document.querySelector('.drawing text'), 'fill'),
      white: [...document.querySelectorAll('.drawing .paper')].map((shape) => paint(shape, 'fill')),
    };
  });

const all = (colours: string[], colour: string): boolean => colours.every((each) => each === colour);

test('at night the lines are light on the dark page, and it prints black on white all the same; on the narrowest phone its numbers are 18 px high, and nothing runs out of the page', async () => {
  nothing(
    await visit({ browser, site, pages, context: { viewport: narrow } }, async (page) => {
      await page.evaluate(() => document.documentElement.setAttribute('data-light', 'night'));
      const night = await paints(page);
      await page.emulateMedia({ media: 'print' });
      const paper = await paints(page);
      await page.emulateMedia({ media: null });
      const sizes = await page
        .locator('.drawing text')
        .evaluateAll((texts) => texts.map((text) => Number(text.getAttribute('font-size')) * (text as SVGTextElement).getScreenCTM()!.a));
      const wide = await page.evaluate(
        () =>
          [...document.querySelectorAll('.drawing svg')].filter(
            (svg) => svg.getBoundingClientRect().right > document.documentElement.clientWidth,
          ).length,
      );
      return [
        ...(night.line === 'rgb(242, 236, 221)' && all(night.white, 'rgb(18, 29, 27)')
          ? []
          : [`at night ${night.line}, ${night.white[0]}`]),
        ...(paper.line === 'rgb(0, 0, 0)' && ['', 'rgb(0, 0, 0)'].includes(paper.number) && all(paper.white, 'rgb(255, 255, 255)')
          ? []
          : [`on paper ${paper.line}, ${paper.number}, ${paper.white[0]}`]),
        ...(sizes.length > 0 && Math.min(...sizes) < 18 ? [`${Math.min(...sizes)} px`] : []),
        ...(wide > 0 ? [`${wide} too wide`] : []),
      ];
    }),
  );
});

test('where colours are forced, lines and paper are those of the reader', async () => {
  nothing(
    await visit({ browser, site, pages, context: { forcedColors: 'active' } }, async (page) => {
      const system = await page.evaluate(() => {
        const sample = document.body.appendChild(document.createElement('p'));
        Object.assign(sample.style, { color: 'CanvasText', backgroundColor: 'Canvas' });
        const { color, backgroundColor } = getComputedStyle(sample);
        return { color, backgroundColor };
      });
      const { line, white } = await paints(page);
      return line === system.color && all(white, system.backgroundColor)
        ? []
        : [`${line}, ${white[0]}, while the reader has ${system.color} on ${system.backgroundColor}`];
    }),
  );
});

test('no drawing runs, loads or links to anything', () => {
  const drawn = pages.flatMap(
    (page) => site.read(`${page.slice(site.base.length)}index.html`).match(/<figure class="drawing">[\s\S]*?<\/svg>/g) ?? [],
  );
  assert.ok(drawn.length >= 14);
  nothing(
    drawn
      .filter((svg) => /<(?:script|style|image|use|a|foreignObject)\b|\s(?:on\w+|style|href|xlink:href|id)=|url\(|#[0-9a-f]{3}/i.test(svg))
      .map((svg) => svg.slice(0, 80)),
  );
});
