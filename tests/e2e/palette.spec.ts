// The four statuses differ by word, by shape and by lightness, in light and dark mode, with colour vision deficiency, and in grey. A
// browser's own simulation shows them, and is compared with the published matrices.
import assert from 'node:assert/strict';
import { note, test } from './fixtures.ts';
import type { Browser, Page } from '@playwright/test';
import sharp from 'sharp';
import { SEEN_BY, type Matrix } from '../tables/colour-vision.ts';
import type { Site } from '../setup/built-site.ts';
import { open } from './visit.ts';

type Colour = readonly [number, number, number];
const STATUSES = ['settled', 'watch', 'act', 'law'] as const;
const SIGHTS = ['none', 'protanopia', 'deuteranopia', 'tritanopia', 'achromatopsia'] as const;
/** Steps of L*, of which 100 lie between black and white. Our own limit: no standard names one. */
const APART = 15;

let site: Site;
let browser: Browser;
let page: Page;
test.beforeAll(async ({ browser: launched, demo }) => {
  site = demo;
  browser = launched;
  ({ page } = await open(browser, site.at('/pests/'), { viewport: { width: 800, height: 600 } }));
  await page.evaluate((statuses) => {
    document
      .querySelector('main')!
      .replaceChildren(
        ...statuses.map((status) =>
          Object.assign(document.createElement('p'), { id: status, className: `status ${status}`, textContent: `The word for ${status}` }),
        ),
      );
  }, STATUSES);
});

const linear = (value: number): number => (value <= 10 ? value / 3294 : ((value / 255 + 0.055) / 1.055) ** 2.4);
const shown = (value: number): number => Math.round(255 * (value <= 0.0031308 ? 12.92 * value : 1.055 * value ** (1 / 2.4) - 0.055));
const luminance = ([red, green, blue]: Colour): number => 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
/** CIE 1976 L*. */
const lightness = (colour: Colour): number =>
  luminance(colour) > 0.008856 ? 116 * Math.cbrt(luminance(colour)) - 16 : 903.3 * luminance(colour);
const seenAs = (matrix: Matrix, colour: Colour): Colour => {
  const [red, green, blue] = colour.map(linear) as [number, number, number];
  return matrix.map((row) => shown(Math.min(1, Math.max(0, row[0] * red + row[1] * green + row[2] * blue)))) as unknown as Colour;
};
const contrast = (one: Colour, other: Colour): number => {
  const [dark, bright] = [luminance(one), luminance(other)].sort((a, b) => a - b) as [number, number];
  return (bright + 0.05) / (dark + 0.05);
};
const written = (colour: string): Colour =>
  colour
    .match(/[\d.]+/g)!
    .slice(0, 3)
    .map(Number) as unknown as Colour;

/** Background and text colour of a status in its style. */
const styled = (status: string): Promise<{ ground: Colour; ink: Colour }> =>
  page
    .locator(`#${status}`)
    .evaluate((element) => [getComputedStyle(element).backgroundColor, getComputedStyle(element).color])
    .then(([ground, ink]) => ({ ground: written(ground!), ink: written(ink!) }));

/** The pixel between a status's edge and its shape, as painted. */
async function painted(status: string): Promise<Colour> {
  const box = (await page.locator(`#${status}`).boundingBox())!;
  const picture = await page.screenshot({ clip: { x: box.x + 5, y: box.y + box.height / 2, width: 2, height: 2 } });
  const { data } = await sharp(picture).removeAlpha().raw().toBuffer({ resolveWithObject: true });
  return [data[0]!, data[1]!, data[2]!];
}

for (const form of ['day', 'night'] as const) {
  test(`by ${form} every two statuses differ in lightness by ${APART} of 100, for each kind of eye and in grey`, async ({}) => {
    await page.evaluate((light) => (document.documentElement.dataset.light = light), form);
    const session = await page.context().newCDPSession(page);
    for (const sight of SIGHTS) {
      await session.send('Emulation.setEmulatedVisionDeficiency', { type: sight });
      const seen: Colour[] = [];
      for (const status of STATUSES) seen.push(await painted(status));
      note(`${form}, ${sight}: ${seen.map((colour, at) => `${STATUSES[at]} ${lightness(colour).toFixed(0)}`).join(', ')}`);
      for (const [at, colour] of seen.entries()) {
        for (const [after, other] of [...seen.entries()].slice(at + 1))
          assert.ok(
            Math.abs(lightness(colour) - lightness(other)) >= APART,
            `${sight}: ${STATUSES[at]} ${lightness(colour).toFixed(1)}, ${STATUSES[after]} ${lightness(other).toFixed(1)}`,
          );
        const { ground, ink } = await styled(STATUSES[at]!);
        const matrix = sight in SEEN_BY ? SEEN_BY[sight as keyof typeof SEEN_BY] : null;
        if (matrix)
          seenAs(matrix, ground).forEach((value, part) =>
            assert.ok(
              Math.abs(value - colour[part]!) <= 3,
              `${sight} ${STATUSES[at]}: the matrix gives ${seenAs(matrix, ground)}, the browser paints ${colour}`,
            ),
          );
        if (matrix) assert.ok(contrast(seenAs(matrix, ground), seenAs(matrix, ink)) >= 4.5, `${sight}: the word of ${STATUSES[at]}`);
      }
    }
    await session.send('Emulation.setEmulatedVisionDeficiency', { type: 'none' });
    await session.detach();
  });
}

test('each status has a shape of its own, in every form', async () => {
  const shapes = (): Promise<string[]> =>
    page.evaluate(
      (statuses) =>
        statuses.map((status) => {
          const { transform, borderRadius, backgroundColor, content } = getComputedStyle(document.getElementById(status)!, '::before');
          return content === 'none' ? '' : `${transform} ${borderRadius} ${/, 0\)$/.test(backgroundColor) ? 'empty' : 'full'}`;
        }),
      STATUSES,
    );
  for (const light of ['day', 'night', 'sun']) {
    await page.evaluate((form) => (document.documentElement.dataset.light = form), light);
    assert.equal(new Set((await shapes()).filter(Boolean)).size, STATUSES.length, light);
  }
});
