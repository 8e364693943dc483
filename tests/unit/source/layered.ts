/* A small club over the books of tests/fixtures/books: the good club with a land, in a folder of its own. */
import { appendFileSync, cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { goodClub } from '../../fixtures/invalid/cases.ts';

export const books = fileURLToPath(new URL('../../fixtures/books', import.meta.url));

/** Calls `use` with the folder of a club that lies in `land`; `files` are written over it. */
export function withClub<T>(land: string, files: Readonly<Record<string, string>>, use: (directory: string) => T, over = books): T {
  const directory = mkdtempSync(join(tmpdir(), 'layered-'));
  const before = process.env.ALMANAC_BOOKS;
  process.env.ALMANAC_BOOKS = over;
  try {
    cpSync(goodClub, directory, { recursive: true });
    if (land === 'NZ') {
      edit(directory, 'club.yaml', 'hemisphere: north', 'hemisphere: south');
      // Its sum of warmth is of the north.
      rmSync(join(directory, 'forage'), { recursive: true });
    }
    appendFileSync(join(directory, 'club.yaml'), `land: ${land}\n`);
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(dirname(join(directory, path)), { recursive: true });
      if (path === 'club.yaml') appendFileSync(join(directory, path), text);
      else writeFileSync(join(directory, path), text);
    }
    return use(directory);
  } finally {
    if (before === undefined) delete process.env.ALMANAC_BOOKS;
    else process.env.ALMANAC_BOOKS = before;
    rmSync(directory, { recursive: true, force: true });
  }
}

export function edit(directory: string, path: string, from: string, to: string): void {
  const text = readFileSync(join(directory, path), 'utf8');
  if (!text.includes(from)) throw new Error(`${path} does not read: ${from}`);
  writeFileSync(join(directory, path), text.replace(from, to));
}
