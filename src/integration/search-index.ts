/*
 * Search index: one record per page or entry, indexed by Pagefind, and the word lists for parsing queries. The files are static and
 * small, so that a first query downloads little.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { rolldown } from 'rolldown';
import type { Tongue } from '../../shared/country/language.ts';
import { ENGINE, folderOf, PAGEFIND_FOLDER, WORDS, wordsOf } from '../../shared/words/search-files.ts';
import type { BuiltPage } from './built-pages.ts';
import type { SearchContent } from '../lib/search-content.ts';
import { formatDay } from '../lib/country.ts';
import { editionName, type Edition } from '../lib/edition-name.ts';
import { foundOn, listedOn, type Found } from './search-pages.ts';
import { recordOf } from './search-record.ts';
import { searchWords } from './search-words.ts';

/**
 * Word positions per piece of the index. Pagefind takes 20,000, and a first query then downloads 97 kB of pieces. The setting is not part
 * of its documented interface, so a test measures the sizes. Compared with 500, on the questions for the demo almanac: 300 saves 0.4 kB a
 * query (2.4 at most) and adds 89 files; 1,000 costs 2.6 kB (8.9 at most) and removes 72 files.
 */
const PIECE = '500';

/** The files of Pagefind that this almanac serves. Its own search boxes and its worker are left out. */
const SERVED = /^(?:pagefind\.js|pagefind-entry\.json|wasm\.[a-z]{2}\.pagefind|pagefind\.\w+\.pf_meta|(?:index|fragment)\/.+)$/;

/** The pages of one language, and what their search is made of. */
export type SearchIn = { tongue: Tongue; content: SearchContent };

type Searched = {
  /** The folder of drawn pages. */
  site: string;
  pages: readonly BuiltPage[];
  base: string;
  /** The pages in the club's language. */
  own: SearchIn;
  /** The languages of the other pages. */
  others: readonly SearchIn[];
  edition: Edition;
};

/** Writes the search files below the site. */
export async function writeSearch({ site, pages, base, own, others, edition }: Searched): Promise<{ records: number }> {
  const write = (name: string, content: string | Uint8Array): void => {
    mkdirSync(dirname(join(site, name)), { recursive: true });
    writeFileSync(join(site, name), content);
  };
  const index = async (found: readonly Found[], { tongue: of, content: { words } }: SearchIn, folder: string): Promise<void> => {
    const records = found.map((each, at) => ({ url: `/${each.place}`, content: recordOf(each, at, words, of) }));
    for (const { path, content: bytes } of await indexFiles(records, of))
      if (SERVED.test(path) && (folder === PAGEFIND_FOLDER || path !== 'pagefind.js')) write(folder + path, bytes);
  };
  const foundIn = (tongue: Tongue | undefined): Found[] =>
    paired(pages.filter((page) => page.tongue === tongue).flatMap((page) => foundOn(page).map((each) => withoutMark(each, edition))));
  const found = foundIn(undefined);
  await index(found, own, PAGEFIND_FOLDER);
  write(ENGINE, await minified(join(site, ENGINE)));
  write(WORDS, JSON.stringify(searchWords(found, own.content, listedOn(pages, base))));
  for (const other of others) {
    const theirs = foundIn(other.tongue);
    if (theirs.length === 0) continue;
    await index(theirs, other, folderOf(other.tongue));
    write(wordsOf(other.tongue), JSON.stringify(searchWords(theirs, other.content, [])));
  }
  return { records: found.length };
}

/** The mark changes with every edition. The day alone leaves the files of the search as they are, which a reader then need not fetch again. */
function withoutMark(found: Found, edition: Edition): Found {
  const day = (words: string): string => words.replaceAll(editionName(edition), formatDay(edition.day));
  return { ...found, lead: day(found.lead), text: day(found.text) };
}

/**
 * Sorts the longest record, the shortest, the second longest, and so on. Pagefind puts two neighbours into one text file, so a page
 * shares its file with a glossary entry. This halves the files in the offline copy and costs some hundred bytes a query.
 */
function paired(found: readonly Found[]): Found[] {
  const falling = [...found].sort((a, b) => b.text.length - a.text.length || (a.place < b.place ? -1 : 1));
  const half = Math.ceil(falling.length / 2);
  const short = falling.slice(half).reverse();
  return falling.slice(0, half).flatMap((long, at) => [long, ...short.slice(at, at + 1)]);
}

type IndexFile = { path: string; content: Uint8Array };

/** Records are numbered in the order of insertion, so each waits for the one before. */
async function indexFiles(records: readonly { url: string; content: string }[], tongue: Tongue): Promise<IndexFile[]> {
  process.env.PAGEFIND_UNSTABLE_INDEX_CHUNK_SIZE = PIECE;
  const { close, createIndex } = await import('pagefind');
  const checked = <Answer extends { errors: string[] }>(answer: Answer): Answer => {
    if (answer.errors.length > 0) throw new Error(`Pagefind could not index the pages: ${answer.errors.join('; ')}`);
    return answer;
  };
  try {
    const { index } = checked(await createIndex({ forceLanguage: tongue, maxFragments: Math.ceil(records.length / 2) }).catch(noProgram));
    for (const record of records) checked(await index!.addHTMLFile(record));
    return checked(await index!.getFiles()).files;
  } finally {
    await close();
  }
}

/** Pagefind's own program comes as a package for each kind of machine. */
function noProgram(cause: unknown): never {
  const machine = `${process.platform} on ${process.env.npm_config_arch ?? process.arch}`;
  throw new Error(
    `the search is made by Pagefind, whose program for ${machine} is missing. Run npm install with optional packages, or build on Linux, macOS or Windows (x64 or arm64).`,
    { cause },
  );
}

async function minified(file: string): Promise<string> {
  const bundle = await rolldown({ input: file, logLevel: 'silent' });
  const { output } = await bundle.generate({ format: 'esm', minify: true });
  await bundle.close();
  return output[0].code;
}
