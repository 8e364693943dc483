// What `npm start` does: builds the club unless the last build still holds, and serves it.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { sourceFingerprint } from '../integration/fingerprint.ts';
import { isFresh, remember } from './freshness.ts';
import { serve, type Served } from './serve.ts';

export type Build = (options: { content: string; out: string; base: string; quiet?: boolean }) => Promise<{ ok: boolean }>;

export interface Opening {
  project: string;
  content: string;
  /** Asked for only when something must be built: loading the site builder takes a moment. */
  loadBuild: () => Promise<Build>;
  /** Given a line for the person who waits. */
  tell: (line: string) => void;
  port?: number;
}

/** @returns what is served, or null where the build found faults (it has named them) */
export async function openAlmanac({ project, content, loadBuild, tell, port }: Opening): Promise<Served | null> {
  const out = join(project, 'dist');
  const record = join(project, '.almanac', 'start.json');
  const source = sourceFingerprint(project, content);
  if (!isFresh(record, source, out)) {
    tell('Building the almanac ...');
    const build = await loadBuild();
    const { ok } = await build({ content, out, base: '/', quiet: true });
    if (!ok || !existsSync(out)) return null;
    remember(record, source, out);
  }
  return serve({ folder: out, port });
}
