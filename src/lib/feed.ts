/* News feed `changes.xml` (Atom, RFC 4287). It is written only where the site's complete address is known. */
import * as text from './feeds.en.ts';
import { createHash } from 'node:crypto';
import { Feed } from 'feed';
import type { Day } from '../../shared/days/day.ts';
import type { Club } from '../schemas/club.ts';
import type { News } from './news.ts';

/** Enough for a reader who returns after a season. */
const MOST = 60;

/** Entries have a day only, and noon in UTC is that day nearly everywhere. */
const noon = (day: string): Date => new Date(`${day}T12:00:00Z`);

export type FeedClub = Pick<Club, 'id' | 'name' | 'almanac' | 'language'>;

export function changesFeed(club: FeedClub, news: readonly News[], editionDay: Day, root: string): string {
  const feed = new Feed({
    id: idOf(club, 'changes'),
    title: text.feedTitle(club.almanac),
    description: text.feedDescription(club.name),
    language: club.language,
    link: root,
    feedLinks: { atom: new URL('changes.xml', root).href },
    updated: noon(editionDay),
    generator: false,
    copyright: '',
    author: { name: club.name },
  });
  for (const { key, title, words, place, day } of news.slice(0, MOST)) {
    // News with a later date was known on the day of the edition.
    const date = noon(day < editionDay ? day : editionDay);
    feed.addItem({
      id: idOf(club, key),
      title: escaped(title),
      link: new URL(place, root).href,
      date,
      published: date,
      description: escaped(words),
    });
  }
  return `${feed.atom1()}\n`;
}

/** Titles and summaries are marked as HTML. */
const escaped = (words: string): string => words.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

/** Stable for the same club and item at any address: a version 5 UUID (RFC 9562) in the name space of URLs. */
function idOf(club: FeedClub, key: string): string {
  const space = Buffer.from('6ba7b8119dad11d180b400c04fd430c8', 'hex');
  const bytes = createHash('sha1').update(space).update(`almanac/${club.id}/${key}`).digest().subarray(0, 16);
  bytes[6] = (bytes[6]! & 0x0f) | 0x50;
  bytes[8] = (bytes[8]! & 0x3f) | 0x80;
  const hex = bytes.toString('hex');
  return `urn:uuid:${hex.slice(0, 8)}-${hex.slice(8, 12)}-${hex.slice(12, 16)}-${hex.slice(16, 20)}-${hex.slice(20)}`;
}
