// A published picture is upright, in its colours, and not enlarged, for every camera orientation and file format.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import sharp, { type Sharp } from 'sharp';
import { unwrap } from '../../../shared/result.ts';
import { cutDown, type Cut } from '../../../src/pictures/cut-down.ts';
import { apart, CORNERS, flat, quarters, quartersOf, stored, type Colour } from './made.ts';

const cuts = async (bytes: Buffer): Promise<Cut[]> => unwrap(await cutDown(bytes));

const sizes = (made: Cut[]): string[] => made.map(({ width, height }) => `${width} × ${height}`);

/** JPEG changes a colour a little. */
async function sameQuarters(bytes: Buffer): Promise<void> {
  const seen = await quartersOf(bytes);
  for (const [corner, colour] of Object.entries(CORNERS))
    assert.ok(apart(seen[corner as keyof typeof CORNERS], colour) < 12, `${corner}: ${seen[corner as keyof typeof CORNERS]} for ${colour}`);
}

for (const orientation of [1, 2, 3, 4, 5, 6, 7, 8]) {
  test(`held for orientation ${orientation}: upright in both sizes`, async () => {
    const photo = await stored(1000, 700, orientation, quarters(1000, 700)).jpeg({ quality: 95 }).withMetadata({ orientation }).toBuffer();
    assert.equal((await sharp(photo).metadata()).orientation, orientation, 'the original says how it was held');
    const made = await cuts(photo);
    assert.deepEqual(sizes(made), ['960 × 672', '480 × 336']);
    for (const { bytes } of made) await sameQuarters(bytes);
  });
}

test('the orientation tag works in PNG, WebP and TIFF too', async () => {
  for (const kind of ['png', 'webp', 'tiff'] as const) {
    const photo = await stored(600, 400, 6, quarters(600, 400))
      .toFormat(kind, kind === 'webp' ? { lossless: true } : {})
      .withMetadata({ orientation: 6 })
      .toBuffer();
    const [one, ...others] = await cuts(photo);
    assert.deepEqual([one!.width, one!.height, others.map(({ width }) => width)], [600, 400, [480]], kind);
    await sameQuarters(one!.bytes);
  }
});

test('never enlarged; a second size only where it saves bytes; a tall one is limited in height', async () => {
  for (const [width, height, expect] of [
    [300, 200, ['300 × 200']],
    [590, 300, ['590 × 300']],
    [600, 300, ['600 × 300', '480 × 240']],
    [960, 240, ['960 × 240', '480 × 120']],
    [3000, 4000, ['960 × 1280', '480 × 640']],
    [1080, 2400, ['648 × 1440', '480 × 1067']],
  ] as const)
    assert.deepEqual(sizes(await cuts(await flat(width, height, [90, 120, 60]).png().toBuffer())), expect, `${width} × ${height}`);
});

const published = async (photo: Sharp): Promise<Colour> => (await quartersOf((await cuts(await photo.toBuffer()))[0]!.bytes)).topLeft;

test('other formats: grey, 16 bits per colour, transparent parts on white, a still GIF, AVIF', async () => {
  const near = async (photo: Sharp, colour: Colour): Promise<void> => {
    const seen = await published(photo);
    assert.ok(apart(seen, colour) < 8, `${seen} for ${colour}`);
  };
  await near(flat(400, 300, [120, 120, 120]).toColourspace('b-w').png(), [120, 120, 120]);
  await near(flat(400, 300, [200, 100, 50]).toColourspace('rgb16').png(), [200, 100, 50]);
  await near(
    sharp({ create: { width: 400, height: 300, channels: 4, background: { r: 0, g: 0, b: 0, alpha: 0 } } }).png(),
    [255, 255, 255],
  );
  await near(flat(400, 300, [200, 100, 50]).gif(), [200, 100, 50]);
  await near(flat(400, 300, [200, 100, 50]).avif({ quality: 80, effort: 0 }), [200, 100, 50]);
});

test('wide-gamut and print colours become sRGB', async () => {
  const p3 = await flat(400, 300, [150, 120, 90]).withIccProfile('p3').png().toBuffer();
  assert.ok((await sharp(p3).metadata()).icc, 'the original has a profile');
  const raw = [...(await sharp(p3, { ignoreIcc: true }).extract({ left: 5, top: 5, width: 1, height: 1 }).raw().toBuffer())].slice(
    0,
    3,
  ) as unknown as Colour;
  assert.ok(apart(raw, [150, 120, 90]) >= 2, 'its numbers are of the wider space');
  const seen = (await quartersOf((await cuts(p3))[0]!.bytes)).topLeft;
  assert.ok(apart(seen, [150, 120, 90]) <= 3, `${seen}`);
  const print = await flat(400, 300, [200, 60, 60]).toColourspace('cmyk').jpeg({ quality: 95 }).toBuffer();
  assert.equal((await sharp(print).metadata()).space, 'cmyk');
  const red = (await quartersOf((await cuts(print))[0]!.bytes)).topLeft;
  assert.ok(red[0] > 150 && red[1] < 110 && red[2] < 110, `${red} is still red`);
});
