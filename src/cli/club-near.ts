// Finds a club's folder where the person is, and reads the id of a club. No package is loaded for either.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const isClub = (folder: string): boolean => existsSync(join(folder, 'club.yaml'));

/** The folder itself where it is a club's, or the only folder directly inside that is one. */
export function clubNear(folder: string): string | null {
  if (isClub(folder)) return folder;
  const inside = readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && !entry.name.startsWith('.'))
    .map(({ name }) => join(folder, name))
    .filter(isClub);
  return inside.length === 1 ? inside[0]! : null;
}

/** `id:` of club.yaml, also where the file has other faults. */
export function clubIdIn(folder: string): string | null {
  return isClub(folder) ? (/^id:[ \t]*["']?([a-z0-9-]+)/m.exec(readFileSync(join(folder, 'club.yaml'), 'utf8'))?.[1] ?? null) : null;
}
