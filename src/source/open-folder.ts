/*
 * The content folder that this process has read. Astro bundles several copies of this module, so the folder is stored globally, where
 * each copy finds it.
 */
import { readFolder, type Folder } from './folder.ts';

const HELD = Symbol.for('almanac: the open folder');
const open = globalThis as { [HELD]?: Folder };

export const heldFolder = (): Folder | undefined => open[HELD];

/** Reads the folder once per build, so that what was checked is what is drawn. `fresh` reads it again. `read` is for the first time. */
export function openFolder(directory: string, fresh = false, read: (directory: string) => Folder = readFolder): Folder {
  const held = heldFolder();
  const former = held?.directory === directory ? held : undefined;
  if (former && !fresh) return former;
  return (open[HELD] = former ? readFolder(directory, former) : read(directory));
}

let coming: Promise<Folder> | null = null;

/** The folder after a change, read once for all callers within one event. */
export const folderAfterChange = (directory: string): Promise<Folder> =>
  (coming ??= Promise.resolve().then(() => {
    coming = null;
    return openFolder(directory, true);
  }));
