/* The pictures of a folder, made ready in the project's own folder; who waits for many is told why. */
import { preparePictures, type Prepared } from '../pictures/prepare.ts';
import type { Folder } from '../source/folder.ts';
import { picturesFolder } from './paths.ts';

/** Fewer are ready before anybody wonders. */
const MANY = 5;

export function readyPictures(folder: Folder, tell: (line: string) => void): Promise<Prepared> {
  let made = 0;
  return preparePictures(folder, picturesFolder, () => {
    made += 1;
    if (made === MANY) tell('Making pictures ready, about a second each; only new ones are made again ...');
  });
}
