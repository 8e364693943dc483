/*
 * The edition that a build replaces: its record, its calendars and the hashes of its files. It is read before the build, because Astro
 * empties the output folder.
 */
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { readRecord } from './changes.ts';
import type { EditionRecord } from './edition-record.ts';

export type HashedFile = { size: number; hash: string };

export type FormerEdition = {
  record: EditionRecord;
  /** By name: `club.ics`. */
  calendars: ReadonlyMap<string, string>;
  /** By path with forward slashes. */
  files: ReadonlyMap<string, HashedFile>;
};

/** Null where the folder contains no edition. */
export function formerEdition(folder: string): FormerEdition | null {
  const file = join(folder, 'edition.json');
  const record = existsSync(file) ? readRecord(readFileSync(file, 'utf8')) : null;
  if (!record) return null;
  const calendars = readdirSync(folder).filter((name) => name.endsWith('.ics'));
  return {
    record,
    calendars: new Map(calendars.map((name) => [name, readFileSync(join(folder, name), 'utf8')])),
    files: hashedFiles(folder),
  };
}

/** Every file below a folder. */
export const hashedFiles = (folder: string): Map<string, HashedFile> =>
  new Map(
    readdirSync(folder, { recursive: true, withFileTypes: true, encoding: 'utf8' })
      .filter((entry) => entry.isFile())
      .map((entry) => {
        const path = join(entry.parentPath, entry.name);
        const bytes = readFileSync(path);
        return [
          path
            .slice(folder.length + 1)
            .split(sep)
            .join('/'),
          { size: bytes.length, hash: createHash('sha1').update(bytes).digest('hex') },
        ];
      }),
  );
