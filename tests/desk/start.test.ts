import assert from 'node:assert/strict';
import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import { openAlmanac, type Build } from '../../src/desk/open-almanac.ts';

function project(): string {
  const folder = mkdtempSync(join(tmpdir(), 'start-'));
  mkdirSync(join(folder, 'content'));
  mkdirSync(join(folder, 'src'));
  writeFileSync(join(folder, 'content', 'club.yaml'), 'name: Ours\n');
  return folder;
}

// Stands for the real build: writes one page with the club's file in it, and counts its calls.
function standIn(ok = true) {
  const asked: Parameters<Build>[0][] = [];
  const told: string[] = [];
  const build: Build = async (options) => {
    asked.push(options);
    if (!ok) return { ok };
    mkdirSync(options.out, { recursive: true });
    writeFileSync(join(options.out, 'index.html'), readFileSync(join(options.content, 'club.yaml')));
    return { ok };
  };
  const open = async (folder: string) => {
    const served = await openAlmanac({ project: folder, content: join(folder, 'content'), loadBuild: async () => build, tell: (line) => told.push(line), port: 0 });
    const text = served && (await (await fetch(served.address)).text());
    await served?.close();
    return text;
  };
  return { asked, told, open };
}

test('the club is built once, and again when something it is made of changes', async () => {
  const folder = project();
  const { asked, told, open } = standIn();
  assert.equal(await open(folder), 'name: Ours\n');
  assert.deepEqual(asked, [{ content: join(folder, 'content'), out: join(folder, 'dist'), base: '/', quiet: true }]);
  await open(folder);
  assert.equal(asked.length, 1, 'nothing changed');
  writeFileSync(join(folder, 'content', 'club.yaml'), 'name: Theirs\n');
  assert.equal(await open(folder), 'name: Theirs\n');
  writeFileSync(join(folder, 'src', 'page.astro'), '');
  await open(folder);
  writeFileSync(join(folder, 'package-lock.json'), '{}');
  await open(folder);
  assert.equal(asked.length, 4);
  assert.deepEqual(told, Array(4).fill('Building the almanac ...'));
});

test('an output that was touched is built again', async () => {
  const folder = project();
  const { asked, open } = standIn();
  await open(folder);
  writeFileSync(join(folder, 'dist', 'index.html'), 'another club');
  assert.equal(await open(folder), 'name: Ours\n');
  assert.equal(asked.length, 2);
});

test('a build with faults serves nothing, and leaves no record of freshness', async () => {
  const folder = project();
  await standIn().open(folder);
  writeFileSync(join(folder, 'content', 'club.yaml'), 'name: [\n');
  const faulty = standIn(false);
  assert.equal(await faulty.open(folder), null);
  assert.equal(await faulty.open(folder), null);
  assert.equal(faulty.asked.length, 2);
});
