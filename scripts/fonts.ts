/*
 * Subsets the two weights of the text font to the characters an almanac needs, so that both together stay under 20 kB. Run by hand when
 * the characters or the font change (`node scripts/fonts.ts`). The two output files are in src/styles/fonts.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import subset from 'subset-font';

const range = (from: number, to: number): string =>
  String.fromCodePoint(...Array.from({ length: to - from + 1 }, (_, index) => from + index));
const LETTERS = `${range(0x20, 0x7e)}${range(0xc0, 0xff)}\u00a0£§°±²³µ·¼½¾¿–—‘’“”…•′″−≤≥≈ŒœŠšŽžıāēīōū`;
const FACE = 'node_modules/@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin';

for (const weight of [400, 700]) {
  const cut = await subset(readFileSync(`${FACE}-${weight}-normal.woff2`), LETTERS, { targetFormat: 'woff2' });
  writeFileSync(`src/styles/fonts/text-${weight}.woff2`, cut);
  console.log(`text-${weight}.woff2: ${cut.length} bytes`);
}
