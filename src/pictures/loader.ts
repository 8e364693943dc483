/* Astro loader for published pictures: one entry for each picture of a page, by collection and written address. */
import type { Loader } from 'astro/loaders';
import { isDraft } from '../source/draft.ts';
import type { Folder } from '../source/folder.ts';
import { isBelow } from '../source/loader.ts';
import { folderAfterChange, openFolder } from '../source/open-folder.ts';
import { picturesShown } from '../source/pictures.ts';
import { preparePictures } from './prepare.ts';

/** Pictures of the pages below `directory`. `kept` is the cache folder that builds share. */
export function picturesOf(directory: string, cache: string): Loader {
  return {
    name: 'almanac-pictures',
    async load({ store, watcher, logger }) {
      const fill = async (folder: Folder): Promise<void> => {
        const { pictures } = await preparePictures(folder, cache);
        const gone = new Set(store.keys());
        for (const { page, image, path } of picturesShown(folder)) {
          const published = path === null ? undefined : pictures.get(path);
          // A build has already read every picture. The preview, and a draft, continue without an unreadable one.
          if (!published && !watcher && !isDraft(page))
            throw new Error(
              `the picture ${path ?? image.url} of ${page.path} was changed or taken away while the site was built. Build again.`,
            );
          if (!published) continue;
          const [id, digest] = [`${page.collection}/${image.url}`, JSON.stringify(published)];
          gone.delete(id);
          if (store.get(id)?.digest !== digest) store.set({ id, data: published, digest });
        }
        for (const id of gone) store.delete(id);
      };
      await fill(openFolder(directory));
      // Loads run one after the other, so that the latest save is shown.
      let last = Promise.resolve();
      for (const event of ['add', 'change', 'unlink'] as const) {
        watcher?.on(event, (path) => {
          if (!isBelow(path, directory)) return;
          const folder = folderAfterChange(directory);
          last = last.then(async () => fill(await folder)).catch((error: unknown) => logger.error(String(error)));
        });
      }
    },
  };
}
