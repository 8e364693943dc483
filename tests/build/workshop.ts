/* Temporary folders for builds: copies of the small clubs to change, and output folders. They are deleted when the tests end. */
import { cpSync, mkdtempSync, readdirSync, readFileSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, sep } from 'node:path';
import { afterAll } from 'vitest';
import { gunzipSync } from 'node:zlib';
import { fixtureFolder, runDesk, type Ran } from '../setup/built-site.ts';

export interface Workshop {
  folder: string;
  /** A copy of a club of tests/fixtures, to change at will. */
  copy: (name: string) => string;
  /** `npm run build` as its user runs it. */
  build: (content: string, out: string, typed?: readonly string[], environment?: NodeJS.ProcessEnv) => Promise<Ran>;
}

export function openWorkshop(): Workshop {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'build-')));
  let copies = 0;
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return {
    folder,
    copy: (name) => {
      const made = join(folder, `${name}-${(copies += 1)}`);
      cpSync(fixtureFolder(name), made, { recursive: true });
      return made;
    },
    build: (content, out, typed = [], environment = {}) => runDesk('build', ['--content', content, '--out', out, ...typed], environment),
  };
}

/** Paths of all files below a folder, with forward slashes, sorted. */
export const filesIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(folder.length + 1)
        .split(sep)
        .join('/'),
    )
    .sort();

/** Every file's bytes as text, by path, with packed files unpacked. */
export function contentsOf(folder: string): Map<string, string> {
  return new Map(
    filesIn(folder).map((path) => {
      const bytes = readFileSync(join(folder, path));
      return [path, (bytes[0] === 0x1f && bytes[1] === 0x8b ? gunzipSync(bytes) : bytes).toString('latin1')];
    }),
  );
}

/**
 * The files of a site without the mark of its edition, which is made of its input and of the program, and without what holds a hash of
 * pages that have it.
 */
export function unmarked(site: string): Map<string, string> {
  const files = contentsOf(site);
  const { fingerprint, mark, pages } = JSON.parse(files.get('edition.json')!) as Record<string, string>;
  const without = (text: string): string =>
    text
      .replaceAll(fingerprint!, 'FINGERPRINT')
      .replaceAll(mark!, 'MARK')
      .replace(/'sha256-[^']+'/g, 'HASH');
  const own: Record<string, string> = { 'edition.json': JSON.stringify(pages), 'handbook.epub': '', 'worker.js': '' };
  return new Map([...files].map(([path, text]) => [path, own[path] ?? without(text)]));
}

/** Replaces words in a file. They must occur in it. */
export function change(path: string, from: string, to: string): void {
  const text = readFileSync(path, 'utf8');
  if (!text.includes(from)) throw new Error(`change: needs "${from}" in ${path}`);
  writeFileSync(path, text.replace(from, to));
}
