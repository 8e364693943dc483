/*
 * `npm run build`: runs `astro build` beside the output folder, and only then swaps the new site into the place of the old
 * one. A build that fails or is killed at any step leaves the last good site whole.
 */
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Day } from '../../shared/days/day.ts';
import { foundIn } from '../checks/drafts.ts';
import { readRecord } from '../integration/changes.ts';
import { setOptions } from '../integration/options.ts';
import { endProgress } from '../integration/progress.ts';
import { readyPictures } from '../pictures/ready-pictures.ts';
import { formatDiagnostic, type Diagnostic } from '../source/diagnostic.ts';
import { readFolder, type Folder } from '../source/folder.ts';
import { openFolder } from '../source/open-folder.ts';
import { argumentsOf } from './arguments.ts';
import { isEntry } from './entry.ts';
import { explainError } from './explain-error.ts';
import { copyTexts, keepCopy, lastGoodOf, standIn } from './last-good.ts';
import { withLock } from './lock.ts';
import { chosenOutput, refusal, trueFolder } from './output-folder.ts';
import { drawingFolder, picturesFolder, projectFolder } from './paths.ts';
import { standInLines } from './stand-in-lines.ts';
import { addressIn } from './former-address.ts';
import { clearUp, moveFolder, removeWork, swapSite, workFolder } from './swap.ts';

export type BuildOptions = {
  content: string;
  out: string;
  base: string;
  site?: string | undefined;
  edition?: Day | undefined;
  quiet?: boolean | undefined;
  /** Files with faults are published in their last good state, instead of stopping the build. */
  'last-good'?: boolean | undefined;
};

/**
 * Builds a club's folder into `out`. Returns false after a failure and prints the reason in sentences. Holds the lock of the output
 * folder.
 */
export async function build(options: BuildOptions): Promise<boolean> {
  const say = (line: string): void => (options.quiet ? undefined : console.log(line));
  const waits = (holder: number): void => say(`Another build (process ${holder}) is running. This one waits for it.`);
  try {
    const refused = refusal(options);
    if (refused) {
      console.error(refused);
      return false;
    }
    const out = trueFolder(options.out);
    return await withLock(`${out}.lock`, () => buildInto(out, options, say, waits), waits);
  } catch (error) {
    endProgress();
    // The integration has printed the faults of the content.
    if ((error as Error).name === 'ContentError') console.error((error as Error).message);
    else console.error(`The build stopped: ${explainError(error)} The last good site is unchanged.`);
    if (process.env.ALMANAC_TRACE) console.error(error);
    // Astro's remaining tasks now find their folder deleted. The reason for the failure has already been printed.
    process.on('unhandledRejection', () => undefined);
    return false;
  }
}

/** `out` is the real folder, where `options.out` may be a link to it. No other process builds into it meanwhile. */
async function buildInto(
  out: string,
  options: BuildOptions,
  say: (line: string) => void,
  waits: (holder: number) => void,
): Promise<boolean> {
  clearUp(out);
  const began = performance.now();
  const standing = join(projectFolder, '.almanac', 'standing-in', String(process.pid));
  try {
    const content = options['last-good'] ? await withStandIns(options.content, standing, say, options.edition) : resolve(options.content);
    if (content === null) return false;
    const edition = await drawInto(out, content, options, say, waits);
    say(`Edition of ${edition}, ready in ${options.out} after ${((performance.now() - began) / 1000).toFixed(1)} s.`);
    return true;
  } finally {
    removeWork(standing);
  }
}

/**
 * The folder to build from: the club's own, or `standing`, in which the last good state replaces files with faults. Null where neither is
 * possible.
 */
async function withStandIns(
  content: string,
  standing: string,
  say: (line: string) => void,
  edition: Day | undefined,
): Promise<string | null> {
  const faultsIn = async (folder: Folder): Promise<Diagnostic[]> =>
    foundIn(folder, (await readyPictures(folder, picturesFolder, say)).faults, { edition }).faults;
  const folder = openFolder(resolve(content), true);
  const faults = await faultsIn(folder);
  if (faults.length === 0) return folder.directory;
  for (const fault of faults) console.error(formatDiagnostic(fault));
  const result = await standIn(folder.directory, standing, (directory) => faultsIn(readFolder(directory)));
  for (const line of standInLines(result)) (result.ok ? say : console.error)(line);
  return result.ok ? standing : null;
}

/**
 * Builds with Astro, swaps the finished site into place, and returns the edition's name. `content` may contain replacements for files of
 * `options.content`, the club's own folder, whose last good state this becomes.
 */
async function drawInto(
  out: string,
  content: string,
  options: BuildOptions,
  say: (line: string) => void,
  waits: (holder: number) => void,
): Promise<string> {
  const work = workFolder(out);
  const site = join(work, 'site');
  const drawing = join(drawingFolder, String(process.pid));
  try {
    await withLock(
      join(projectFolder, '.almanac', 'build.lock'),
      async () => {
        await runAstro(out, content, options, drawing);
        moveFolder(join(drawing, 'site'), site);
      },
      waits,
    );
    const folder = openFolder(content);
    copyTexts(folder, join(work, 'kept'));
    swapSite(site, out, work);
    try {
      keepCopy(options.content, join(work, 'kept'));
    } catch (error) {
      // The site is in place. A failure to store its last good state does not make the build a failure.
      say(`The last good state could not be saved: ${explainError(error)}`);
    }
    const { day, mark } = readRecord(readFileSync(join(out, 'edition.json'), 'utf8'))!;
    return `${day} (${mark})`;
  } finally {
    for (const made of [work, drawing]) {
      removeWork(made);
      // Astro's remaining writes may create the folder again after a failed build.
      process.once('exit', () => removeWork(made));
    }
  }
}

/**
 * Astro builds inside the project, not at the destination, because it moves files by renaming, which no system does between disks. Call
 * only with the lock held: the remains of a killed build are deleted first.
 */
async function runAstro(out: string, content: string, options: BuildOptions, drawing: string): Promise<void> {
  removeWork(drawingFolder);
  process.env.ASTRO_TELEMETRY_DISABLED = '1';
  setOptions(process.env, {
    content,
    edition: options.edition,
    replaces: out,
    published: lastGoodOf(options.content) ?? undefined,
    quiet: options.quiet,
  });
  // Astro looks for packages, and stores its caches, relative to the current directory.
  process.chdir(projectFolder);
  const { build: astro } = await import('astro');
  const logLevel = process.env.ALMANAC_TRACE ? 'error' : 'silent';
  await astro({
    root: projectFolder,
    outDir: join(drawing, 'site'),
    cacheDir: join(drawing, 'cache'),
    base: options.base,
    site: options.site,
    logLevel,
    force: true,
    mode: 'production',
    vite: { logLevel, cacheDir: join(drawing, 'cache', 'vite') },
  });
}

if (isEntry(import.meta.url)) {
  const { values } = argumentsOf('build');
  const { base, site } = addressIn(values.content);
  const options = { ...values, base: values.base ?? base, site: values.site ?? site };
  const chosen = chosenOutput(values);
  if (!chosen.ok) console.error(chosen.reason);
  process.exitCode = chosen.ok && (await build({ ...options, out: chosen.value })) ? 0 : 1;
}
