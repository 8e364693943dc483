/*
 * The search index: one record a page or entry, indexed by Pagefind, and the words that a question is read with. The files are static
 * and small, so that a first question fetches little of them.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { rolldown } from 'rolldown';
import { ENGINE, PAGEFIND_FOLDER, WORDS } from '../../shared/words/search-files.ts';
import type { BuiltPage } from './built-pages.ts';
import type { Word } from './handed-over.ts';
import { foundOn, type Found } from './search-pages.ts';
import { recordOf } from './search-record.ts';
import { searchWords } from './search-words.ts';

/**
 * How many places of words a piece of the index holds. Pagefind takes 20,000, and a first question then fetches 97 kB of pieces; the
 * setting is not part of its documented interface, so a test looks at the sizes. Beside 500, on the demonstration almanac's questions:
 * 300 saves 0.4 kB a question (2.4 at worst) and makes 89 files more; 1,000 costs 2.6 kB (8.9 at worst) and makes 72 files fewer.
 */
const PIECE = '500';

/** What Pagefind writes and this almanac serves; its own boxes for searching and its worker are left out. */
const SERVED = /^(?:pagefind\.js|pagefind-entry\.json|wasm\.en\.pagefind|pagefind\.\w+\.pf_meta|(?:index|fragment)\/.+)$/;

/** Writes the files of search below the site. `windows`: by a page's place, its days in each district. */
export async function writeSearch(
  site: string,
  pages: readonly BuiltPage[],
  words: readonly Word[],
  windows: Readonly<Record<string, string>>,
): Promise<{ records: number }> {
  const found = paired(pages.flatMap(foundOn));
  const write = (name: string, content: string | Uint8Array): void => {
    mkdirSync(dirname(join(site, name)), { recursive: true });
    writeFileSync(join(site, name), content);
  };
  const records = found.map((each, at) => ({ url: `/${each.place}`, content: recordOf(each, at, words) }));
  for (const { path, content } of await indexFiles(records)) if (SERVED.test(path)) write(PAGEFIND_FOLDER + path, content);
  write(ENGINE, await minified(join(site, ENGINE)));
  write(WORDS, JSON.stringify(searchWords(found, words, windows)));
  return { records: found.length };
}

/**
 * The longest record, the shortest, the second longest, and so on. Pagefind puts two neighbors into one file of texts: a page takes
 * a line of the word list along, which halves the files of a reader's copy and costs a question some hundred bytes.
 */
function paired(found: readonly Found[]): Found[] {
  const falling = [...found].sort((a, b) => b.text.length - a.text.length || (a.place < b.place ? -1 : 1));
  const half = Math.ceil(falling.length / 2);
  const short = falling.slice(half).reverse();
  return falling.slice(0, half).flatMap((long, at) => [long, ...short.slice(at, at + 1)]);
}

type IndexFile = { path: string; content: Uint8Array };

/** Records are numbered as they are handed over, so each waits for the one before. */
async function indexFiles(records: readonly { url: string; content: string }[]): Promise<IndexFile[]> {
  process.env.PAGEFIND_UNSTABLE_INDEX_CHUNK_SIZE = PIECE;
  const { close, createIndex } = await import('pagefind');
  const sound = <Answer extends { errors: string[] }>(answer: Answer): Answer => {
    if (answer.errors.length > 0) throw new Error(`Pagefind could not index the pages: ${answer.errors.join('; ')}`);
    return answer;
  };
  try {
    const { index } = sound(await createIndex({ forceLanguage: 'en', maxFragments: Math.ceil(records.length / 2) }).catch(noProgram));
    for (const record of records) sound(await index!.addHTMLFile(record));
    return sound(await index!.getFiles()).files;
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
