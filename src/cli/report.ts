/*
 * What a webmaster is told once an edition is made: its size, what changed since the one it replaces, a paragraph for the
 * club's letter, what is due for review on the edition's day, and what to upload.
 */
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';
import type { Day } from '../../shared/days/day.ts';
import { formatDay } from '../../shared/days/show-day.ts';
import type { Due } from '../checks/review.ts';
import { changesBetween, letterParagraph, readRecord } from '../integration/changes.ts';

export type Reporting = {
  /** The new site, and the folder it will replace. */
  site: string;
  former: string;
  almanac: string;
  address: string | null;
  due: readonly Due[];
};

/** Lines for the terminal. To be asked for while both folders are there. */
export function reportLines({ site, former, almanac, address, due }: Reporting): string[] {
  const now = readRecord(readFileSync(join(site, 'edition.json'), 'utf8'))!;
  const old = join(former, 'edition.json');
  const before = existsSync(old) ? readRecord(readFileSync(old, 'utf8')) : null;
  const files = filesIn(site);
  const bytes = [...files.values()].reduce((sum, { size }) => sum + size, 0);
  const lines = ['', `${Object.keys(now.pages).length} pages, ${files.size} files, ${(bytes / 1e6).toFixed(1)} MB.`];
  if (before) {
    const changes = changesBetween(before, now);
    const none = changes.added.length + changes.changed.length + changes.gone.length === 0;
    lines.push('', `Since the edition of ${formatDay(before.day as Day)}${none ? ' no page has other words.' : ':'}`);
    for (const [words, titles] of [
      ['added', changes.added],
      ['changed', changes.changed],
      ['gone', changes.gone],
    ] as const)
      if (titles.length > 0) lines.push(...listed(words, titles));
    lines.push('', 'For the club’s letter:', `  ${letterParagraph(almanac, now.day, changes, address)}`);
  }
  lines.push('', ...dueLines(due, now.day), '', upload(files, before ? filesIn(former) : null));
  return lines;
}

const MOST_TITLES = 15;

function listed(words: string, titles: readonly string[]): string[] {
  const shown = titles.slice(0, MOST_TITLES).map((title) => `    ${title}`);
  return [`  ${titles.length} ${words}`, ...shown, ...(titles.length > MOST_TITLES ? [`    and ${titles.length - MOST_TITLES} more`] : [])];
}

function dueLines(due: readonly Due[], day: string): string[] {
  const past = due.filter(({ daysLeft }) => daysLeft < 0);
  if (past.length === 0) return [`Nothing was past its next check on ${formatDay(day as Day)}. npm run review says what comes next.`];
  return [
    `${past.length} past their next check on ${formatDay(day as Day)}; npm run review -- --on ${day} lists all:`,
    ...past.slice(0, 5).map(({ path, what, day: next }) => `  ${path}: ${what}, ${next}`),
  ];
}

function upload(files: ReadonlyMap<string, Held>, before: ReadonlyMap<string, Held> | null): string {
  if (!before) return 'Upload everything in the folder.';
  const differ = [...files].filter(([name, { print }]) => before.get(name)?.print !== print);
  const gone = [...before.keys()].filter((name) => !files.has(name));
  return `Upload the whole folder; ${differ.length} of its ${files.size} files differ from the last edition, and ${gone.length} of that one are gone.`;
}

type Held = { size: number; print: string };

const filesIn = (folder: string): Map<string, Held> =>
  new Map(
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((name) => statSync(join(folder, name)).isFile())
      .map((name) => {
        const bytes = readFileSync(join(folder, name));
        return [name.split(sep).join('/'), { size: bytes.length, print: createHash('sha1').update(bytes).digest('hex') }];
      }),
  );
