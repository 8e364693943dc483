/*
 * `npm run build`: checks the club's folder, draws its pages, makes the search, calendars and lists, and only then puts
 * the new site in the place of the old one. A build that fails at any step leaves the last good site whole.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { draftsLine, foundIn } from '../checks/drafts.ts';
import { validEntries } from '../checks/fields.ts';
import { dueOn } from '../checks/review.ts';
import type { Day } from '../../shared/days/day.ts';
import { readRecord } from '../integration/changes.ts';
import { formatDiagnostic } from '../source/diagnostic.ts';
import { readFolder, type Folder } from '../source/folder.ts';
import { openFolder } from '../source/open-folder.ts';
import type { Prepared } from '../pictures/prepare.ts';
import { publish } from '../integration/publish.ts';
import { argumentsOf } from './arguments.ts';
import { editionDay } from './edition.ts';
import { isEntry } from './entry.ts';
import { printOf, whatChanged, type Prints } from './fingerprint.ts';
import { sourcePrints } from './freshness.ts';
import { copyTexts, keepCopy, standIn } from './last-good.ts';
import { withLock } from './lock.ts';
import { refusal, trueFolder } from './output-folder.ts';
import { drawingFolder, picturesFolder, projectFolder } from './paths.ts';
import { watchPages } from './progress.ts';
import { clearUp, moveFolder, swapSite, removeWork, workFolder } from './swap.ts';
import { readyPictures } from './ready-pictures.ts';
import { reportLines } from './report.ts';
import { standInLines } from './stand-in-lines.ts';
import { explainError } from './explain-error.ts';

export type BuildOptions = {
  content: string;
  out: string;
  base: string;
  site?: string | undefined;
  edition?: string | undefined;
  quiet?: boolean | undefined;
  /** Files with faults are published in their last good state, instead of stopping the build. */
  'last-good'?: boolean | undefined;
};

/** Builds a club's folder into `out`; false when it could not, after saying why in sentences. One at a time into the same folder. */
export async function build(options: BuildOptions): Promise<{ ok: boolean }> {
  const say = (line: string): void => (options.quiet ? undefined : console.log(line));
  const waits = (holder: number): void => say(`Another build (process ${holder}) is at work; this one waits for it.`);
  try {
    const refused = refusal(options);
    if (refused) {
      console.error(refused);
      return { ok: false };
    }
    const out = trueFolder(options.out);
    return await withLock(`${out}.lock`, () => buildInto(out, options, say, waits), waits);
  } catch (error) {
    console.error(`The build stopped: ${explainError(error)} The last good site stands as it was.`);
    if (process.env.ALMANAC_TRACE) console.error(error);
    // What Astro still had under way now finds its folder gone; why the build stopped has been said.
    process.on('unhandledRejection', () => undefined);
    return { ok: false };
  }
}

/** `out` is the true folder, where `options.out` may be a link to it; nobody else builds into it meanwhile. */
async function buildInto(
  out: string,
  options: BuildOptions,
  say: (line: string) => void,
  waits: (holder: number) => void,
): Promise<{ ok: boolean }> {
  clearUp(out);
  const began = performance.now();
  const standing = join(projectFolder, '.almanac', 'standing-in', String(process.pid));
  try {
    const read = await readSound(options, standing, say);
    return read
      ? await drawInto(out, { ...options, content: read.folder.directory }, read, options.content, say, waits, began)
      : { ok: false };
  } finally {
    removeWork(standing);
  }
}

/** What a build is made from: a folder without a fault. */
type Read = { before: Prints; folder: Folder; pictures: Prepared };

/** Null where there are faults, after saying them; with `last-good`, the folder in which the last good state stands in for them. */
async function readSound(options: BuildOptions, standing: string, say: (line: string) => void): Promise<Read | null> {
  let read = await readWhole(options.content, say);
  const { faults, drafts } = foundIn(read.folder, read.pictures.faults);
  let waiting = drafts;
  if (faults.length > 0) {
    for (const fault of faults) console.error(formatDiagnostic(fault));
    const many = `${faults.length} ${faults.length === 1 ? 'fault' : 'faults'}.`;
    if (!options['last-good']) {
      console.error(`${many} Nothing was built; the last good site stands as it was.`);
      return null;
    }
    const result = await standIn(read.folder.directory, standing, async (directory) => {
      const folder = readFolder(directory);
      return foundIn(folder, (await readyPictures(folder, say)).faults).faults;
    });
    for (const line of standInLines(result)) (result.ok ? say : console.error)(line);
    if (!result.ok) return null;
    read = await readWhole(standing, say);
    waiting = foundIn(read.folder, read.pictures.faults).drafts;
  } else say(`Checked: ${read.folder.entries.length + 1} files, no fault.`);
  if (waiting.length > 0) say(draftsLine(waiting));
  return read;
}

async function readWhole(content: string, say: (line: string) => void): Promise<Read> {
  const before = sourcePrints(projectFolder, content);
  const folder = openFolder(resolve(content), true);
  return { before, folder, pictures: await readyPictures(folder, say) };
}

/** Draws, publishes and puts in place; `own` is the club's own folder, whose last good state this becomes. */
async function drawInto(
  out: string,
  options: BuildOptions,
  { before, folder, pictures }: Read,
  own: string,
  say: (line: string) => void,
  waits: (holder: number) => void,
  began: number,
): Promise<{ ok: boolean }> {
  if (pictures.made > 0) say(`Pictures made ready: ${pictures.made}.`);
  const edition = { day: editionDay(folder, options.edition), fingerprint: printOf(before).slice(0, 16) };
  const work = workFolder(out);
  const site = join(work, 'site');
  const drawing = join(drawingFolder, String(process.pid));
  const progress = options.quiet ? null : watchPages(join(drawing, 'site'), pagesOf(out));
  try {
    await withLock(
      join(projectFolder, '.almanac', 'build.lock'),
      async () => {
        await drawPages(options, drawing, edition);
        moveFolder(join(drawing, 'site'), site);
      },
      waits,
    );
    progress?.end(`Pages drawn: ${count(site, '.html')}.`);
    await publish({
      site,
      base: options.base,
      address: options.site,
      edition,
      pictures: picturesFolder,
      former: out,
      say,
    });
    const club = validEntries(folder);
    const report = reportLines({
      site,
      former: out,
      almanac: club.club!.data.almanac,
      address: options.site ?? null,
      due: dueOn(club, edition.day as Day),
    });
    const changed = whatChanged(before, sourcePrints(projectFolder, options.content));
    if (changed) throw new Error(`${changed} while the site was built. Run it again.`);
    copyTexts(folder, join(work, 'kept'));
    swapSite(site, out, work);
    try {
      keepCopy(own, join(work, 'kept'));
    } catch (error) {
      // The site is in its place: that no later withdrawal can lean on this state is no reason to say it failed.
      say(`The last good state could not be kept: ${explainError(error)}`);
    }
    for (const line of report) say(line);
  } finally {
    progress?.end();
    for (const made of [work, drawing]) {
      removeWork(made);
      // What is still being written when a build has failed may make the folder again.
      process.once('exit', () => removeWork(made));
    }
  }
  say(`Edition of ${edition.day}, ready in ${options.out} after ${((performance.now() - began) / 1000).toFixed(1)} s.`);
  if (!options.site) say('No web address was given (--site), so no sitemap and no feed was written.');
  return { ok: true };
}

/**
 * Astro draws inside the project and not where the site is to lie: it moves files from one to the other by renaming, which
 * no system does from disk to disk. In turn only: what a killed build left there goes first.
 */
async function drawPages(options: BuildOptions, drawing: string, edition: { day: string; fingerprint: string }): Promise<void> {
  removeWork(drawingFolder);
  process.env.ASTRO_TELEMETRY_DISABLED = '1';
  process.env.ALMANAC_CONTENT = options.content;
  process.env.ALMANAC_EDITION = edition.day;
  process.env.ALMANAC_FINGERPRINT = edition.fingerprint;
  process.env.ALMANAC_PICTURES = picturesFolder;
  // Astro looks for packages, and keeps what it makes on the way, from the folder we stand in.
  process.chdir(projectFolder);
  const { build: astro } = await import('astro');
  await astro({
    root: projectFolder,
    outDir: join(drawing, 'site'),
    cacheDir: join(drawing, 'cache'),
    base: options.base,
    site: options.site,
    logLevel: process.env.ALMANAC_TRACE ? 'error' : 'silent',
    force: true,
    mode: 'production',
    vite: { logLevel: process.env.ALMANAC_TRACE ? 'error' : 'silent', cacheDir: join(drawing, 'cache', 'vite') },
  });
}

/** How many pages the last edition held; 0 where there is none. */
function pagesOf(out: string): number {
  const record = existsSync(join(out, 'edition.json')) ? readRecord(readFileSync(join(out, 'edition.json'), 'utf8')) : null;
  return record ? Object.keys(record.pages).length + 1 : 0;
}

const count = (folder: string, ending: string): number =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith(ending)).length;

if (isEntry(import.meta.url)) {
  const { values } = argumentsOf('build');
  const { ok } = await build(values);
  process.exitCode = ok ? 0 : 1;
}
