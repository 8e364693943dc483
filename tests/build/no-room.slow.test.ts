/*
 * Full disk, at the first byte or later: one sentence that says what to do, no stack, and the last good site stays. The disk is a small
 * one in memory. The tests are skipped for a user who cannot mount one.
 */
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statfsSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { afterAll, test } from 'vitest';
import { fingerprint } from '../../src/integration/fingerprint.ts';
import { projectFolder } from '../../src/cli/paths.ts';
import { change, openWorkshop } from './workshop.ts';
import { noise } from '../unit/pictures/made.ts';
import { runAt } from './run-at.ts';

const { copy, build } = openWorkshop();
const disk = mkdtempSync(join(tmpdir(), 'small-disk-'));
const mounted = process.platform === 'linux' && spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=48m', 'tmpfs', disk]).status === 0;
afterAll(() => {
  if (mounted) spawnSync('umount', [disk]);
  rmSync(disk, { recursive: true, force: true });
});
const skip = mounted ? false : 'no small disk may be mounted here';

const filler = join(disk, 'filler');
/** Leaves so many bytes of the disk free. */
function leave(bytes: number): void {
  rmSync(filler, { force: true });
  const { bavail, bsize } = statfsSync(disk);
  writeFileSync(filler, Buffer.alloc(Math.max(0, bavail * bsize - bytes)));
}

const SENTENCE = /^The build stopped: the disk is full\. Make room and build again\. The last good site is unchanged\.$/m;

function stopped({ code, output }: { code: number | null; output: string }, where: string): void {
  assert.equal(code, 1, `${where}: ${output}`);
  assert.match(output, SENTENCE, where);
  assert.doesNotMatch(output, /^\s+at |node:internal|Error:|triggerUncaught/m, where);
  assert.equal(output.split('\n').filter((line) => /full|ENOSPC|space/i.test(line)).length, 1, `${where}: ${output}`);
}

test(
  'the output’s disk is full from the first byte, or after any part of the site',
  { skip: Boolean(skip), timeout: 600_000, tags: ['slow'] },
  async (t) => {
    const club = copy('southern');
    const out = join(disk, 'site', 'out');
    const first = await build(club, out);
    assert.equal(first.code, 0, first.output);
    const before = fingerprint({ out });
    change(join(club, 'words', 'autumn.yaml'), 'March to May here.', 'March to early June here.');
    let tries = 0;
    let bytes = 0;
    for (;;) {
      leave(bytes);
      const ran = await build(club, out);
      if (ran.code === 0) break;
      stopped(ran, `${bytes} bytes free`);
      tries += 1;
      assert.equal(fingerprint({ out }), before, `${bytes} bytes free`);
      assert.deepEqual(readdirSync(dirname(out)), ['out'], `${bytes} bytes free`);
      bytes += bytes < 1_000_000 ? 110_000 : 330_000;
    }
    void t.annotate(`room enough at ${bytes} bytes, after ${tries} builds that stopped`);
    assert.ok(tries >= 5, `${tries} builds stopped`);
    assert.notEqual(fingerprint({ out }), before);
    assert.deepEqual(readdirSync(dirname(out)), ['out']);
  },
);

test('the project’s own disk is full', { skip: Boolean(skip), timeout: 300_000, tags: ['slow'] }, async () => {
  rmSync(join(disk, 'site'), { recursive: true, force: true });
  rmSync(filler, { force: true });
  const project = join(disk, 'project');
  for (const name of ['src', 'shared', 'public', 'astro.config.mjs', 'tsconfig.json', 'package.json', 'package-lock.json'])
    cpSync(join(projectFolder, name), join(project, name), { recursive: true });
  symlinkSync(join(projectFolder, 'node_modules'), join(project, 'node_modules'));
  const club = copy('southern');
  mkdirSync(join(project, '.almanac'));
  writeFileSync(join(club, 'articles', 'comb.png'), await noise(900, 700).png().toBuffer());
  writeFileSync(
    join(club, 'articles', 'stings.mdx'),
    `${readFileSync(join(club, 'articles', 'stings.mdx'), 'utf8')}\n![Dots without order](comb.png)\n`,
  );
  const out = join(dirname(club), 'elsewhere', 'out');
  for (const bytes of [0, 20_000, 60_000]) {
    leave(bytes);
    stopped(await runAt(project, 'build', ['--content', club, '--out', out]), `${bytes} bytes free`);
    assert.deepEqual(readdirSync(dirname(out)), []);
  }
  rmSync(filler);
  const ran = await runAt(project, 'build', ['--content', club, '--out', out]);
  assert.equal(ran.code, 0, ran.output);
});

test(
  'a disk of its own can be no output folder, a folder on it can',
  { skip: Boolean(skip), timeout: 120_000, tags: ['slow'] },
  async () => {
    for (const name of readdirSync(disk)) rmSync(join(disk, name), { recursive: true, force: true });
    const ran = await build(copy('southern'), disk);
    assert.equal(ran.code, 1, ran.output);
    assert.match(
      ran.output,
      /^The build stopped: \S+ is in use, or a disk of its own\. Close what uses it, or write a folder inside it\. The last good site is unchanged\.$/m,
    );
    assert.deepEqual(readdirSync(disk), []);
    assert.deepEqual(
      readdirSync(dirname(disk)).filter((name) => name.startsWith(`${basename(disk)}.`)),
      [],
    );
  },
);
