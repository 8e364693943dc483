/*
 * Separates the diagnostics of drafts from those that stop a build. A build stops for anything that would be wrong without the drafts.
 * All others belong to the drafts, even where a draft makes a published page look wrong (an old address given twice).
 */
import { isDraft } from '../source/draft.ts';
import { inReadingOrder, type Diagnostic } from '../source/diagnostic.ts';
import { withoutDrafts, type Folder } from '../source/folder.ts';
import { picturesShown } from '../source/pictures.ts';
import { checkFolder } from './check.ts';
import type { Given } from './fields.ts';
import { isInTranslation } from './translations.ts';

/**
 * `faults` stop a build. `drafts` wait until their pages are published. In place of what has faults in `translations` the original is
 * shown.
 */
export type Found = { faults: Diagnostic[]; drafts: Diagnostic[]; translations: Diagnostic[] };

/** `unreadable`: diagnostics of pictures, which are found when the pictures are prepared. */
export function foundIn(folder: Folder, unreadable: readonly Diagnostic[] = [], given: Given = {}): Found {
  const found = inReadingOrder([...checkFolder(folder, given), ...unreadable]);
  const translations = found.filter(isInTranslation);
  const all = found.filter((fault) => !isInTranslation(fault));
  const drafts = draftFiles(folder);
  if (drafts.size === 0) return { faults: all, drafts: [], translations };
  const isPublished = ({ path }: { path: string }): boolean => !drafts.has(path);
  const published = withoutDrafts(folder);
  const stops = [
    ...checkFolder(
      {
        ...published,
        entries: published.entries.filter(isPublished),
        files: folder.files.filter((path) => !drafts.has(path)),
        faults: folder.faults.filter(isPublished),
      },
      given,
    ),
    ...unreadable.filter(isPublished),
  ].filter((fault) => !isInTranslation(fault));
  // The whole folder gives the message "a draft, which is not shown" where the other gives "which is not there".
  const byPlace = new Map(all.map((fault) => [placeOf(fault), fault]));
  const faults = stops.flatMap((fault) => byPlace.get(placeOf(fault)) ?? (fault.rule === 'missing-folder' ? [] : [fault]));
  return { faults: inReadingOrder(faults), drafts: all.filter((fault) => !faults.includes(fault)), translations };
}

const placeOf = ({ path, line, column, rule, field }: Diagnostic): string => JSON.stringify([path, line, column, rule, field]);

/** Every file of a draft: its own, a drawing's SVG, and pictures that no other page shows. */
function draftFiles(folder: Folder): Set<string> {
  const entries = [...folder.entries.filter(({ book }) => book === undefined), ...folder.overlays, ...folder.overNothing].filter(isDraft);
  const drafts = new Set([...folder.unreadDrafts, ...entries.map(({ path }) => path)]);
  for (const { collection, path } of entries) if (collection === 'drawings') drafts.add(path.replace(/yaml$/, 'svg'));
  if (drafts.size === 0) return drafts;
  const shown = picturesShown(folder).flatMap(({ page, path }) => (path === null ? [] : [{ path, draft: isDraft(page) }]));
  const elsewhere = new Set(shown.filter(({ draft }) => !draft).map(({ path }) => path));
  for (const { path, draft } of shown) if (draft && !elsewhere.has(path)) drafts.add(path);
  return drafts;
}

/** "3 drafts have 14 blanks and 2 faults; they are not published." Empty where no draft has any. */
export function draftsLine(drafts: readonly Diagnostic[]): string {
  if (drafts.length === 0) return '';
  const files = new Set(drafts.map(({ path }) => path)).size;
  const blanks = drafts.filter(isBlank).length;
  const other = drafts.length - blanks;
  const what = [blanks > 0 && counted(blanks, 'blank'), other > 0 && counted(other, 'fault')].filter(Boolean).join(' and ');
  return files === 1 ? `1 draft has ${what}; it is not published.` : `${files} drafts have ${what}; they are not published.`;
}

/** True for a blank that `new` leaves for the author to fill. */
export const isBlank = ({ found }: Diagnostic): boolean => /^(?:a blank|nothing)\b|with nothing under it$/.test(found);

const counted = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;
