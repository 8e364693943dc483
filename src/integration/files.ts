/* Copies a club's own PDFs into the site, unchanged. Header files let no browser open them as a part of the site. */
import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Almanac } from '../lib/almanac.ts';
import type { Recorded } from './edition-record.ts';

export const FILES = 'files/';

/** `content` is the club's folder. Returns what the edition record keeps of each file, by its path. */
export function putFiles(site: string, content: string, { files }: Pick<Almanac, 'files'>): Record<string, Recorded> {
  if (files.length > 0) mkdirSync(join(site, FILES), { recursive: true });
  return Object.fromEntries(
    files.map(({ id, data }) => {
      const path = `${FILES}${id}.pdf`;
      const bytes = readFileSync(join(content, path));
      writeFileSync(join(site, path), bytes);
      return [path, { title: `${data.title} (PDF)`, sha256: createHash('sha256').update(bytes).digest('hex') }];
    }),
  );
}
