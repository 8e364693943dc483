/* Prepares the pictures of a folder's pages for publication. An unreadable picture becomes a diagnostic, not an exception. */
import { statSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { ok } from '../../shared/result.ts';
import type { Diagnostic } from '../source/diagnostic.ts';
import { onDisk, type Folder } from '../source/folder.ts';
import { refusalOf } from '../source/picture-file.ts';
import { picturesShown } from '../source/pictures.ts';
import type { PictureResult, Published } from './kept.ts';

/** `pictures`: by path inside the content folder. `made`: the number that was not in the cache. */
export type Prepared = { pictures: Map<string, Published>; faults: Diagnostic[]; made: number };

/** Results of this process by path, size and modification time, because the preview asks on every page. */
const known = new Map<string, PictureResult>();

/**
 * `kept` is the folder that builds share. `making` is called before each missing picture is made. A file that checks refuse by its first
 * bytes is skipped.
 */
export async function preparePictures(folder: Folder, cache: string, making: () => void = () => undefined): Promise<Prepared> {
  const paths = [...new Set(picturesShown(folder).flatMap(({ path }) => path ?? []))]
    .filter((path) => !refusalOf(onDisk(folder, path)))
    .sort();
  const results = await inHands(paths, (path) => resultOf(onDisk(folder, path), cache, making));
  const prepared: Prepared = { pictures: new Map(), faults: [], made: 0 };
  for (const [index, path] of paths.entries()) {
    const result = results[index]!;
    if (result.ok) prepared.pictures.set(path, { files: result.value.files });
    else prepared.faults.push({ path, line: 1, column: 1, rule: 'picture', field: 'the file', ...result.reason });
    if (result.ok && result.value.made) prepared.made += 1;
  }
  return prepared;
}

async function resultOf(file: string, cache: string, making: () => void): Promise<PictureResult> {
  const { size, mtimeMs } = statSync(file);
  const mark = [file, size, mtimeMs, cache].join('\n');
  const held = known.get(mark);
  if (held) return held;
  // Loaded only for a club with pictures.
  const { published } = await import('./kept.ts');
  const result = await published(file, cache, making);
  known.set(mark, result.ok ? ok({ ...result.value, made: false }) : result);
  return result;
}

/** Runs one task per processor at a time. Results are in the order of the input. */
async function inHands<Asked, Done>(asked: readonly Asked[], work: (one: Asked) => Promise<Done>): Promise<Done[]> {
  const done: Done[] = [];
  const left = asked.entries();
  const hand = async (): Promise<void> => {
    for (const [index, one] of left) done[index] = await work(one);
  };
  await Promise.all(Array.from({ length: Math.min(availableParallelism(), 4) }, hand));
  return done;
}
