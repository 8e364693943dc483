/*
 * `npm run overview`: says in ten plain lines what is set up, for pasting into a mail to whoever helps: program, club, books, pages,
 * mistakes, last edition, what the next one would change, what is due, address, disk. It reads the clock, as `review` does.
 */
import { existsSync, readdirSync, readFileSync, statfsSync, statSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { todayIn } from '../../shared/days/today.ts';
import type { Day } from '../../shared/days/day.ts';
import { foundIn } from '../checks/drafts.ts';
import { validEntries } from '../checks/fields.ts';
import { isDraft } from '../checks/place.ts';
import { dueOn } from '../checks/review.ts';
import { counted, isPageKind, madeOf } from '../checks/summary.ts';
import { readRecord } from '../integration/changes.ts';
import { readFolder, type Folder } from '../source/folder.ts';
import { argumentsOf } from './arguments.ts';
import { isEntry } from './entry.ts';
import { changedSince } from './last-good.ts';
import { usualOutput } from './output-folder.ts';
import { projectFolder, whereThePersonStands } from './paths.ts';

export type OverviewOptions = { content: string; out?: string | undefined; on?: Day | undefined };

/** The lines, each `name: value`. Nothing in the folder makes them fail. */
export function overviewLines({ content, out = usualOutput(content), on }: OverviewOptions): string[] {
  const folder = readFolder(content);
  const fields = (folder.club?.fields.value ?? {}) as { id?: unknown; name?: unknown; site?: unknown; 'time-zone'?: unknown };
  const { faults, drafts } = foundIn(folder);
  const files = new Set(faults.map(({ path }) => path)).size;
  const held = (value: unknown, otherwise: string): string => (typeof value === 'string' && value !== '' ? value : otherwise);
  return [
    `Program: ${version()}, on Node ${process.version} (20 or newer is needed), ${process.platform} ${process.arch}`,
    `Club: ${held(fields.name, 'no name, since club.yaml cannot be read')} (${held(fields.id, 'no id')}), in ${shown(content)}`,
    `Books: ${folder.books.map(({ id }) => id).join(', ') || 'none; every page is your own'}`,
    `Pages: ${pagesIn(folder)}`,
    `Mistakes: ${faults.length === 0 ? 'none' : `${counted(faults.length, 'fault')} in ${counted(files, 'file')}; npm run check lists them`}${drafts.length === 0 ? '' : `; ${counted(drafts.length, 'blank or mistake', 'blanks or mistakes')} in drafts`}`,
    `Last edition: ${lastEdition(out)}`,
    `The next one: ${nextEdition(content, faults.length > 0)}`,
    `Due: ${due(folder, on ?? today(held(fields['time-zone'], 'UTC')))}`,
    `Address: ${held(fields.site, 'none; a line "site:" in club.yaml says where the almanac is on the web')}`,
    `Disk: ${gigabytes(out)} free where the site is written${existsSync(out) ? `; the site there has ${megabytes(out)}` : ''}`,
  ];
}

const version = (): string => {
  const { name, version: number } = JSON.parse(readFileSync(join(projectFolder, 'package.json'), 'utf8')) as {
    name: string;
    version: string;
  };
  return `${name} ${number}`;
};

function pagesIn(folder: Folder): string {
  const { fromBooks, own, writtenOver, addedTo } = madeOf(folder);
  const drafts = [...folder.entries, ...folder.overlays].filter((entry) => entry.book === undefined && isDraft(entry)).length;
  const pages = (entries: typeof own): number => entries.filter(isPageKind).length;
  return `${pages(own)} of your own, ${pages(fromBooks)} from the books, ${writtenOver.length + addedTo.length} changed over a book, ${counted(drafts, 'draft')}`;
}

function lastEdition(out: string): string {
  const file = join(out, 'edition.json');
  const record = existsSync(file) ? readRecord(readFileSync(file, 'utf8')) : null;
  if (!record) return `none in ${shown(out)}`;
  return `${record.day}${record.mark ? ` (${record.mark})` : ''}, ${counted(Object.keys(record.pages).length, 'page')}, of ${record.club ?? 'a club without an id'}, in ${shown(out)}`;
}

/** At most this many files are named. */
const MOST_NAMED = 6;

function nextEdition(content: string, hasFaults: boolean): string {
  const changes = changedSince(content);
  if (changes === null) return 'everything is new, since nothing was built from this folder here';
  const all = [...changes.added, ...changes.changed, ...changes.gone];
  const named = all.slice(0, MOST_NAMED).join(', ') + (all.length > MOST_NAMED ? ' ...' : '');
  const what = `${counted(changes.added.length, 'new file')}, ${changes.changed.length} changed, ${changes.gone.length} gone`;
  return all.length === 0
    ? 'no file has changed since the last one'
    : `${what} (${named})${hasFaults ? '; it waits for the mistakes to be mended' : ''}`;
}

function due(folder: Folder, on: Day): string {
  const ours = dueOn(validEntries(folder), on).filter(({ path }) => !folder.books.some(({ id }) => path.startsWith(`books/${id}/`)));
  const past = ours.filter(({ daysLeft }) => daysLeft < 0).length;
  return `on ${on}, ${past} past and ${ours.length - past} in the next 60 days; npm run review lists them`;
}

function today(zone: string): Day {
  try {
    return todayIn(zone, new Date());
  } catch {
    // A mistyped zone is among the mistakes.
    return todayIn('UTC', new Date());
  }
}

function gigabytes(out: string): string {
  let folder = out;
  while (!existsSync(folder)) folder = dirname(folder);
  const { bavail, bsize } = statfsSync(folder);
  return `${((bavail * bsize) / 1e9).toFixed(1)} GB`;
}

function megabytes(out: string): string {
  const sizes = readdirSync(out, { recursive: true, withFileTypes: true, encoding: 'utf8' })
    .filter((entry) => entry.isFile())
    .map((entry) => statSync(join(entry.parentPath, entry.name)).size);
  return `${(sizes.reduce((sum, size) => sum + size, 0) / 1e6).toFixed(1)} MB`;
}

/** A folder as the person would type it from her own directory. */
function shown(folder: string): string {
  const near = relative(whereThePersonStands(), folder);
  return near === '' ? '.' : near.length < folder.length ? near : folder;
}

if (isEntry(import.meta.url)) {
  const { values } = argumentsOf('overview');
  console.log(overviewLines(values).join('\n'));
}
