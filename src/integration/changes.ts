/* Changes since the previous edition in the output folder: for the webmaster, and as a paragraph for the club's newsletter. */
import { formatDay } from '../lib/country.ts';
import { isDay, type Day } from '../../shared/days/day.ts';
import type { EditionRecord } from './edition-record.ts';

/** Titles of pages. */
export type Changes = { added: string[]; changed: string[]; gone: string[] };

export function changesBetween(before: EditionRecord, now: EditionRecord): Changes {
  const held = new Map(Object.entries(before.pages));
  const titles = (places: string[], record: EditionRecord): string[] => places.map((place) => record.pages[place]!.title);
  const places = Object.keys(now.pages);
  return {
    added: titles(
      places.filter((place) => !held.has(place)),
      now,
    ),
    changed: titles(
      places.filter((place) => held.has(place) && held.get(place)!.sha256 !== now.pages[place]!.sha256),
      now,
    ),
    gone: titles(
      [...held.keys()].filter((place) => !(place in now.pages)),
      before,
    ),
  };
}

/** Ready to paste, with as many titles as fit in a newsletter. */
export function letterParagraph(almanac: string, day: Day, { added, changed, gone }: Changes, address: string | null): string {
  const listed = (words: string, titles: string[]): string =>
    titles.length === 0
      ? ''
      : ` ${words}: ${titles.slice(0, 12).join('; ')}${titles.length > 12 ? ` and ${titles.length - 12} more` : ''}.`;
  const nothing = added.length + changed.length + gone.length === 0 ? ' Its pages say what they said before.' : '';
  return `${almanac}, edition of ${formatDay(day)}.${listed('New', added)}${listed('Changed', changed)}${listed('Taken down', gone)}${nothing}${address ? ` ${address}` : ''}`;
}

/** The record in a built folder, or null where there is none or it cannot be parsed. */
export function readRecord(text: string | null): EditionRecord | null {
  try {
    const record = JSON.parse(text ?? '') as EditionRecord;
    return isDay(record.day) && typeof record.pages === 'object' && record.pages !== null ? record : null;
  } catch {
    return null;
  }
}
