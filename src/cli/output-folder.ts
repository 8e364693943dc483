/* Checks the output folder before a build: which folders a site may replace, and which it never may. */
import { accessSync, constants, existsSync, readdirSync, realpathSync, statSync } from 'node:fs';
import { join, resolve, sep } from 'node:path';
import { projectFolder } from './paths.ts';

/** Input folders of a build. A site in one of them would be input of the next build. */
const READ = ['src', 'shared', 'public', 'tests', 'node_modules'].map((name) => join(projectFolder, name));

/** The sentence for a folder that a site must not or cannot replace, or null. */
export function refusal({ content, out }: { content: string; out: string }): string | null {
  if ([content, projectFolder].some((held) => isInside(held, out)))
    return `--out ${out} holds the club's words or the almanac's own files. Write a folder of its own, such as dist.`;
  if ([content, ...READ].some((reads) => isInside(out, reads)))
    return `--out ${out} lies among the club's words or the almanac's own files. Write a folder of its own, such as dist.`;
  if (!existsSync(out)) return null;
  if (!statSync(out).isDirectory()) return `--out ${out} is a file. Write the name of a folder.`;
  if (!mayBeWritten(out)) return `--out ${out} may not be read or written by you. Change its permissions, or write another folder.`;
  if (readdirSync(out).length > 0 && !existsSync(join(out, 'edition.json')))
    return `--out ${out} holds files that no build of an almanac made. Empty it, or write another folder.`;
  return null;
}

/** The target of a link. The site replaces the target, and the link stays. */
export const trueFolder = (out: string): string => (existsSync(out) ? realpathSync(out) : resolve(out));

const isInside = (inner: string, outer: string): boolean => `${trueFolder(inner)}${sep}`.startsWith(`${trueFolder(outer)}${sep}`);

function mayBeWritten(folder: string): boolean {
  try {
    accessSync(folder, constants.R_OK | constants.W_OK | constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
