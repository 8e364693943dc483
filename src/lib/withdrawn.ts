/* Contact for a withdrawn entry: its own duty, then the editor, then the first office of the club. */
import * as text from './withdrawn.en.ts';
import type { Almanac } from './content.ts';
import { askWithin, type Asked } from './page-context.ts';

export function askWithdrawn(almanac: Almanac, duty: string | undefined): Asked {
  const known = almanac.club.contacts.map((contact) => contact.duty);
  return askWithin(almanac, [duty, 'almanac-editor', 'mentor'].find((each) => each !== undefined && known.includes(each)) ?? known[0]!);
}

/** Readers’ words for the kinds of entry. */
export const KIND_WORDS = text.kinds;
