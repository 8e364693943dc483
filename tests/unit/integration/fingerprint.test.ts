import assert from 'node:assert/strict';
import { mkdirSync, mkdtempSync, renameSync, rmSync, symlinkSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'vitest';
import { fingerprint, printsOf, sourceFingerprint, whatChanged } from '../../../src/integration/fingerprint.ts';
import { projectFolder } from '../../../src/cli/paths.ts';

function smallClub(): string {
  const folder = mkdtempSync(join(tmpdir(), 'fingerprint-'));
  mkdirSync(join(folder, 'words'));
  writeFileSync(join(folder, 'club.yaml'), 'name: Ours\n');
  writeFileSync(join(folder, 'words', 'brood.mdx'), 'Young bees.\n');
  return folder;
}

test('two copies of the same files have the same fingerprint, in any folder', () => {
  const one = fingerprint({ content: smallClub() });
  assert.match(one, /^[0-9a-f]{64}$/);
  assert.equal(fingerprint({ content: smallClub() }), one);
});

test('a changed byte, a new file and a new name change it', () => {
  const folder = smallClub();
  const seen = new Set([fingerprint({ content: folder })]);
  writeFileSync(join(folder, 'club.yaml'), 'name: Ourz\n');
  seen.add(fingerprint({ content: folder }));
  writeFileSync(join(folder, 'words', 'a.mdx'), '');
  seen.add(fingerprint({ content: folder }));
  renameSync(join(folder, 'words', 'a.mdx'), join(folder, 'words', 'b.mdx'));
  seen.add(fingerprint({ content: folder }));
  assert.equal(seen.size, 4);
});

test('bytes that move from one file to the next change it', () => {
  const folder = mkdtempSync(join(tmpdir(), 'fingerprint-'));
  writeFileSync(join(folder, 'a'), 'xy');
  writeFileSync(join(folder, 'b'), '');
  const before = fingerprint({ content: folder });
  writeFileSync(join(folder, 'a'), 'x');
  writeFileSync(join(folder, 'b'), 'y');
  assert.notEqual(fingerprint({ content: folder }), before);
});

test('one file with the content of two is not equal to those two', () => {
  const two = mkdtempSync(join(tmpdir(), 'fingerprint-'));
  writeFileSync(join(two, 'a'), 'x');
  writeFileSync(join(two, 'b'), 'y');
  const one = mkdtempSync(join(tmpdir(), 'fingerprint-'));
  writeFileSync(join(one, 'a'), 'xcontent/by');
  assert.notEqual(fingerprint({ content: one }), fingerprint({ content: two }));
});

test('a new modification time does not change it', () => {
  const folder = smallClub();
  const before = fingerprint({ content: folder });
  utimesSync(join(folder, 'club.yaml'), new Date(0), new Date(0));
  assert.equal(fingerprint({ content: folder }), before);
});

test('installed packages and system files are left out', () => {
  const folder = smallClub();
  const before = fingerprint({ content: folder });
  mkdirSync(join(folder, 'words', 'node_modules'));
  writeFileSync(join(folder, 'words', 'node_modules', 'x.js'), 'x');
  writeFileSync(join(folder, '.DS_Store'), 'x');
  assert.equal(fingerprint({ content: folder }), before);
});

test('the order of the places does not matter, but their names do', () => {
  const content = smallClub();
  const lock = join(content, 'club.yaml');
  assert.equal(fingerprint({ content, lock }), fingerprint({ lock, content }));
  assert.notEqual(fingerprint({ content }), fingerprint({ other: content }));
});

test('a missing place adds nothing, and a folder linked into itself is read once', (t) => {
  const folder = smallClub();
  const before = fingerprint({ content: folder });
  assert.equal(fingerprint({ content: folder, public: join(folder, 'absent') }), before);
  try {
    symlinkSync(folder, join(folder, 'words', 'again'), 'dir');
  } catch {
    t.skip('this system makes no links');
    return;
  }
  assert.equal(fingerprint({ content: folder }), before);
});

test('a change is reported by file name', () => {
  const content = smallClub();
  const before = printsOf({ content });
  assert.equal(whatChanged(before, printsOf({ content })), null);
  writeFileSync(join(content, 'words', 'brood.mdx'), 'Old bees.\n');
  assert.equal(whatChanged(before, printsOf({ content })), 'content/words/brood.mdx changed');
  rmSync(join(content, 'words'), { recursive: true });
  assert.equal(whatChanged(before, printsOf({ content })), 'content/words/brood.mdx was taken away');
  writeFileSync(join(content, 'a.yaml'), '');
  assert.equal(whatChanged(before, printsOf({ content })), 'content/a.yaml was added');
});

test('ignored files are no input of a build', () => {
  const content = smallClub();
  const before = sourceFingerprint(projectFolder, content);
  for (const name of ['.club.yaml.swp', 'club.yaml~', '~$club.yaml', 'Thumbs.db']) writeFileSync(join(content, name), 'x');
  mkdirSync(join(content, '.vscode'));
  writeFileSync(join(content, '.vscode', 'settings.json'), '{}');
  assert.equal(sourceFingerprint(projectFolder, content), before);
  writeFileSync(join(content, 'words', 'odd.txt'), 'x');
  assert.notEqual(sourceFingerprint(projectFolder, content), before);
});
