// Files with faults are replaced by their last good state. Withdrawn entries stay withdrawn, and the club's own files do not change.
import assert from 'node:assert/strict';
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, test } from 'vitest';
import { ok } from '../../../shared/result.ts';
import { foundIn } from '../../../src/checks/drafts.ts';
import { fingerprint } from '../../../src/integration/fingerprint.ts';
import { copyTexts, keepCopy, lastGoodOf, standIn, type StandIn } from '../../../src/cli/last-good.ts';
import { formatDiagnostic } from '../../../src/source/diagnostic.ts';
import { readFolder } from '../../../src/source/folder.ts';
import { change } from '../../build/workshop.ts';
import { goodClub } from '../../fixtures/invalid/cases.ts';

const shop = mkdtempSync(join(tmpdir(), 'last-good-'));
afterAll(() => rmSync(shop, { recursive: true, force: true }));
let clubs = 0;

/** A copy of the good club. `kept`: with a last good state, as after a valid build. */
function club(kept: boolean): string {
  const content = join(shop, `club-${(clubs += 1)}`);
  cpSync(goodClub, content, { recursive: true });
  if (kept) {
    copyTexts(readFolder(content), join(shop, 'copied'));
    keepCopy(content, join(shop, 'copied'));
  }
  return content;
}

const faultsOf = async (directory: string) => foundIn(readFolder(directory)).faults;
async function stood(content: string): Promise<{ result: StandIn; directory: string }> {
  const directory = `${content}-standing`;
  const before = fingerprint({ content });
  const result = await standIn(content, directory, faultsOf);
  assert.equal(fingerprint({ content }), before, 'the club’s own files are as they were');
  if (result.ok) assert.deepEqual((await faultsOf(directory)).map(formatDiagnostic), []);
  return { result, directory };
}

test('one faulty file is in its last good state; a valid change and a notice are current', async () => {
  const content = club(true);
  change(join(content, 'meetings', '2026-06-13-yard-day.mdx'), 'day: 2026-06-13', 'day: 6/13/26');
  change(join(content, 'articles', 'stings.mdx'), 'Seconds count.', 'Be quick.');
  const { result, directory } = await stood(content);
  assert.deepEqual(result, ok({ asBefore: ['meetings/2026-06-13-yard-day.mdx'], leftOut: [], broughtBack: [] }));
  assert.match(readFileSync(join(directory, 'articles', 'stings.mdx'), 'utf8'), /Be quick\./);
});

test('a new faulty page is left out, and a page that links to it is in its last good state', async () => {
  const content = club(true);
  writeFileSync(join(content, 'articles', 'new-page.mdx'), '---\ntitle: New\n---\nWords\n');
  change(join(content, 'articles', 'stings.mdx'), 'Seconds count.', 'See [it](/know-how/new-page/).');
  const expected = { asBefore: ['articles/stings.mdx'], leftOut: ['articles/new-page.mdx'], broughtBack: [] };
  assert.deepEqual((await stood(content)).result, ok(expected));
});

test('a deleted page with links to it is restored', async () => {
  const content = club(true);
  rmSync(join(content, 'checklists', 'package-day.mdx'));
  rmSync(join(content, 'figures', 'sample.yaml'));
  const { result } = await stood(content);
  assert.ok(result.ok);
  assert.deepEqual(result.value.broughtBack, ['checklists/package-day.mdx', 'figures/sample.yaml']);
});

test('club.yaml, a drawing’s SVG and a file in another encoding are replaced as well', async () => {
  const content = club(true);
  change(join(content, 'club.yaml'), 'hemisphere: north', 'hemisphere: up');
  writeFileSync(join(content, 'drawings', 'egg.svg'), '<svg><script/></svg>');
  writeFileSync(join(content, 'words', 'brood.yaml'), Buffer.from('word: brood \xb0\n', 'latin1'));
  const { result } = await stood(content);
  assert.ok(result.ok);
  assert.deepEqual(result.value.asBefore, ['club.yaml', 'drawings/egg.svg', 'words/brood.yaml']);
});

test('a faulty page that was withdrawn since then is withdrawn in its last good state', async () => {
  const content = club(true);
  const page = join(content, 'articles', 'stings.mdx');
  change(page, 'subject: people', 'withdrawn: 2026-05-14, it can mislead\nsubject: poeple');
  const { directory } = await stood(content);
  const text = readFileSync(join(directory, 'articles', 'stings.mdx'), 'utf8');
  assert.match(text, /^---\nwithdrawn: 2026-05-14, it can mislead\n/);
  assert.match(text, /subject: people/);
});

test('without a last good state a faulty page is left out, unless another needs it', async () => {
  const content = club(false);
  writeFileSync(join(content, 'articles', 'new-page.mdx'), '---\ntitle: New\n---\nWords\n');
  const expected = { asBefore: [], leftOut: ['articles/new-page.mdx'], broughtBack: [] };
  assert.deepEqual((await stood(content)).result, ok(expected));
  change(join(content, 'checklists', 'package-day.mdx'), 'yard:', 'yrad:');
  const { result } = await stood(content);
  assert.ok(!result.ok && !result.reason.hasLastGood);
  assert.ok(result.reason.inTheWay.some(({ path }) => path !== 'checklists/package-day.mdx'));
});

test('another club in the same folder has no last good state there', () => {
  const content = club(true);
  assert.ok(lastGoodOf(content));
  change(join(content, 'club.yaml'), 'id: ', 'id: other-');
  assert.equal(lastGoodOf(content), null);
});

test('the copy of a deleted folder is removed', () => {
  const gone = club(true);
  const held = lastGoodOf(gone)!;
  rmSync(gone, { recursive: true });
  club(true);
  assert.ok(!existsSync(held));
});
