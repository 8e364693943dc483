// A fingerprint of files: sha256 over their paths (sorted, forward slashes, from the name the caller
// gives each place) and their bytes. Times, owners and the place on disk do not enter, so that two
// copies of the same files have the same one. A place that does not exist adds nothing; a file that
// cannot be read counts by the reason, and whoever needs its words will say so.
import { createHash, type Hash } from 'node:crypto';
import { readdirSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { join } from 'node:path';

// Installed packages have their lock file; the others are left by desktops and by git.
const leftOut = new Set(['node_modules', '.git', '.DS_Store', 'Thumbs.db', 'desktop.ini']);

/** `places` maps a name of the caller's to a file or folder: `{ content: '/any/where' }`. */
export function fingerprint(places: Readonly<Record<string, string>>): string {
  const files = Object.entries(places).flatMap(([name, path]) => filesIn(name.normalize('NFC'), path, []));
  files.sort((one, other) => (one.name < other.name ? -1 : 1));
  const hash = createHash('sha256');
  for (const { name, path } of files) addFile(hash, name, path);
  return hash.digest('hex');
}

interface Found {
  name: string;
  path: string;
}

// Links are followed; a folder met again inside itself is not.
function filesIn(name: string, path: string, above: readonly string[]): Found[] {
  const kind = statSync(path, { throwIfNoEntry: false });
  if (!kind) return above.length === 0 ? [] : [{ name, path }];
  if (!kind.isDirectory()) return [{ name, path }];
  const real = realpathSync(path);
  if (above.includes(real)) return [];
  return namesIn(path).flatMap((inner) => filesIn(`${name}/${inner.normalize('NFC')}`, join(path, inner), [...above, real]));
}

function namesIn(folder: string): string[] {
  try {
    return readdirSync(folder).filter((name) => !leftOut.has(name));
  } catch {
    return [];
  }
}

function addFile(hash: Hash, name: string, path: string): void {
  let bytes: Buffer;
  try {
    bytes = readFileSync(path);
  } catch (error) {
    bytes = Buffer.from(`unreadable: ${(error as NodeJS.ErrnoException).code}`);
  }
  // Lengths stand before both, so that no two sets of files read as the same bytes.
  hash.update(`${Buffer.byteLength(name)}:${name}${bytes.length}:`).update(bytes);
}
