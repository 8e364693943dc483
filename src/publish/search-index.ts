/* The search index over the drawn pages, as static files that the browser reads in pieces. */
import { join } from 'node:path';

/** Indexes every page below `site` that asks for it; returns how many. */
export async function indexPages(site: string): Promise<number> {
  const pagefind = await import('pagefind');
  const { index, errors } = await pagefind.createIndex({ forceLanguage: 'en' });
  if (!index) throw new Error(`the search index could not be made (${errors.join('; ')})`);
  const added = await index.addDirectory({ path: site });
  const written = await index.writeFiles({ outputPath: join(site, 'pagefind') });
  await pagefind.close();
  const all = [...added.errors, ...written.errors];
  if (all.length > 0) throw new Error(`the search index could not be made (${all.join('; ')})`);
  return added.page_count;
}
