// What a reader may see, what is new, which notices stand where, and which pages belong to which days.
import assert from 'node:assert/strict';
import { test, vi } from 'vitest';
import { aDay } from '../../days.ts';
import { newsOf } from '../../../src/lib/news.ts';
import { noticesAt, noticesFrom } from '../../../src/lib/notices.ts';
import { datedPages } from '../../../src/lib/now.ts';
import { furtherSources, reviewOf } from '../../../src/lib/page-context.ts';
import { picturesBeside } from '../../../src/lib/pictures.ts';
import { isPublished, withoutWithdrawn, withdrawalOf } from '../../../src/lib/published.ts';
import { pastReview } from '../../../src/lib/reviewed.ts';
import { almanacOf, district, entry, figure, row, source } from './almanac.ts';

for (const [fields, published, withdrawal] of [
  [{}, true, null],
  [{ draft: false }, true, null],
  [{ withdrawn: '2026-05-14, the test can mislead' }, false, { day: '2026-05-14', why: 'The test can mislead.' }],
  [{ withdrawn: '2026-05-14' }, false, { day: '2026-05-14', why: '.' }],
  [{ draft: true, withdrawn: '2026-05-14, why' }, false, null],
] as const)
  test(`${JSON.stringify(fields)} is ${published ? '' : 'not '}published`, () => {
    assert.equal(isPublished(fields), published);
    assert.deepEqual(withdrawalOf(fields), withdrawal);
  });

test('a draft is in no built site, and in the preview', () => {
  vi.stubEnv('DEV', false);
  assert.equal(isPublished({ draft: true }), false);
  vi.stubEnv('DEV', true);
  assert.equal(isPublished({ draft: true }), true);
  vi.unstubAllEnvs();
});

test('rows stand as long as their source does; a row without a source stands', () =>
  assert.deepEqual(withoutWithdrawn([{ source: 'a' }, { source: 'gone' }, {}], new Map([['a', 1]])), [{ source: 'a' }, {}]));

const history = [
  { changed: aDay('2026-02-01'), what: 'The level.' },
  { changed: aDay('2026-04-01'), what: 'The method.' },
];

test('news: changes, bulletins, notices and meetings that are called off, with a key for good, the newest first', () => {
  const news = newsOf(
    almanacOf({
      checklists: [entry('mite-day', { title: 'Mite day', history })],
      bulletins: [entry('varroa', { title: 'Varroa', summary: 'Mites.', checked: '2026-03-01' })],
      meetings: [entry('night', { title: 'Night', day: '2026-03-20', 'called-off': '2026-03-15, no power' })],
      notices: [entry('recall', { title: 'A recall', says: ['Stop.', 'Ask.'], from: '2026-04-01', until: '2026-04-09' })],
    }),
  );
  assert.deepEqual(
    news.map(({ key, place, day, words }) => [key, place, day, words]),
    [
      ['change/checklists/mite-day/2', 'lists/mite-day/', '2026-04-01', 'The method.'],
      ['notice/recall', 'notices/', '2026-04-01', 'Stop. Ask.'],
      ['called-off/night', 'meetings/night/', '2026-03-15', 'No power.'],
      ['bulletin/varroa', 'pests/varroa/', '2026-03-01', 'Mites.'],
      ['change/checklists/mite-day/1', 'lists/mite-day/', '2026-02-01', 'The level.'],
    ],
  );
});

const notice = (id: string, until: string, other: object = {}) =>
  entry(id, { title: id, kind: 'recall', from: '2026-05-01', until, says: [], by: 'editor', ask: 'mentor', concerns: ['/pests/varroa/'], ...other }); // prettier-ignore
const notices = almanacOf({
  notices: [notice('past', '2026-05-09'), notice('last-day', '2026-05-10'), notice('one-day', '2026-05-01', { from: '2026-05-01' }), notice('here', '2026-06-01', { district: 'valley', concerns: ['every page'] })], // prettier-ignore
});

test('a notice whose last day is past is left out, and one of a district names it', () => {
  assert.deepEqual(noticesFrom(notices, '2026-05-10').map(({ id, kind, days, where }) => [id, kind, days, where]), [
    ['last-day', 'Recall', 'May\u00a01 to 10,\u00a02026', ''],
    ['here', 'Recall', 'May\u00a01 to June\u00a01,\u00a02026', 'The valley'],
  ]); // prettier-ignore
  assert.equal(noticesFrom(notices, '2026-05-01').find(({ id }) => id === 'one-day')?.days, 'May\u00a01,\u00a02026');
});

test('a page has the notices that concern it and those of every page', () => {
  const ids = (place: string): string[] => noticesAt(notices, place, '2026-05-10').map(({ id }) => id);
  assert.deepEqual(ids('/pests/varroa/'), ['last-day', 'here']);
  assert.deepEqual(ids('/pests/'), ['here']);
});

test('dated pages stand in the order of the main district’s year, lists before pests before know-how on one day', () => {
  const page = (title: string, when: string) => entry(title, { title, when, why: `Why ${title}.`, summary: 'In short.' });
  const pages = datedPages(
    almanacOf({
      seasons: [district('valley'), district('hill', { 'main-flow': '05-30' })],
      checklists: [page('flow', 'in main flow')],
      bulletins: [page('moths', '20 May to 1 June'), page('always', 'any time')],
      articles: [page('early', '1 February'), entry('short', { title: 'short', when: '20 May', summary: 'In short.' })],
    }),
    '/club/',
  );
  assert.deepEqual(
    pages.map(({ href, why, windows }) => [href, why, windows.map(({ district: id, window }) => `${id} ${window.from}`).join()]),
    [
      ['/club/know-how/early/', 'Why early.', 'valley 02-01,hill 02-01'],
      ['/club/lists/flow/', 'Why flow.', 'valley 05-20,hill 05-30'],
      ['/club/pests/moths/', 'Why moths.', 'valley 05-20,hill 05-20'],
      ['/club/know-how/short/', 'In short.', 'valley 05-20,hill 05-20'],
    ],
  );
});

test('past review are pages and figures whose next check lies before the day', () => {
  const page = (title: string, next: string) => entry(title, { title, 'next-check': next, by: 'editor' });
  const almanac = almanacOf({
    checklists: [page('late', '2026-04-30'), page('today', '2026-05-01')],
    forage: [page('plum', '2025-01-01')],
    figures: { level: figure([row('a', { value: 1 })], { title: 'Level', 'next-check': '2026-01-01' }) },
  });
  assert.deepEqual(pastReview(almanac, '2026-05-01').map(({ title, next }) => [title, next]), [
    ['late', '2026-04-30'],
    ['plum', '2025-01-01'],
    ['Level', '2026-01-01'],
  ]); // prettier-ignore
});

test('a meeting may have no review, or only what changed', () => {
  assert.equal(reviewOf({}), undefined);
  const review = reviewOf({ history })!;
  assert.deepEqual([review.checked, review.next, review.by, review.history.length], [undefined, undefined, undefined, 2]);
});

test('the review of a page in words, with its history as written', () => {
  const review = reviewOf({ checked: aDay('2026-01-10'), 'next-check': aDay('2027-01-10'), by: 'the editor', history })!;
  assert.deepEqual([review.checked, review.next, review.nextDay, review.by], ['January\u00a010,\u00a02026', 'January\u00a010,\u00a02027', '2027-01-10', 'the editor']); // prettier-ignore
  assert.deepEqual(review.history, [
    { day: 'February\u00a01,\u00a02026', what: 'The level.' },
    { day: 'April\u00a01,\u00a02026', what: 'The method.' },
  ]);
});

test('further sources are those that are still there', () =>
  assert.deepEqual(furtherSources(almanacOf({ sources: { a: source('A university') } }), ['gone', 'a']), [
    { words: 'A university', isHidden: true },
  ]));

test('a picture is found beside the pages of its own collection only', () => {
  const almanac = almanacOf({ pictures: { 'articles/./hive.jpg': { files: [] } } });
  assert.deepEqual(picturesBeside(almanac, 'articles').picture('./hive.jpg'), { files: [] });
  assert.equal(picturesBeside(almanac, 'bulletins').picture('./hive.jpg'), null);
});
