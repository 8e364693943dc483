/*
 * Decodes bytes to text. A file from another program is accepted when nothing can be lost (a byte-order mark, Windows line ends).
 * Otherwise it is refused by name, and a replacement character is never published.
 */
import { err, ok, type Result } from '../../shared/result.ts';
import type { Diagnostic } from './diagnostic.ts';

type Decoded = Result<string, Diagnostic>;

/** Invisible and broken characters. */
const ODD = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F-\u009F\uFFFD\uFEFF\uE000-\uF8FF\u202A-\u202E\u2066-\u2069]/;

/** Letters, signs and quotes of UTF-8 that a program read as Windows-1252 and saved again: "20 Â°C" for "20 °C", "itâ€™s" for "it’s". */
const TWICE =
  /[ÂÃ][\u00A0-\u00BF€‚ƒ„…†‡ˆ‰Š‹ŒŽ•˜™š›œžŸ]|[ÄÅ][«“]|â(?:€[\u00A0-\u00BF™œž˜“”¦¢‹º]|ˆ[\u00A0-\u00BF’]|‰[\u00A0-\u00BF]|„[\u00A0-\u00BF])/;

/** The text of a file with LF line ends and no byte-order mark, or the diagnostic that tells how to save it. */
export function decode(path: string, bytes: Uint8Array): Decoded {
  if (startsWith(bytes, [0xff, 0xfe]) || startsWith(bytes, [0xfe, 0xff]) || isWideWithoutMark(bytes))
    return refuse(path, 1, 1, 'a file saved as UTF-16');
  const body = startsWith(bytes, [0xef, 0xbb, 0xbf]) ? bytes.subarray(3) : bytes;
  try {
    const text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(body).replace(/\r\n?/g, '\n');
    const odd = ODD.exec(text);
    const twice = TWICE.exec(text);
    if (twice && (!odd || twice.index < odd.index)) {
      const [line, column] = place(text.slice(0, twice.index));
      return refuse(
        path,
        line,
        column,
        `the broken letters "${twice[0]}"`,
        'the letter or sign that is meant, or an older copy of the file; a program read it in the wrong encoding and saved it again',
      );
    }
    if (!odd) return ok(text);
    const [line, column] = place(text.slice(0, odd.index));
    const code = odd[0].codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0');
    return refuse(path, line, column, `the invisible or broken character U+${code}`, 'the character that is meant, or nothing');
  } catch {
    const [line, column] = place(new TextDecoder('latin1').decode(body.subarray(0, firstBadByte(body))).replace(/\r\n?/g, '\n'));
    return refuse(path, line, column, 'a letter that is not UTF-8 (the file was saved as Windows-1252 or the like)');
  }
}

/** UTF-16 without its mark: every second byte of the first letters is 0. */
const isWideWithoutMark = (bytes: Uint8Array): boolean =>
  bytes.length >= 4 && [0, 1].some((odd) => bytes[odd] === 0 && bytes[odd + 2] === 0 && bytes[1 - odd] !== 0 && bytes[3 - odd] !== 0);

/** The text of a refused file as well as it can be read, with spaces for broken characters, so that its other faults are found. */
export function decodedAsBest(bytes: Uint8Array): string {
  const isWide = isWideWithoutMark(bytes);
  const encoding =
    startsWith(bytes, [0xff, 0xfe]) || (isWide && bytes[1] === 0)
      ? 'utf-16le'
      : startsWith(bytes, [0xfe, 0xff]) || isWide
        ? 'utf-16be'
        : 'utf-8';
  const read = (name: string, fatal: boolean): string => new TextDecoder(name, { fatal }).decode(bytes);
  let text: string;
  try {
    text = read(encoding, true);
  } catch {
    text = read(encoding === 'utf-8' ? 'windows-1252' : encoding, false);
  }
  return text.replace(/\r\n?/g, '\n').replace(new RegExp(ODD, 'g'), ' ');
}

function refuse(
  path: string,
  line: number,
  column: number,
  found: string,
  write = 'the file again from your editor with the encoding UTF-8',
): Decoded {
  return err({ path, line, column, rule: 'encoding', field: 'the file', found, write });
}

function place(before: string): [number, number] {
  const lines = before.split('\n');
  return [lines.length, lines.at(-1)!.length + 1];
}

const startsWith = (bytes: Uint8Array, mark: number[]): boolean => mark.every((byte, index) => bytes[index] === byte);

/** The position where strict decoding first fails, by bisection over prefixes. An incomplete character is part of the failure. */
function firstBadByte(bytes: Uint8Array): number {
  const good = (end: number, stream = true): boolean => {
    try {
      new TextDecoder('utf-8', { fatal: true }).decode(bytes.subarray(0, end), { stream });
      return true;
    } catch {
      return false;
    }
  };
  let least = 0;
  let most = bytes.length;
  while (least < most) {
    const middle = Math.ceil((least + most) / 2);
    if (good(middle)) least = middle;
    else most = middle - 1;
  }
  while (least > 0 && !good(least, false)) least -= 1;
  return least;
}
