/* Overview: ten lines on any folder, also one that cannot be read, and each says what is so. */
import assert from 'node:assert/strict';
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, test } from 'vitest';
import { copyTexts, keepCopy } from '../../../src/cli/last-good.ts';
import { overviewLines } from '../../../src/cli/overview.ts';
import { readFolder } from '../../../src/source/folder.ts';
import { change } from '../../build/workshop.ts';
import { aDay } from '../../days.ts';
import { goodClub } from '../../fixtures/invalid/cases.ts';

const shop = mkdtempSync(join(tmpdir(), 'overview-'));
afterAll(() => rmSync(shop, { recursive: true, force: true }));

const NAMES = ['Program', 'Club', 'Books', 'Pages', 'Mistakes', 'Last edition', 'The next one', 'Due', 'Address', 'Disk'];

function linesOf(content: string, out = join(shop, 'no-site')): Record<string, string> {
  const lines = overviewLines({ content, out, on: aDay('2027-02-02') }).map(
    (line) => /^([^:]+): (.+)$/.exec(line)!.slice(1) as [string, string],
  );
  assert.deepEqual(
    lines.map(([name]) => name),
    NAMES,
  );
  return Object.fromEntries(lines);
}

function club(name: string): string {
  const content = join(shop, name);
  cpSync(goodClub, content, { recursive: true });
  return content;
}

test('a club that was never built', () => {
  const lines = linesOf(club('fresh'));
  assert.match(lines.Program!, /^association-almanac \d+\.\d+\.\d+, on Node v\d+\.\d+\.\d+ \(20 or newer is needed\), \w+ \w+$/);
  assert.match(lines.Club!, /^Alder Brook Bee Club \(alder-brook\), in .*fresh$/);
  assert.equal(lines.Books, 'none; every page is your own');
  assert.equal(lines.Mistakes, 'none');
  assert.match(lines['Last edition']!, /^none in .*no-site$/);
  assert.equal(lines['The next one'], 'everything is new, since nothing was built from this folder here');
  assert.match(lines.Due!, /^on 2027-02-02, \d+ past and \d+ in the next 60 days; npm run review lists them$/);
  assert.match(lines.Address!, /^none; a line "site:" in club\.yaml/);
  assert.match(lines.Disk!, /^\d+\.\d GB free where the site is written$/);
});

test('after an edition, with a changed, a new and a deleted file, a draft and a mistake', () => {
  const content = club('edited');
  copyTexts(readFolder(content), join(shop, 'copied'));
  keepCopy(content, join(shop, 'copied'));
  assert.equal(linesOf(content)['The next one'], 'no file has changed since the last one');
  change(join(content, 'articles', 'stings.mdx'), 'subject: people', 'subject: poeple');
  writeFileSync(join(content, 'articles', 'begun.mdx'), '---\ntitle: Begun\ndraft: true\n---\nWords.\n');
  rmSync(join(content, 'reading', 'quiet-year.yaml'));
  const out = join(shop, 'site');
  mkdirSync(out);
  const pages = { '': { title: 'Now', sha256: 'a' }, 'lists/': { title: 'Lists', sha256: 'b' } };
  writeFileSync(join(out, 'edition.json'), JSON.stringify({ club: 'alder-brook', day: '2026-03-01', fingerprint: 'c', pages }));
  const lines = linesOf(content, out);
  assert.match(lines.Mistakes!, /^\d faults in 2 files; npm run check lists them; \d+ blanks or mistakes in drafts$/);
  assert.match(lines.Pages!, /, 1 draft$/);
  assert.match(lines['Last edition']!, /^2026-03-01, 2 pages, of alder-brook, in .*site$/);
  assert.equal(
    lines['The next one'],
    '1 new file, 1 changed, 1 gone (articles/begun.mdx, articles/stings.mdx, reading/quiet-year.yaml); it waits for the mistakes to be mended',
  );
  assert.match(lines.Disk!, /; the site there has \d+\.\d MB$/);
});

test('a folder without club.yaml, and one with a broken one', () => {
  const content = club('broken');
  writeFileSync(join(content, 'club.yaml'), 'id: [\ntime-zone: Nowhere\n');
  assert.match(linesOf(content).Mistakes!, /fault/);
  const empty = join(shop, 'empty');
  mkdirSync(empty);
  assert.match(linesOf(empty).Club!, /^no name, since club\.yaml cannot be read \(no id\), in .*empty$/);
});
