/* Contact for a withdrawn entry: its own duty, then the editor, then the first office of the club. */
import type { Almanac } from './content.ts';
import { askWithin, type Asked } from './page-context.ts';

export function askWithdrawn(almanac: Almanac, duty: string | undefined): Asked {
  const known = almanac.club.contacts.map((contact) => contact.duty);
  return askWithin(almanac, [duty, 'almanac-editor', 'mentor'].find((each) => each !== undefined && known.includes(each)) ?? known[0]!);
}

/** Readers' words for the kinds of entry. */
export const KIND_WORDS = {
  checklists: 'list',
  bulletins: 'bulletin',
  articles: 'know-how',
  meetings: 'meeting',
  reading: 'reading',
  treatments: 'treatment',
  forage: 'forage plant',
  words: 'word',
  answers: 'best answer',
  figures: 'figure',
  local: 'text of this place',
  sources: 'source',
  cautions: 'box',
  sheets: 'sheet',
  signs: 'sign',
  notices: 'notice',
  counts: 'counts',
  drawings: 'drawing',
  files: 'file',
} as const;
