/*
 * Reads a club's content folder once: every file of every collection, its fields with positions, and its words as a tree. Checks use the
 * result, and the loader feeds the collections from it, so both see the same value.
 */
import { readdirSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Root } from 'mdast';
import { decode } from './decode.ts';
import { saysDraft } from './draft.ts';
import type { Diagnostic } from './diagnostic.ts';
import { parseProse } from './prose.ts';
import { readFields, splitPage, unsplit, type Fields } from './fields.ts';
import { isPassedOver } from './passed-over.ts';
import { readTable } from './table.ts';

export type Entry = {
  collection: string;
  /** The file name without its ending. */
  id: string;
  /** Path inside the content folder, with forward slashes. */
  path: string;
  /** The whole file with LF line ends. */
  text: string;
  fields: Fields;
  /** The words after the front matter, or the SVG of a drawing. Empty in a file of fields or rows. */
  body: string;
  /** The line of the file on which the body begins. */
  bodyLine: number;
  /** The words as a tree. Null in a file without words, or where they could not be parsed. */
  tree: Root | null;
};

export type Folder = {
  directory: string;
  club: Entry | null;
  entries: Entry[];
  /** Every file and folder below, with forward slashes, sorted. */
  files: string[];
  faults: Diagnostic[];
  /** Paths of drafts that could not be parsed at all and are therefore not among the entries. */
  unreadDrafts: string[];
  /** The parsed result of each file by path, for the next reading. */
  parsed: Map<string, Parsed>;
};

type Parsed = { text: string; entry: Entry | null; faults: Diagnostic[] };

/**
 * Reads the folder. A missing folder or an unreadable file is a diagnostic, not an exception. A file whose text is unchanged since the
 * `former` reading is not parsed again.
 */
export function readFolder(directory: string, former?: Folder): Folder {
  const folder: Folder = { directory, club: null, entries: [], files: [], faults: [], unreadDrafts: [], parsed: new Map() };
  if (!statSync(directory, { throwIfNoEntry: false })?.isDirectory()) {
    folder.faults.push(folderFault('.', 'no such folder', "the path of a club's content folder after --content"));
    return folder;
  }
  folder.files = list(directory, '', folder.faults, [realpathSync(directory)]);
  for (const path of folder.files) {
    if (path === 'club.yaml') folder.club = readEntry(folder, path, 'club', 'club', former);
    const match = /^([^/]+)\/([^/]+)\.(mdx|yaml|csv)$/.exec(path);
    if (!match) continue;
    const entry = readEntry(folder, path, match[1]!, match[2]!, former);
    if (entry) folder.entries.push(entry.collection === 'drawings' ? withLines(folder, entry) : entry);
  }
  return folder;
}

function readEntry(folder: Folder, path: string, collection: string, id: string, former?: Folder): Entry | null {
  const bytes = bytesOf(folder, path);
  if (!bytes) return null;
  const decoded = decode(path, bytes);
  const entry = decoded.ok ? parsedEntry(folder, path, collection, id, decoded.text, former) : null;
  if (!decoded.ok) folder.faults.push(decoded.fault);
  // Undecodable characters elsewhere do not hide the plain words of that line.
  if (!entry && saysDraft(Buffer.from(bytes).toString('latin1'))) folder.unreadDrafts.push(path);
  return entry;
}

function parsedEntry(folder: Folder, path: string, collection: string, id: string, text: string, former?: Folder): Entry | null {
  const parsed = former?.parsed.get(path);
  const now = parsed?.text === text ? parsed : parsedText(path, collection, id, text);
  folder.parsed.set(path, now);
  folder.faults.push(...now.faults);
  return now.entry;
}

function parsedText(path: string, collection: string, id: string, text: string): Parsed {
  const faults: Diagnostic[] = [];
  return { text, entry: readText(path, collection, id, text, faults), faults };
}

/** The SVG of a drawing is beside its words, under the same name. */
function withLines(folder: Folder, entry: Entry): Entry {
  const path = entry.path.replace(/yaml$/, 'svg');
  const bytes = folder.files.includes(path) ? bytesOf(folder, path) : null;
  const decoded = bytes && decode(path, bytes);
  if (decoded?.ok === false) folder.faults.push(decoded.fault);
  return decoded?.ok ? { ...entry, body: decoded.text } : entry;
}

/** True where both its fields and its words could be parsed. */
export const isWhole = (entry: Entry): boolean => entry.fields.value !== undefined && (entry.tree !== null || !entry.path.endsWith('.mdx'));

/** Parses an entry from the text of its file. Problems are added to `faults`, and the rest can still be checked. */
export function readText(path: string, collection: string, id: string, text: string, faults: Diagnostic[]): Entry | null {
  if (path.endsWith('.csv')) return { collection, id, path, text, ...readTableInto(path, text, faults), body: '', bodyLine: 1, tree: null };
  const isPage = path.endsWith('.mdx');
  const page = isPage ? splitPage(text) : { fields: text, fieldsLine: 1, body: '', bodyLine: 1 };
  if (!page) {
    faults.push(unsplit(path, text));
    return null;
  }
  const read = readFields(path, page.fields, page.fieldsLine);
  faults.push(...read.faults);
  let tree: Root | null = null;
  if (isPage) {
    try {
      tree = parseProse(page.body);
    } catch (error) {
      faults.push(proseFault(path, page.bodyLine, page.body, error));
    }
  }
  return { collection, id, path, text, fields: read.fields, body: page.body, bodyLine: page.bodyLine, tree };
}

function readTableInto(path: string, text: string, faults: Diagnostic[]): { fields: Fields } {
  const read = readTable(path, text);
  faults.push(...read.faults);
  return { fields: read.fields };
}

function proseFault(path: string, bodyLine: number, body: string, error: unknown): Diagnostic {
  const { line, column, crossing } = tagFaultOf(error as VFileMessage);
  const at = { path, line: bodyLine - 1 + line, column, rule: 'tag' };
  if (crossing)
    return {
      ...at,
      field: crossing,
      found: `${crossing} that crosses another mark, such as *words*`,
      write: 'the mark wholly inside the tag or wholly outside',
    };
  const typed = body.split('\n')[line - 1] ?? '';
  const open = /<(Figure|Task|Contact|Drawing|Day)((?:\s+[a-z-]+="[^"]*")*)\s*>(?:<\/\1>)?/;
  const mended = open.test(typed) ? typed.replace(open, '<$1$2 />').trim() : undefined;
  return {
    ...at,
    field: 'a tag',
    found: 'a tag that is opened and not closed, closed and not opened, or crosses another mark',
    write: 'both <Tag> and </Tag> in one sentence, or the short form <Tag ... />',
    ...(mended === undefined ? {} : { corrected: mended }),
  };
}

/** The error of the tag parser (a VFileMessage of mdast-util-mdx-jsx). */
type VFileMessage = { reason?: string; ruleId?: string; line?: number; column?: number };

/** The position where the tag begins, and its name where it closes across another mark. */
function tagFaultOf({ reason = '', ruleId, line = 1, column = 1 }: VFileMessage): {
  line: number;
  column: number;
  crossing?: string | undefined;
} {
  const crossing = /`<\/?(\w+)>`.* of `(?:emphasis|strong|delete|link)`/.exec(reason)?.[1];
  const opened = /^Expected a closing tag for `<\w+>` \((\d+):(\d+)/.exec(reason);
  if (opened) return { line: Number(opened[1]), column: Number(opened[2]), crossing };
  // The parser names the slash.
  return { line, column: ruleId === 'unexpected-closing-slash' ? column - 1 : column, crossing };
}

function bytesOf(folder: Folder, path: string): Uint8Array | null {
  try {
    if (!statSync(join(folder.directory, path)).isFile()) throw Object.assign(new Error(), { code: 'not a file' });
    return readFileSync(join(folder.directory, path));
  } catch (error) {
    folder.faults.push(
      folderFault(
        path,
        `a file that cannot be read (${(error as NodeJS.ErrnoException).code ?? 'unknown'})`,
        'its permissions so that you may read it',
      ),
    );
    return null;
  }
}

/** `above`: the true paths of the folders on the way down, so that a link back to one of them does not loop. */
function list(directory: string, below: string, faults: Diagnostic[], above: readonly string[]): string[] {
  try {
    return readdirSync(join(directory, below), { withFileTypes: true })
      .filter((item) => !isPassedOver(item.name))
      .flatMap((item) => {
        const path = below ? `${below}/${item.name}` : item.name;
        if (!isFolder(directory, path, item)) return [path];
        const truePath = realpathSync(join(directory, path));
        if (!above.includes(truePath)) return list(directory, path, faults, [...above, truePath]);
        faults.push(folderFault(path, 'a link that leads back to a folder it lies in', 'a real folder, or nothing'));
        return [];
      })
      .sort();
  } catch (error) {
    faults.push(
      folderFault(
        below || '.',
        `a folder that cannot be read (${(error as NodeJS.ErrnoException).code ?? 'unknown'})`,
        'its permissions so that you may read it',
      ),
    );
    return [];
  }
}

const isFolder = (directory: string, path: string, item: { isDirectory(): boolean; isSymbolicLink(): boolean }): boolean =>
  item.isDirectory() || (item.isSymbolicLink() && Boolean(statSync(join(directory, path), { throwIfNoEntry: false })?.isDirectory()));

const folderFault = (path: string, found: string, write: string): Diagnostic => ({
  path,
  line: 1,
  column: 1,
  rule: 'folder',
  field: 'the content folder',
  found,
  write,
});
