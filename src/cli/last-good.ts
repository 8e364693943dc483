/*
 * Last good state of a club's files. Each successful build copies its text files to `.almanac/last-good`, under a hash of the content
 * folder's path. `standIn` builds a folder without faults: the club's current files, with the last good state in place of each faulty
 * one. The club's own files are not changed.
 */
import { createHash } from 'node:crypto';
import {
  copyFileSync,
  existsSync,
  linkSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { err, ok, type Result } from '../../shared/result.ts';
import type { Diagnostic } from '../source/diagnostic.ts';
import { readFolder, type Folder } from '../source/folder.ts';
import { clubIdIn } from './club-near.ts';
import { lastGoodFolder as keptFolder } from './paths.ts';
import { moveFolder, removeWork } from './swap.ts';
import { withdrawnLineIn, withWithdrawnLine } from './withdrawn-line.ts';

/** What is kept of the last good state. Pictures are not: they are large, and the pages that show them do without. */
const KEPT = /\.(?:mdx|yaml|csv|svg|pdf)$/;

const placeOf = (content: string): string =>
  join(keptFolder, createHash('sha256').update(realpathSync(content)).digest('hex').slice(0, 16));

/** Copies the text files of a folder to `to`. Pass it to `keepCopy` once their edition is in place. */
export function copyTexts({ directory, files }: Folder, to: string): void {
  for (const path of files.filter((each) => KEPT.test(each))) copy(join(directory, path), join(to, 'content', path));
}

/** `copied` becomes the last good state of `content`. Copies of deleted folders are removed. */
export function keepCopy(content: string, copied: string): void {
  const place = placeOf(content);
  const old = `${place}.old-${process.pid}`;
  writeFileSync(join(copied, 'from.txt'), realpathSync(content));
  mkdirSync(keptFolder, { recursive: true });
  if (existsSync(place)) renameSync(place, old);
  moveFolder(copied, place);
  for (const name of readdirSync(keptFolder)) {
    const held = join(keptFolder, name);
    const from = join(held, 'from.txt');
    if (name.includes('.old-') || !existsSync(from) || !existsSync(readFileSync(from, 'utf8'))) removeWork(held);
  }
}

/** The folder of the last good state of this club's folder. Null where there is none, or where it belongs to another club. */
export function lastGoodOf(content: string): string | null {
  if (!existsSync(content)) return null;
  const held = join(placeOf(content), 'content');
  if (!existsSync(join(held, 'club.yaml'))) return null;
  const [now, then] = [clubIdIn(content), clubIdIn(held)];
  return now === null || now === then ? held : null;
}

/** Files of the club that differ from the last good edition. */
export type ChangedFiles = { added: string[]; changed: string[]; gone: string[] };

/** Null where no edition was built from this folder. */
export function changedSince(content: string): ChangedFiles | null {
  const last = lastGoodOf(content);
  if (last === null) return null;
  const textsIn = (folder: string): string[] => readFolder(folder).files.filter((path) => KEPT.test(path));
  const [now, then] = [textsIn(content), new Set(textsIn(last))];
  const differs = (path: string): boolean => !readFileSync(join(content, path)).equals(readFileSync(join(last, path)));
  return {
    added: now.filter((path) => !then.has(path)),
    changed: now.filter((path) => then.has(path) && differs(path)),
    gone: [...then].filter((path) => !now.includes(path)),
  };
}

/** The replaced files, as paths inside the content folder. */
export type StoodIn = {
  /** In their last good state. */
  asBefore: string[];
  /** New since then, and left out. */
  leftOut: string[];
  /** Deleted since then, but needed. */
  broughtBack: string[];
};
export type StandIn = Result<StoodIn, { inTheWay: Diagnostic[]; hasLastGood: boolean }>;

type Choice = 'now' | 'last' | 'out';

/**
 * Fills `directory` so that `faultsOf` finds nothing in it. First each faulty file is replaced by its last good state, or left out where
 * it is new. Then deleted files are restored. Finally everything but notices and withdrawals is restored. Without a last good state a
 * faulty file is left out, as long as no other file needs it.
 */
export async function standIn(
  content: string,
  directory: string,
  faultsOf: (directory: string) => Promise<Diagnostic[]>,
): Promise<StandIn> {
  const last = lastGoodOf(content);
  const now = new Set(readFolder(content).files);
  const then = new Set(last === null ? [] : readFolder(last).files);
  const choices = new Map<string, Choice>([...now].map((path) => [path, 'now']));
  const atFirst = new Set<string>();
  const further = last === null ? [] : [bringBack, allAsBefore];
  for (let round = 0; ; round += 1) {
    fill();
    const faults = await faultsOf(directory);
    if (faults.length === 0) return ok(stoodIn());
    const paths = new Set(faults.map(({ path }) => path));
    if (round === 0) for (const path of paths) atFirst.add(path);
    const needed = last === null && [...paths].some((path) => !atFirst.has(path));
    const moved = !needed && [...paths].map(giveWay).some(Boolean);
    if (!moved && !further.shift()?.()) return err({ inTheWay: faults, hasLastGood: last !== null });
  }

  /** Replaces a file by its last good state, or removes it. False where that was done before. */
  function giveWay(path: string): boolean {
    const moves = together(path).filter((each) => choices.get(each) === 'now' && (then.has(each) || each !== 'club.yaml'));
    for (const each of moves) choices.set(each, then.has(each) ? 'last' : 'out');
    return moves.length > 0;
  }

  function bringBack(): boolean {
    const gone = [...then].filter((path) => !now.has(path));
    for (const path of gone) choices.set(path, 'last');
    return gone.length > 0 || (further.shift()?.() ?? false);
  }

  function allAsBefore(): boolean {
    for (const [path, choice] of choices)
      if (choice === 'now' && KEPT.test(path) && !path.startsWith('notices/')) choices.set(path, then.has(path) ? 'last' : 'out');
    return true;
  }

  function fill(): void {
    rmSync(directory, { recursive: true, force: true });
    mkdirSync(directory, { recursive: true });
    for (const path of choices.keys()) {
      if (choices.get(path) === 'now' && !copied(path)) giveWay(path);
      if (choices.get(path) === 'last') putLast(path);
    }
  }

  /** False for an unreadable file. */
  function copied(path: string): boolean {
    try {
      copy(join(content, path), join(directory, path), !KEPT.test(path));
      return true;
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code === 'ENOSPC') throw error;
      return false;
    }
  }

  /** Entries that were withdrawn since then stay withdrawn. */
  function putLast(path: string): void {
    const to = join(directory, path);
    const bytes = readFileSync(join(last!, path));
    const line = now.has(path) ? withdrawnLineIn(path, bytesOf(path)) : null;
    mkdirSync(dirname(to), { recursive: true });
    writeFileSync(to, line !== null && withdrawnLineIn(path, bytes) === null ? withWithdrawnLine(path, bytes, line) : bytes);
  }

  function bytesOf(path: string): Buffer {
    try {
      return readFileSync(join(content, path));
    } catch {
      return Buffer.alloc(0);
    }
  }

  function stoodIn(): StoodIn {
    const paths = (choice: Choice): string[] => [...choices].flatMap(([path, each]) => (each === choice ? [path] : [])).sort();
    const differs = (path: string): boolean => !bytesOf(path).equals(readFileSync(join(last!, path)));
    return {
      asBefore: paths('last').filter((path) => now.has(path) && differs(path)),
      leftOut: paths('out'),
      broughtBack: paths('last').filter((path) => !now.has(path)),
    };
  }
}

/** The words and the SVG of a drawing belong together, and so do a club's PDF and its description. */
function together(path: string): string[] {
  const [, bare, folder] = /^((drawings|files)\/[^/]+)\.(?:yaml|svg|pdf)$/.exec(path) ?? [];
  return bare === undefined ? [path] : [`${bare}.yaml`, `${bare}.${folder === 'files' ? 'pdf' : 'svg'}`];
}

/** `linked`: as a hard link where the disk allows it, because pictures are large and only read. */
function copy(from: string, to: string, linked = false): void {
  mkdirSync(dirname(to), { recursive: true });
  try {
    if (linked) return linkSync(realpathSync(from), to);
  } catch {
    // Another disk, or one without hard links.
  }
  copyFileSync(from, to);
}
