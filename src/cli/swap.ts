/*
 * Swaps a finished site into the place of the one before, and removes what killed builds left. During a build two folders are beside the
 * output folder `dist`. `dist.building-123` is its work and never a complete site. `dist.old-123` exists between two renames and is the
 * last good site, always complete.
 */
import { cpSync, existsSync, mkdirSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';

/** The folder in which this process makes the new site of `out`. */
export const workFolder = (out: string): string => `${out}.building-${process.pid}`;

/** `site` is inside `work`. Throws where a rename fails. The last good site is then in its old place. */
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
  // Moves it into the work folder first, because a half-deleted site must not look like one to restore.
  if (replaces) letGo(() => renameSync(old, join(work, 'former')));
}

/** Also works to another disk, where a rename fails. */
export function moveFolder(from: string, to: string): void {
  mkdirSync(dirname(to), { recursive: true });
  try {
    renameSync(from, to);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EXDEV') throw error;
    // Without a filter Node uses another copy method, which reports "input/output error" for a full disk.
    cpSync(from, to, { recursive: true, filter: () => true });
  }
}

/** Cleans up after killed builds: a site that had been moved aside is restored, and the rest is deleted. Call only with the lock held. */
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

/** A folder that cannot be deleted must not prevent the site. */
export const removeWork = (work: string): void => letGo(() => rmSync(work, { recursive: true, force: true, maxRetries: 3 }));

function letGo(attempt: () => void): void {
  try {
    attempt();
  } catch {
    // It stays beside the site under a telling name, and the next build tries again.
  }
}
