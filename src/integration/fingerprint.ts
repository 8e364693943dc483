// Fingerprint of files: SHA-256 over their paths (sorted, forward slashes, relative to the caller's name for each place) and their bytes.
// Times, owners and the location on disk do not count, so two copies of the same files have the same fingerprint. A missing place adds
// nothing. An unreadable file counts by its error, and the code that needs its content reports it.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { booksFolder } from '../source/books-folder.ts';
import { isPassedOver } from '../source/passed-over.ts';

// Installed packages have their lock file. The others belong to desktops and git.
const leftOut = new Set(['node_modules', '.git', '.DS_Store', 'Thumbs.db', 'desktop.ini']);

/** Name and SHA-256 of each file, sorted. Two names may be equal here where the disk distinguishes them. */
export type Prints = readonly (readonly [name: string, print: string])[];

/** `places` maps the caller's name to a file or folder: `{ content: '/any/where' }`. */
export const fingerprint = (places: Readonly<Record<string, string>>): string => hashOfFiles(printsOf(places));

export function printsOf(places: Readonly<Record<string, string>>): Prints {
  const files = Object.entries(places).flatMap(([name, path]) => filesIn(name.normalize('NFC'), path, []));
  const prints = files.map(({ name, path }) => [name, filePrint(path)] as const);
  return prints.sort((one, other) => compare(one[0], other[0]) || compare(one[1], other[1]));
}

/** One hash for all of them. The length precedes each name, so that no two sets of files have the same input. */
export function hashOfFiles(prints: Prints): string {
  const hash = createHash('sha256');
  for (const [name, print] of prints) hash.update(`${Buffer.byteLength(name)}:${name}${print}`);
  return hash.digest('hex');
}

/** The first changed file and its change: "content/club.yaml changed". Null where none has changed. */
export function whatChanged(before: Prints, after: Prints): string | null {
  const [old, now] = [byName(before), byName(after)];
  const name = [...new Set([...old.keys(), ...now.keys()])].sort().find((each) => old.get(each) !== now.get(each));
  if (name === undefined) return null;
  return `${name} ${!old.has(name) ? 'was added' : now.has(name) ? 'changed' : 'was taken away'}`;
}

function byName(prints: Prints): Map<string, string> {
  const found = new Map<string, string>();
  for (const [name, print] of prints) found.set(name, (found.get(name) ?? '') + print);
  return found;
}

const compare = (one: string, other: string): number => (one < other ? -1 : one > other ? 1 : 0);

interface Found {
  name: string;
  path: string;
}

// Links are followed, except into a folder that contains them.
function filesIn(name: string, path: string, above: readonly string[]): Found[] {
  const kind = statSync(path, { throwIfNoEntry: false });
  if (!kind) return above.length === 0 ? [] : [{ name, path }];
  if (!kind.isDirectory()) return [{ name, path }];
  const real = realpathSync(path);
  if (above.includes(real)) return [];
  return namesIn(path).flatMap((inner) => filesIn(`${name}/${inner.normalize('NFC')}`, join(path, inner), [...above, real]));
}

function namesIn(folder: string): string[] {
  try {
    return readdirSync(folder).filter((name) => !leftOut.has(name));
  } catch {
    return [];
  }
}

function filePrint(path: string): string {
  const hash = createHash('sha256');
  try {
    return hash.update(readFileSync(path)).digest('hex');
  } catch (error) {
    return hash.update(`unreadable: ${(error as NodeJS.ErrnoException).code}`).digest('hex');
  }
}

/** The fingerprint of the input of a build of this content. */
export const sourceFingerprint = (project: string, content: string): string => hashOfFiles(sourcePrints(project, content));

/** The same by file. Ignored files, such as an editor's temporary file, are left out. */
export function sourcePrints(project: string, content: string): Prints {
  const own = ['src', 'shared', 'public', 'astro.config.mjs', 'tsconfig.json', 'package.json', 'package-lock.json'];
  const read = printsOf({ content, books: booksFolder(), ...Object.fromEntries(own.map((name) => [name, join(project, name)])) });
  return read.filter(([name]) => !/^(?:content|books)\//.test(name) || !name.split('/').some(isPassedOver));
}
