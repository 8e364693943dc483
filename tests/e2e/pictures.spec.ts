// A club with photographs from members, published under /club/: files, pages, print, and pictures that fail to load.
import assert from 'node:assert/strict';
import { appendFileSync, cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from './fixtures.ts';
import type { Browser } from '@playwright/test';
import { serve, type Served } from '../../src/cli/serve.ts';
import { WIDTHS } from '../../src/pictures/cut-down.ts';
import { contentsOf } from '../build/workshop.ts';
import { CORNERS, apart, noise, quarters, quartersOf, stored } from '../unit/pictures/made.ts';
import { builtFolder, fixtureFolder, type Built } from '../setup/built-site.ts';
import { axe } from './look.ts';
import { recordsIn } from './search-engine.ts';
import { desk, open, phone } from './visit.ts';

const folder = mkdtempSync(join(tmpdir(), 'pictured-'));
const club = join(folder, 'club');
const PAGE = 'know-how/few-and-many/';
const ALT = 'Four quarters of a frame, red above blue at the left';

async function fillClub(): Promise<void> {
  cpSync(fixtureFolder('sub-folder'), club, { recursive: true });
  const sideways = stored(1600, 1200, 6, quarters(1600, 1200))
    .withExif({ IFD0: { Make: 'Trailcam' }, IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '41/1 5/1 0/1' } })
    .withMetadata({ orientation: 6 });
  writeFileSync(join(club, 'articles', 'IMG 2034.JPG'), await sideways.jpeg({ quality: 92 }).toBuffer());
  writeFileSync(join(club, 'articles', 'cell.png'), await stored(450, 800, 1, quarters(450, 800)).png().toBuffer());
  writeFileSync(join(club, 'articles', 'restless.jpg'), await noise(1000, 700).jpeg({ quality: 97 }).toBuffer());
  writeFileSync(join(club, 'articles', 'unused.jpg'), await noise(400, 300).jpeg().toBuffer());
  writeFileSync(join(club, 'checklists', 'draft.jpg'), await noise(410, 300).jpeg().toBuffer());
  // A browser fetches pictures a few screens ahead.
  const farBelow = 'A few words more, so that what follows is far below.\n\n'.repeat(90);
  appendFileSync(
    join(club, 'articles', 'few-and-many.mdx'),
    `\n\n![${ALT}](./IMG 2034.JPG "Red stands above blue.")\n\n![A cell drawn much higher than it is wide](cell.png)\n\n${farBelow}![Dots without order](.\\restless.jpg)\n`,
  );
  const list = readFileSync(join(club, 'checklists', 'swarm-check.mdx'), 'utf8');
  writeFileSync(
    join(club, 'checklists', 'not-yet.mdx'),
    `${list
      .replace(/^title: .*/m, 'title: Not yet')
      .replace(/^formerly: .*\n/m, '')
      .replace('yard: true', 'yard: true\ndraft: true')}\n![Dots for later](draft.jpg)\n`,
  );
}

let site: Built;
let served: Served;
let browser: Browser;
test.beforeAll(async ({ browser: launched }) => {
  await fillClub();
  site = await builtFolder(club, 'pictured', { base: '/club/' });
  served = await serve({ folder: site.folder, base: site.base, port: 0 });
  browser = launched;
});
test.afterAll(async () => {
  await served?.close();
  rmSync(folder, { recursive: true, force: true });
});

const published = (): string[] => readdirSync(join(site.folder, 'pictures')).sort();

test('the site contains the pictures of its pages, in two sizes, within their limits, and no original', () => {
  const names = published();
  assert.match(
    names.join(' '),
    /^cell-450-\w{8}\.jpg img-2034-480-\w{8}\.jpg img-2034-960-\w{8}\.jpg restless-480-\w{8}\.jpg restless-\d{3}-\w{8}\.jpg$/,
  );
  for (const name of names) {
    const size = statSync(join(site.folder, 'pictures', name)).size;
    assert.ok(size <= WIDTHS[name.includes('-480-') ? 1 : 0].bytes, `${name}: ${size}`);
    assert.ok(site.read(`${PAGE}index.html`).includes(`/club/pictures/${name}`), name);
  }
  for (const [path, text] of contentsOf(site.folder)) {
    assert.doesNotMatch(text, /Trailcam|GPSLatitude|IMG 2034|Dots for later/, path);
    if (!path.startsWith('pictures/')) assert.doesNotMatch(path, /jpe?g$/i);
  }
});

test('the sideways photograph is upright in both sizes', async () => {
  for (const name of published().filter((each) => each.startsWith('img-2034'))) {
    const seen = await quartersOf(readFileSync(join(site.folder, 'pictures', name)));
    for (const [corner, colour] of Object.entries(CORNERS))
      assert.ok(apart(seen[corner as keyof typeof CORNERS], colour) < 12, `${name}, ${corner}: ${seen[corner as keyof typeof CORNERS]}`);
  }
});

test('search finds the description and the caption of a picture', () => {
  const index = recordsIn(site.folder).map(({ text }) => text);
  for (const words of [ALT, 'Red stands above blue.'])
    assert.ok(
      index.some((text) => text.includes(words)),
      words,
    );
});

for (const [name, context, wide] of [
  ['a phone', { viewport: phone, deviceScaleFactor: 3 }, 350],
  ['a desk', { viewport: desk }, 672],
] as const) {
  test(`${name}: nothing moves when a picture loads, none is wider than the text, and each loads in the size it needs`, async () => {
    const boxes = async (comes: boolean): Promise<{ x: number; y: number; width: number; height: number; from: string }[]> => {
      const { page, context: own } = await open(browser, 'about:blank', { ...context, serviceWorkers: 'block' });
      if (!comes) await page.route('**/pictures/**', (route) => route.abort());
      await page.goto(served.address + PAGE);
      await page.evaluate(() => document.querySelectorAll('details').forEach((fold) => (fold.open = true)));
      for (const picture of await page.locator('main img').all()) await picture.scrollIntoViewIfNeeded();
      if (comes) await page.waitForFunction(() => [...document.images].every((image) => image.complete && image.naturalWidth > 0));
      const found = await page.locator('main img').evaluateAll((images) =>
        (images as HTMLImageElement[]).map((image) => {
          const { x, y, width, height } = image.getBoundingClientRect();
          return { x, y: y + scrollY, width, height, from: image.currentSrc };
        }),
      );
      await own.close();
      return found;
    };
    const [there, absent] = [await boxes(true), await boxes(false)];
    assert.equal(there.length, 3);
    for (const [index, box] of there.entries()) {
      assert.ok(
        Math.abs(box.y - absent[index]!.y) < 1.5 && Math.abs(box.height - absent[index]!.height) < 1.5,
        `picture ${index + 1} moved: ${JSON.stringify([box, absent[index]])}`,
      );
      assert.ok(box.width <= wide + 1);
    }
    assert.equal(Math.round(there[0]!.width), wide);
    assert.ok(Math.abs(there[0]!.width / there[0]!.height - 4 / 3) < 0.02, 'upright');
    assert.match(there[0]!.from, /\/img-2034-960-/);
  });
}

test('a picture that fails to load shows its description in a frame, with every display option', async () => {
  const { page, context } = await open(browser, 'about:blank', { serviceWorkers: 'block' });
  await page.route('**/pictures/**', (route) => route.abort());
  await page.goto(served.address + PAGE);
  await page.evaluate(() => document.querySelectorAll('details').forEach((fold) => (fold.open = true)));
  const picture = page.getByRole('img', { name: ALT });
  await picture.scrollIntoViewIfNeeded();
  for (const [light, forced] of [
    ['', 'none'],
    ['night', 'none'],
    ['sun', 'none'],
    ['', 'active'],
  ] as const) {
    await page.emulateMedia({ forcedColors: forced });
    await page.evaluate((form) => document.documentElement.setAttribute('data-light', form), light);
    const { border, size, ink, paper } = await picture.evaluate((image) => {
      const style = getComputedStyle(image);
      return {
        border: style.borderTopStyle + style.borderTopWidth,
        size: Number.parseFloat(style.fontSize),
        ink: style.color,
        paper: style.backgroundColor,
      };
    });
    assert.equal(border, 'solid1px');
    assert.ok(size >= 16, `letters of ${size} px`);
    assert.notEqual(ink, paper);
  }
  await page.emulateMedia({ forcedColors: 'none' });
  assert.deepEqual(await axe(page), []);
  await context.close();
});

test('in print every picture is there, also those below the screen, and none fills a sheet', async () => {
  const { page, context } = await open(browser, served.address + PAGE, { viewport: phone, serviceWorkers: 'block' });
  const here = (): Promise<boolean> => page.evaluate(() => [...document.images].every((image) => image.complete && image.naturalWidth > 0));
  assert.equal(await here(), false, 'some are far below');
  // Printing requests all of them. A person sees a preview meanwhile, and a test tries again.
  await page.pdf({ format: 'Letter' });
  await page.waitForFunction(() => [...document.images].every((image) => image.complete && image.naturalWidth > 0));
  const paper = (await page.pdf({ format: 'Letter' })).toString('latin1');
  assert.equal(paper.match(/\/Subtype \/Image\b/g)?.length, 3);
  await page.emulateMedia({ media: 'print' });
  for (const picture of await page.locator('main img').all()) {
    await picture.scrollIntoViewIfNeeded();
    const { width, height } = (await picture.boundingBox())!;
    // 90 mm at 96 dots per inch, and the frame.
    assert.ok(height <= (90 / 25.4) * 96 + 2, `${height}`);
    assert.ok(width <= phone.width);
  }
  await context.close();
});
