// Whether the built folder still is what the files as they are now would give. The record lies outside
// the output, in .almanac/: the fingerprint of everything the build reads, and that of what it wrote, so
// that an output that was touched, or built from another club, is not taken for this one.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { isPassedOver } from '../source/passed-over.ts';
import { fingerprint, printOf, printsOf, type Prints } from './fingerprint.ts';

/** The fingerprint of what a build of this content reads. */
export const sourceFingerprint = (project: string, content: string): string => printOf(sourcePrints(project, content));

/** The same, a file at a time. What the reader passes over, such as an editor's own file of what is not saved yet, is none of it. */
export function sourcePrints(project: string, content: string): Prints {
  const own = ['src', 'shared', 'public', 'astro.config.mjs', 'tsconfig.json', 'package.json', 'package-lock.json'];
  const read = printsOf({ content, ...Object.fromEntries(own.map((name) => [name, join(project, name)])) });
  return read.filter(([name]) => !name.startsWith('content/') || !name.split('/').some(isPassedOver));
}

export function isFresh(record: string, source: string, out: string): boolean {
  try {
    const known = JSON.parse(readFileSync(record, 'utf8'));
    return known.source === source && known.output === fingerprint({ out });
  } catch {
    return false;
  }
}

export function remember(record: string, source: string, out: string): void {
  mkdirSync(dirname(record), { recursive: true });
  writeFileSync(record, `${JSON.stringify({ source, output: fingerprint({ out }) }, null, 2)}\n`);
}
