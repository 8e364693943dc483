// Published pictures stay within their limits for any original, and one original gives the same bytes.
import assert from 'node:assert/strict';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, test } from 'vitest';
import sharp from 'sharp';
import { ok, unwrap } from '../../../shared/result.ts';
import { cutDown, WIDTHS } from '../../../src/pictures/cut-down.ts';
import { plainStem, published } from '../../../src/pictures/kept.ts';
import { flat, noise } from './made.ts';

const folder = mkdtempSync(join(tmpdir(), 'pictures-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test('12 MB of the most detailed photograph give two files within their limits', async (t) => {
  const photo = await noise(4000, 3000).blur(0.6).jpeg({ quality: 98 }).toBuffer();
  assert.ok(photo.length > 12_000_000, `${photo.length} bytes`);
  const cuts = unwrap(await cutDown(photo));
  void t.annotate(cuts.map(({ width, height, bytes }) => `${width} × ${height}: ${bytes.length} bytes`).join(', '));
  assert.equal(cuts[0]!.width, WIDTHS[0].width);
  for (const [index, { bytes }] of cuts.entries()) assert.ok(bytes.length <= WIDTHS[index]!.bytes);
});

test('random pixels are made smaller until they fit', async (t) => {
  const cuts = unwrap(await cutDown(await noise(960, 1440).png({ compressionLevel: 0 }).toBuffer()));
  void t.annotate(cuts.map(({ width, height, bytes }) => `${width} × ${height}: ${bytes.length} bytes`).join(', '));
  assert.ok(cuts[0]!.width < 960);
  for (const [index, { bytes, width, height }] of cuts.entries()) {
    assert.ok(bytes.length <= WIDTHS[index]!.bytes, `${bytes.length}`);
    assert.ok(Math.abs(height / width - 1.5) < 0.01, 'its shape is kept');
  }
});

/** Every file below a folder with its bytes. */
const contents = (path: string): [string, string][] =>
  readdirSync(path)
    .sort()
    .map((name) => [name, readFileSync(join(path, name), 'latin1')]);

test('made twice, cached or not: the same names and bytes; another original gives other names', async () => {
  const photo = join(folder, 'Ünser Stock (1).JPG');
  writeFileSync(photo, await noise(700, 500).blur(2).jpeg().toBuffer());
  const [one, other] = [join(folder, 'one'), join(folder, 'other')];
  const first = await published(photo, one);
  const second = await published(photo, other);
  assert.ok(first.ok && second.ok && first.value.made && second.value.made);
  assert.deepEqual(contents(one), contents(other));
  const again = await published(photo, one);
  assert.deepEqual(again, ok({ ...first.value, made: false }));
  for (const { name } of first.value.files) assert.match(name, /^unser-stock-1-\d+-[0-9a-f]{8}\.jpg$/);
  writeFileSync(photo, await noise(700, 501).blur(2).jpeg().toBuffer());
  const changed = await published(photo, one);
  assert.ok(changed.ok && changed.value.made);
  for (const { name } of changed.value.files) assert.ok(!first.value.files.some((file) => file.name === name));
});

test('a damaged cache file is made again', async () => {
  const photo = join(folder, 'hive.png');
  writeFileSync(photo, await flat(500, 300, [10, 90, 40]).png().toBuffer());
  const kept = join(folder, 'kept');
  const first = await published(photo, kept);
  assert.ok(first.ok);
  const before = contents(kept);
  for (const damaged of readdirSync(kept)) {
    const whole = readFileSync(join(kept, damaged));
    for (const bytes of [whole.subarray(0, 40), Buffer.alloc(0)]) {
      writeFileSync(join(kept, damaged), bytes);
      const again = await published(photo, kept);
      assert.ok(again.ok && again.value.made, damaged);
      assert.deepEqual(contents(kept), before);
    }
    rmSync(join(kept, damaged));
    await published(photo, kept);
    assert.deepEqual(contents(kept), before);
  }
});

test('every host serves the names', () => {
  for (const [path, stem] of [
    ['a/Frame.JPG', 'frame'],
    ['Straße & Ätna.png', 'stra-e-atna'],
    ['蜂.jpg', 'picture'],
    ['100%.jpg', '100'],
    [`${'very-long-'.repeat(9)}.jpg`, 'very-long-very-long-very-long-very-long'],
  ])
    assert.equal(plainStem(path!), stem);
});

test('a picture of many pixels is read without decoding all of them into memory', async () => {
  const photo = await flat(11000, 8000, [120, 90, 60]).jpeg().toBuffer();
  const cuts = unwrap(await cutDown(photo));
  assert.equal((await sharp(cuts[0]!.bytes).metadata()).width, 960);
});
