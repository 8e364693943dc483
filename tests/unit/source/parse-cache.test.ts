// With the cache of parsed files a folder reads as without it, and each change of a file is seen.
import assert from 'node:assert/strict';
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, statSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, test } from 'vitest';
import { checkFolder, hintsOf } from '../../../src/checks/check.ts';
import { readFolder, type Folder } from '../../../src/source/folder.ts';
import { formatDiagnostic } from '../../../src/source/diagnostic.ts';
import { readFolderCached } from '../../../src/source/parse-cache.ts';
import { cases, goodClub, withChanges } from '../../fixtures/invalid/cases.ts';
import { books, edit, withClub } from './layered.ts';

let directory: string;
let cache: string;
beforeEach(() => {
  directory = mkdtempSync(join(tmpdir(), 'parsed-'));
  cache = join(directory, 'parsed.bin');
});
afterEach(() => rmSync(directory, { recursive: true, force: true }));

const reported = (folder: Folder): string[] => [...checkFolder(folder), ...hintsOf(folder)].map(formatDiagnostic);

/** What a folder holds, with the place of every field at the top of its file. */
const shown = ({ parsed, ...folder }: Folder): unknown =>
  JSON.parse(
    JSON.stringify({ ...folder, files: parsed.size }, (name, value: unknown) => {
      if (name !== 'fields') return value;
      const { value: values, cut, placeOf, placeOfName } = value as Folder['entries'][number]['fields'];
      const places = Object.keys(values ?? {}).map((key) => [placeOf([key]), placeOfName([key])]);
      return { values, cut, places };
    }),
  );

test('a folder from the cache is the folder that was parsed, with every place', () =>
  withClub('US-OH', {}, (club) => {
    const parsed = shown(readFolder(club));
    assert.deepEqual(shown(readFolderCached(club, cache)), parsed);
    const written = statSync(cache).mtimeMs;
    const again = readFolderCached(club, cache);
    assert.deepEqual(shown(again), parsed);
    assert.equal(statSync(cache).mtimeMs, written, 'nothing had changed, and the cache was written again');
  }));

test('every fault of the cases is reported in the same words over a cache of the good club', () => {
  readFolderCached(goodClub, cache);
  // One of twenty-five, since each is read three times.
  const chosen = cases().filter((_, index) => index % 25 === 0);
  assert.ok(chosen.length > 20);
  for (const { name, changes } of chosen)
    withChanges(changes, (club) => {
      const expected = reported(readFolder(club));
      assert.deepEqual(reported(readFolderCached(club, cache)), expected, `${name}, first`);
      assert.deepEqual(reported(readFolderCached(club, cache)), expected, `${name}, again`);
    });
});

test('a changed page, a changed club.yaml and a changed book are seen at once, and so is the way back', () => {
  const over = join(directory, 'books');
  cpSync(books, over, { recursive: true });
  withClub(
    'US-OH',
    {},
    (club) => {
      const clean = reported(readFolderCached(club, cache));
      for (const [folder, path, from, to, fault] of [
        [club, 'words/brood.yaml', 'word: brood', 'word: 7', /^words\/brood\.yaml:1:7 field: word: found 7/m],
        [club, 'club.yaml', 'hemisphere: north', 'hemisphere: west', /^club\.yaml:\d+:\d+ field: hemisphere: found "west"/m],
        [over, 'common/articles/swarms.mdx', 'id="swarm-weight"', 'id="swarm-length"', /Gaps: figure swarm-length/],
      ] as const) {
        const state = (): string => {
          const read = readFolderCached(club, cache);
          return [...reported(read), `Gaps: ${read.gaps.join()}`].join('\n');
        };
        const before = readFileSync(join(folder, path));
        assert.doesNotMatch(state(), fault);
        edit(folder, path, from, to);
        assert.match(state(), fault);
        writeFileSync(join(folder, path), before);
        assert.doesNotMatch(state(), fault);
      }
      assert.deepEqual(reported(readFolderCached(club, cache)), clean);
    },
    over,
  );
});

test('a damaged cache is ignored and made anew', () => {
  readFolderCached(goodClub, cache);
  const whole = readFileSync(cache);
  const damages = [
    () => truncateSync(cache, whole.length >> 1),
    () => writeFileSync(cache, ''),
    () =>
      writeFileSync(
        cache,
        whole.map((byte, at) => (at === whole.length >> 1 ? byte ^ 1 : byte)),
      ),
    () => writeFileSync(cache, whole.with(0, whole[0]! ^ 1)),
  ];
  const parsed = shown(readFolder(goodClub));
  for (const damage of damages) {
    damage();
    assert.deepEqual(shown(readFolderCached(goodClub, cache)), parsed);
    assert.ok(readFileSync(cache).equals(whole));
  }
});

test('a cache that cannot be written changes nothing', () => {
  const parsed = shown(readFolder(goodClub));
  const below = join(goodClub, 'club.yaml', 'parsed.bin');
  assert.deepEqual(shown(readFolderCached(goodClub, below)), parsed);
  assert.ok(!existsSync(below));
});
