/*
 * Finds the pictures of a folder's pages: `![what it shows](./hive.jpg "what is said below it")`, with the file beside the page. This
 * file alone maps a written name to a file, so that what is checked is what is published.
 */
import type { Image } from 'mdast';
import { filesOfLayers, type Entry, type Folder } from './folder.ts';
import { isPictureName } from './picture-file.ts';
import { walk } from './prose.ts';

export type PictureShown = {
  page: Entry;
  image: Image;
  /** The path inside the content folder. Null where no file has exactly that name. */
  path: string | null;
};

/** Every picture of every parsed page, in the order of the pages. */
export function picturesShown(folder: Folder): PictureShown[] {
  const files = filesOfLayers(folder);
  return folder.entries.flatMap((page) =>
    page.tree
      ? [...walk(page.tree)]
          .filter((node) => node.type === 'image')
          .map((image) => ({ page, image, path: pathMeant(image.url, page.collection, files) }))
      : [],
  );
}

/** Files directly in a collection's folder that are not pages, by name. */
export const filesBeside = (collection: string, files: readonly string[]): string[] =>
  files
    .filter((path) => path.startsWith(`${collection}/`) && path.split('/').length === 2 && !/\.(?:mdx|yaml|csv)$/.test(path))
    .map((path) => path.slice(collection.length + 1));

/** The names that a written address may mean: as typed, and percent-decoded. */
export function namesMeant(url: string): string[] {
  const bare = url.replace(/^\.[\\/]/, '');
  try {
    return [...new Set([bare, decodeURIComponent(bare)])].map(composed);
  } catch {
    return [composed(bare)];
  }
}

/** Of two files of one name that of the nearest layer, as with pages. */
function pathMeant(url: string, collection: string, files: readonly { bare: string; path: string }[]): string | null {
  const names = namesMeant(url).map((name) => `${collection}/${name}`);
  return files.find(({ bare }) => isPictureName(bare) && names.includes(composed(bare)))?.path ?? null;
}

/** Some file systems store an é as two characters. */
export const composed = (name: string): string => name.normalize('NFC');
