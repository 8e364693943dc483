/*
 * Outputs after the build: search index, calendars, book, files for hosts and search engines, edition record, precache list. Each step
 * reports its result.
 */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { makeBook } from './book/book.ts';
import { nameSizes } from './book/sizes.ts';
import { builtPages, isPublished } from './built-pages.ts';
import { clubCalendar } from './club-calendar.ts';
import { editionRecord, type Edition } from './edition-record.ts';
import { changesFeed } from './feed.ts';
import type { FormerEdition } from './former-edition.ts';
import { takeHandedOver } from './handed-over.ts';
import { manifest } from './manifest.ts';
import { movedUnsaid } from './moved-events.ts';
import { writeOfflineCopy } from './offline-copy.ts';
import { putPictures } from './pictures.ts';
import { withPolicy } from './policy.ts';
import { nameScriptFiles } from './bundles.ts';
import { writeSearch } from './search-index.ts';
import { seasonCalendar } from './season-calendar.ts';
import { apacheFile, headersFile, serverRules } from './server-files.ts';
import { robots, sitemap } from './sitemap.ts';

export type Outputs = {
  /** The folder of drawn pages. */
  site: string;
  base: string;
  address: string | undefined;
  edition: Edition;
  /** The folder of published pictures. */
  pictures: string;
  /** The edition that this one replaces, where there is one. */
  former: FormerEdition | null;
  say: (line: string) => void;
};

export async function writeOutputs({ site, base, address, edition, pictures, former, say }: Outputs): Promise<void> {
  const write = (name: string, text: string | Uint8Array): void => writeFileSync(join(site, name), text);
  nameScriptFiles(site);
  const { club, meetings, season, words, windows, news, moved, publications } = takeHandedOver(site);
  const pages = builtPages(site).map((page) => ({ ...page, html: withPolicy(page) }));
  for (const { file, html } of pages) write(file, html);
  const published = pages.filter(isPublished);
  const places = new Set(pages.map(({ place }) => place));
  const root = address ? new URL(base, address).href : null;

  const pictured = putPictures(site, base, pages, pictures);
  if (pictured > 0) say(`Pictures: ${pictured} files.`);

  const search = await writeSearch(site, pages, words, windows);
  say(`Search: ${search.records} pages and entries.`);

  const writeCalendar = (name: string, text: string): void => {
    write(name, text);
    for (const sentence of movedUnsaid(former?.calendars.get(name) ?? '', text)) say(sentence);
  };
  writeCalendar(
    'club.ics',
    clubCalendar(
      club,
      meetings.filter(({ id }) => places.has(`meetings/${id}/`)),
      edition.day,
      root,
    ),
  );
  say(`Calendar: ${meetings.length} meetings.`);
  for (const district of season) writeCalendar(`season-${district.district}.ics`, seasonCalendar(club, district, edition.day, root));

  const book = makeBook({
    pages,
    base,
    root,
    club,
    districts: season.map(({ district, name }) => ({ id: district, name })),
    publications,
    edition,
  });
  write('handbook.html', book.html);
  write('handbook.epub', book.epub);
  for (const line of nameSizes(site, pages, book)) say(line);

  if (root) {
    write('sitemap.xml', sitemap(root, published));
    write('changes.xml', changesFeed(club, news, edition, root));
    say(`Feed: ${news.length} changes, bulletins and notices.`);
  }
  if (moved.length > 0) say(`Old addresses that lead on: ${moved.length}.`);
  write('robots.txt', robots(root, club.demonstration));
  const rules = serverRules(pages, [book.styles]);
  write('_headers', headersFile(base, rules));
  write('.htaccess', apacheFile(base, rules));

  write('manifest.webmanifest', manifest(club, base, places));
  write('edition.json', editionRecord(edition, published));
  say(`Edition recorded: ${published.length} pages.`);
  // The precache list contains all files written before it.
  for (const line of await writeOfflineCopy({ site, base, zone: club.zone, edition })) say(line);
}
