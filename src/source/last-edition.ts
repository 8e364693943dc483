/* The entries of the last good edition, by name and title. A page that is new now may be one that was renamed since then. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { collectionNames } from '../schemas/collections.ts';

export type Published = { collection: string; id: string; title: string };

const FILE = /^([^.]+)\.(?:mdx|yaml|csv)$/;

/** The club's own entries below `directory`, the folder of the last good texts. None where there is no such folder. */
export function publishedIn(directory: string | undefined): Published[] {
  if (directory === undefined) return [];
  return collectionNames.flatMap((collection) => {
    const folder = join(directory, collection);
    if (!existsSync(folder)) return [];
    return readdirSync(folder).flatMap((name): Published[] => {
      const id = FILE.exec(name)?.[1];
      return id === undefined ? [] : [{ collection, id, title: titleIn(readFileSync(join(folder, name), 'utf8')) }];
    });
  });
}

const titleIn = (text: string): string => /^(?:title|word): *["']?(.*?)["']? *$/m.exec(text)?.[1] ?? '';
