/* A printed sheet as pixels and as words, as a reader of PDF draws it (PDFium). */
import { PDFiumLibrary } from '@hyzyla/pdfium';
import decodeQR from 'qr/decode.js';

const POINTS = 72;

export type Sheet = {
  /** All its letters, in the order of the drawing, without spaces: PDF places letters, not words. */
  letters: string;
  /** Gray pixels at 300 dots an inch. */
  pixels: { width: number; height: number; data: Uint8Array };
};
const DPI = 300;

export const lettersOf = (words: string): string => words.replace(/\s+/g, '');

export async function sheetsIn(pdf: Buffer): Promise<Sheet[]> {
  const library = await PDFiumLibrary.init();
  const document = await library.loadDocument(pdf);
  const sheets: Sheet[] = [];
  for (const page of document.pages()) {
    // Before the pixels: PDFium 2.1.13 in WebAssembly reads no text of a page that it has drawn.
    const letters = lettersOf(page.getText());
    const { width, height, data } = await page.render({ scale: DPI / POINTS, colorSpace: 'Gray', render: 'bitmap' });
    sheets.push({ letters, pixels: { width, height, data } });
  }
  document.destroy();
  library.destroy();
  return sheets;
}

/** A code covers about a quarter of the square with dark, words a tenth. */
const CODE_SHARE = 0.17;
const STRIDE = 5;
function darkShare(at: (x: number, y: number) => number, side: number): number {
  let [dark, all] = [0, 0];
  for (let y = 0; y < side; y += STRIDE)
    for (let x = 0; x < side; x += STRIDE) {
      all += 1;
      if (at(x, y) < 128) dark += 1;
    }
  return dark / all;
}

const millimeters = (length: number): number => Math.round((length / 25.4) * DPI);

/** Whether nothing is drawn within this distance of the left edge, where a printer draws nothing. */
export const hasMargin = ({ pixels: { width, data } }: Sheet, margin: number): boolean =>
  data.every((light, at) => at % width >= millimeters(margin) || light > 250);

/**
 * Texts of the codes at the right edge of a sheet, in order. A square a little larger than a code of 20 mm with its quiet zone moves down
 * the edge, as a phone would.
 */
export function codesAt({ pixels: { width, height, data } }: Sheet, margin: number): string[] {
  const side = millimeters(27);
  const left = width - millimeters(margin) - side;
  const found: string[] = [];
  const at = (top: number, x: number, y: number): number => data[(top + y) * width + left + x]!;
  for (let top = 0; top + side <= height; top += millimeters(3)) {
    if (darkShare((x, y) => at(top, x, y), side) < CODE_SHARE) continue;
    const window = new Uint8ClampedArray(side * side * 4).fill(255);
    for (let y = 0; y < side; y += 1)
      for (let x = 0; x < side; x += 1) {
        const dot = (y * side + x) * 4;
        window[dot] = window[dot + 1] = window[dot + 2] = at(top, x, y);
      }
    try {
      found.push(decodeQR({ width: side, height: side, data: window }));
    } catch {
      // There is no code in this square.
    }
  }
  return [...new Set(found)];
}
