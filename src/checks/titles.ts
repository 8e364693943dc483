/* Checks that no two entries of a collection have one title: a copied file would be listed twice. A copied meeting has one day and hour. */
import type { Diagnostic } from '../source/diagnostic.ts';
import type { Meeting } from '../schemas/meetings.ts';
import { takenText } from '../source/taken.ts';
import type { ValidEntries, ValidEntry } from './fields.ts';
import { atField, isDraft, isWithdrawn } from './place.ts';

const TITLED = ['checklists', 'bulletins', 'articles', 'treatments', 'reading', 'meetings', 'sheets'] as const;

export function titleFaults(club: ValidEntries): Diagnostic[] {
  return TITLED.flatMap((name) => {
    const taken = new Map<string, string>();
    return (club.of[name] as ValidEntry<{ title: string; author?: string } & Partial<Meeting>>[])
      .filter((entry) => !isDraft(entry) && !isWithdrawn(entry))
      .sort(ownLast)
      .flatMap((entry): Diagnostic[] => {
        const { title, author, day, start } = entry.data;
        const key = [title.trim().toLowerCase(), author, day, start].join('\n');
        const other = taken.get(key);
        taken.set(key, other ?? entry.path);
        // The book's entry may have another name now; that has its own fault.
        if (other === undefined || takenText(club.folder, entry) !== null) return [];
        return [
          atField(entry, ['title'], {
            rule: 'title',
            field: 'title',
            found: `"${title}", which ${other} has too${day === undefined ? '' : ', on the same day'}`,
            write: 'a title of its own, or take one of the two files away',
          }),
        ];
      });
  });
}

/** What the club itself adds is compared with what its books have. */
const ownLast = (a: ValidEntry, b: ValidEntry): number =>
  Number(a.book === undefined) - Number(b.book === undefined) || (a.path < b.path ? -1 : a.path > b.path ? 1 : 0);

/** A meeting that was moved keeps its address, so another day than that of the file's name may be right. */
export const meetingNameHints = (club: ValidEntries): Diagnostic[] =>
  club.of.meetings.flatMap((entry) => {
    const named = /^\d{4}-\d{2}-\d{2}/.exec(entry.id)?.[0];
    if (named === undefined || named === entry.data.day) return [];
    return [
      atField(entry, ['day'], {
        rule: 'meeting',
        field: 'day',
        found: `${entry.data.day}, while the name of the file says ${named}`,
        write: `${named}; if the meeting was moved, leave both, so that its address stays`,
      }),
    ];
  });
