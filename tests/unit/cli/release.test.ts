// What a release contains: every file that its commands and pages import, the books and the demo club, and no test. Nothing is installed.
import assert from 'node:assert/strict';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, posix } from 'node:path';
import { test } from 'vitest';
import { err, ok } from '../../../shared/result.ts';
import { releaseFiles, releaseManifest } from '../../../scripts/pack.mjs';
import { clubNear } from '../../../src/cli/club-near.ts';
import { chosenOutput } from '../../../src/cli/output-folder.ts';
import { projectFolder } from '../../../src/cli/paths.ts';
import { files, importsOf, isCode, read } from '../../architecture/tree.ts';

const packed = new Set(releaseFiles());
const manifest = JSON.parse(read('package.json'));
const lock = JSON.parse(read('package-lock.json'));
const code = [...packed].filter(isCode);
const imports = code.flatMap((path) => importsOf(path).map((each) => ({ path, ...each })));

test('every file that a packed file imports is packed', () => {
  const addresses = code.flatMap((path) =>
    [...read(path).matchAll(/new URL\('(\.[^']+)', import\.meta\.url\)/g)].map(([, from]) => ({
      path,
      from: from!,
      to: posix.normalize(posix.join(posix.dirname(path), from!)),
    })),
  );
  const isThere = (to: string): boolean => packed.has(to) || [...packed].some((path) => path.startsWith(`${to.replace(/\/$/, '')}/`));
  const local = [...imports, ...addresses].filter(({ from }) => from.startsWith('.'));
  assert.ok(local.length > 1000, `${local.length} imports`);
  // The launcher's folder for a newer Node, the file that marks a copy, and the project itself belong to a clone or to the copy.
  const ofPlace = new Set(['../', '../../', 'newer-node/', '../installed-from.txt', './']);
  assert.deepEqual(
    local.filter(({ from, to }) => !ofPlace.has(from) && !isThere(to)),
    [],
  );
  for (const name of ['start', 'dev', 'build', 'check', 'review', 'overview', 'base', 'withdraw', 'new'])
    assert.ok(packed.has(`src/cli/${name}.ts`), name);
});

test('every package that a packed file imports is a dependency, not one for developers', () => {
  const named = imports
    .filter(({ typeOnly }) => !typeOnly)
    .map(({ from }) => /^(?:@[^/]+\/)?[^/]+/.exec(from)![0])
    .filter((name) => !/^[.?]|^(?:node|astro|virtual):/.test(name));
  const wanted = [...new Set(named)].sort();
  assert.ok(wanted.includes('astro') && wanted.includes('sharp'));
  assert.deepEqual(
    wanted.filter((name) => !(name in manifest.dependencies)),
    [],
  );
});

test('books, demo club, public files and guide are packed whole, and nothing else is', () => {
  for (const folder of ['content', 'public', 'shared', 'docs/guide', 'docs/club-repository'])
    assert.deepEqual(
      files(folder).filter((path) => !packed.has(path)),
      [],
      folder,
    );
  assert.deepEqual(
    [...packed].filter(
      (path) =>
        !/^(content|docs|public|scripts|shared|src)\/|^(README|CHANGELOG)\.md$|^(astro\.config\.mjs|(package|tsconfig)\.json)$/.test(path),
    ),
    [],
  );
  assert.deepEqual(
    [...packed].filter((path) => /(^|\/)(tests|node_modules|dist|\.almanac)\//.test(path) || /\.(test|spec)\.ts$/.test(path)),
    [],
  );
});

test('a release is small: 4.3 MB on 29 November 2026, with its Spanish texts, unpacked and without its packages', () => {
  const bytes = [...packed].reduce((sum, path) => sum + statSync(join(projectFolder, path)).size, 0);
  assert.ok(bytes > 2_000_000 && bytes < 5_000_000, `${bytes} bytes in ${packed.size} files`);
});

test('its package.json names every package in the version of the lock file', () => {
  const { dependencies, optionalDependencies, devDependencies, scripts, bin, engines } = releaseManifest(manifest, lock) as Record<
    string,
    any
  >;
  assert.deepEqual([devDependencies, scripts, engines], [undefined, undefined, { node: '>=22.22' }]);
  assert.ok(packed.has(bin['association-almanac']));
  for (const [name, version] of Object.entries({ ...dependencies, ...optionalDependencies })) {
    assert.match(String(version), /^\d+\.\d+\.\d+/, name);
    assert.equal(version, lock.packages[`node_modules/${name}`].version, name);
  }
  // What they need themselves is named too, so that npm has nothing to choose.
  assert.equal(dependencies.vite, lock.packages['node_modules/vite'].version);
  assert.ok('@img/sharp-linux-x64' in optionalDependencies && !('@img/sharp-linux-x64' in dependencies));
  for (const name of ['vitest', 'typescript', '@playwright/test']) assert.ok(!(name in dependencies), name);
});

const folder = (): string => mkdtempSync(join(tmpdir(), 'clubs-'));
const put = (path: string, text: string): void => {
  mkdirSync(join(path, '..'), { recursive: true });
  writeFileSync(path, text);
};

test("a club's folder is found where the person is, or inside, where there is only one", () => {
  const place = folder();
  assert.equal(clubNear(place), null);
  put(join(place, 'one', 'club.yaml'), 'id: one\n');
  put(join(place, 'node_modules', 'readme.txt'), '');
  assert.equal(clubNear(place), join(place, 'one'));
  assert.equal(clubNear(join(place, 'one')), join(place, 'one'));
  put(join(place, 'two', 'club.yaml'), 'id: two\n');
  assert.equal(clubNear(place), null);
});

test('without --out, the site of another club is not replaced', () => {
  const place = folder();
  const usual = join(place, 'dist');
  const content = join(place, 'one');
  put(join(content, 'club.yaml'), 'name: One\nid: "one"\n');
  const chosen = (out?: string) => chosenOutput({ content, out }, usual);
  assert.deepEqual(chosen(), ok(usual), 'there is no site yet');
  for (const own of ['{"club":"one"}', '{"day":"2026-04-18"}', 'not JSON']) {
    put(join(usual, 'edition.json'), own);
    assert.deepEqual(chosen(), ok(usual), own);
  }
  put(join(usual, 'edition.json'), '{"club":"two"}');
  assert.deepEqual(
    chosen(),
    err(
      `${usual} holds the site of another club, two. Nothing was written. For a second club, write a folder of its own: --out ${join(place, 'site-one')}. If "id:" in club.yaml was changed from two, write "id: two" again, because readers' ticks and calendars are filed under it. To replace that site all the same, write --out ${usual}.`,
    ),
  );
  assert.deepEqual(chosen(usual), ok(usual), 'the person named it');
  assert.ok(!existsSync(join(place, 'site-one')) && readFileSync(join(usual, 'edition.json'), 'utf8') === '{"club":"two"}');
});
