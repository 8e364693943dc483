// Work of `npm start`: builds the club unless the last build is up to date, and serves it.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { sourceFingerprint } from '../integration/fingerprint.ts';
import { serve, type Served } from './serve.ts';

export type Build = (options: { content: string; out: string; base: string; quiet?: boolean }) => Promise<boolean>;

export interface Opening {
  project: string;
  content: string;
  /** The folder of the site. */
  out: string;
  /** Called only when a build is needed, because loading Astro takes a moment. */
  loadBuild: () => Promise<Build>;
  /** Called with a line for the waiting person. */
  tell: (line: string) => void;
  port?: number;
}

/** @returns the served site, or null where the build found faults, which it has printed */
export async function openAlmanac({ project, content, out, loadBuild, tell, port }: Opening): Promise<Served | null> {
  const record = join(project, '.almanac', 'start.txt');
  const source = sourceFingerprint(project, content);
  if (!existsSync(out) || textOf(record) !== stateOf(source, out)) {
    tell('Building the almanac ...');
    const build = await loadBuild();
    if (!(await build({ content, out, base: '/', quiet: true })) || !existsSync(out)) return null;
    mkdirSync(dirname(record), { recursive: true });
    writeFileSync(record, stateOf(source, out));
  }
  return serve({ folder: out, port });
}

/** The hash of what a build reads, then the edition and the first page in the output: a build of another club or base differs there. */
const stateOf = (source: string, out: string): string =>
  [source, ...['edition.json', 'index.html'].map((name) => textOf(join(out, name)))].join('\n');

const textOf = (file: string): string => (existsSync(file) ? readFileSync(file, 'utf8') : '');
