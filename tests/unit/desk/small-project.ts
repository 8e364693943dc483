// A project of its own for a test: the real desk, and whatever files the test puts over it.
import { copyFileSync, mkdirSync, mkdtempSync, readdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { projectFolder } from '../../../src/desk/places.ts';

/** `withPackages` links the installed packages in; without, there is nothing to install. */
export function smallProject(files: Record<string, string>, { withPackages = false } = {}): string {
  const folder = mkdtempSync(join(tmpdir(), 'desk-'));
  const desk = join(projectFolder, 'src', 'desk');
  mkdirSync(join(folder, 'src', 'desk'), { recursive: true });
  for (const name of readdirSync(desk)) if (/\.m?[jt]s$/.test(name)) copyFileSync(join(desk, name), join(folder, 'src', 'desk', name));
  mkdirSync(join(folder, 'src', 'reader'));
  copyFileSync(join(projectFolder, 'src', 'reader', 'passed-over.ts'), join(folder, 'src', 'reader', 'passed-over.ts'));
  const empty = { 'package.json': '{"type":"module"}', 'package-lock.json': '{"packages":{}}' };
  if (withPackages) symlinkSync(join(projectFolder, 'node_modules'), join(folder, 'node_modules'), 'junction');
  const installed = withPackages ? {} : { 'node_modules/.package-lock.json': '{"packages":{}}' };
  for (const [path, text] of Object.entries({ ...empty, ...installed, ...files })) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  return folder;
}

export function deskFile(folder: string, name: string): string {
  return join(folder, 'src', 'desk', name);
}
