// What a build publishes beside its pages, held against the content it was built from.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { before, test } from 'node:test';
import { gzipSync } from 'node:zlib';
import { strFromU8, unzipSync } from 'fflate';
import ICAL from 'ical.js';
import type { EditionRecord } from '../../src/publish/edition-record.ts';
import { readFolder } from '../../src/reader/folder.ts';
import { builtDemo, builtFixture, type Built } from '../site/built-site.ts';

type MeetingFields = {
  title: string;
  place: string;
  day: string;
  'last-day'?: string;
  start?: string;
  finish?: string;
  draft?: boolean;
  history?: unknown[];
};

let demo: Built;
before(async () => {
  demo = await builtDemo();
});

for (const club of ['demo', 'southern', 'sub-folder', 'hostile']) {
  test(`club.ics of ${club}: every meeting of the content and no other, event by event`, async () => {
    const { content, read } = club === 'demo' ? demo : await builtFixture(club);
    const folder = readFolder(content);
    const { id, 'time-zone': zone } = folder.club!.fields.value as { id: string; 'time-zone': string };
    const meetings = folder.entries
      .filter((entry) => entry.collection === 'meetings')
      .map((entry) => ({ id: entry.id, ...(entry.fields.value as MeetingFields) }))
      .filter(({ draft }) => draft !== true);
    assert.ok(meetings.length > 0);
    const calendar = new ICAL.Component(ICAL.parse(read('club.ics')));
    const events = calendar.getAllSubcomponents('vevent').map((event) => new ICAL.Event(event));
    const expected = meetings.map((meeting) => ({
      uid: `${meeting.id}@${id}`,
      summary: meeting.title,
      location: meeting.place,
      start: meeting.start ? `${meeting.day}T${meeting.start}:00 ${zone}` : meeting.day,
      end: meeting.finish ? `${meeting['last-day'] ?? meeting.day}T${meeting.finish}:00 ${zone}` : null,
      sequence: meeting.history?.length ?? 0,
    }));
    const seen = events.map((event) => ({
      uid: event.uid,
      summary: event.summary,
      location: event.location,
      start: event.startDate.isDate
        ? event.startDate.toString()
        : `${event.startDate} ${event.component.getFirstProperty('dtstart')!.getParameter('tzid')}`,
      end:
        event.startDate.isDate || !event.component.getFirstProperty('dtend')
          ? null
          : `${event.endDate} ${event.component.getFirstProperty('dtend')!.getParameter('tzid')}`,
      sequence: event.sequence,
    }));
    const inOrder = <T extends { uid: string }>(list: T[]): T[] => list.sort((a, b) => (a.uid < b.uid ? -1 : 1));
    assert.deepEqual(inOrder(seen), inOrder(expected));
    const zones = calendar.getAllSubcomponents('vtimezone').map((each) => each.getFirstPropertyValue('tzid'));
    assert.deepEqual(zones, expected.some(({ start }) => start.includes(' ')) ? [zone] : []);
  });
}

test('what was handed over for publishing is published nowhere', () => assert.ok(!readdirSync(demo.folder).includes('almanac.json')));

test('edition.json names every page but the one of missing addresses, by its place', () => {
  const record = JSON.parse(demo.read('edition.json')) as EditionRecord;
  assert.deepEqual(
    Object.keys(record.pages).sort(),
    demo.pages
      .filter((page) => !page.endsWith('404.html'))
      .map((page) => page.slice(demo.base.length))
      .sort(),
  );
  assert.equal(record.pages['pests/varroa/']!.title, 'Varroa');
  assert.equal(
    new Set(Object.values(record.pages).map(({ sha256 }) => sha256)).size,
    Object.keys(record.pages).length,
    'two pages have one text',
  );
});

test('without a web address there is no sitemap; a demonstration is closed to robots', () => {
  assert.ok(!readdirSync(demo.folder).includes('sitemap.xml'));
  assert.equal(demo.read('robots.txt'), 'User-agent: *\nDisallow: /\n');
});

test('search keeps the text of each page, and nothing that stands beside the text', () => {
  const folder = join(demo.folder, 'search', 'text');
  const texts = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.json'))
    .map(
      (name) => [name, Object.values(JSON.parse(readFileSync(join(folder, name), 'utf8')) as Record<string, string>).join(' ')] as const,
    );
  assert.ok(texts.length > 50, `${texts.length} pages`);
  for (const [name, text] of texts) {
    assert.ok(!/Sources by number|Whom to ask next|Last checked/.test(text), `${name} holds its margin`);
    assert.ok(!text.includes('Someone is unwell: ring'), `${name} holds the head of the leaf`);
  }
});

test('search asks for little: its first file under 22 kB on the wire, those of words under 25 kB each', () => {
  const wire = (name: string): number => gzipSync(demo.read(`search/${name}`), { level: 9 }).length;
  const files = readdirSync(join(demo.folder, 'search'))
    .filter((name) => name.endsWith('.json'))
    .sort();
  assert.deepEqual(files, ['index.json', 'pages-1.json', 'pages-2.json']);
  assert.ok(wire('index.json') < 22_000, `${wire('index.json')} B`);
  for (const name of files.slice(1)) assert.ok(wire(name) < 25_000, `${name}: ${wire(name)} B`);
});

test('a draft is in no file of the site', async () => {
  const { folder, content } = await builtFixture('hostile');
  const drafts = readFolder(content).entries.filter((entry) => (entry.fields.value as { draft?: boolean }).draft === true);
  const titles = drafts
    .map((entry) => (entry.fields.value as { title?: string; word?: string }).title ?? (entry.fields.value as { word?: string }).word!)
    .filter(Boolean);
  assert.ok(titles.length > 0, 'the fixture holds drafts');
  for (const name of ['club.ics', 'search/index.json', 'edition.json', 'handbook.html'])
    for (const title of titles) assert.ok(!readFileSync(join(folder, name), 'utf8').includes(title), `${title} in ${name}`);
  const leaves = Object.entries(unzipSync(readFileSync(join(folder, 'handbook.epub'))));
  assert.ok(leaves.length > 20);
  for (const [name, bytes] of leaves) for (const title of titles) assert.ok(!strFromU8(bytes).includes(title), `${title} in ${name}`);
});
