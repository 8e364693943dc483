/*
 * Checks for days that are probably mistyped, because they lie far in the future. The clock is never read: a day is compared with the
 * edition that was asked for, and with the newest day of all other files.
 */
import { addDays, isDay, type Day } from '../../shared/days/day.ts';
import type { Diagnostic } from '../source/diagnostic.ts';
import type { Entry } from '../source/folder.ts';
import { fieldName, type ValidEntries } from './fields.ts';
import { atField } from './place.ts';

/** Days on which something was done. None of them can be in the future. */
const DONE = new Set(['checked', 'changed', 'opened', 'agreed']);
const MOST_DAYS_AHEAD = 366;

type Dated = { entry: Entry; path: PropertyKey[]; day: Day };

export function futureFaults({ folder, edition }: ValidEntries): Diagnostic[] {
  const entries = folder.club ? [folder.club, ...folder.entries] : folder.entries;
  const dated = entries.flatMap((entry) => daysIn(entry, entry.fields.value, []));
  const newest = newestOf(dated);
  const ofOthers = newestOf(dated.filter(({ entry }) => entry !== newest?.entry));
  return dated.flatMap(({ entry, path, day }) => {
    const other = entry === newest?.entry ? ofOthers?.day : newest?.day;
    const known = [edition, other]
      .filter((each) => each !== undefined)
      .sort()
      .at(-1);
    if (known === undefined || day <= addDays(known, MOST_DAYS_AHEAD)) return [];
    return [
      atField(entry, path, {
        rule: 'future',
        field: fieldName(path),
        found: `${day}, over a year later than every other day in the almanac`,
        write: `the day on which that was done; if ${day} is right, add --edition ${day} to the build`,
      }),
    ];
  });
}

const newestOf = (dated: readonly Dated[]): Dated | undefined =>
  dated.reduce<Dated | undefined>((newest, each) => (newest === undefined || each.day > newest.day ? each : newest), undefined);

function daysIn(entry: Entry, value: unknown, path: PropertyKey[]): Dated[] {
  if (typeof value === 'string') return DONE.has(String(path.at(-1))) && isDay(value) ? [{ entry, path, day: value }] : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, held]) => daysIn(entry, held, [...path, Array.isArray(value) ? Number(key) : key]));
}
