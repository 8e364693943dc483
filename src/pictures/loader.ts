/* Hands the published pictures to Astro as a collection: an entry for each picture of a page, by collection and address as written. */
import type { Loader } from 'astro/loaders';
import { isDraft } from '../reader/draft.ts';
import { openFolder } from '../reader/loader.ts';
import { picturesShown } from '../reader/pictures.ts';
import { preparePictures } from './prepare.ts';

/** Pictures of the pages below `directory`; `kept` is the folder of published files that builds share. */
export function picturesOf(directory: string, kept: string): Loader {
  return {
    name: 'almanac-pictures',
    async load({ store, watcher, logger }) {
      const fill = async (fresh: boolean): Promise<void> => {
        const folder = openFolder(directory, fresh);
        const { pictures } = await preparePictures(folder, kept);
        store.clear();
        for (const { page, image, path } of picturesShown(folder)) {
          const published = path === null ? undefined : pictures.get(path);
          // A build has read each of them once; the preview, and a draft, go on without one that cannot be read.
          if (!published && !watcher && !isDraft(page))
            throw new Error(
              `the picture ${path ?? image.url} of ${page.path} was changed or taken away while the site was built. Build again.`,
            );
          if (published) store.set({ id: `${page.collection}/${image.url}`, data: published, digest: JSON.stringify(published) });
        }
      };
      await fill(false);
      // One after the other, so that the last save is what is shown.
      let last = Promise.resolve();
      for (const event of ['add', 'change', 'unlink'] as const) {
        watcher?.on(event, (path) => {
          if (path.startsWith(directory)) last = last.then(() => fill(true)).catch((error: unknown) => logger.error(String(error)));
        });
      }
    },
  };
}
