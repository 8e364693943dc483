/* Copies a club's own PDFs into the site, unchanged. Header files let no browser open them as a part of the site. */
import { copyFileSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Almanac } from '../lib/almanac.ts';

export const FILES = 'files/';

/** `content` is the club's folder. Returns the number of files. */
export function putFiles(site: string, content: string, { files }: Pick<Almanac, 'files'>): number {
  if (files.length > 0) mkdirSync(join(site, FILES), { recursive: true });
  for (const { id } of files) copyFileSync(join(content, FILES, `${id}.pdf`), join(site, FILES, `${id}.pdf`));
  return files.length;
}
