// Detects stale node_modules: compares package-lock.json with the copy that npm leaves in node_modules when it has finished. That takes
// a few milliseconds, so every command can do it. npm writes the copy last, so an interrupted install leaves none and counts as stale.
// Packages for other kinds of machine are absent for good reason. One for this machine must be there: npm silently omits it when it
// runs under a Node that is too old for it.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * @param {string} folder
 * @param {{ platform: string, arch: string, libc: string | undefined }} machine
 * @returns {string | null} the difference between the installed packages and the lock file, or null
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

/** Platform, architecture and C library of the machine, in the terms of package.json. */
export function thisMachine() {
  const { platform, arch } = process;
  if (platform !== 'linux') return { platform, arch, libc: undefined };
  // The report is slow where it looks up the machine's network connections.
  process.report.excludeNetwork = true;
  const glibc = process.report.getReport().header.glibcVersionRuntime;
  return { platform, arch, libc: glibc ? 'glibc' : 'musl' };
}

function mustBeThere(entry, machine) {
  if (!entry.optional && !entry.devOptional && !entry.peer) return true;
  // An optional package in plain JavaScript belongs to a native one. Only the native one for this machine is required.
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
