/*
 * Report at the end of a build: the edition's size, the changes since the one it replaces, a paragraph for the club's newsletter, pages
 * due for review on the edition's day, and files to upload.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { withPlainSpaces } from '../../shared/days/show-day.ts';
import type { Day } from '../../shared/days/day.ts';
import { formatDay } from '../lib/country.ts';
import { editionName } from '../lib/edition-name.ts';
import type { Due } from '../checks/review.ts';
import { changesBetween, letterParagraph, readRecord } from './changes.ts';
import { hashedFiles, type FormerEdition, type HashedFile } from './former-edition.ts';

export type Reporting = {
  /** The folder of the new site. */
  site: string;
  /** The edition that it replaces, where there is one. */
  former: FormerEdition | null;
  almanac: string;
  address: string | null;
  due: readonly Due[];
};

/** Lines for the terminal. */
export function reportLines({ site, former, almanac, address, due }: Reporting): string[] {
  const now = readRecord(readFileSync(join(site, 'edition.json'), 'utf8'))!;
  const files = hashedFiles(site);
  const bytes = [...files.values()].reduce((sum, { size }) => sum + size, 0);
  const lines = ['', `${Object.keys(now.pages).length} pages, ${files.size} files, ${(bytes / 1e6).toFixed(1)} MB.`];
  if (former) {
    const changes = changesBetween(former.record, now);
    const none = changes.added.length + changes.changed.length + changes.gone.length === 0;
    lines.push(
      '',
      `Since the edition of ${withPlainSpaces(editionName(former.record))}${none ? ' no page has other words, and no file has changed.' : ':'}`,
    );
    for (const [words, titles] of [
      ['added', changes.added],
      ['changed', changes.changed],
      ['gone', changes.gone],
    ] as const)
      if (titles.length > 0) lines.push(...listed(words, titles));
    lines.push('', 'For the club’s letter:', `  ${letterParagraph(almanac, now, changes, address)}`);
  }
  lines.push('', ...dueLines(due, now.day), '', upload(files, former?.files ?? null));
  return lines;
}

const MOST_TITLES = 15;

function listed(words: string, titles: readonly string[]): string[] {
  const shown = titles.slice(0, MOST_TITLES).map((title) => `    ${title}`);
  return [`  ${titles.length} ${words}`, ...shown, ...(titles.length > MOST_TITLES ? [`    and ${titles.length - MOST_TITLES} more`] : [])];
}

function dueLines(due: readonly Due[], day: Day): string[] {
  const past = due.filter(({ daysLeft }) => daysLeft < 0);
  if (past.length === 0)
    return [`Nothing was past its next check on ${withPlainSpaces(formatDay(day))}. npm run review says what comes next.`];
  return [
    `${past.length} past their next check on ${withPlainSpaces(formatDay(day))}; npm run review -- --on ${day} lists all:`,
    ...past.slice(0, 5).map(({ path, what, day: next }) => `  ${path}: ${what}, ${next}`),
  ];
}

function upload(files: ReadonlyMap<string, HashedFile>, before: ReadonlyMap<string, HashedFile> | null): string {
  if (!before) return 'Upload everything in the folder.';
  const differ = [...files].filter(([name, { hash }]) => before.get(name)?.hash !== hash);
  const gone = [...before.keys()].filter((name) => !files.has(name));
  return `Upload the whole folder; ${differ.length} of its ${files.size} files differ from the last edition, and ${gone.length} of that one are gone.`;
}
