// Files that a build publishes besides its pages, compared with the content.
import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, test } from 'vitest';
import { gzipSync } from 'node:zlib';
import { strFromU8, unzipSync } from 'fflate';
import ICAL from 'ical.js';
import { formatDay } from '../../shared/days/show-day.ts';
import type { EditionRecord } from '../../src/integration/edition-record.ts';
import { readFolder } from '../../src/source/folder.ts';
import { PAGEFIND_FOLDER, WORDS } from '../../shared/words/search-files.ts';
import { projectFolder } from '../../src/cli/paths.ts';
import { builtDemo, builtFixture, type Built } from '../setup/built-site.ts';
import { recordsIn } from '../e2e/search-engine.ts';

type MeetingFields = {
  title: string;
  place: string;
  day: string;
  'last-day'?: string;
  start?: string;
  finish?: string;
  address?: string;
  'called-off'?: string;
  draft?: boolean;
  history?: unknown[];
};

let demo: Built;
beforeAll(async () => {
  demo = await builtDemo();
});

for (const club of ['demo', 'southern', 'sub-folder', 'hostile']) {
  test(`club.ics of ${club} contains exactly the meetings of the content, event by event`, async () => {
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
      summary: `${meeting['called-off'] ? 'Called off: ' : ''}${meeting.title}`,
      location: [meeting.place, meeting.address].filter(Boolean).join(', '),
      start: meeting.start ? `${meeting.day}T${meeting.start}:00 ${zone}` : meeting.day,
      end: meeting.finish ? `${meeting['last-day'] ?? meeting.day}T${meeting.finish}:00 ${zone}` : null,
      sequence: 2 * (meeting.history?.length ?? 0) + (meeting['called-off'] ? 1 : 0),
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

test('the file that pages hand over to the integration is not published', () =>
  assert.ok(!readdirSync(demo.folder).includes('almanac.json')));

test('nothing of the preview is in a built site', () => {
  const texts = readdirSync(demo.folder, { recursive: true, encoding: 'utf8' }).filter((file) => /\.(?:html|js|css)$/.test(file));
  assert.ok(texts.length > 100);
  for (const file of texts)
    assert.doesNotMatch(readFileSync(join(demo.folder, file), 'utf8'), /almanac-preview|data-written|preview-from/, file);
});

test('edition.json names every page except the 404 page by its path', () => {
  const record = JSON.parse(demo.read('edition.json')) as EditionRecord;
  assert.deepEqual(
    Object.keys(record.pages).sort(),
    demo.pages
      .filter((page) => !page.endsWith('404.html'))
      .map((page) => page.slice(demo.base.length))
      .sort(),
  );
  // The day and the mark, as every page names its edition on the screen and on paper.
  assert.equal(record.mark, record.fingerprint.slice(0, 6));
  const named = `dition of ${formatDay(record.day, 'en-US')}\u00a0(${record.mark})`;
  for (const path of ['index.html', 'about/index.html', 'card/index.html', 'handbook.html', '404.html'])
    assert.ok(
      demo
        .read(path)
        .replace(/<\/?time[^>]*>/g, '')
        .replaceAll('&nbsp;', '\u00a0')
        .includes(named),
      path,
    );
  assert.ok(demo.read('index.html').includes(`${named}"`), 'the foot of each printed sheet');
  assert.equal(record.pages['pests/varroa/']!.title, 'Varroa');
  assert.equal(
    new Set(Object.values(record.pages).map(({ sha256 }) => sha256)).size,
    Object.keys(record.pages).length,
    'two pages have one text',
  );
});

test('without a web address there is no sitemap, and a demonstration is closed to robots', () => {
  assert.ok(!readdirSync(demo.folder).includes('sitemap.xml'));
  assert.equal(demo.read('robots.txt'), 'User-agent: *\nDisallow: /\n');
});

test('search contains the text of each page and nothing from its sidebar', () => {
  const records = recordsIn(demo.folder);
  assert.ok(records.length > 300, `${records.length} records`);
  assert.equal(new Set(records.map(({ place }) => place)).size, records.length);
  for (const { place, title, text } of records) {
    assert.ok(title !== '' && (text !== '' || /^(words|reading)\//.test(place)), `${place}: "${title}", "${text}"`);
    assert.ok(!/Sources by number|Last checked/.test(text), `${place} holds its margin`);
    assert.ok(!text.includes('Emergency: Call'), `${place} holds the head of the leaf`);
  }
});

// Pagefind does not document this setting. A new version that ignored it would fetch pieces of 20 kB.
test('search fetches small files: pieces of the index under 7 kB, texts under 8 kB, words under 20 kB; its folder names the version', () => {
  const folder = join(demo.folder, PAGEFIND_FOLDER);
  const large = (name: string, most: number): string[] =>
    readdirSync(join(folder, name)).filter((file) => statSync(join(folder, name, file)).size > most);
  assert.deepEqual([...large('index', 7000), ...large('fragment', 8000)], []);
  assert.ok(readdirSync(join(folder, 'index')).length > 50);
  assert.ok(gzipSync(demo.read(WORDS), { level: 9 }).length < 20_000);
  assert.deepEqual(
    readdirSync(folder).map((name) => name.replace(/_\w+/, '')),
    // Pages in another language have an index of their own, with the same program.
    ['es', 'fragment', 'index', 'pagefind-entry.json', 'pagefind.en.pf_meta', 'pagefind.js', 'wasm.en.pagefind'],
  );
  const { version } = JSON.parse(demo.read(`${PAGEFIND_FOLDER}pagefind-entry.json`)) as { version: string };
  const { dependencies } = JSON.parse(readFileSync(join(projectFolder, 'package.json'), 'utf8')) as {
    dependencies: Record<string, string>;
  };
  assert.deepEqual([PAGEFIND_FOLDER, dependencies.pagefind], [`pagefind-${version}/`, version]);
});

test('no file of the site contains a draft', async () => {
  const { folder, content } = await builtFixture('hostile');
  const drafts = readFolder(content).entries.filter((entry) => (entry.fields.value as { draft?: boolean }).draft === true);
  const titles = drafts
    .map((entry) => (entry.fields.value as { title?: string; word?: string }).title ?? (entry.fields.value as { word?: string }).word!)
    .filter(Boolean);
  assert.ok(titles.length > 0, 'the fixture holds drafts');
  for (const { place, title, text } of recordsIn(folder))
    for (const draft of titles) assert.ok(!`${title} ${text}`.includes(draft), `${draft} in the record of ${place}`);
  for (const name of ['club.ics', WORDS, 'edition.json', 'handbook.html'])
    for (const title of titles) assert.ok(!readFileSync(join(folder, name), 'utf8').includes(title), `${title} in ${name}`);
  const leaves = Object.entries(unzipSync(readFileSync(join(folder, 'handbook.epub'))));
  assert.ok(leaves.length > 20);
  for (const [name, bytes] of leaves) for (const title of titles) assert.ok(!strFromU8(bytes).includes(title), `${title} in ${name}`);
});

test("a club's own file is published unchanged, listed on More, linked from a page, searched, recorded, and saved offline", () => {
  const path = 'files/membership-form.pdf';
  const bytes = readFileSync(join(demo.folder, path));
  assert.deepEqual(bytes, readFileSync(join(demo.content, path)));
  assert.match(
    demo.read('club/index.html'),
    new RegExp(`id="files"[\\s\\S]*href="/${path}"[\\s\\S]*Membership form[\\s\\S]*PDF, ${Math.ceil(bytes.length / 1000)} kB`),
  );
  assert.match(demo.read('know-how/association/index.html'), new RegExp(`href="/${path}"`));
  assert.match(demo.read('worker.js'), new RegExp(`\\["${path}","[A-Za-z0-9+/]+="\\]`));
  const { files } = JSON.parse(demo.read('edition.json')) as EditionRecord;
  const sha256 = createHash('sha256').update(bytes).digest('hex');
  assert.deepEqual(files, { [path]: { title: 'Membership form (PDF)', sha256 } }, 'the next edition can tell whether it changed');
  const record = recordsIn(demo.folder).find(({ place }) => place === 'club/#file-membership-form')!;
  assert.equal(record.title, 'Membership form');
  assert.match(record.text, /^Print it, fill it in, .*PDF, /);
  assert.deepEqual(readdirSync(join(demo.folder, 'files')), ['membership-form.pdf'], 'its description is not published');
});
