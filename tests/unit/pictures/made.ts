/*
 * Pictures made for the tests, which are nobody's photographs. Their colours and pixels follow from numbers, so that each run has the
 * same bytes.
 */
import sharp, { type Sharp } from 'sharp';

export type Colour = readonly [number, number, number];
export const CORNERS = {
  topLeft: [220, 40, 40],
  topRight: [40, 170, 60],
  bottomLeft: [40, 70, 210],
  bottomRight: [240, 220, 60],
} as const satisfies Record<string, Colour>;

/** Upright, with each quarter in a colour of its own. */
export function quarters(width: number, height: number): (x: number, y: number) => Colour {
  return (x, y) =>
    y < height / 2 ? (x < width / 2 ? CORNERS.topLeft : CORNERS.topRight) : x < width / 2 ? CORNERS.bottomLeft : CORNERS.bottomRight;
}

/** Positions of the first stored row and column in the upright picture (Exif 2.32, table of the tag Orientation, 0x0112). */
const SIDES: Record<number, readonly [row: string, column: string]> = {
  1: ['top', 'left'],
  2: ['top', 'right'],
  3: ['bottom', 'right'],
  4: ['bottom', 'left'],
  5: ['left', 'top'],
  6: ['right', 'top'],
  7: ['right', 'bottom'],
  8: ['left', 'bottom'],
};

/** The pixels of an upright picture as a camera stores them in `orientation`. */
export function stored(width: number, height: number, orientation: number, colourAt: (x: number, y: number) => Colour): Sharp {
  const [rowSide, columnSide] = SIDES[orientation]!;
  const turned = orientation > 4;
  const [columns, rows] = turned ? [height, width] : [width, height];
  const dots = Buffer.alloc(columns * rows * 3);
  const place = (side: string, step: number): number =>
    side === 'top' || side === 'left' ? step : (side === 'bottom' ? height : width) - 1 - step;
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      const [a, b] = [place(rowSide, row), place(columnSide, column)];
      dots.set(turned ? colourAt(a, b) : colourAt(b, a), (row * columns + column) * 3);
    }
  }
  return sharp(dots, { raw: { width: columns, height: rows, channels: 3 } });
}

/** A flat picture of one colour, as input for other formats. */
export const flat = (width: number, height: number, colour: Colour): Sharp =>
  sharp({ create: { width, height, channels: 3, background: { r: colour[0], g: colour[1], b: colour[2] } } });

/** Random pixels, by Marsaglia's xorshift, which no format can compress. */
export function noise(width: number, height: number): Sharp {
  const dots = Buffer.alloc(width * height * 3);
  let state = 2463534242;
  for (let index = 0; index < dots.length; index += 1) {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    dots[index] = state & 255;
  }
  return sharp(dots, { raw: { width, height, channels: 3 } });
}

/** The middle colour of each quarter of a published picture. */
export async function quartersOf(bytes: Buffer): Promise<Record<keyof typeof CORNERS, Colour>> {
  const { data, info } = await sharp(bytes).raw().toBuffer({ resolveWithObject: true });
  const at = (x: number, y: number): Colour =>
    [...data.subarray((Math.floor(y * info.height) * info.width + Math.floor(x * info.width)) * info.channels)].slice(
      0,
      3,
    ) as unknown as Colour;
  return { topLeft: at(0.25, 0.25), topRight: at(0.75, 0.25), bottomLeft: at(0.25, 0.75), bottomRight: at(0.75, 0.75) };
}

/** The largest difference between two colours in one channel. */
export const apart = (one: Colour, other: Colour): number => Math.max(...one.map((part, index) => Math.abs(part - other[index]!)));

/** The first bytes of a phone's HEIC file: a box `ftyp` with its brands (ISO/IEC 14496-12, 23008-12). */
export const heicHead = (brand = 'heic'): Buffer =>
  Buffer.concat([
    Buffer.from([0, 0, 0, 24]),
    Buffer.from(`ftyp${brand}`, 'latin1'),
    Buffer.alloc(4),
    Buffer.from('mif1heic', 'latin1'),
    Buffer.alloc(400),
  ]);
