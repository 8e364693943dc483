// Tells whether a folder's installed packages are still those of its lock file, by comparing
// package-lock.json with the copy npm leaves in node_modules when it has finished. Reading the two
// takes a few milliseconds, so that every command can ask. The copy is written last: an install that
// was broken off leaves none, and counts as stale.
//
// Packages for other kinds of machine are rightly absent. One meant for this machine must be there:
// npm leaves it out without a word when it runs under a Node too old for it.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * @param {string} folder
 * @param {{ platform: string, arch: string, libc: string | undefined }} machine
 * @returns {string | null} what is wrong with the installed packages, or null where nothing is
 */
export function whatIsStale(folder, machine = thisMachine()) {
  const wanted = packagesIn(join(folder, 'package-lock.json'));
  const installed = packagesIn(join(folder, 'node_modules', '.package-lock.json'));
  if (!wanted) return 'there is no readable package-lock.json';
  if (!installed) return 'nothing is installed yet';
  for (const [place, entry] of Object.entries(wanted)) {
    if (place === '') continue;
    const found = installed[place];
    if (!found) {
      if (mustBeThere(entry, machine)) return `${place} is not installed`;
      continue;
    }
    if (found.version !== entry.version || found.integrity !== entry.integrity) return `${place} is another version`;
    if (!existsSync(join(folder, place, 'package.json'))) return `${place} has gone`;
  }
  const extra = Object.keys(installed).find((place) => !(place in wanted));
  return extra ? `${extra} is not in the lock file` : null;
}

/** Names and C library of the machine in the words that packages use of themselves. */
export function thisMachine() {
  const { platform, arch } = process;
  if (platform !== 'linux') return { platform, arch, libc: undefined };
  // The report is slow where it looks up the machine's connections.
  process.report.excludeNetwork = true;
  const glibc = process.report.getReport().header.glibcVersionRuntime;
  return { platform, arch, libc: glibc ? 'glibc' : 'musl' };
}

function mustBeThere(entry, machine) {
  if (!entry.optional && !entry.devOptional && !entry.peer) return true;
  // An optional package in plain JavaScript belongs to one for some machine; only that one is asked for.
  if (!entry.os && !entry.cpu) return false;
  return fits(entry.os, machine.platform) && fits(entry.cpu, machine.arch) && fits(entry.libc, machine.libc);
}

function fits(names, mine) {
  if (!names || !mine) return true;
  const list = [names].flat();
  if (list.includes(`!${mine}`)) return false;
  const allowed = list.filter((name) => !name.startsWith('!'));
  return allowed.length === 0 || allowed.includes(mine);
}

function packagesIn(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8')).packages ?? null;
  } catch {
    return null;
  }
}
