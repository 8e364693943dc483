/* Checks a content folder before it is built or shown. All faults are printed at once, one or two lines each. */
import type { Given } from '../checks/fields.ts';
import { hintsOf } from '../checks/check.ts';
import { draftsLine, foundIn } from '../checks/drafts.ts';
import { translationsLine } from '../checks/translations.ts';
import { summaryLines } from '../checks/summary.ts';
import { editionDay } from '../source/edition-day.ts';
import { readyPictures } from '../pictures/ready-pictures.ts';
import { formatDiagnostic } from '../source/diagnostic.ts';
import type { Folder } from '../source/folder.ts';
import { openFolder } from '../source/open-folder.ts';
import { readFolderCached } from '../source/parse-cache.ts';
import type { Findings } from './preview-panel.ts';

/** The content has faults, which are printed. The error has no stack, because the program is not at fault. */
export class ContentError extends Error {
  override name = 'ContentError';
  constructor(count: number) {
    super(`${countOf(count)}. Nothing was built; the last good site is unchanged.`);
    this.stack = '';
  }
}

type Say = (line: string) => void;

/** The folder, read and without a fault. @throws ContentError after printing the faults. */
export async function checkContent(content: string, pictures: string, say: Say, given: Given = {}): Promise<Folder> {
  const folder = openFolder(content, true, readFolderCached);
  const prepared = await readyPictures(folder, pictures, say);
  const { faults, drafts, translations } = foundIn(folder, prepared.faults, given);
  for (const fault of [...faults, ...translations]) console.error(formatDiagnostic(fault));
  if (faults.length > 0) throw new ContentError(faults.length);
  say(`Checked: ${folder.entries.length + 1} files, no fault.`);
  if (drafts.length > 0) say(draftsLine(drafts));
  if (translations.length > 0) say(translationsLine(translations));
  for (const line of summaryLines(folder, editionDay(folder))) say(line);
  if (prepared.made > 0) say(`Pictures made ready: ${prepared.made}.`);
  return folder;
}

/** For the preview: returns what the checks find now, and prints it when it changes. A folder is checked once. */
export function findingsWatcher(content: string, pictures: string, say: Say): () => Promise<Findings> {
  let printed = '';
  let latest: Findings | null = null;
  return async () => {
    const folder = openFolder(content);
    if (latest?.folder === folder) return latest;
    const found = foundIn(folder, (await readyPictures(folder, pictures, say)).faults);
    const { drafts } = found;
    const faults = [...found.faults, ...found.translations];
    const text = [...faults.map(formatDiagnostic), ...drafts.map((draft) => `draft: ${formatDiagnostic(draft)}`)].join('\n');
    if (text !== printed || !latest) {
      if (text) say(text);
      if (drafts.length > 0) say(draftsLine(drafts));
      say(faults.length === 0 ? 'No faults.' : `${countOf(faults.length)}: each stands on the pages too.`);
    }
    printed = text;
    return (latest = { folder, faults, drafts, hints: hintsOf(folder) });
  };
}

const countOf = (count: number): string => `${count} ${count === 1 ? 'fault' : 'faults'}`;
