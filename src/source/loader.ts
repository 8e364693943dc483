/*
 * Content loader: feeds one of Astro's collections from the folder that source/ has read, so that Astro sees the values that checks saw.
 * The words of a page are compiled when the page is drawn; mdx-modules supplies their tree.
 */
import { createHash } from 'node:crypto';
import { sep } from 'node:path';
import type { Loader } from 'astro/loaders';
import { tongueOf } from '../../shared/country/language.ts';
import { booksFolder } from './books-folder.ts';
import { isDraft } from './draft.ts';
import { isWhole, languageOf, withoutDrafts, type Entry, type Folder } from './folder.ts';
import { isText, isWrittenForCountry, modulePath } from './mdx-modules.ts';
import { originOf } from './origins.ts';
import { folderAfterChange, openFolder } from './open-folder.ts';

/** True where a path from the watcher is inside the folder, or inside the books it stands on. */
export const isBelow = (path: string, directory: string): boolean =>
  [directory, booksFolder()].some((folder) => path.startsWith(folder + sep));

/** The entries of one collection below `directory`. `written` gives a book's text as the club's country writes it. */
export function entriesOf(directory: string, collection: string, written: (text: string) => string): Loader {
  return {
    name: `almanac-${collection}`,
    async load({ store, parseData, watcher, logger }) {
      const fill = async (folder: Folder): Promise<void> => {
        const gone = new Set(store.keys());
        for (const entry of wholeEntries(watcher ? folder : withoutDrafts(folder), collection)) {
          const digest = digestOf(entry);
          if (store.get(entry.id)?.digest === digest) {
            gone.delete(entry.id);
            continue;
          }
          const fields = fieldsOf(entry, written);
          const data = await parseData({ id: entry.id, data: fields as Record<string, unknown> }).catch((error: unknown) => {
            // The preview skips an entry that checks refuse. In a build, only a draft can still be invalid here.
            if (watcher || isDraft(entry)) return null;
            throw error;
          });
          if (!data) continue;
          gone.delete(entry.id);
          const words = entry.tree ? { filePath: modulePath(entry), deferredRender: true } : {};
          store.set({ id: entry.id, data, body: entry.body, digest, ...words });
        }
        for (const id of gone) store.delete(id);
      };
      // An earlier preview may have stored entries of other schemas.
      store.clear();
      await fill(openFolder(directory));
      watcher?.add([directory, booksFolder()]);
      for (const event of ['add', 'change', 'unlink'] as const) {
        watcher?.on(event, (path) => {
          if (isBelow(path, directory))
            void folderAfterChange(directory)
              .then(fill)
              .catch((error: unknown) => logger.error(String(error)));
        });
      }
    },
  };
}

const digestOf = ({ text, body, translation }: Entry): string =>
  createHash('sha256')
    .update(text)
    .update(body)
    .update(translation?.text ?? '')
    .digest('hex');

/** A book's fields as the club's country writes them. Names of publications stay. */
const fieldsOf = (entry: Entry, written: (text: string) => string): unknown =>
  isWrittenForCountry(entry) && entry.collection !== 'sources' ? withWords(entry.fields.value, written) : entry.fields.value;

/** Fields with their texts changed. An id, an address or a choice has no blank and no capital, and stays. So does what people type. */
function withWords(value: unknown, written: (text: string) => string): unknown {
  if (typeof value === 'string') return isText(value) ? written(value) : value;
  if (Array.isArray(value)) return value.map((each) => withWords(each, written));
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, TYPED.has(key) ? each : withWords(each, written)]));
}

const TYPED = new Set(['also', 'uk', 'us', 'when', 'asks']);

/** Whose claim each entry is, by its folder and name; empty for a club without books. */
export function originsOf(directory: string): Loader {
  return {
    name: 'almanac-origins',
    async load({ store, watcher, logger }) {
      const fill = (folder: Folder): void => {
        store.clear();
        if (folder.books.length === 0) return;
        for (const entry of (watcher ? folder : withoutDrafts(folder)).entries)
          store.set({ id: `${entry.collection}/${entry.id}`, data: originOf(folder, entry, tongueOf(languageOf(folder))) });
      };
      fill(openFolder(directory));
      for (const event of ['add', 'change', 'unlink'] as const) {
        watcher?.on(event, (path) => {
          if (isBelow(path, directory))
            void folderAfterChange(directory)
              .then(fill)
              .catch((error: unknown) => logger.error(String(error)));
        });
      }
    },
  };
}

function wholeEntries(folder: Folder, collection: string): Entry[] {
  const entries = collection === 'club' ? [folder.club] : folder.entries.filter((entry) => entry.collection === collection);
  return entries.filter((entry) => entry !== null).filter(isWhole);
}
