/*
 * Recognises a picture file by its first bytes and its size. Its name proves nothing, because phones and messengers rename pictures
 * freely. Nothing is decoded here, so that a whole folder can be checked quickly.
 */
import { closeSync, openSync, readSync, statSync } from 'node:fs';
import type { Correction } from '../../shared/result.ts';

/** Endings of photographs and scans. */
const NAMES = /\.(?:jpe?g|jpe|jfif|png|webp|avif|gif|tiff?)$/i;
/** Endings of pictures that are always refused. */
const UNREAD = /\.(?:hei[cf]|bmp|psd|dng|raw|cr[23]|nef|arw|jxl|svgz?)$/i;

export const isPictureName = (path: string): boolean => NAMES.test(path);
export const isUnreadName = (path: string): boolean => UNREAD.test(path);

/** A large photograph of a phone has some 25 MB. A larger file is a scan or comes from a drawing program. */
export const MOST_BYTES = 30_000_000;

const AS_JPEG = 'the picture exported as JPEG';

/** The reason why the file at `path` on the disk is refused as a picture. Null where it may be one. */
export function refusalOf(path: string): Correction | null {
  try {
    const file = openSync(path, 'r');
    try {
      const head = Buffer.alloc(64);
      return refusalOfBytes(path, head.subarray(0, readSync(file, head, 0, head.length, 0)), statSync(path).size);
    } finally {
      closeSync(file);
    }
  } catch {
    return { found: 'a file that cannot be read', write: 'its permissions so that you may read it' };
  }
}

function refusalOfBytes(path: string, head: Buffer, size: number): Correction | null {
  const ending = path.slice(path.lastIndexOf('.'));
  const text = head.toString('latin1');
  if (size === 0) return { found: 'an empty file', write: AS_JPEG };
  if (size > MOST_BYTES)
    return {
      found: `${Math.ceil(size / 1e6)} MB, more than the ${MOST_BYTES / 1e6} that are read`,
      write: `${AS_JPEG}, made about 4000 pixels wide`,
    };
  if (/^(?:\u00EF\u00BB\u00BF)?\s*<(?:\?xml[^>]*>\s*<)?(?:svg|!DOCTYPE svg)/i.test(text) || /\.svgz?$/i.test(path))
    return { found: 'a drawing of lines', write: 'it in drawings/ with a file of words, and <Drawing name="..." /> in the page' };
  if (isHeic(text)) return { found: /\.hei[cf]$/i.test(path) ? 'a HEIC picture' : `a HEIC picture called ${ending}`, write: AS_JPEG };
  if (/^\s*<(?:!doctype html|html|head)/i.test(text))
    return { found: `a web page called ${ending}`, write: 'the picture itself, saved from that page with the leave of who made it' };
  if (text.startsWith('%PDF')) return { found: `a PDF called ${ending}`, write: AS_JPEG };
  return isUnreadName(path) || !isReadable(text)
    ? { found: 'a file that is no picture of a kind that is read here', write: AS_JPEG }
    : null;
}

/** The brand of the file (ISO/IEC 14496-12). Where it covers all kinds of stills, the compatible brands decide. */
const isHeic = (text: string): boolean =>
  text.slice(4, 8) === 'ftyp' && (/^(?:hei|hev)/.test(text.slice(8, 12)) || (/^(?:mif|msf)/.test(text.slice(8, 12)) && !isAvif(text)));
const isAvif = (text: string): boolean => text.slice(4, 8) === 'ftyp' && /avi[fs]/.test(text.slice(8));

const isReadable = (text: string): boolean =>
  text.startsWith('\u00FF\u00D8\u00FF') ||
  text.startsWith('\u0089PNG\r\n\u001A\n') ||
  /^RIFF[\s\S]{4}WEBP/.test(text) ||
  /^GIF8[79]a/.test(text) ||
  /^(?:II\*\0|MM\0\*)/.test(text) ||
  isAvif(text);
