/*
 * Outputs after the build: search index, book, files for hosts and search engines, edition record, precache list. Each step
 * reports its result.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Almanac } from '../lib/almanac.ts';
import type { Edition } from '../lib/edition-name.ts';
import { newsOf } from '../lib/news.ts';
import { searchContentOf } from '../lib/search-content.ts';
import { rootAddress } from '../lib/settings.ts';
import { makeBook } from './book/book.ts';
import { nameSizes } from './book/sizes.ts';
import { builtPages, isPublished } from './built-pages.ts';
import { editionRecord } from './edition-record.ts';
import type { FormerEdition } from './former-edition.ts';
import { movedUnsaid } from './moved-events.ts';
import { writeOfflineCopy } from './offline-copy.ts';
import { putFiles } from './files.ts';
import { putPictures } from './pictures.ts';
import { withPolicy } from './policy.ts';
import { joinScripts } from './bundles.ts';
import { writeSearch } from './search-index.ts';
import { apacheFile, headersFile, serverRules } from './server-files.ts';
import { sitemap } from './sitemap.ts';
import { withStepPrints } from './step-prints.ts';

export type Outputs = {
  /** The club's folder. */
  content: string;
  /** The folder of drawn pages. */
  site: string;
  base: string;
  address: string | undefined;
  edition: Edition;
  almanac: Almanac;
  /** The almanac as readers of each other language see it. */
  others: readonly Almanac[];
  /** The folder of published pictures. */
  pictures: string;
  /** The edition that this one replaces, where there is one. */
  former: FormerEdition | null;
  say: (line: string) => void;
};

export async function writeOutputs({
  content,
  site,
  base,
  address,
  edition,
  almanac,
  others,
  pictures,
  former,
  say,
}: Outputs): Promise<void> {
  const { club } = almanac;
  const write = (name: string, text: string | Uint8Array): void => writeFileSync(join(site, name), text);
  giveBack();
  const pages = withStepPrints(builtPages(site, joinScripts(site))).map((page) => ({ ...page, html: withPolicy(page) }));
  for (const { file, html } of pages) write(file, html);
  giveBack();
  const published = pages.filter(isPublished);
  const root = rootAddress(address ? new URL(address) : undefined, base);

  const pictured = putPictures(site, base, pages, pictures);
  if (pictured > 0) say(`Pictures: ${pictured} files.`);

  const files = putFiles(site, content, almanac);
  const count = Object.keys(files).length;
  if (count > 0) say(`Files of the club: ${count}.`);

  const search = await writeSearch({
    site,
    pages,
    base,
    own: { tongue: almanac.tongue, content: searchContentOf(almanac) },
    others: others.map((other) => ({ tongue: other.tongue, content: searchContentOf(other, `${other.tongue}/`) })),
    edition,
  });
  giveBack();
  say(`Search: ${search.records} pages and entries.`);

  say(`Calendar: ${almanac.meetings.length} meetings.`);
  for (const name of readdirSync(site)
    .filter((each) => each.endsWith('.ics'))
    .sort())
    for (const sentence of movedUnsaid(former?.calendars.get(name) ?? '', readFileSync(join(site, name), 'utf8'))) say(sentence);

  // The book takes the pages' trees apart: what else reads them comes first.
  const record = editionRecord(edition, almanac.club.id, published, files);
  const book = makeBook({ pages, base, root, almanac, edition });
  write('handbook.html', book.html);
  write('handbook.epub', book.epub);
  for (const line of nameSizes(site, pages, book)) say(line);

  if (root) {
    write('sitemap.xml', sitemap(root, published));
    say(`Feed: ${newsOf(almanac).length} changes, bulletins and notices.`);
  }
  if (almanac.moved.length > 0) say(`Old addresses that lead on: ${almanac.moved.length}.`);
  const rules = serverRules(pages, [book.styles]);
  write('_headers', headersFile(base, rules));
  write('.htaccess', apacheFile(base, rules));

  write('edition.json', record);
  say(`Edition recorded: ${published.length} pages.`);
  // The precache list contains all files written before it.
  for (const line of await writeOfflineCopy({ site, base, zone: club['time-zone'], edition })) say(line);
}

/**
 * Collects what the last part left over, before the next part needs memory of its own. Otherwise Node keeps it and asks the system for
 * more. Without the flag that `npm run build` sets it does nothing.
 */
function giveBack(): void {
  globalThis.gc?.();
}
