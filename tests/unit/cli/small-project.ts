// A separate project for a test: the real commands, with any files that the test adds.
import { copyFileSync, mkdirSync, mkdtempSync, readdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { projectFolder } from '../../../src/cli/paths.ts';

/** `withPackages` links the installed packages. Without it there is nothing to install. */
export function smallProject(files: Record<string, string>, { withPackages = false } = {}): string {
  const folder = mkdtempSync(join(tmpdir(), 'cli-'));
  for (const room of [join('src', 'cli'), 'scripts']) {
    mkdirSync(join(folder, room), { recursive: true });
    for (const name of readdirSync(join(projectFolder, room)))
      if (/\.m?[jt]s$/.test(name)) copyFileSync(join(projectFolder, room, name), join(folder, room, name));
  }
  for (const path of [
    'src/source/books-folder.ts',
    'src/source/passed-over.ts',
    'src/integration/fingerprint.ts',
    'shared/days/day.ts',
    'shared/days/make-day.ts',
    'shared/result.ts',
    'shared/words/edit-distance.ts',
    'shared/words/near-name.ts',
  ]) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    copyFileSync(join(projectFolder, path), join(folder, path));
  }
  const empty = { 'package.json': '{"type":"module"}', 'package-lock.json': '{"packages":{}}' };
  if (withPackages) symlinkSync(join(projectFolder, 'node_modules'), join(folder, 'node_modules'), 'junction');
  const installed = withPackages ? {} : { 'node_modules/.package-lock.json': '{"packages":{}}' };
  for (const [path, text] of Object.entries({ ...empty, ...installed, ...files })) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  return folder;
}

/** A command of the small project, or a file of its set-up. */
export function commandFile(folder: string, name: string): string {
  return name.endsWith('.mjs') ? join(folder, 'scripts', name) : join(folder, 'src', 'cli', name);
}
