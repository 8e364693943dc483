/*
 * Resizes one picture for publication: upright, in sRGB, in two widths, as JPEG within a limit of bytes. Only pixels are copied, so
 * place, camera, time and all other metadata of the original are gone. The same input gives the same bytes.
 */
import sharp from 'sharp';
import { err, ok, type Correction, type Refused, type Result } from '../../shared/result.ts';

/** A width in pixels, and the maximum of bytes at that width. A text block is 350 px wide on a phone, 672 px on a desktop. */
export const WIDTHS = [
  { width: 960, bytes: 120_000 },
  { width: 480, bytes: 40_000 },
] as const;
/** The maximum ratio of height to width. */
export const TALLEST = 1.5;
/** Tried in order until the bytes fit. Below the last a photograph shows blocks, so it is made smaller instead. */
export const QUALITIES = [80, 74, 68, 62, 56, 50] as const;
const SMALLER = 0.85;

/** A smaller picture is a preview. */
const LEAST = { width: 240, height: 120 };
/** A more elongated picture is a strip on a phone, and its description does not fit its frame. */
const MOST_TIMES = 4;
/** A larger picture needs more memory than a small computer has. */
const MOST_DOTS = 120_000_000;

export type Cut = { width: number; height: number; bytes: Buffer };

type Dots = { data: Buffer; width: number; height: number };

/** The published sizes of a picture, widest first, or why it is refused. */
export async function cutDown(original: Buffer): Promise<Result<Cut[], Correction>> {
  try {
    return (await refusalOf(original)) ?? ok(await cutsOf(await dotsOf(original)));
  } catch {
    return err({
      found: 'a picture that breaks off or is damaged',
      write: 'the picture copied once more from where it was taken, or exported again as JPEG',
    });
  }
}

async function refusalOf(original: Buffer): Promise<Refused<Correction> | null> {
  const { autoOrient, pages = 1, format } = await sharp(original, { limitInputPixels: false }).metadata();
  const { width, height } = autoOrient;
  const size = `${width} × ${height} pixels`;
  if (pages > 1)
    return err({
      found: format === 'tiff' ? `a file of ${pages} pages` : `a moving picture of ${pages} frames`,
      write: 'one still picture, exported as JPEG',
    });
  if (width < LEAST.width || height < LEAST.height)
    return err({
      found: `${size}, too small to be read`,
      write: `the picture itself and not its preview: ${LEAST.width} × ${LEAST.height} or more`,
    });
  if (Math.max(width, height) > MOST_TIMES * Math.min(width, height))
    return err({
      found: `${size}, a strip too narrow to be read on a phone`,
      write: `the part that matters, at most ${MOST_TIMES} times as long one way as the other`,
    });
  if (width * height > MOST_DOTS) return err({ found: `${size}, more than can be read`, write: 'the picture made about 4000 pixels wide' });
  return null;
}

/**
 * Upright, on white where it is transparent, in sRGB, no larger than the widest published size. Warnings about phones' files are ignored.
 */
async function dotsOf(original: Buffer): Promise<Dots> {
  const { width } = WIDTHS[0];
  const { data, info } = await sharp(original, { autoOrient: true, failOn: 'error', limitInputPixels: MOST_DOTS })
    .toColourspace('srgb')
    .resize({ width, height: width * TALLEST, fit: 'inside', withoutEnlargement: true })
    .flatten({ background: '#fff' })
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { data, width: info.width, height: info.height };
}

/** The narrower size is made only where it saves bytes on a phone. */
async function cutsOf(dots: Dots): Promise<Cut[]> {
  const [wide, narrow] = WIDTHS;
  const widest = await within(dots, dots.width, wide.bytes);
  return widest.width < narrow.width * 1.25 ? [widest] : [widest, await within(dots, narrow.width, narrow.bytes)];
}

/** A picture that does not fit at the lowest quality is made smaller at that quality. */
async function within(dots: Dots, width: number, most: number, qualities: readonly number[] = QUALITIES): Promise<Cut> {
  for (const quality of qualities) {
    const cut = await encoded(dots, width, quality);
    if (cut.bytes.length <= most) return cut;
  }
  return within(dots, Math.floor(width * SMALLER), most, QUALITIES.slice(-1));
}

async function encoded({ data, width: whole, height }: Dots, width: number, quality: number): Promise<Cut> {
  const { data: bytes, info } = await sharp(data, { raw: { width: whole, height, channels: 3 } })
    .resize({ width })
    .jpeg({ quality, mozjpeg: true })
    .toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, bytes };
}
