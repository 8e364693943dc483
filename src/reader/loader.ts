/*
 * Feeds one of Astro's collections from the reader. Astro sees the values that checks saw; the words of a page travel
 * as text and are parsed again, by the same parser, where the page is drawn.
 */
import { createHash } from 'node:crypto';
import { relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Loader } from 'astro/loaders';
import { isDraft } from './draft.ts';
import { isWhole, readFolder, type Folder } from './folder.ts';

/** Astro runs a copy of this file out of its own bundle: what the desk has read and checked is kept where both find it. */
const HELD = Symbol.for('almanac: the open folder');
const open = globalThis as { [HELD]?: Folder };

/** The folder is read once a build, so that what was checked is what is drawn; `fresh` reads it again. */
export function openFolder(directory: string, fresh = false): Folder {
  const held = open[HELD];
  if (held && !fresh && held.directory === directory) return held;
  return (open[HELD] = readFolder(directory));
}

/** The entries of one collection below `directory`. */
export function entriesOf(directory: string, collection: string): Loader {
  return {
    name: `almanac-${collection}`,
    async load({ store, parseData, watcher, config, logger }) {
      const root = fileURLToPath(config.root);
      const fill = async (fresh: boolean): Promise<void> => {
        const folder = openFolder(directory, fresh);
        const entries =
          collection === 'club'
            ? [folder.club].filter((club) => club !== null)
            : folder.entries.filter((entry) => entry.collection === collection);
        store.clear();
        for (const entry of entries.filter(isWhole)) {
          const data = await parseData({ id: entry.id, data: entry.fields.value as Record<string, unknown> }).catch((error: unknown) => {
            // The preview goes on without an entry that checks refuse; a build comes this far only with one that is a draft.
            if (watcher || isDraft(entry)) return null;
            throw error;
          });
          if (!data) continue;
          const digest = createHash('sha256').update(entry.text).update(entry.body).digest('hex');
          const filePath = relative(root, `${directory}/${entry.path}`).split(sep).join('/');
          store.set({ id: entry.id, data, body: entry.body, digest, filePath });
        }
      };
      await fill(false);
      watcher?.add(directory);
      for (const event of ['add', 'change', 'unlink'] as const) {
        watcher?.on(event, (path) => {
          if (path.startsWith(directory)) void fill(true).catch((error: unknown) => logger.error(String(error)));
        });
      }
    },
  };
}
