/* A book of a few files, checked by itself. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { check } from '../../../src/checks/check.ts';
import { formatDiagnostic } from '../../../src/source/diagnostic.ts';

export const bookYaml = (id: string, place = 'anywhere'): string =>
  `id: ${id}\ntitle: A book\nedition: 2026-11-01\nplace: ${place}\neditors: editors of the book\nmistakes: books@example.org\n`;

/** The faults of the book `trial`; the paths of `files` begin below the folder of books. */
export function faultsOfBook(files: Readonly<Record<string, string>>): string[] {
  const books = mkdtempSync(join(tmpdir(), 'books-'));
  const before = process.env.ALMANAC_BOOKS;
  process.env.ALMANAC_BOOKS = books;
  try {
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(dirname(join(books, path)), { recursive: true });
      writeFileSync(join(books, path), text);
    }
    return check(join(books, 'trial')).map(formatDiagnostic);
  } finally {
    if (before === undefined) delete process.env.ALMANAC_BOOKS;
    else process.env.ALMANAC_BOOKS = before;
    rmSync(books, { recursive: true, force: true });
  }
}
