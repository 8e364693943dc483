/*
 * A built and served almanac for the tests. The first process that needs a site builds it as its webmaster would
 * (`node src/cli/build.ts`); the others wait and use the same folder. The folder's name holds the fingerprint of everything
 * that the build reads, so it never changes while a test reads it.
 *
 *   const site = await demoSite();            // or demoSite({ base: '/club/' }), fixtureSite('southern')
 *   afterAll(() => site.close());
 *
 * Browser tests take the demo club from the fixture `demo` of tests/e2e/fixtures.ts instead.
 */
import { spawn } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { sourceFingerprint } from '../../src/integration/fingerprint.ts';
import { withLock } from '../../src/cli/lock.ts';
import { projectFolder } from '../../src/cli/paths.ts';
import { serve } from '../../src/cli/serve.ts';

/** What a build was given besides the content. */
export interface Published {
  /** Begins and ends with a slash. */
  base?: string;
  /** The web site's address, as in https://club.example. */
  site?: string;
  /** The day of the edition; without it the newest day of the content. */
  edition?: string;
}

/** A folder of built files. */
export interface Built {
  folder: string;
  /** The content it was built from. */
  content: string;
  base: string;
  /** Addresses of all pages, from the files that are there: the base and what follows, such as `/club/year/` and `/club/404.html`. */
  pages: string[];
  /** The text of a built file, by its path in the folder. */
  read: (path: string) => string;
}

export interface Site extends Built {
  /** The first page, with its last slash: `http://127.0.0.1:40123/club/`. */
  address: string;
  /** The whole address of a page of `pages`. */
  at: (page: string) => string;
  close: () => Promise<void>;
}

export interface Ran {
  code: number | null;
  output: string;
}

/** The demo club, built and served. */
export const demoSite = (published: Published = {}): Promise<Site> =>
  served(join(projectFolder, 'content', 'demo-club'), 'demo', published);

/** A club of tests/fixtures, built and served. `sub-folder` is published under /club/ unless told otherwise. */
export const fixtureSite = (name: string, published: Published = ownPlace(name)): Promise<Site> =>
  served(fixtureFolder(name), name, published);

/** The same as files only. */
export const builtDemo = (published: Published = {}): Promise<Built> =>
  built(join(projectFolder, 'content', 'demo-club'), 'demo', published);
export const builtFixture = (name: string, published: Published = ownPlace(name)): Promise<Built> =>
  built(fixtureFolder(name), name, published);

/** Any content folder, as files only. */
export const builtFolder = (content: string, name: string, published: Published = {}): Promise<Built> => built(content, name, published);

/** Any content folder, built and served. */
export const servedFolder = (content: string, name: string, published: Published = {}): Promise<Site> => served(content, name, published);

/** Where a club of tests/fixtures lies. */
export const fixtureFolder = (name: string): string => join(projectFolder, 'tests', 'fixtures', 'clubs', name);

const ownPlace = (name: string): Published => (name === 'sub-folder' ? { base: '/club/' } : {});

/** Runs one of the desk's commands as its user does; `environment` is added to ours. */
export async function runDesk(command: string, typed: readonly string[], environment: NodeJS.ProcessEnv = {}): Promise<Ran> {
  // What the test runner tells its own processes is not for this one.
  const { NODE_ENV: _, SOURCE_DATE_EPOCH: __, ...ours } = process.env;
  const child = spawn(process.execPath, [join(projectFolder, 'src', 'cli', `${command}.ts`), ...typed], {
    cwd: projectFolder,
    env: { ...ours, ...environment },
  });
  let output = '';
  for (const stream of [child.stdout, child.stderr]) stream.setEncoding('utf8').on('data', (text: string) => (output += text));
  const code = await new Promise<number | null>((resolve, reject) => child.on('error', reject).on('close', resolve));
  return { code, output };
}

async function served(content: string, name: string, published: Published): Promise<Site> {
  const made = await built(content, name, published);
  const { address, close } = await serve({ folder: made.folder, base: made.base, port: 0, gzip: true });
  const { origin } = new URL(address);
  return { ...made, address, at: (page) => origin + page, close };
}

const kept = join(projectFolder, '.almanac', 'tests');

async function built(content: string, name: string, { base = '/', site, edition }: Published): Promise<Built> {
  const kind = [name, ...base.split('/').filter(Boolean), ...(site ? [new URL(site).host] : []), ...(edition ? [edition] : [])].join('-');
  const folder = join(kept, `${kind}.${sourceFingerprint(projectFolder, content).slice(0, 16)}`);
  await withLock(join(kept, `${kind}.lock`), async () => {
    if (existsSync(folder)) return;
    const out = `${folder}.new-${process.pid}`;
    const { code, output } = await runDesk('build', [
      '--content',
      content,
      '--out',
      out,
      '--base',
      base,
      ...(site ? ['--site', site] : []),
      ...(edition ? ['--edition', edition] : []),
    ]);
    if (code !== 0) throw new Error(`${name} was not built:\n${output}`);
    renameSync(out, folder);
    removeOld(kind, folder);
  });
  writeFileSync(`${folder}.used`, '');
  return { folder, content, base, pages: pagesIn(folder, base), read: (path) => readFileSync(join(folder, path), 'utf8') };
}

function pagesIn(folder: string, base: string): string[] {
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((path) => path.split(sep).join('/'));
  // The book in one file is no page of the site.
  const pages = files.filter((path) => path.endsWith('.html') && path !== 'handbook.html').sort();
  // Old addresses lead on at once: nobody stays there to look.
  const stay = pages.filter((path) => !readFileSync(join(folder, path), 'utf8').includes('http-equiv="refresh"'));
  if (!pages.includes('index.html') || pages.length < 20) throw new Error(`${folder} holds ${pages.length} pages: too few for an almanac`);
  return stay.map((path) => base + path.replace(/(^|\/)index\.html$/, '$1'));
}

// By the disk's own times, so that no clock is asked.
const lastUse = (folder: string): number =>
  Math.max(...[folder, `${folder}.used`].map((path) => statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0));

// Sites of earlier states of the tree go, unless another run may still be reading them.
function removeOld(kind: string, folder: string): void {
  for (const name of readdirSync(kept)) {
    const other = join(kept, name);
    if (!name.startsWith(`${kind}.`) || /\.(used|lock)$/.test(name) || other === folder) continue;
    const unused = lastUse(folder) - lastUse(other);
    if (unused > 30 * 60_000) for (const left of [other, `${other}.used`]) rmSync(left, { recursive: true, force: true });
  }
}
