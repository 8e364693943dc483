/*
 * Checks review dates: when pages were checked, when they are due again, and what has changed in them. A date that has passed is not a
 * fault. `dueOn` lists it, and only a strict check reports it as one.
 */
import { daysBetween, type Day } from '../../shared/days/day.ts';
import type { Language } from '../../shared/country/language.ts';
import { formatDay, withPlainSpaces } from '../../shared/days/show-day.ts';
import { inReadingOrder, type Diagnostic } from '../source/diagnostic.ts';
import type { ValidEntries, ValidEntry } from './fields.ts';
import { atField, isDraft, isWithdrawn } from './place.ts';

/** The maximum of months from a check to the next. Pages whose content an authority may revise have less. */
const SHORT = new Set(['bulletins', 'treatments', 'figures', 'cautions', 'signs']);

/** A meeting may have none of them. */
type Reviewed = { checked?: Day; 'next-check'?: Day; by?: string; history?: { changed: Day; what: string }[] };

export function reviewFaults(club: ValidEntries): Diagnostic[] {
  return reviewed(club).flatMap(({ entry, path, review }) => [...spanFaults(entry, path, review), ...historyFaults(entry, review)]);
}

function spanFaults(entry: ValidEntry, path: PropertyKey[], review: Reviewed): Diagnostic[] {
  const { checked, 'next-check': next } = review;
  if (checked === undefined || next === undefined) return [];
  const years = SHORT.has(entry.collection) ? 1 : 2;
  const last = `${Number(checked.slice(0, 4)) + years}${checked.slice(4)}`;
  const message = { rule: 'review', field: [...path, 'next-check'].join(', ') };
  if (next <= checked)
    return [
      atField(entry, [...path, 'next-check'], {
        ...message,
        found: `${next}, which is not after checked, ${checked}`,
        write: 'a later day',
      }),
    ];
  if (next > last)
    return [
      atField(entry, [...path, 'next-check'], {
        ...message,
        found: `${next}, more than ${years * 12} months after checked`,
        write: `a day up to ${last}`,
      }),
    ];
  return [];
}

function historyFaults(entry: ValidEntry, { checked, history = [] }: Reviewed): Diagnostic[] {
  return history.flatMap(({ changed }, index) => {
    const message = { rule: 'history', field: `history ${index + 1}, changed` };
    const before = history[index - 1]?.changed;
    if (checked !== undefined && changed > checked)
      return [
        atField(entry, ['history', index, 'changed'], {
          ...message,
          found: `${changed}, later than checked, ${checked}`,
          write: `the day of that change as checked, or a day up to ${checked}`,
        }),
      ];
    if (before !== undefined && changed < before)
      return [
        atField(entry, ['history', index, 'changed'], {
          ...message,
          found: `${changed} below ${before}`,
          write: 'the lines in order, the newest last',
        }),
      ];
    return [];
  });
}

const REVIEW = ['checked', 'next-check', 'history'] as const;

/** A reviewable item, with its due date. */
export type Due = { path: string; line: number; column: number; what: string; by: string; day: Day; daysLeft: number };

/** Items that are overdue on `on`, or due `within` that many days, the most urgent first. */
export function dueOn(club: ValidEntries, on: Day, within = 60): Due[] {
  return [...pageDays(club, on), ...rowDays(club), ...consentDays(club)]
    .map((each) => ({ ...each, daysLeft: daysBetween(on, each.day) }))
    .filter(({ daysLeft }) => daysLeft <= within)
    .map(({ entry, at, ...due }): Due => ({ path: entry.path, ...entry.fields.placeOf(at), ...due }))
    .sort((a, b) => a.daysLeft - b.daysLeft || (a.path < b.path ? -1 : a.path > b.path ? 1 : a.line - b.line));
}

/** For a strict check: every date that has passed on `on`. */
export function overdueFaults(club: ValidEntries, on: Day): Diagnostic[] {
  return inReadingOrder(
    dueOn(club, on, -1).map(({ path, line, column, what, day }): Diagnostic => ({
      path,
      line,
      column,
      rule: 'overdue',
      field: what,
      found: `${day}, which is past on ${on}`,
      write: 'a new day once it has been checked again',
    })),
  );
}

/** Formats lines for a person: a duty, then the items that wait for it. */
export function dueLines(due: readonly Due[], on: Day, language: Language): string[] {
  const day = withPlainSpaces(formatDay(on, language));
  const duties = [...new Set(due.map(({ by }) => by))].sort();
  const lines = duties.flatMap((duty) => [`${duty}:`, ...due.filter(({ by }) => by === duty).map(dueLine), '']);
  const past = due.filter(({ daysLeft }) => daysLeft < 0).length;
  if (due.length === 0) return [`Nothing is due on ${day} or in the 60 days after it.`];
  return [...lines, `${past} past and ${due.length - past} coming up on ${day}.`];
}

function dueLine({ path, line, what, day, daysLeft }: Due): string {
  const ago = daysLeft < 0 ? `${count(-daysLeft)} past` : daysLeft === 0 ? 'today' : `in ${count(daysLeft)}`;
  return `  ${day}  ${ago}  ${path}:${line}  ${what}`;
}

const count = (days: number): string => (days === 1 ? '1 day' : `${days} days`);

/** A day, and the field that has it. Where the field is in its file is looked up only for what is due. */
type Dated = Pick<Due, 'what' | 'by' | 'day'> & { entry: ValidEntry; at: PropertyKey[] };

/** A meeting that is over needs no review. */
function pageDays(club: ValidEntries, on: Day): Dated[] {
  const over = new Set(club.of.meetings.filter(({ data }) => (data['last-day'] ?? data.day) < on).map(({ path }) => path));
  const due = reviewed(club).filter(({ entry }) => !over.has(entry.path));
  return due.flatMap(({ entry, path, review: { 'next-check': next, by = 'almanac editor' } }) =>
    next === undefined ? [] : [dated(entry, [...path, 'next-check'], 'next-check', by, next)],
  );
}

function rowDays(club: ValidEntries): Dated[] {
  const published = club.of.treatments.filter((entry) => !isDraft(entry) && !isWithdrawn(entry));
  return published.flatMap((entry) =>
    entry.data.rows.map((row, index) =>
      dated(entry, ['rows', index, 'check-by'], `row ${row.id}, check-by`, entry.data.by, row['check-by']),
    ),
  );
}

/** From its end date on, the number is shown nowhere. */
function consentDays(club: ValidEntries): Dated[] {
  const contacts = club.club?.data.contacts ?? [];
  return contacts.flatMap(({ duty, until }, index) =>
    until === undefined ? [] : [dated(club.club!, ['contacts', index, 'until'], `contact ${duty}, until`, 'almanac editor', until)],
  );
}

const dated = (entry: ValidEntry, at: PropertyKey[], what: string, by: string, day: Day): Dated => ({ entry, at, what, by, day });

/** Entries with a review. Drafts are left out. */
function reviewed(club: ValidEntries): { entry: ValidEntry; path: PropertyKey[]; review: Reviewed }[] {
  const entries = Object.values(club.of).flat() as ValidEntry<Partial<Reviewed>>[];
  const pages = entries
    .filter((entry) => !isDraft(entry) && !isWithdrawn(entry) && REVIEW.some((field) => entry.data[field] !== undefined))
    .map((entry) => ({ entry: entry as ValidEntry, path: [], review: entry.data as Reviewed }));
  return club.club ? [{ entry: club.club as ValidEntry, path: ['season'], review: club.club.data.season }, ...pages] : pages;
}
