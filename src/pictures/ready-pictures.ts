/* Prepares the pictures of a folder, with a message when many of them are new. */
import type { Folder } from '../source/folder.ts';
import { preparePictures, type Prepared } from './prepare.ts';

/** Fewer pictures are ready before anybody wonders. */
const MANY = 5;

/** `kept` is the cache folder that builds share. */
export function readyPictures(folder: Folder, cache: string, say: (line: string) => void): Promise<Prepared> {
  let made = 0;
  return preparePictures(folder, cache, () => {
    made += 1;
    if (made === MANY) say('Making pictures ready, about a second each; only new ones are made again ...');
  });
}
