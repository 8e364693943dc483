/*
 * One mistake a file: tests/faulty/cases/NAME.txt says what to change in the good club beside it, and the exact faults.
 *
 *     file: words/brood.yaml
 *     instead of:
 *         word: brood
 *     write:
 *         word: 7
 *     found:
 *         words/brood.yaml:1:7 field: word: found 7; write the word
 *
 * Without "instead of:" the file is written whole; "removed:" takes it away; "saved as:" is another program's encoding.
 * A case may change several files. What is indented by four belongs to the line above it.
 */
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const goodClub = fileURLToPath(new URL('good', import.meta.url));
const folder = fileURLToPath(new URL('cases', import.meta.url));

export type Change = { file: string; insteadOf?: string; write?: string; removed?: boolean; savedAs?: string };
export type Case = { name: string; changes: Change[]; found: string };

export const cases = (): Case[] => readdirSync(folder).sort().map((file) => readCase(file.replace(/\.txt$/, ''), readFileSync(join(folder, file), 'utf8')));

export function readCase(name: string, text: string): Case {
  const read: Case = { name, changes: [], found: '' };
  for (const [, label, rest, block] of text.matchAll(/^([a-z][a-z ]*):(?: (.*))?\n((?:(?: {4}.*)?\n)*)/gm)) {
    const words = block!.replace(/^ {4}/gm, '').replace(/\n+$/, '');
    const change = read.changes.at(-1);
    if (label === 'file') read.changes.push({ file: rest! });
    else if (label === 'found') read.found = words;
    else if (label === 'instead of') change!.insteadOf = words;
    else if (label === 'write') change!.write = words;
    else if (label === 'removed') change!.removed = true;
    else if (label === 'saved as') change!.savedAs = rest!;
    else throw new Error(`${name}: no such part as "${label}"`);
  }
  return read;
}

let copy: string | undefined;

/** The good club with the changes made, at the path that `use` gets; afterwards it is as it was. */
export function withChanges<T>(changes: readonly Change[], use: (directory: string) => T): T {
  if (copy === undefined) {
    const made = mkdtempSync(join(tmpdir(), 'club-'));
    process.on('exit', () => rmSync(made, { recursive: true, force: true }));
    cpSync(goodClub, made, { recursive: true });
    copy = made;
  }
  try {
    for (const change of changes) make(copy, change);
    return use(copy);
  } finally {
    for (const top of new Set(changes.map(({ file }) => file.split('/')[0]!))) restore(copy, top);
  }
}

function restore(directory: string, top: string): void {
  rmSync(join(directory, top), { recursive: true, force: true });
  if (existsSync(join(goodClub, top))) cpSync(join(goodClub, top), join(directory, top), { recursive: true });
}

function make(directory: string, { file, insteadOf, write, removed, savedAs }: Change): void {
  const path = join(directory, file);
  if (removed) return rmSync(path, { recursive: true });
  const old = insteadOf === undefined && (write !== undefined || savedAs === undefined) ? '' : readFileSync(path, 'utf8');
  if (insteadOf !== undefined && !old.includes(insteadOf)) throw new Error(`${file} does not read: ${insteadOf}`);
  const whole = insteadOf !== undefined ? old.replace(insteadOf, () => write ?? '') : write === undefined ? old : `${write}\n`;
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, encoded(whole, savedAs));
}

function encoded(text: string, savedAs: string | undefined): Buffer | string {
  if (savedAs === undefined) return text;
  if (savedAs === 'Windows-1252') return Buffer.from(text, 'latin1');
  if (savedAs === 'UTF-16') return Buffer.from(`\uFEFF${text}`, 'utf16le');
  if (savedAs === 'UTF-8 with a mark') return `\uFEFF${text}`;
  if (savedAs === 'Windows line ends') return text.replaceAll('\n', '\r\n');
  if (savedAs === 'HEIC') return Buffer.from('\0\0\0\u0018ftypheic\0\0\0\0', 'latin1');
  if (savedAs === 'PNG') return Buffer.from('\u0089PNG\r\n\u001a\n', 'latin1');
  if (savedAs === 'nothing') return '';
  throw new Error(`no way to save as ${savedAs}`);
}
