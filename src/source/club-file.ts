/*
 * A club's own file in files/, recognised by its bytes. Only a whole PDF without a password and without programs is published
 * (ISO 32000-1: the header in 7.5.2, the end in 7.5.5, object streams in 7.5.7, actions in 12.6.4, encryption in 7.6).
 */
import { readFileSync, statSync } from 'node:fs';
import { inflateSync } from 'node:zlib';
import type { Correction } from '../../shared/result.ts';

/** The limit where club.yaml gives none, in megabytes. */
export const MOST_MB = 5;

const AWAY = 'nothing, and take the file away: the almanac publishes no programs';
const AGAIN = 'it saved as PDF once more by the program that made it';

/** The reason why the file at `path` on the disk is refused. Null where it may be published. */
export function refusalOfFile(path: string, mostMb: number): Correction | null {
  try {
    const { size } = statSync(path);
    if (size > mostMb * 1e6)
      return {
        found: `${(Math.ceil(size / 1e5) / 10).toFixed(1)} MB, more than the ${mostMb} of a file`,
        write: `it saved with smaller pictures, or "largest-file-mb: ${Math.ceil(size / 1e6)}" in club.yaml`,
      };
    return refusalOfBytes(readFileSync(path).toString('latin1'));
  } catch {
    return { found: 'a file that cannot be read', write: 'its permissions so that you may read it' };
  }
}

/** What a file is that has the name of a PDF and is none, by its first bytes. */
const OTHERS: readonly [begin: RegExp, found: string, write: string][] = [
  [/^(?:MZ|\u007FELF|#!|[\u00CE\u00CF]\u00FA\u00ED\u00FE|\u00FE\u00ED\u00FA[\u00CE\u00CF]|\u00CA\u00FE\u00BA\u00BE)/, 'a program', AWAY],
  [/^(?:\u00EF\u00BB\u00BF)?\s*<(?:\?xml[^>]*>\s*<)?(?:!doctype svg|svg)/i, 'a drawing of lines', 'it printed as PDF'],
  [/^(?:\u00EF\u00BB\u00BF)?\s*<[a-z!?]/i, 'a web page', 'it printed as PDF'],
  [/^PK\u0003\u0004/, 'an archive or a file of a word processor', 'it saved as PDF by the program that made it'],
  [/^(?:\u00D0\u00CF\u0011\u00E0|\{\\rtf)/, 'a file of a word processor', 'it saved as PDF by the program that made it'],
  [/^(?:\u00FF\u00D8\u00FF|\u0089PNG|GIF8|RIFF|II\*\0|MM\0\*)/, 'a picture', 'it printed as PDF, or beside the page that shows it'],
];

function refusalOfBytes(text: string): Correction | null {
  if (text === '') return { found: 'an empty file', write: AGAIN };
  if (!text.startsWith('%PDF-')) {
    const [, found, write] = OTHERS.find(([begin]) => begin.test(text)) ?? [null, 'a file that does not begin as a PDF does', AGAIN];
    return { found: found.startsWith('a file that') ? found : `${found} called .pdf`, write };
  }
  if (!/%%EOF/.test(text.slice(-1024))) return { found: 'a PDF that breaks off before its end', write: 'a new copy of the file' };
  const objects = objectsOf(text);
  if (/\/Encrypt\b/.test(objects)) return { found: 'a PDF with a password or with rights', write: 'it saved without them' };
  const active = ACTIVE.find(([name]) => name.test(objects));
  return active
    ? { found: `a PDF that ${active[1]}`, write: 'it printed to a new PDF, which leaves that out; fields for typing go with it' }
    : null;
}

const ACTIVE: readonly [name: RegExp, does: string][] = [
  [/\/(?:JavaScript|JS)\b/, 'holds a program (JavaScript)'],
  [/\/Launch\b/, 'starts another program'],
  [/\/(?:EmbeddedFiles?|FileAttachment)\b/, 'carries other files inside'],
  [/\/(?:RichMedia|Movie|Sound)\b/, 'plays films or sounds'],
  [/\/(?:SubmitForm|ImportData)\b/, 'sends what is typed into it to another computer'],
];

/** The most that one stream is unpacked to. A small file can claim to hold gigabytes. */
const MOST_UNPACKED = 20_000_000;

/** The objects of the file as text, without the bytes of pictures and fonts, and with those of its object streams unpacked. */
function objectsOf(text: string): string {
  const unpacked: string[] = [];
  const plain = text.replace(
    /(<<(?:(?!endobj)[\s\S]){0,2000}?>>)\s*stream\r?\n([\s\S]*?)endstream/g,
    (_, dictionary: string, bytes: string) => {
      if (/\/ObjStm\b/.test(dictionary)) unpacked.push(/\/FlateDecode\b/.test(dictionary) ? inflated(bytes) : bytes);
      return dictionary;
    },
  );
  // A name may be written with codes: /J#53 is /JS (7.3.5).
  return [plain, ...unpacked].join('\n').replace(/#([0-9a-f]{2})/gi, (_, code: string) => String.fromCharCode(parseInt(code, 16)));
}

function inflated(bytes: string): string {
  try {
    return inflateSync(Buffer.from(bytes, 'latin1'), { maxOutputLength: MOST_UNPACKED }).toString('latin1');
  } catch {
    return '';
  }
}
