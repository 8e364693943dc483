/*
 * A finished site takes the place of the one before, and what a killed build left behind is cleared up. Beside an output
 * folder `dist` lie while a build runs: `dist.building-123` (its work, never a site to keep) and, between two renames,
 * `dist.old-123` (the last good site, always whole).
 */
import { cpSync, existsSync, mkdirSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';

/** The folder in which this process makes the new site of `out`. */
export const workFolder = (out: string): string => `${out}.building-${process.pid}`;

/** `site` lies in `work`. Throws where a rename fails; the last good site is then where it was. */
export function swapSite(site: string, out: string, work: string): void {
  const old = `${out}.old-${process.pid}`;
  const replaces = existsSync(out);
  if (replaces) renameSync(out, old);
  try {
    renameSync(site, out);
  } catch (error) {
    if (replaces) renameSync(old, out);
    throw error;
  }
  // Among the work first: a site that is half deleted must not look like one to bring back.
  if (replaces) letGo(() => renameSync(old, join(work, 'former')));
}

/** Also to another disk, where nothing can be renamed. */
export function moveFolder(from: string, to: string): void {
  mkdirSync(dirname(to), { recursive: true });
  try {
    renameSync(from, to);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EXDEV') throw error;
    // Without a filter Node copies by another way, which says "input/output error" of a full disk.
    cpSync(from, to, { recursive: true, filter: () => true });
  }
}

/** What builds that were killed left: a site that had been moved aside comes back, all else goes. To be called in turn only. */
export function clearUp(out: string): void {
  if (!existsSync(dirname(out))) return;
  const start = `${basename(out)}.`;
  for (const name of readdirSync(dirname(out))) {
    const [, kind] = name.startsWith(start) ? (/^(building|old)-\d+$/.exec(name.slice(start.length)) ?? []) : [];
    if (!kind) continue;
    const left = join(dirname(out), name);
    if (kind === 'old' && !existsSync(out)) renameSync(left, out);
    else removeWork(left);
  }
}

/** A folder that may not be deleted is no reason to have no site. */
export const removeWork = (work: string): void => letGo(() => rmSync(work, { recursive: true, force: true, maxRetries: 3 }));

function letGo(attempt: () => void): void {
  try {
    attempt();
  } catch {
    // It stays beside the site under a name that says so; the next build tries again.
  }
}
