/*
 * Writes the offline copy of a site: `worker.js` with the list of every file and its hash, after all other files. Books, data files and
 * files for hosts are left out by name. A file that is left out for its size is reported.
 */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { rolldown, type RolldownPluginOption } from 'rolldown';
import { languageHere } from '../../shared/country/language-here.ts';
import { formatNumber } from '../../shared/numbers/show-number.ts';
import { editionId, editionName, type Edition } from '../lib/edition-name.ts';
import { FILES } from './files.ts';
import { words } from './words.ts';

export type CopyOf = { site: string; base: string; zone: string; edition: Edition };

/** Paths below the site that are not needed to read, search, calculate, tick or print. */
const LEFT_OUT =
  /^(handbook\.|open\/(?!index\.html)|_headers$|\.htaccess$|robots\.txt$|licenses\.txt$|sitemap|edition\.json$|manifest\.webmanifest$|icon-|worker|changes\.xml$)/;
const PICTURES = /^pictures\//;
/** A club's file up to this size is in everybody's copy. A larger one is stored on the device of a reader who opens it. */
const SMALL_FILE = 100_000;
/** A file of this size would be half of the limit for the whole copy. */
const LARGE = 1_000_000;

/** An old address that leads on to another page. */
const LEADS_ON = 'http-equiv="refresh"';

/** Writes `worker.js`, `worker-slash.js`, and `worker-off.js` to end the offline copy. Returns a sentence, and the files that were too large. */
export async function writeOfflineCopy({ site, base, zone, edition }: CopyOf): Promise<string[]> {
  const all = filesIn(site);
  const isOnRequest = (file: string): boolean => file.startsWith(FILES) && statSync(join(site, file)).size > SMALL_FILE;
  const read = all.filter((file) => !LEFT_OUT.test(file) && !PICTURES.test(file) && !isOnRequest(file));
  let bytes = 0;
  // The page for a missing address is no page of the almanac.
  let pages = -1;
  const files = read.map((file) => {
    const content = readFileSync(join(site, file));
    bytes += gzipSync(content, { level: 9 }).length;
    if (file.endsWith('.html') && !content.includes(LEADS_ON)) pages += 1;
    return [placeOf(file), digestOf(content)] as const;
  });
  const size = `${formatNumber(bytes / 1e6, { places: 1 })} MB`;
  const copy = {
    base,
    day: edition.day,
    edition: editionId(edition),
    name: editionName(edition),
    print: edition.fingerprint,
    zone,
    size,
    pages,
    files,
    pictures: all.filter((file) => PICTURES.test(file)),
    ownFiles: all.filter(isOnRequest).map((file) => [file, digestOf(readFileSync(join(site, file)))] as const),
  };
  writeFileSync(join(site, 'worker.js'), `const offlineCopy=${JSON.stringify(copy)};\n${await script('worker.ts')}`);
  for (const name of ['worker-off', 'worker-slash']) writeFileSync(join(site, `${name}.js`), await script(`${name}.ts`));
  const large = read
    .filter((file) => statSync(join(site, file)).size > LARGE)
    .map(
      (file) =>
        `${file} is ${(statSync(join(site, file)).size / 1e6).toFixed(1)} MB: every reader's copy for use without signal grows by it.`,
    );
  return [`Offline copy: ${files.length} files, ${size}.`, ...large];
}

const digestOf = (bytes: Buffer): string => createHash('sha256').update(bytes).digest('base64');

const filesIn = (site: string): string[] =>
  readdirSync(site, { recursive: true, encoding: 'utf8', withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(site.length + 1)
        .split(sep)
        .join('/'),
    )
    .sort();

const placeOf = (file: string): string => file.replace(/(^|\/)index\.html$/, '$1');

async function script(name: string): Promise<string> {
  const bundle = await rolldown({
    input: fileURLToPath(new URL(`../service-worker/${name}`, import.meta.url)),
    platform: 'browser',
    plugins: [words(languageHere()) as RolldownPluginOption],
    transform: { define: { 'process.env.NODE_ENV': '"production"', __LANGUAGE__: JSON.stringify(languageHere()) } },
    logLevel: 'warn',
  });
  const { output } = await bundle.generate({ format: 'iife', minify: true });
  await bundle.close();
  return output[0].code;
}
