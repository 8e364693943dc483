/*
 * `npm run build`: checks the club's folder, draws its pages, makes the search, calendars and lists, and only then puts
 * the new site in the place of the old one. A build that fails at any step leaves the last good site whole.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { draftsLine, foundIn } from '../checks/drafts.ts';
import { sound } from '../checks/fields.ts';
import { dueOn } from '../checks/review.ts';
import type { Day } from '../../shared/days/day.ts';
import { readRecord } from '../publish/changes.ts';
import { faultLine } from '../reader/fault.ts';
import { openFolder } from '../reader/loader.ts';
import { publish } from '../publish/publish.ts';
import { argumentsOf } from './arguments.ts';
import { editionDay } from './edition.ts';
import { isEntry } from './entry.ts';
import { printOf, whatChanged } from './fingerprint.ts';
import { sourcePrints } from './freshness.ts';
import { inTurn } from './in-turn.ts';
import { refusal, trueFolder } from './output-folder.ts';
import { drawingFolder, picturesFolder, projectFolder } from './places.ts';
import { watchPages } from './progress.ts';
import { clearUp, moveFolder, putInPlace, removeWork, workFolder } from './put-in-place.ts';
import { readyPictures } from './ready-pictures.ts';
import { reportLines } from './report.ts';
import { whyStopped } from './why-stopped.ts';

export type BuildOptions = {
  content: string;
  out: string;
  base: string;
  site?: string | undefined;
  edition?: string | undefined;
  quiet?: boolean | undefined;
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
    return await inTurn(`${out}.lock`, () => buildInto(out, options, say, waits), waits);
  } catch (error) {
    console.error(`The build stopped: ${whyStopped(error)} The last good site stands as it was.`);
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
  const before = sourcePrints(projectFolder, options.content);
  const folder = openFolder(resolve(options.content), true);
  const pictures = await readyPictures(folder, say);
  const { faults, drafts } = foundIn(folder, pictures.faults);
  if (faults.length > 0) {
    for (const fault of faults) console.error(faultLine(fault));
    console.error(`${faults.length} ${faults.length === 1 ? 'fault' : 'faults'}. Nothing was built; the last good site stands as it was.`);
    return { ok: false };
  }
  say(`Checked: ${folder.entries.length + 1} files, no fault.`);
  if (drafts.length > 0) say(draftsLine(drafts));
  if (pictures.made > 0) say(`Pictures made ready: ${pictures.made}.`);
  const edition = { day: editionDay(folder, options.edition), fingerprint: printOf(before).slice(0, 16) };
  const work = workFolder(out);
  const site = join(work, 'site');
  const drawing = join(drawingFolder, String(process.pid));
  const progress = options.quiet ? null : watchPages(join(drawing, 'site'), pagesOf(out));
  try {
    await inTurn(
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
      packages: join(projectFolder, 'node_modules'),
      pictures: picturesFolder,
      former: out,
      say,
    });
    const club = sound(folder);
    const report = reportLines({
      site,
      former: out,
      almanac: club.club!.data.almanac,
      address: options.site ?? null,
      due: dueOn(club, edition.day as Day),
    });
    const changed = whatChanged(before, sourcePrints(projectFolder, options.content));
    if (changed) throw new Error(`${changed} while the site was built. Run it again.`);
    putInPlace(site, out, work);
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
