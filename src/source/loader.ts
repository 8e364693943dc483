/*
 * Content loader: feeds one of Astro's collections from the folder that source/ has read, so that Astro sees the values that checks saw.
 * The words of a page are compiled when the page is drawn; mdx-modules supplies their tree.
 */
import { createHash } from 'node:crypto';
import { sep } from 'node:path';
import type { Loader } from 'astro/loaders';
import { tongueOf, type Tongue } from '../../shared/country/language.ts';
import { collections, type Collection } from '../schemas/collections.ts';
import { booksFolder } from './books-folder.ts';
import { isDraft } from './draft.ts';
import { isWhole, languageOf, withoutDrafts, type Entry, type Folder } from './folder.ts';
import { isText, isWrittenForCountry, modulePath } from './mdx-modules.ts';
import { nameOf } from './layers.ts';
import { originOf } from './origins.ts';
import { folderAfterChange, openFolder } from './open-folder.ts';
import { spokenOf } from './translations.ts';

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
export const originsOf = (directory: string): Loader =>
  filled('almanac-origins', directory, (folder, store) => {
    if (folder.books.length === 0) return;
    for (const entry of folder.entries) store.set({ id: nameOf(entry), data: originOf(folder, entry, tongueOf(languageOf(folder))) });
  });

/** The language of what is translated, or not in the club's language: `articles/swarms`, and for other readers `es/articles/swarms`. */
export const spokenIn = (directory: string): Loader =>
  filled('almanac-spoken', directory, (folder, store) => {
    const tongue = tongueOf(languageOf(folder));
    const told = (before: string, entries: readonly Entry[], theirs: Tongue): void => {
      for (const entry of entries) {
        const spoken = spokenOf(entry, theirs);
        if (spoken && (before === '' || spoken.translated)) store.set({ id: before + nameOf(entry), data: spoken });
      }
    };
    told('', folder.entries, tongue);
    for (const [other, entries] of folder.alsoIn) told(`${other}/`, entries, other);
  });

/** What is translated for readers of another language: `es/articles/swarms`. */
export const offeredIn = (directory: string): Loader =>
  filled('almanac-offered', directory, (folder, store) => {
    for (const [tongue, entries] of folder.alsoIn)
      for (const entry of entries.filter(isWhole)) {
        const kind = (collections as Readonly<Record<string, (typeof collections)[Collection]>>)[entry.collection];
        const parsed = entry.translation ? kind?.schema.safeParse(entry.fields.value) : undefined;
        const words = entry.tree ? { filePath: modulePath(entry, tongue), deferredRender: true } : {};
        if (parsed?.success)
          store.set({
            id: `${tongue}/${nameOf(entry)}`,
            data: parsed.data as Record<string, unknown>,
            body: entry.body,
            digest: digestOf(entry),
            ...words,
          });
      }
  });

type Context = Parameters<Loader['load']>[0];

/** A collection that is filled anew after each change. */
const filled = (name: string, directory: string, fill: (folder: Folder, store: Context['store']) => void): Loader => ({
  name,
  async load({ store, watcher, logger }) {
    const again = (folder: Folder): void => {
      store.clear();
      fill(watcher ? folder : withoutDrafts(folder), store);
    };
    again(openFolder(directory));
    for (const event of ['add', 'change', 'unlink'] as const) {
      watcher?.on(event, (path) => {
        if (isBelow(path, directory))
          void folderAfterChange(directory)
            .then(again)
            .catch((error: unknown) => logger.error(String(error)));
      });
    }
  },
});

function wholeEntries(folder: Folder, collection: string): Entry[] {
  const entries = collection === 'club' ? [folder.club] : folder.entries.filter((entry) => entry.collection === collection);
  return entries.filter((entry) => entry !== null).filter(isWhole);
}
