// The words of a page: notes numbered in reading order, texts of local/ with their sources, and field tests of other pages.
import assert from 'node:assert/strict';
import { afterEach, beforeEach, test, vi } from 'vitest';
import { renderFieldTests, renderWords } from '../../../src/lib/render-words.ts';
import { almanacOf, entry, figure, row, source } from './almanac.ts';

type Ahead = { figures?: object[]; testFigures?: object[]; locals?: object[]; parts?: object[] };
const entries = vi.hoisted(() => new Map<string, { data: object; ahead: object }>());
vi.mock('astro:content', () => ({
  getEntry: async (collection: string, id: string) => entries.get(`${collection}/${id}`),
  render: async (held: { ahead: object }) => ({ Content: held, remarkPluginFrontmatter: held.ahead }),
}));

const add = (name: string, ahead: Ahead, data: object = {}) => {
  const held = { data, ahead: { figures: [], testFigures: [], locals: [], parts: [], ...ahead } };
  entries.set(name, held);
  return held;
};
beforeEach(() => {
  vi.stubEnv('DEV', false);
  entries.clear();
});
afterEach(() => vi.unstubAllEnvs());

// A page is drawn here without a build, so its edition is of the first day of 1970.
const of = (from: string) => figure([row('state', { value: 4, from: '1960-01-01', source: from })]);
const almanac = almanacOf({
  figures: { own: of('a'), local: of('b'), other: of('c') },
  sources: { a: source('A'), b: source('B'), c: source('C') },
});
const page = entry('page', {});

test('notes are numbered in reading order, also those of texts of the land, whose sources are the page’s too', async () => {
  const parts = [{ id: 'one', words: 'One', steps: 0 }];
  add('articles/page', { figures: [{ id: 'own' }], locals: ['law', 'taken-down', 'draft', 'gone'].map((id) => ({ id, after: 1 })), parts });
  const law = add('local/law', { figures: [{ id: 'local' }] }, { sources: ['statute'] });
  add('local/taken-down', {}, { sources: ['x'], withdrawn: '2026-05-14, it is repealed' });
  add('local/draft', {}, { sources: ['x'], draft: true });
  const words = await renderWords(almanac, 'articles', page);
  assert.deepEqual(words.on.notes.map(({ number, figure: shown }) => [number, shown]), [[1, 'own'], [2, 'local']]); // prettier-ignore
  assert.deepEqual([words.on.sources, words.parts], [['statute'], parts]);
  assert.deepEqual(
    ['law', 'taken-down', 'draft', 'gone'].map((local) => words.context.local(local)),
    [law, null, null, null],
  );
});

test('an entry that the lists name and that is not there is our mistake', () =>
  assert.rejects(renderWords(almanac, 'articles', page), /renderWords: needs an entry articles\/page/));

test('of a bulletin whose field test is shown, only the figures of the test are', async () => {
  add('articles/page', {});
  add('bulletins/varroa', { figures: [{ id: 'other' }], testFigures: [{ id: 'own' }] });
  const { on, context } = await renderWords(almanac, 'articles', page);
  const { tests, context: within } = await renderFieldTests(['varroa'], context);
  assert.deepEqual([...tests.keys()], ['varroa']);
  assert.equal(within.figure('own')?.main, '4\u00a0days');
  assert.equal(within.figure('other'), null);
  assert.deepEqual(on.notes.map(({ figure: shown }) => shown), ['own']); // prettier-ignore
});
