// What a phone needs to install the almanac: identity, scope, start, shortcuts, and icons that it may cut to a circle.
import assert from 'node:assert/strict';
import { join } from 'node:path';
import sharp from 'sharp';
import { test } from 'vitest';
import { projectFolder } from '../../../src/cli/paths.ts';
import { manifest } from '../../../src/lib/manifest.ts';

type Icon = { src: string; sizes: string; purpose?: string };
const made = (empty: string[] = []) =>
  JSON.parse(manifest({ name: 'Quarry Town Beekeepers', almanac: 'The Quarry Almanac', language: 'en-US' }, '/bees/', new Set(empty))) as {
    icons: Icon[];
    shortcuts: { name: string; url: string }[];
  } & Record<'id' | 'name' | 'start_url' | 'scope' | 'display', string>;

// W3C Web Application Manifest: the start address lies within the scope, and the identity stays the same whatever the start address is.
test('name, identity, start and scope are those of the folder where the site lies', () => {
  const { id, name, start_url: start, scope, display } = made();
  assert.deepEqual(
    { id, name, start, scope, display },
    { id: '/bees/', name: 'The Quarry Almanac', start: '/bees/', scope: '/bees/', display: 'standalone' },
  );
});

test('shortcuts lead to pages that this almanac has', () => {
  const names = (empty?: string[]) => made(empty).shortcuts.map(({ name, url }) => `${name} ${url}`);
  assert.deepEqual(names(), ['Now /bees/', 'Checklists /bees/lists/', 'Mite count /bees/work-it-out/mite-count/']);
  assert.deepEqual(names(['lists/']), ['Now /bees/', 'Mite count /bees/work-it-out/mite-count/']);
});

test('each icon has the size that it states', async () => {
  for (const { src, sizes } of made().icons.filter(({ src: file }) => file.endsWith('.png'))) {
    const { width, height } = await sharp(join(projectFolder, 'public', src.replace('/bees/', ''))).metadata();
    assert.equal(`${width}x${height}`, sizes);
  }
});

// W3C Web Application Manifest, maskable icons: the safe zone is a circle around the middle, with a radius of two fifths of the width.
test('the drawing of the maskable icon lies within its safe zone, and paper fills the rest', async () => {
  const icon = made().icons.find(({ purpose }) => purpose === 'maskable')!;
  const { data, info } = await sharp(join(projectFolder, 'public', icon.src.replace('/bees/', '')))
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const middle = (info.width - 1) / 2;
  const isPaper = (at: number): boolean =>
    [0xfa, 0xf7, 0xee].every((value, channel) => Math.abs(data[at * info.channels + channel]! - value) <= 8);
  let farthest = 0;
  for (let at = 0; at < info.width * info.height; at += 1)
    if (!isPaper(at)) farthest = Math.max(farthest, Math.hypot((at % info.width) - middle, Math.floor(at / info.width) - middle));
  assert.ok(farthest > info.width / 4, 'there is a drawing');
  assert.ok(farthest <= info.width * 0.4, `it reaches ${Math.round((farthest / info.width) * 100)} % of the width from the middle`);
});
