// The collections as pages get them: drafts left out, what was withdrawn in a list of its own, and one sorted order.
import assert from 'node:assert/strict';
import { afterEach, beforeEach, test, vi } from 'vitest';
import { readFolder } from '../../../src/source/folder.ts';
import { fixtureFolder } from '../../setup/built-site.ts';

type Entry = { id: string; data: any; body: string };
const collections = vi.hoisted(() => new Map<string, Entry[]>());
vi.mock('astro:content', () => ({ getCollection: async (name: string) => collections.get(name) ?? [] }));

const { club, entries } = readFolder(fixtureFolder('southern'));

beforeEach(() => {
  vi.stubEnv('DEV', false);
  vi.resetModules();
  collections.clear();
  for (const { collection, id, fields } of [club!, ...entries])
    collections.set(collection, [...(collections.get(collection) ?? []), { id, data: structuredClone(fields.value), body: '' }]);
});
afterEach(() => vi.unstubAllEnvs());

/** The module is loaded afresh for each test, as for a build. */
const opened = async () => (await import('../../../src/lib/content.ts')).getContent();
const add = (name: string, ...entries: [id: string, data: object][]) =>
  void collections.set(name, [...(collections.get(name) ?? []), ...entries.map(([id, data]) => ({ id, data, body: '' }))]);
const ids = (items: { id: string }[]): string[] => items.map(({ id }) => id);

test('a draft is in no list, and in the preview it is', async () => {
  add('reading', ['draft', { title: 'A draft', draft: true }]);
  assert.ok(!ids((await opened()).reading).includes('draft'));
  vi.stubEnv('DEV', true);
  assert.ok(ids((await opened()).reading).includes('draft'));
});

test('what was withdrawn leaves its list and keeps its address, its day and why', async () => {
  add('articles', ['old', { title: 'An old page', withdrawn: '2026-05-14, it can mislead', ask: 'mentor' }]);
  const { articles, withdrawn } = await opened();
  assert.ok(!ids(articles).includes('old'));
  assert.deepEqual(withdrawn.find(({ id }) => id === 'old'), {
    kind: 'articles', id: 'old', title: 'An old page', place: '/know-how/old/', day: '2026-05-14', why: 'It can mislead.', ask: 'mentor',
  }); // prettier-ignore
});

test('a row on a withdrawn source is gone, and a figure without a row with it', async () => {
  const row = { id: 'a', from: '2020-01-01', certainty: 'likely', place: 'Here' };
  add('sources', ['gone', { who: 'A paper', withdrawn: '2026-05-14, retracted' }], ['kept', { who: 'Another' }]);
  add('figures', ['whole', { title: 'W', unit: 'days', follows: 'a', rows: [{ ...row, value: 1, source: 'kept' }, { ...row, id: 'b', value: 2, source: 'gone' }] }], ['empty', { title: 'E', unit: 'days', follows: 'a', rows: [{ ...row, value: 1, source: 'gone' }] }]); // prettier-ignore
  const { figures } = await opened();
  assert.deepEqual(figures.get('whole')!.rows.map(({ id }) => id), ['a']); // prettier-ignore
  assert.equal(figures.has('empty'), false);
});

test('pages stand by title without regard to capitals, meetings by day and hour, and former addresses lead on', async () => {
  collections.delete('reading');
  collections.delete('meetings');
  add('reading', ['b', { title: 'bees' }], ['a', { title: 'Zinc' }], ['c', { title: 'Bees' }]);
  add('meetings', ['late', { title: 'L', day: '2026-05-16', start: '19:00', formerly: ['/meetings/evening/'] }], ['early', { title: 'E', day: '2026-05-16', start: '10:00' }], ['first', { title: 'F', day: '2026-05-01' }]); // prettier-ignore
  const { reading, meetings, moved } = await opened();
  assert.deepEqual(ids(reading), ['b', 'c', 'a']);
  assert.deepEqual(ids(meetings), ['first', 'early', 'late']);
  assert.deepEqual(moved.find(({ title }) => title === 'L'), { from: '/meetings/evening/', to: '/meetings/late/', title: 'L' }); // prettier-ignore
});

test('the collections are read once a build', async () => {
  const first = await opened();
  add('reading', ['new', { title: 'New' }]);
  assert.equal(await opened(), first);
});
