/* Chooses and checks the output folder before a build: which folders a site may replace, and which it never may. */
import { accessSync, constants, existsSync, readdirSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { dirname, join, resolve, sep } from 'node:path';
import { err, ok, type Result } from '../../shared/result.ts';
import { clubIdIn } from './club-near.ts';
import { isInstalled, projectFolder } from './paths.ts';

/** `dist` in the project. An installed package has no folder of the person's, so there it is beside the club's folder. */
export const usualOutput = (content: string): string => join(isInstalled ? dirname(resolve(content)) : projectFolder, 'dist');

/** The folder after --out. Without it the usual one, or a sentence where that holds another club's site. */
export function chosenOutput(
  { content, out }: { content: string; out?: string | undefined },
  usual = usualOutput(content),
): Result<string, string> {
  if (out !== undefined) return ok(out);
  const [other, club] = [clubOfSite(usual), clubIdIn(content)];
  if (other === null || club === null || other === club) return ok(usual);
  return err(
    `${usual} holds the site of another club, ${other}. Nothing was written. For a second club, write a folder of its own: ` +
      `--out ${join(dirname(usual), `site-${club}`)}. If "id:" in club.yaml was changed from ${other}, write "id: ${other}" again, ` +
      `because readers' ticks and calendars are filed under it. To replace that site all the same, write --out ${usual}.`,
  );
}

/** `id:` of the club whose site is in a folder. Null where there is none, or where an older release built it. */
function clubOfSite(folder: string): string | null {
  try {
    const { club } = JSON.parse(readFileSync(join(folder, 'edition.json'), 'utf8')) as { club?: unknown };
    return typeof club === 'string' ? club : null;
  } catch {
    return null;
  }
}

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
