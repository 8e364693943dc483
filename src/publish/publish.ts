/* What happens to the drawn pages: the search index, then the record of the edition. Each step says what it made. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { indexPages } from './search-index.ts';

export type Publishing = {
  /** The folder of drawn pages. */
  site: string;
  base: string;
  address: string | undefined;
  edition: { day: string; fingerprint: string };
  say: (line: string) => void;
};

export async function publish(publishing: Publishing): Promise<void> {
  const { site, edition, say } = publishing;
  say(`Search: ${await indexPages(site)} pages.`);
  writeFileSync(join(site, 'edition.json'), `${JSON.stringify(edition, null, 2)}\n`);
}
