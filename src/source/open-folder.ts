/*
 * The content folder that this process has read. Astro runs copies of the reader out of its own bundle and its own
 * configuration: what the desk has read and checked is kept where each copy finds it.
 */
import { readFolder, type Folder } from './folder.ts';

const HELD = Symbol.for('almanac: the open folder');
const open = globalThis as { [HELD]?: Folder };

export const heldFolder = (): Folder | undefined => open[HELD];

/** The folder is read once a build, so that what was checked is what is drawn; `fresh` reads it again. */
export function openFolder(directory: string, fresh = false): Folder {
  const held = heldFolder();
  const former = held?.directory === directory ? held : undefined;
  return former && !fresh ? former : (open[HELD] = readFolder(directory, former));
}

let coming: Promise<Folder> | null = null;

/** The folder as it is after a change: read once, whoever asks within one event. */
export const folderAfterChange = (directory: string): Promise<Folder> =>
  (coming ??= Promise.resolve().then(() => {
    coming = null;
    return openFolder(directory, true);
  }));
