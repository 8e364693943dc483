/* The line `withdrawn: DAY, why` of an entry's file: found, and written so that every other byte of the file stays as it is. */
import { parse } from 'yaml';

const MARK = '\u00EF\u00BB\u00BF';

/** The line for a file of this name, without its end. Words that would be read as something else stand in quotes. */
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

/** The line as it stands among the fields of a file, or null. */
export function withdrawnLineIn(path: string, bytes: Buffer): string | null {
  const text = bytes.toString('utf8').replace(/^\uFEFF/, '');
  const head = path.endsWith('.mdx') ? text.replace(/^---[ \t]*\r?\n/, '').split(/^---[ \t]*\r?$/m)[0]! : text;
  return (path.endsWith('.csv') ? /^#[ \t]*withdrawn[ \t]*:.*$/m : /^withdrawn:.*$/m).exec(head)?.[0].trimEnd() ?? null;
}

/** The file with the line as the first of its fields, with the line end that the file has. */
export function withWithdrawnLine(path: string, bytes: Buffer, line: string): Buffer {
  // A byte a letter: the place is counted in bytes, whatever the file's letters are.
  const text = bytes.toString('latin1');
  const end = /\r\n|\n|\r/.exec(text)?.[0] ?? '\n';
  const begin = text.startsWith(MARK) ? MARK.length : 0;
  const opening = path.endsWith('.csv') ? null : /^---[ \t]*(?:\r\n|\n|\r)/.exec(text.slice(begin));
  const at = begin + (opening?.[0].length ?? 0);
  const added = path.endsWith('.mdx') && !opening ? `---${end}${line}${end}` : `${line}${end}`;
  return Buffer.concat([bytes.subarray(0, at), Buffer.from(added), bytes.subarray(at)]);
}
