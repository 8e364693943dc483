/*
 * Cache of parsed files between two runs, in `.almanac/parsed.bin`. Fields and tree of a file whose text is the same as in the last run
 * are read from there. Only files without a fault are kept. A cache that is damaged, or that other code wrote, is ignored.
 */
import { createHash, type Hash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { deserialize, serialize } from 'node:v8';
import { readFields, splitPage, type Fields } from './fields.ts';
import { readFolder, type Entry, type Folder } from './folder.ts';
import { readTable } from './table.ts';

const project = new URL('../../', import.meta.url);
/** It may be deleted at any time. */
export const cacheFile: string = fileURLToPath(new URL('.almanac/parsed.bin', project));

/** What is kept of a file. Places of fields are not: the fields are parsed again when somebody asks for one. */
type Kept = Pick<Entry, 'path' | 'collection' | 'id' | 'text' | 'tree'> & Pick<Fields, 'value' | 'cut'>;

/** Reads the folder as `readFolder` does, with what an earlier run parsed. Keeps in `file` what this run parsed. */
export function readFolderCached(directory: string, file = cacheFile): Folder {
  const before = parsedBefore(file);
  const folder = readFolder(directory, { parsed: before });
  const now = [...folder.parsed].flatMap(([path, { entry, faults }]) => (entry && faults.length === 0 ? [{ path, entry }] : []));
  if (now.some(({ path, entry }) => before.get(path)?.entry !== entry))
    keep(
      file,
      now.map((each) => each.entry),
    );
  return folder;
}

const HASH_BYTES = 32;

function parsedBefore(file: string): Folder['parsed'] {
  try {
    const bytes = readFileSync(file);
    const content = bytes.subarray(HASH_BYTES);
    if (!hashWithCode(content).equals(bytes.subarray(0, HASH_BYTES))) return new Map();
    return new Map((deserialize(content) as Kept[]).map((kept) => [kept.path, { text: kept.text, entry: entryOf(kept), faults: [] }]));
  } catch {
    return new Map();
  }
}

function keep(file: string, entries: readonly Entry[]): void {
  const content = serialize(
    entries.map(({ path, collection, id, text, tree, fields: { value, cut } }): Kept => ({ path, collection, id, text, tree, value, cut })),
  );
  const part = `${file}.${process.pid}`;
  try {
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(part, Buffer.concat([hashWithCode(content), content]));
    renameSync(part, file);
  } catch {
    // Without its cache the next run is only slower.
    if (existsSync(part)) rmSync(part);
  }
}

function entryOf({ path, collection, id, text, tree, value, cut }: Kept): Entry {
  const page = (path.endsWith('.mdx') ? splitPage(text) : null) ?? { fields: text, fieldsLine: 1, body: '', bodyLine: 1 };
  let parsed: Fields | undefined;
  const fields = (): Fields =>
    (parsed ??= (path.endsWith('.csv') ? readTable(path, text) : readFields(path, page.fields, page.fieldsLine)).fields);
  return {
    collection,
    id,
    path,
    text,
    fields: { value, cut, placeOf: (keys) => fields().placeOf(keys), placeOfName: (keys) => fields().placeOfName(keys) },
    body: page.body,
    bodyLine: page.bodyLine,
    tree,
  };
}

let ofCode: Hash | undefined;

/** The hash of the content together with all that parses: the files of this folder, the versions of the packages, and Node. */
const hashWithCode = (content: Uint8Array): Buffer => (ofCode ??= hashOfCode()).copy().update(content).digest();

function hashOfCode(): Hash {
  const hash = createHash('sha256').update(process.version);
  const here = new URL('./', import.meta.url);
  const code = readdirSync(here)
    .sort()
    .map((name) => new URL(name, here));
  // An installed release has no lock file, and its package.json names every package.
  for (const file of [...code, new URL('package.json', project), new URL('package-lock.json', project)]) {
    const bytes = existsSync(file) ? readFileSync(file) : Buffer.alloc(0);
    hash.update(` ${file.pathname} ${bytes.length} `).update(bytes);
  }
  return hash;
}
