/*
 * Reads a club's content folder once: every file of every collection, its fields with their places, its words as a
 * tree. Checks look at what it returns, and the collections are fed from it, so both see the same value.
 */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Root } from 'mdast';
import { decode } from './decode.ts';
import type { Fault } from './fault.ts';
import { parseProse } from './prose.ts';
import { readFields, splitPage, type Fields } from './fields.ts';

export type Entry = {
  collection: string;
  /** The file's name without its ending. */
  id: string;
  /** Inside the content folder, with forward slashes. */
  path: string;
  /** The whole file with LF line ends. */
  text: string;
  fields: Fields;
  /** The words after the fields; empty in a `.yaml` file. */
  body: string;
  /** The line of the file on which the body begins. */
  bodyLine: number;
  /** The words as a tree; null in a `.yaml` file. */
  tree: Root | null;
};

export type Folder = {
  directory: string;
  club: Entry | null;
  entries: Entry[];
  /** Every file and folder below, forward slashes, sorted. */
  files: string[];
  faults: Fault[];
};

/** Reads the folder. A folder that is missing, or a file that cannot be read, is a fault, not an exception. */
export function readFolder(directory: string): Folder {
  const folder: Folder = { directory, club: null, entries: [], files: [], faults: [] };
  if (!statSync(directory, { throwIfNoEntry: false })?.isDirectory()) {
    folder.faults.push(folderFault('.', 'no such folder', 'the path of a club\'s content folder after --content'));
    return folder;
  }
  folder.files = list(directory, '', folder.faults);
  for (const path of folder.files) {
    if (path === 'club.yaml') folder.club = readEntry(folder, path, '', 'club');
    const match = /^([^/]+)\/([^/]+)\.(mdx|yaml)$/.exec(path);
    if (!match) continue;
    const entry = readEntry(folder, path, match[1]!, match[2]!);
    if (entry) folder.entries.push(entry);
  }
  return folder;
}

function readEntry(folder: Folder, path: string, collection: string, id: string): Entry | null {
  const bytes = bytesOf(folder, path);
  if (!bytes) return null;
  const decoded = decode(path, bytes);
  if (!decoded.ok) {
    folder.faults.push(decoded.fault);
    return null;
  }
  return readText(path, collection, id, decoded.text, folder.faults);
}

/** An entry from the text of its file; adds what cannot be read to `faults`, and then returns null. */
export function readText(path: string, collection: string, id: string, text: string, faults: Fault[]): Entry | null {
  const isPage = path.endsWith('.mdx');
  const page = isPage ? splitPage(text) : { fields: text, fieldsLine: 1, body: '', bodyLine: 1 };
  if (!page) {
    faults.push({ path, line: 1, column: 1, rule: 'fields', field: 'the file', found: 'no fields at its head', write: '"---" on the first line, then the fields, then "---" on a line of its own' });
    return null;
  }
  const read = readFields(path, page.fields, page.fieldsLine);
  faults.push(...read.faults);
  if (read.faults.length > 0) return null;
  let tree: Root | null = null;
  if (isPage) {
    try {
      tree = parseProse(page.body);
    } catch (error) {
      faults.push(proseFault(path, page.bodyLine, error));
      return null;
    }
  }
  return { collection, id, path, text, fields: read.fields, body: page.body, bodyLine: page.bodyLine, tree };
}

function proseFault(path: string, bodyLine: number, error: unknown): Fault {
  const message = error instanceof Error ? error.message : String(error);
  const at = /(\d+):(\d+)/.exec(message);
  return {
    path,
    line: bodyLine - 1 + Number(at?.[1] ?? 1),
    column: Number(at?.[2] ?? 1),
    rule: 'words',
    field: 'a tag',
    found: 'a tag that is opened and not closed, or closed and not opened',
    write: 'both <Tag> and </Tag>, or the short form <Tag ... />',
  };
}

function bytesOf(folder: Folder, path: string): Uint8Array | null {
  try {
    return readFileSync(join(folder.directory, path));
  } catch (error) {
    folder.faults.push(folderFault(path, `a file that cannot be read (${(error as NodeJS.ErrnoException).code ?? 'unknown'})`, 'its permissions so that you may read it'));
    return null;
  }
}

function list(directory: string, below: string, faults: Fault[]): string[] {
  try {
    return readdirSync(join(directory, below), { withFileTypes: true })
      .filter((item) => !item.name.startsWith('.'))
      .flatMap((item) => {
        const path = below ? `${below}/${item.name}` : item.name;
        return isFolder(directory, path, item) ? list(directory, path, faults) : [path];
      })
      .sort();
  } catch (error) {
    faults.push(folderFault(below || '.', `a folder that cannot be read (${(error as NodeJS.ErrnoException).code ?? 'unknown'})`, 'its permissions so that you may read it'));
    return [];
  }
}

const isFolder = (directory: string, path: string, item: { isDirectory(): boolean; isSymbolicLink(): boolean }): boolean =>
  item.isDirectory() || (item.isSymbolicLink() && Boolean(statSync(join(directory, path), { throwIfNoEntry: false })?.isDirectory()));

const folderFault = (path: string, found: string, write: string): Fault => ({ path, line: 1, column: 1, rule: 'folder', field: 'the content folder', found, write });
