/*
 * `npm run build`: checks the club's folder, draws its pages, makes the search, calendars and lists, and only then puts
 * the new site in the place of the old one. A build that fails at any step leaves the last good site whole.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync } from 'node:fs';
import { basename, dirname, join, resolve, sep } from 'node:path';
import { checkFolder } from '../checks/check.ts';
import { sound } from '../checks/fields.ts';
import { dueOn } from '../checks/review.ts';
import type { Day } from '../../shared/days/day.ts';
import { readRecord } from '../publish/changes.ts';
import { faultLine, inReadingOrder } from '../reader/fault.ts';
import { openFolder } from '../reader/loader.ts';
import { publish } from '../publish/publish.ts';
import { argumentsOf } from './arguments.ts';
import { editionDay } from './edition.ts';
import { isEntry } from './entry.ts';
import { sourceFingerprint } from './freshness.ts';
import { inTurn } from './in-turn.ts';
import { picturesFolder, projectFolder } from './places.ts';
import { watchPages } from './progress.ts';
import { readyPictures } from './ready-pictures.ts';
import { reportLines } from './report.ts';

export type BuildOptions = { content: string; out: string; base: string; site?: string | undefined; edition?: string | undefined; quiet?: boolean | undefined };

/** Builds a club's folder into `out`; false when it could not, after saying why in sentences. */
export async function build(options: BuildOptions): Promise<{ ok: boolean }> {
  const say = (line: string): void => (options.quiet ? undefined : console.log(line));
  const folder = openFolder(resolve(options.content), true);
  const pictures = await readyPictures(folder, say);
  const faults = inReadingOrder([...checkFolder(folder), ...pictures.faults]);
  if (faults.length > 0) {
    for (const fault of faults) console.error(faultLine(fault));
    console.error(`${faults.length} ${faults.length === 1 ? 'fault' : 'faults'}. Nothing was built; the last good site stands as it was.`);
    return { ok: false };
  }
  const refused = refusal(options);
  if (refused) {
    console.error(refused);
    return { ok: false };
  }
  const work = `${options.out}.building-${process.pid}`;
  try {
    removeLeftovers(options.out);
    mkdirSync(dirname(options.out), { recursive: true });
    const edition = { day: editionDay(folder, options.edition), fingerprint: sourceFingerprint(projectFolder, options.content).slice(0, 16) };
    const began = performance.now();
    say(`Checked: ${folder.entries.length + 1} files, no fault.`);
    if (pictures.made > 0) say(`Pictures made ready: ${pictures.made}.`);
    const progress = options.quiet ? null : watchPages(join(work, 'site'), pagesOf(options.out));
    await inTurn(join(projectFolder, '.almanac', 'build.lock'), () => drawPages(options, join(work, 'site'), join(work, 'cache'), edition));
    progress?.end(`Pages drawn: ${count(join(work, 'site'), '.html')}.`);
    await publish({ site: join(work, 'site'), base: options.base, address: options.site, edition, packages: join(projectFolder, 'node_modules'), pictures: picturesFolder, former: options.out, say });
    const club = sound(folder);
    const report = reportLines({ site: join(work, 'site'), former: options.out, almanac: club.club!.data.almanac, address: options.site ?? null, due: dueOn(club, edition.day as Day) });
    putInPlace(join(work, 'site'), options.out);
    for (const line of report) say(line);
    say(`Edition of ${edition.day}, ready in ${options.out} after ${((performance.now() - began) / 1000).toFixed(1)} s. `.trimEnd());
    if (!options.site) say('No web address was given (--site), so no sitemap and no feed was written.');
    return { ok: true };
  } catch (error) {
    console.error(`The build stopped: ${sentenceOf(error)} Nothing was changed; the last good site stands as it was.`);
    if (process.env.ALMANAC_TRACE) console.error(error);
    // What Astro still had under way now finds its folder gone; why the build stopped has been said.
    process.on('unhandledRejection', () => undefined);
    return { ok: false };
  } finally {
    rmSync(work, { recursive: true, force: true });
  }
}

async function drawPages(options: BuildOptions, out: string, cache: string, edition: { day: string; fingerprint: string }): Promise<void> {
  process.env.ASTRO_TELEMETRY_DISABLED = '1';
  process.env.ALMANAC_CONTENT = options.content;
  process.env.ALMANAC_EDITION = edition.day;
  process.env.ALMANAC_FINGERPRINT = edition.fingerprint;
  process.env.ALMANAC_PICTURES = picturesFolder;
  // Astro looks for packages, and keeps what it makes on the way, from the folder we stand in.
  process.chdir(projectFolder);
  const { build: astro } = await import('astro');
  await astro({
    root: projectFolder, outDir: out, cacheDir: cache, base: options.base, site: options.site, logLevel: process.env.ALMANAC_TRACE ? 'error' : 'silent', force: true, mode: 'production',
    vite: { logLevel: process.env.ALMANAC_TRACE ? 'error' : 'silent', cacheDir: join(cache, 'vite') },
  });
}

/** Folders that must never be replaced by a site. */
function refusal({ content, out }: BuildOptions): string | null {
  const inside = (inner: string, outer: string): boolean => `${resolve(inner)}${sep}`.startsWith(`${resolve(outer)}${sep}`);
  if (inside(content, out) || inside(projectFolder, out)) return `--out ${out} holds the club's words or the almanac's own files. Write a folder of its own, such as dist.`;
  if (existsSync(out) && !statSync(out).isDirectory()) return `--out ${out} is a file. Write the name of a folder.`;
  if (existsSync(out) && readdirSync(out).length > 0 && !existsSync(join(out, 'edition.json'))) {
    return `--out ${out} holds files that no build of an almanac made. Empty it, or write another folder.`;
  }
  return null;
}

/** The new site takes the old one's place in two renames; the old one goes only after that. */
function putInPlace(site: string, out: string): void {
  const old = `${out}.old-${process.pid}`;
  if (existsSync(out)) renameSync(out, old);
  try {
    renameSync(site, out);
  } catch (error) {
    if (existsSync(old)) renameSync(old, out);
    throw error;
  }
  rmSync(old, { recursive: true, force: true });
}

/** What a build that was killed left behind: its work goes; an old site it had moved aside comes back. */
function removeLeftovers(out: string): void {
  if (!existsSync(dirname(out))) return;
  for (const name of readdirSync(dirname(out))) {
    const match = new RegExp(`^${basename(out).replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}\\.(building|old)-(\\d+)$`).exec(name);
    if (!match || isAlive(Number(match[2]))) continue;
    const left = join(dirname(out), name);
    if (match[1] === 'old' && !existsSync(out)) renameSync(left, out);
    else rmSync(left, { recursive: true, force: true });
  }
}

function isAlive(pid: number): boolean {
  if (pid === process.pid) return false;
  try {
    process.kill(pid, 0);
    return true;
  } catch {
    return false;
  }
}

/** How many pages the last edition held; 0 where there is none. */
function pagesOf(out: string): number {
  const record = existsSync(join(out, 'edition.json')) ? readRecord(readFileSync(join(out, 'edition.json'), 'utf8')) : null;
  return record ? Object.keys(record.pages).length + 1 : 0;
}

const count = (folder: string, ending: string): number =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith(ending)).length;

function sentenceOf(error: unknown): string {
  const { code, path, message, hint } = error as NodeJS.ErrnoException & { hint?: string };
  if (code === 'ENOSPC') return 'the disk is full.';
  if (code === 'EACCES' || code === 'EPERM' || code === 'EROFS') return `${path ?? 'a folder'} may not be written to.`;
  // The bundler's own account has colours, and its first line says only how many errors there are.
  const lines = String(message || hint || error).replace(/\u001b\[[0-9;]*m/g, '').split('\n').map((line) => line.trim()).filter(Boolean);
  const first = lines[0]?.startsWith('Build failed') ? (lines[1] ?? lines[0]) : lines[0];
  return `${(first ?? 'something went wrong').replace(/\.?$/, '.')}`;
}

if (isEntry(import.meta.url)) {
  const { values } = argumentsOf('build');
  const { ok } = await build(values);
  process.exitCode = ok ? 0 : 1;
}
