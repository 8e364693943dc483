/* Changes since the previous edition in the output folder: for the webmaster, and as a paragraph for the club's newsletter. */
import { editionName, type Edition } from '../lib/edition-name.ts';
import { isDay } from '../../shared/days/day.ts';
import type { EditionRecord, Recorded } from './edition-record.ts';

/** Titles of pages and of the club's own files. */
export type Changes = { added: string[]; changed: string[]; gone: string[] };

export function changesBetween(before: EditionRecord, now: EditionRecord): Changes {
  // A record without files is of an older release, which says nothing of them.
  const former = { ...before.pages, ...(before.files ?? now.files) };
  const current = { ...now.pages, ...now.files };
  const titles = (of: Record<string, Recorded>, chosen: (place: string) => boolean): string[] =>
    Object.keys(of)
      .filter((place) => !isInOther(place) && chosen(place))
      .map((place) => of[place]!.title);
  return {
    added: titles(current, (place) => !(place in former)),
    changed: titles(current, (place) => place in former && former[place]!.sha256 !== current[place]!.sha256),
    gone: titles(former, (place) => !(place in current)),
  };
}

/** A page in another language than the club's stands below the letters of that language. */
const isInOther = (place: string): boolean => /^[a-z]{2}\//.test(place);

/** Ready to paste, with as many titles as fit in a newsletter. */
export function letterParagraph(almanac: string, edition: Edition, { added, changed, gone }: Changes, address: string | null): string {
  const listed = (words: string, titles: string[]): string =>
    titles.length === 0
      ? ''
      : ` ${words}: ${titles.slice(0, 12).join('; ')}${titles.length > 12 ? ` and ${titles.length - 12} more` : ''}.`;
  const nothing = added.length + changed.length + gone.length === 0 ? ' Its pages say what they said before.' : '';
  return `${almanac}, edition of ${editionName(edition)}.${listed('New', added)}${listed('Changed', changed)}${listed('Taken down', gone)}${nothing}${address ? ` ${address}` : ''}`;
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
