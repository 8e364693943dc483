// Paths of the project and of the person's directory. npm runs every script from the project's folder and passes the other directory in
// INIT_CWD. A path in a command is relative to that one.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const projectFolder: string = fileURLToPath(new URL('../../', import.meta.url));

/** True where the project is the copy of an installed package, which `scripts/association-almanac.mjs` makes for each release. */
export const isInstalled: boolean = existsSync(join(projectFolder, 'installed-from.txt'));

/** Last good states of clubs. All copies of an installed package share them, so that they outlive an update. */
export const lastGoodFolder: string = isInstalled
  ? join(projectFolder, '..', '..', 'last-good')
  : join(projectFolder, '.almanac', 'last-good');

/** Cache of published pictures between builds. It may be deleted at any time. */
export const picturesFolder: string = join(projectFolder, '.almanac', 'pictures');

/** Astro draws the pages of one build at a time below it. It may be deleted when no build runs. */
export const drawingFolder: string = join(projectFolder, '.almanac', 'drawing');

export function whereThePersonStands(environment: NodeJS.ProcessEnv = process.env): string {
  return environment.INIT_CWD ?? process.cwd();
}
