// QR codes, read back by a decoder of another author, from the pixels of their modules.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import decodeQR from 'qr/decode.js';
import { codeOf, QUIET, type Code } from '../../../src/client/qr/qr.ts';

const PIXELS = 4;

/** The modules of a code, dark or light, from its path alone. */
function modulesOf({ width, path }: Code): boolean[][] {
  const modules = Array.from({ length: width }, () => Array.from({ length: width }, () => false));
  const runs = [...path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\3z/g)];
  assert.equal(runs.map(([run]) => run).join(''), path, 'the path has rectangles alone');
  for (const [, x, y, length] of runs) for (let each = 0; each < Number(length); each += 1) modules[Number(y)]![Number(x) + each] = true;
  return modules;
}

function pixelsOf(modules: boolean[][]): { width: number; height: number; data: Uint8ClampedArray } {
  const width = modules.length * PIXELS;
  const data = new Uint8ClampedArray(width * width * 4).fill(255);
  modules.forEach((row, y) =>
    row.forEach((dark, x) => {
      if (!dark) return;
      for (let pixel = 0; pixel < PIXELS ** 2; pixel += 1) {
        const at = ((y * PIXELS + Math.floor(pixel / PIXELS)) * width + x * PIXELS + (pixel % PIXELS)) * 4;
        data.fill(0, at, at + 3);
      }
    }),
  );
  return { width, height: width, data };
}

const read = (modules: boolean[][]): string => decodeQR(pixelsOf(modules), { timeLimit: 5000 });

const ADDRESS = 'https://club.example/bees/lists/package-first-six-weeks/#run=2026-04-18;candy,drawn;l9mabc012;;k3x9z';

test('an address is read back unchanged', () => {
  assert.equal(read(modulesOf(codeOf(ADDRESS)!)), ADDRESS);
  fc.assert(
    fc.property(fc.stringMatching(/^[0-9a-z;,%A-F/#=.:-]{1,380}$/), (tail) => {
      const text = `https://club.example/${tail}`;
      assert.equal(read(modulesOf(codeOf(text)!)), text);
    }),
    { numRuns: 25 },
  );
});

test('a code with wrong modules is not read as the address', () => {
  const modules = modulesOf(codeOf(ADDRESS)!);
  for (const row of modules.slice(QUIET + 10, -QUIET - 10)) row.forEach((dark, x) => (row[x] = x > QUIET + 10 ? !dark : dark));
  let text = '';
  try {
    text = read(modules);
  } catch {
    // The decoder finds no code at all.
  }
  assert.notEqual(text, ADDRESS);
});

test('four light modules are on each side, and the error correction is level M', () => {
  const modules = modulesOf(codeOf(ADDRESS)!);
  const size = modules.length - 2 * QUIET;
  assert.equal(QUIET, 4, 'ISO/IEC 18004, 6.3.8');
  const isLight = (row: boolean[]): boolean => row.every((dark) => !dark);
  for (const edge of [modules.slice(0, QUIET), modules.slice(-QUIET)]) assert.ok(edge.every(isLight));
  for (const row of modules) assert.ok(isLight(row.slice(0, QUIET)) && isLight(row.slice(-QUIET)));
  assert.ok(modules[QUIET]!.slice(QUIET, QUIET + 7).every(Boolean), 'the finder begins right after it');
  // The two bits of the level beside the finder, under the mask 10 (ISO/IEC 18004, 7.9.1). Level M is 00.
  const level = [0, 1].map((x) => modules[QUIET + 8]![QUIET + x]);
  assert.deepEqual(level, [true, false], `the level of a code with ${size} modules`);
});

test('a text that is too long for a phone to scan gives no code', () => {
  // Version 17 at level M has room for 504 bytes, and version 40 for 2,331 (ISO/IEC 18004, table 7).
  const ofLength = (length: number): string => `https://club.example/${'a'.repeat(length - 21)}`;
  assert.equal(codeOf(ofLength(500))?.width, 85 + 2 * QUIET);
  assert.equal(codeOf(ofLength(505)), null);
  assert.equal(codeOf('a'.repeat(5000)), null);
});
