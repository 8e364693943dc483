/*
 * `npm run check`: prints all mistakes in a content folder, one or two lines per fault. Exit 0 when clean, 1 with faults. A line that
 * begins with "hint:" or "draft:" is no fault: hints are optional, and drafts are not published. With --write-ids it first gives ids to
 * steps without one. With --strict --on DAY a date that has passed is a fault too.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { hintsOf } from '../checks/check.ts';
import { draftsLine, foundIn } from '../checks/drafts.ts';
import { validEntries } from '../checks/fields.ts';
import { isPage } from '../checks/place.ts';
import { overdueFaults } from '../checks/review.ts';
import { summaryLines } from '../checks/summary.ts';
import { withIds } from '../checks/task-ids.ts';
import { formatDiagnostic, inReadingOrder, type Diagnostic } from '../source/diagnostic.ts';
import { readFolder } from '../source/folder.ts';
import { hashOfOriginal } from '../source/translations.ts';
import { readFolderCached } from '../source/parse-cache.ts';
import { argumentsOf } from './arguments.ts';
import { editionDay } from '../source/edition-day.ts';
import { annotations } from './annotations.ts';
import { publishedIn } from '../source/last-edition.ts';
import { lastGoodOf } from './last-good.ts';
import { picturesFolder, projectFolder } from './paths.ts';
import { readyPictures } from '../pictures/ready-pictures.ts';

const { values } = argumentsOf('check');
if (values.strict && values.on === undefined) stop('--strict needs the day that counts as today: --strict --on 2026-05-01.');
if (!values.strict && values.on !== undefined) stop('--on is for --strict: --strict --on 2026-05-01.');
if (values['write-ids']) writeIds(values.content);

const folder = readFolderCached(values.content);
const { faults: unreadable } = await readyPictures(folder, picturesFolder, console.error);
const found = foundIn(folder, unreadable, { edition: values.on, before: publishedIn(lastGoodOf(values.content) ?? undefined) });
const faults = inReadingOrder([
  ...found.faults,
  ...found.translations,
  ...(values.strict ? overdueFaults(validEntries(folder), values.on!) : []),
]);
console.log(values.format === 'json' ? JSON.stringify(withLevels(), null, 2) : lines().join('\n'));
if (process.env.GITHUB_ACTIONS === 'true' && values.format === 'text') {
  const place = relative(process.env.GITHUB_WORKSPACE ?? projectFolder, values.content)
    .split(sep)
    .join('/');
  for (const line of [...annotations(faults, place), ...annotations(found.drafts, place, 'notice')]) console.log(line);
}
process.exitCode = faults.length > 0 ? 1 : 0;

function lines(): string[] {
  return [
    ...faults.map(formatDiagnostic),
    ...hintsOf(folder).map((hint) => `hint: ${formatDiagnostic(hint)}`),
    ...found.drafts.map((fault) => `draft: ${formatDiagnostic(fault)}`),
    ...(found.drafts.length > 0 ? [draftsLine(found.drafts)] : []),
    ...summaryLines(folder, editionDay(folder)),
    countLine(faults, folder.files.length, folder.books.flatMap(({ files }) => files).length),
  ];
}

/** In reading order. Those of the level "draft" stop no build, and a translation with a fault is merely not shown. */
function withLevels(): (Diagnostic & { level: 'fault' | 'draft' })[] {
  const leveled = [
    ...faults.map((fault) => ({ ...fault, level: 'fault' as const })),
    ...found.drafts.map((fault) => ({ ...fault, level: 'draft' as const })),
  ];
  return inReadingOrder(leveled) as typeof leveled;
}

function countLine(found: readonly Diagnostic[], files: number, ofBooks: number): string {
  if (found.length === 0)
    return `No faults in ${counted(files, 'file')}${ofBooks > 0 ? ` of yours and ${counted(ofBooks, 'file')} of the books` : ''}.`;
  return `${counted(found.length, 'fault')} in ${counted(new Set(found.map(({ path }) => path)).size, 'file')}.`;
}

function writeIds(directory: string): void {
  const read = readFolder(directory);
  for (const { file, original } of read.translations) {
    if (!original || file.path.startsWith('books/') || (file.fields.value as { of?: unknown } | undefined)?.of !== undefined) continue;
    const line = `of: ${hashOfOriginal(original)}\n`;
    const path = join(directory, file.path);
    const text = readFileSync(path, 'utf8');
    writeFileSync(path, file.path.endsWith('.mdx') ? text.replace(/^---\r?\n/, `$&${line}`) : line + text);
  }
  for (const entry of read.entries) {
    if (entry.collection !== 'checklists' || entry.book !== undefined || !isPage(entry)) continue;
    const path = join(directory, entry.path);
    const { text, written } = withIds(readFileSync(path, 'utf8'), entry);
    if (written === 0) continue;
    writeFileSync(path, text);
    if (values.format === 'text') console.log(`${entry.path}: ${counted(written, 'id')} written.`);
  }
}

function counted(count: number, word: string): string {
  return `${count} ${word}${count === 1 ? '' : 's'}`;
}

function stop(sentence: string): never {
  console.error(sentence);
  process.exit(2);
}
