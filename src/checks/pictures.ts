/* Pictures lie beside their page under the very name that is written, are of a kind that browsers draw, and are described. */
import { closeSync, openSync, readSync } from 'node:fs';
import { join } from 'node:path';
import type { Image } from 'mdast';
import type { Fault } from '../reader/fault.ts';
import { walk } from '../reader/prose.ts';
import type { Sound } from './fields.ts';
import { nearest } from './nearest.ts';
import { atNode, isPage, sourceOf, type Page, type Said } from './place.ts';

const KINDS: readonly [ending: RegExp, isKind: (head: Buffer) => boolean, name: string][] = [
  [/\.jpe?g$/i, (head) => head[0] === 0xff && head[1] === 0xd8, 'JPEG'],
  [/\.png$/i, (head) => head.toString('latin1', 1, 4) === 'PNG', 'PNG'],
  [/\.webp$/i, (head) => head.toString('latin1', 0, 4) === 'RIFF' && head.toString('latin1', 8, 12) === 'WEBP', 'WebP'],
  [/\.avif$/i, (head) => /^ftypavi[fs]/.test(head.toString('latin1', 4, 12)), 'AVIF'],
  [/\.svg$/i, (head) => /^(?:\uFEFF|\u00EF\u00BB\u00BF)?\s*<(?:\?xml|svg|!)/.test(head.toString('latin1')), 'SVG'],
];
const isPicture = (path: string): boolean => KINDS.some(([ending]) => ending.test(path));

export function pictureFaults(club: Sound): Fault[] {
  const shown = club.folder.entries.filter(isPage).flatMap((page) => [...walk(page.tree)].filter((node) => node.type === 'image').flatMap((image) => imageFaults(club, page, image)));
  return [...shown, ...club.folder.files.filter((path) => isPicture(path) && !path.startsWith('drawings/')).flatMap((path) => kindFaults(club.folder.directory, path))];
}

function imageFaults({ folder }: Sound, page: Page, image: Image): Fault[] {
  const at = (said: Omit<Said, 'rule' | 'field'>): Fault[] => [atNode(page, image, { rule: 'picture', field: 'a picture', ...said })];
  const faults: Fault[] = [];
  if (/<[A-Z]/.test(sourceOf(page, image))) faults.push(...at({ found: 'a tag in the description of a picture', write: 'plain words' }));
  else if (!image.alt?.trim()) faults.push(...at({ found: 'a picture without a description', write: `what it shows, for those who do not see it: ![a frame with capped brood](${image.url})` }));
  if (/^[a-z][a-z0-9+.-]*:|^\/\//i.test(image.url)) return [...faults, ...at({ found: `"${image.url}" on another site`, write: 'the name of a file beside this page' })];
  const name = decoded(image.url).replace(/^\.\//, '');
  if (name === '' || /[\\/]/.test(name)) return [...faults, ...at({ found: `"${image.url}"`, write: 'the bare name of a file beside this page, such as frame.jpg' })];
  const beside = folder.files.filter((path) => path.startsWith(`${page.collection}/`) && path.split('/').length === 2 && !/\.(?:mdx|yaml)$/.test(path)).map((path) => path.slice(page.collection.length + 1));
  if (beside.includes(name)) return isPicture(name) ? faults : [...faults, ...at({ found: `"${name}", which browsers do not draw`, write: 'the picture exported as JPEG or PNG' })];
  const cased = beside.find((each) => each.toLowerCase() === name.toLowerCase());
  const near = cased ?? nearest(name, beside);
  const found = cased ? `"${name}", while the file is called "${cased}"` : `"${name}", which is not beside this page`;
  return [...faults, ...at({ found, write: near ? `"${near}"` : `the name of a picture in ${page.collection}/` })];
}

/** A phone's HEIC picture renamed to `.jpg` is drawn nowhere. */
function kindFaults(directory: string, path: string): Fault[] {
  const head = headOf(join(directory, path));
  const kind = KINDS.find(([ending]) => ending.test(path))!;
  if (head === null || kind[1](head)) return [];
  const heic = /^ftyp(?:hei|hev|mif|msf)/.test(head.toString('latin1', 4, 12));
  const found = head.length === 0 ? 'an empty file' : heic ? `a HEIC picture called ${path.slice(path.lastIndexOf('.'))}` : `a file that is not ${kind[2]}`;
  return [{ path, line: 1, column: 1, rule: 'picture', field: 'the file', found, write: 'the picture exported as JPEG' }];
}

function headOf(path: string): Buffer | null {
  try {
    const file = openSync(path, 'r');
    try {
      const head = Buffer.alloc(64);
      return head.subarray(0, readSync(file, head, 0, 64, 0));
    } finally {
      closeSync(file);
    }
  } catch {
    return null;
  }
}

function decoded(url: string): string {
  try {
    return decodeURIComponent(url);
  } catch {
    return url;
  }
}
