// A page is parsed once: the compiler gets the tree that was checked, and the preview parses only the changed file.
import type { LoaderContext } from 'astro/loaders';
import assert from 'node:assert/strict';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, test, vi } from 'vitest';
import { entriesOf } from '../../../src/source/loader.ts';
import { mdxModules } from '../../../src/source/mdx-modules.ts';
import { openFolder } from '../../../src/source/open-folder.ts';
import { walk } from '../../../src/source/prose.ts';
import { goodClub } from '../../fixtures/invalid/cases.ts';
import { compiledModule, shownAsHtml } from '../components/compiled.ts';
import { books, edit, withClub } from './layered.ts';

const club = mkdtempSync(join(tmpdir(), 'modules-'));
cpSync(goodClub, club, { recursive: true });
afterAll(() => rmSync(club, { recursive: true, force: true }));
const REVIEW = 'checked: 2026-05-01\nnext-check: 2027-05-01\nby: mentor\n';
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

type Watched = { given: string[]; heard: ((path: string) => void)[] };

/** Fills stores as the preview does. `given` is what they were given, and `heard` what hears of a change. */
async function watched(directory: string): Promise<Watched> {
  const given: string[] = [];
  const heard: ((path: string) => void)[] = [];
  const stores = ['articles', 'words'].map((collection) => ({ collection, held: new Map<string, { digest: string }>() }));
  for (const { collection, held } of stores)
    await entriesOf(directory, collection, (text) => text).load({
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
  return { given, heard };
}

test('after a change the preview reads the folder once and updates what changed', async () => {
  const { given, heard } = await watched(club);
  assert.ok(given.length > 1);
  given.length = 0;
  writeFileSync(join(club, PAGE), readFileSync(join(club, PAGE), 'utf8').replace('Very cold', 'Ice-cold'));
  const before = openFolder(club);
  for (const hear of heard) hear(join(club, PAGE));
  await vi.waitFor(() => assert.deepEqual(given, ['articles/stings']));
  assert.notEqual(openFolder(club), before);
  const now = openFolder(club);
  for (const hear of heard) hear(join(`${club}-other`, PAGE));
  await new Promise((done) => setTimeout(done, 50));
  assert.equal(openFolder(club), now);
});

test("a change to a book's page shows in the preview of a club over it, below the words that the club added", async () => {
  const over = mkdtempSync(join(tmpdir(), 'books-'));
  const above = mkdtempSync(join(tmpdir(), 'above-'));
  const before = process.env.ALMANAC_BOOKS;
  try {
    cpSync(books, over, { recursive: true });
    const added = { 'articles/swarms.add.mdx': `---\n${REVIEW}---\nOurs hang in the lindens.\n` };
    withClub('US-OH', added, (directory) => cpSync(directory, above, { recursive: true }), over);
    process.env.ALMANAC_BOOKS = over;
    openFolder(above, true);
    const { given, heard } = await watched(above);
    const preview = mdxModules();
    preview.configResolved({ command: 'serve' });
    const address = '/somewhere/club-words/articles/swarms.mdx';
    assert.match(preview.load.handler(address), /A swarm hangs still\.[\s\S]*Ours hang in the lindens\./);
    const shown = await compiledModule(preview.load.handler(address), address);
    const from = [...shownAsHtml(shown).matchAll(/<(\w+)[^>]* data-written="([^"]+)"[^>]*>([^<]*)/g)].map(([, ...parts]) =>
      parts.join(' '),
    );
    assert.deepEqual(
      [from[0], from.at(-1)],
      [
        'p books/common/articles/swarms.mdx:13 A swarm hangs still. Leave it alone.',
        'p articles/swarms.add.mdx:6 Ours hang in the lindens.',
      ],
    );
    mdxModules();
    assert.ok(!shownAsHtml(await compiledModule(load.handler(address), address)).includes('data-written'), 'a build has none');
    preview.configResolved({ command: 'serve' });
    given.length = 0;
    edit(over, 'common/articles/swarms.mdx', 'A swarm hangs still.', 'A swarm hangs on a branch.');
    for (const hear of heard) hear(join(over, 'common/articles/swarms.mdx'));
    await vi.waitFor(() => assert.deepEqual(given, ['articles/swarms']));
    assert.match(preview.load.handler(address), /A swarm hangs on a branch\.[\s\S]*Ours hang in the lindens\./);
    const page = { url: address };
    const graph = {
      idToModuleMap: new Map([
        [address, page],
        ['/somewhere/club-words/articles/old-comb.mdx', { url: 'other' }],
      ]),
    };
    for (const file of [join(over, 'common/articles/swarms.mdx'), join(above, 'articles/swarms.add.mdx')])
      assert.deepEqual(preview.hotUpdate.call({ environment: { moduleGraph: graph } }, { file, modules: [] }), [page]);
  } finally {
    if (before === undefined) delete process.env.ALMANAC_BOOKS;
    else process.env.ALMANAC_BOOKS = before;
    for (const folder of [over, above]) rmSync(folder, { recursive: true, force: true });
  }
});
