// changes.xml against RFC 4287: required elements of feed and entries, stable ids, text as text.
import assert from 'node:assert/strict';
import { test } from 'vitest';
import { changesFeed } from '../../../src/lib/feed.ts';
import { aDay } from '../../days.ts';

const club = {
  id: 'tamarack-county',
  name: 'Bees & <Friends>',
  almanac: 'The Almanac',
  language: 'en-US' as const,
};
const edition = aDay('2026-04-18');
const news = [
  { key: 'notice/one', title: 'Notice: "5 < 6" & more', words: 'Keep <3 hives & a note.', place: 'notices/', day: aDay('2026-05-01') },
  {
    key: 'change/bulletins/varroa/1',
    title: 'Changed: Varroa',
    words: 'The line is new.',
    place: 'pests/varroa/',
    day: aDay('2026-03-02'),
  },
];
const feed = changesFeed(club, news, edition, 'https://club.example/bees/');
const all = (text: string, tag: string): string[] =>
  [...text.matchAll(new RegExp(`<${tag}(?: [^>]*)?>([\\s\\S]*?)</${tag}>`, 'g'))].map(([, inside]) => inside!);

test('the feed has an id, a title and a date, and so has each entry (RFC 4287, 4.1.1 and 4.1.2)', () => {
  const entries = all(feed, 'entry');
  assert.equal(entries.length, 2);
  for (const part of [feed.replace(/<entry>[\s\S]*<\/entry>/, ''), ...entries])
    for (const tag of ['id', 'title', 'updated']) assert.equal(all(part, tag).length, 1, tag);
  for (const when of [...all(feed, 'updated'), ...all(feed, 'published')])
    assert.match(when, /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?Z$/, 'RFC 3339');
  for (const id of all(feed, 'id'))
    assert.match(id, /^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-5[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/, 'RFC 9562, version 5');
  assert.match(feed, /<link rel="self" href="https:\/\/club\.example\/bees\/changes\.xml"\/>/);
});

test('addresses are complete, and nothing is dated after the edition', () => {
  const [notice, change] = all(feed, 'entry');
  assert.match(notice!, /href="https:\/\/club\.example\/bees\/notices\/"/);
  assert.match(change!, /href="https:\/\/club\.example\/bees\/pests\/varroa\/"/);
  assert.match(all(notice!, 'updated')[0]!, /^2026-04-18T/);
  assert.match(all(change!, 'updated')[0]!, /^2026-03-02T/);
});

test('an id stays when the site moves, the words change and news comes before it', () => {
  const idOf = (text: string, title: string): string =>
    all(
      all(text, 'entry').find((entry) => entry.includes(title))!,
      'id',
    )[0]!;
  const later = changesFeed(
    club,
    [
      { ...news[0]!, key: 'notice/two', title: 'Another' },
      { ...news[1]!, words: 'Other words.' },
    ],
    aDay('2027-01-01'),
    'https://else.example/',
  );
  assert.equal(idOf(later, 'Changed: Varroa'), idOf(feed, 'Changed: Varroa'));
  assert.equal(new Set(all(feed, 'id')).size, 3);
  assert.notEqual(
    idOf(changesFeed({ ...club, id: 'other' }, news, edition, 'https://club.example/bees/'), 'Changed: Varroa'),
    idOf(feed, 'Changed: Varroa'),
  );
});

test('special characters in titles and words are text, never markup', () => {
  const text = (marked: string): string =>
    marked
      .replace(/^<!\[CDATA\[([\s\S]*)\]\]>$/, '$1')
      .replaceAll('&lt;', '<')
      .replaceAll('&gt;', '>')
      .replaceAll('&amp;', '&');
  const [notice] = all(feed, 'entry');
  assert.equal(text(all(notice!, 'title')[0]!), 'Notice: "5 < 6" & more');
  assert.equal(text(all(notice!, 'summary')[0]!), 'Keep <3 hives & a note.');
  assert.doesNotMatch(notice!, /<3|< 6/);
});
