// Whether the built folder still is what the files as they are now would give. The record lies outside
// the output, in .almanac/: the fingerprint of everything the build reads, and that of what it wrote, so
// that an output that was touched, or built from another club, is not taken for this one.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { fingerprint } from '../integration/fingerprint.ts';

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
