// What a webmaster is told of an edition: added, changed and gone pages, the paragraph for the letter, the bar.
import assert from 'node:assert/strict';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'vitest';
import { bar } from '../../../src/integration/progress.ts';
import { reportLines } from '../../../src/integration/report.ts';
import { formerEdition } from '../../../src/integration/former-edition.ts';
import { changesBetween, letterParagraph, readRecord } from '../../../src/integration/changes.ts';
import { aDay } from '../../days.ts';

const page = (title: string, sha256: string) => ({ title, sha256 });
const before = {
  day: aDay('2026-03-01'),
  fingerprint: 'a',
  pages: { 'pests/varroa/': page('Varroa', '1'), 'lists/old/': page('An old list', '2'), 'about/': page('About', '3') },
};
const now = {
  day: aDay('2026-04-18'),
  fingerprint: 'b',
  pages: { 'pests/varroa/': page('Varroa', '9'), 'lists/new/': page('A new list', '4'), 'about/': page('About', '3') },
};

test('pages are added, changed or removed by path and words', () => {
  assert.deepEqual(changesBetween(before, now), { added: ['A new list'], changed: ['Varroa'], gone: ['An old list'] });
  assert.deepEqual(changesBetween(now, now), { added: [], changed: [], gone: [] });
});

test("a club's own files are compared by their bytes, unless the former record is of a release without files", () => {
  const withFiles = (record: typeof now, files: Record<string, { title: string; sha256: string }>) => ({ ...record, files });
  const form = page('Form (PDF)', '5');
  const held = withFiles(now, { 'files/form.pdf': form, 'files/rules.pdf': page('Rules (PDF)', '6') });
  const next = withFiles(now, { 'files/form.pdf': { ...form, sha256: '7' }, 'files/map.pdf': page('Map (PDF)', '8') });
  assert.deepEqual(changesBetween(held, next), { added: ['Map (PDF)'], changed: ['Form (PDF)'], gone: ['Rules (PDF)'] });
  assert.deepEqual(changesBetween(now, next), { added: [], changed: [], gone: [] });
});

test('the paragraph for the newsletter lists the changes', () => {
  assert.equal(
    letterParagraph('The Almanac', now, changesBetween(before, now), 'https://club.example'),
    'The Almanac, edition of April\u00a018,\u00a02026\u00a0(b). New: A new list. Changed: Varroa. Taken down: An old list. https://club.example',
  );
  assert.equal(
    letterParagraph('The Almanac', now, changesBetween(now, now), null),
    'The Almanac, edition of April\u00a018,\u00a02026\u00a0(b). Its pages say what they said before.',
  );
  const many = { added: Array.from({ length: 14 }, (_, number) => `Page ${number + 1}`), changed: [], gone: [] };
  assert.match(letterParagraph('The Almanac', now, many, null), /Page 12 and 2 more\.$/);
});

test('an unreadable record counts as none', () => {
  for (const text of [null, '', '{', '[]', '{"day":1}', 'null']) assert.equal(readRecord(text), null, String(text));
});

test('the report names the differences, overdue pages, and the files to upload', () => {
  const work = mkdtempSync(join(tmpdir(), 'report-'));
  const folder = (name: string, record: object, extra: Record<string, string>): string => {
    mkdirSync(join(work, name));
    for (const [file, text] of Object.entries({ 'edition.json': JSON.stringify(record), ...extra }))
      writeFileSync(join(work, name, file), text);
    return join(work, name);
  };
  const former = folder('former', before, { 'a.txt': 'one', 'b.txt': 'two' });
  const site = folder('site', now, { 'a.txt': 'one', 'c.txt': 'three' });
  const due = [
    { path: 'bulletins/varroa.mdx', line: 3, column: 1, what: 'Varroa', by: 'disease officer', day: aDay('2026-04-01'), daysLeft: -17 },
  ];
  const lines = reportLines({ site, former: formerEdition(former), almanac: 'The Almanac', address: null, due });
  for (const line of [
    '3 pages, 3 files, 0.0 MB.',
    'Since the edition of March 1, 2026 (a):',
    '  1 added',
    '    A new list',
    '  1 changed',
    '  1 gone',
    '  The Almanac, edition of April\u00a018,\u00a02026\u00a0(b). New: A new list. Changed: Varroa. Taken down: An old list.',
    '1 past their next check on April 18, 2026; npm run review -- --on 2026-04-18 lists all:',
    '  bulletins/varroa.mdx: Varroa, 2026-04-01',
    'Upload the whole folder; 2 of its 3 files differ from the last edition, and 1 of that one are gone.',
  ])
    assert.ok(lines.includes(line), `${line}\n\n${lines.join('\n')}`);
  assert.equal(
    reportLines({ site, former: formerEdition(join(work, 'none')), almanac: 'The Almanac', address: null, due: [] }).at(-1),
    'Upload everything in the folder.',
  );
  rmSync(work, { recursive: true });
});

test('the bar never says more than there is', () => {
  assert.equal(bar(93, 186), 'Drawing pages  [############............]  93 of about 186');
  assert.equal(bar(200, 186), 'Drawing pages  [########################]  200 of about 186');
  assert.equal(bar(7, 0), 'Drawing pages  7');
});
