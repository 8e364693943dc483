// Where the project lies, and where the person stands. npm runs every script from the project's own
// folder and tells the other in INIT_CWD: a path typed in a command is meant from there.
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const projectFolder: string = fileURLToPath(new URL('../../', import.meta.url));

/** Pictures made ready to be published, kept from build to build. It may be deleted at any time. */
export const picturesFolder: string = join(projectFolder, '.almanac', 'pictures');

/** Below it the pages of a build are drawn, one build after the other. It may be deleted when none is at work. */
export const drawingFolder: string = join(projectFolder, '.almanac', 'drawing');

export function whereThePersonStands(environment: NodeJS.ProcessEnv = process.env): string {
  return environment.INIT_CWD ?? process.cwd();
}
