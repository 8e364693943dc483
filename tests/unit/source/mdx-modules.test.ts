// A page is parsed once: the compiler gets the tree that was checked, and the preview parses only the changed file.
import type { LoaderContext } from 'astro/loaders';
import assert from 'node:assert/strict';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, test } from 'vitest';
import { entriesOf } from '../../../src/source/loader.ts';
import { mdxModules } from '../../../src/source/mdx-modules.ts';
import { openFolder } from '../../../src/source/open-folder.ts';
import { walk } from '../../../src/source/prose.ts';
import { goodClub } from '../../fixtures/invalid/cases.ts';
import { compiledModule } from '../components/compiled.ts';

const club = mkdtempSync(join(tmpdir(), 'modules-'));
cpSync(goodClub, club, { recursive: true });
afterAll(() => rmSync(club, { recursive: true, force: true }));
const PAGE = 'articles/stings.mdx';
const ADDRESS = `/somewhere/club-words/${PAGE}`;
const { load, resolveId } = mdxModules();

test('the compiler gets a copy of the tree that was checked', async () => {
  const entry = openFolder(club, true).parsed.get(PAGE)!.entry!;
  const text = [...walk(entry.tree!)].find((node) => node.type === 'text')!;
  text.value = 'Only in the tree.';
  const before = structuredClone(entry.tree);
  assert.match((await compiledModule(load.handler(ADDRESS), ADDRESS)).code, /Only in the tree\./);
  assert.deepEqual(entry.tree, before);
});

test('words that are not in the folder are parsed', async () => {
  openFolder(club, true);
  assert.match((await compiledModule('a line\nOther *words*.', ADDRESS)).code, /Other /);
});

test("a page has an address wherever its club is, with Astro's query after it; a deleted one is named", () => {
  openFolder(club, true);
  for (const address of [ADDRESS, `${ADDRESS}?astroPropagatedAssets`, `C:\\site\\club-words\\articles\\stings.mdx`]) {
    assert.ok(resolveId.filter.id.test(address), address);
    assert.ok(load.handler(address).startsWith(`${PAGE}\n`), address);
  }
  for (const address of ['/club/articles/stings.mdx', '/club-words/stings.mdx', '/a/club-words/articles/stings.txt'])
    assert.ok(!resolveId.filter.id.test(address), address);
  assert.throws(() => load.handler('/a/club-words/articles/gone.mdx'), /articles\/gone\.mdx is not in the club's folder/);
});

test('after a change only its file is parsed again', () => {
  const before = openFolder(club, true);
  writeFileSync(join(club, PAGE), readFileSync(join(club, PAGE), 'utf8').replace('Cold water', 'Very cold water'));
  const now = openFolder(club, true);
  assert.ok(now.entries.length > 20);
  assert.deepEqual(
    now.entries.filter((entry) => entry.collection !== 'drawings' && !before.entries.includes(entry)).map(({ path }) => path),
    [PAGE],
  );
});

test('after a change the preview reads the folder once and updates what changed', async () => {
  const given: string[] = [];
  const heard: ((path: string) => void)[] = [];
  const stores = ['articles', 'words'].map((collection) => ({ collection, held: new Map<string, { digest: string }>() }));
  for (const { collection, held } of stores)
    await entriesOf(club, collection).load({
      store: {
        keys: () => [...held.keys()],
        get: (id: string) => held.get(id),
        set: (entry: { id: string; digest: string }) => (given.push(`${collection}/${entry.id}`), held.set(entry.id, entry)),
        delete: (id: string) => held.delete(id),
        clear: () => held.clear(),
      },
      parseData: async ({ data }: { data: unknown }) => data,
      watcher: { add: () => undefined, on: (event: string, hear: (path: string) => void) => event === 'change' && heard.push(hear) },
      logger: console,
    } as unknown as LoaderContext);
  assert.ok(given.length > 1);
  given.length = 0;
  writeFileSync(join(club, PAGE), readFileSync(join(club, PAGE), 'utf8').replace('Very cold', 'Ice-cold'));
  const before = openFolder(club);
  for (const hear of heard) hear(join(club, PAGE));
  await new Promise((done) => setTimeout(done, 50));
  assert.notEqual(openFolder(club), before);
  assert.deepEqual(given, ['articles/stings']);
  const now = openFolder(club);
  for (const hear of heard) hear(join(`${club}-other`, PAGE));
  await new Promise((done) => setTimeout(done, 50));
  assert.equal(openFolder(club), now);
});
