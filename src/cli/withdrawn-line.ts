/* Finds and writes the line `withdrawn: DAY, why` of an entry's file, and leaves every other byte of the file unchanged. */
import { parse } from 'yaml';

const MARK = '\u00EF\u00BB\u00BF';

/** The line for a file of this name, without its line end. Quotes are added where YAML would parse the words as something else. */
export function withdrawnLine(path: string, day: string, why: string): string {
  const value = `${day}, ${why}`;
  if (path.endsWith('.csv')) return `# withdrawn: ${value}`;
  const plain = `withdrawn: ${value}`;
  return readsAs(plain, value) ? plain : `withdrawn: ${JSON.stringify(value)}`;
}

function readsAs(line: string, value: string): boolean {
  try {
    return (parse(line) as { withdrawn?: unknown } | null)?.withdrawn === value;
  } catch {
    return false;
  }
}

/** The line among the fields of a file, or null. */
export function withdrawnLineIn(path: string, bytes: Buffer): string | null {
  const text = bytes.toString('utf8').replace(/^\uFEFF/, '');
  const head = path.endsWith('.mdx') ? text.replace(/^---[ \t]*\r?\n/, '').split(/^---[ \t]*\r?$/m)[0]! : text;
  return (path.endsWith('.csv') ? /^#[ \t]*withdrawn[ \t]*:.*$/m : /^withdrawn:.*$/m).exec(head)?.[0].trimEnd() ?? null;
}

/** The file with the line as its first field, and with the file's own line end. */
export function withWithdrawnLine(path: string, bytes: Buffer, line: string): Buffer {
  // Latin-1 keeps one character per byte, so positions are byte offsets in any encoding.
  const text = bytes.toString('latin1');
  const end = /\r\n|\n|\r/.exec(text)?.[0] ?? '\n';
  const begin = text.startsWith(MARK) ? MARK.length : 0;
  const opening = path.endsWith('.csv') ? null : /^---[ \t]*(?:\r\n|\n|\r)/.exec(text.slice(begin));
  const at = begin + (opening?.[0].length ?? 0);
  const added = path.endsWith('.mdx') && !opening ? `---${end}${line}${end}` : `${line}${end}`;
  return Buffer.concat([bytes.subarray(0, at), Buffer.from(added), bytes.subarray(at)]);
}
