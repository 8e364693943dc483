/*
 * Missing file permissions: each build ends with one sentence that says what to do, without a stack, and the last good site stays. Root
 * has all permissions, so it builds as another user, in a copy of the project that belongs to that user.
 */
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { chmodSync, chownSync, cpSync, mkdirSync, mkdtempSync, readdirSync, realpathSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, test } from 'vitest';
import { fingerprint } from '../../src/integration/fingerprint.ts';
import { projectFolder } from '../../src/cli/paths.ts';
import { fixtureFolder, type Ran } from '../setup/built-site.ts';
import { change } from './workshop.ts';
import { NOBODY, runAt } from './run-at.ts';

const root = process.getuid?.() === 0;
const reaches =
  !root ||
  spawnSync(process.execPath, ['--eval', `require('node:fs').readdirSync(${JSON.stringify(join(projectFolder, 'node_modules'))})`], {
    uid: NOBODY,
    gid: NOBODY,
  }).status === 0;
const skip =
  process.platform === 'win32'
    ? 'this system has no such permissions'
    : reaches
      ? false
      : 'the installed packages lie where another user may not read them';
const folder = realpathSync(mkdtempSync(join(tmpdir(), 'may-not-')));
const project = join(folder, 'project');
const club = join(folder, 'club');
const out = join(folder, 'sites', 'out');

/** Gives a folder to the user who builds. */
function hand(path: string): void {
  if (!root) return;
  chownSync(path, NOBODY, NOBODY);
  for (const item of readdirSync(path, { recursive: true, withFileTypes: true }))
    if (!item.isSymbolicLink()) chownSync(join(item.parentPath, item.name), NOBODY, NOBODY);
}

const build = (to = out): Promise<Ran> => runAt(project, 'build', ['--content', club, '--out', to], root ? NOBODY : undefined);

beforeAll(async () => {
  if (skip) return;
  for (const name of ['src', 'shared', 'public', 'astro.config.mjs', 'tsconfig.json', 'package.json', 'package-lock.json'])
    cpSync(join(projectFolder, name), join(project, name), { recursive: true });
  symlinkSync(join(projectFolder, 'node_modules'), join(project, 'node_modules'));
  cpSync(fixtureFolder('southern'), club, { recursive: true });
  mkdirSync(join(folder, 'sites'));
  hand(folder);
  const first = await build();
  assert.equal(first.code, 0, first.output);
  change(join(club, 'words', 'autumn.yaml'), 'March to May here.', 'March to early June here.');
  hand(club);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Builds while `path` has other permissions: the build is refused with the sentence, and nothing changes. */
async function refused(path: string, mode: number, sentence: RegExp, to = out): Promise<void> {
  const site = fingerprint({ out });
  const beside = readdirSync(join(folder, 'sites'));
  chmodSync(path, mode);
  const ran = await build(to).finally(() => chmodSync(path, 0o755));
  assert.equal(ran.code, 1, ran.output);
  assert.match(ran.output, sentence);
  assert.doesNotMatch(ran.output, /^\s+at |node:internal|Error:/m);
  assert.equal(ran.output.split('\n').filter((line) => /permi/i.test(line)).length, 1, ran.output);
  assert.equal(fingerprint({ out }), site, 'the last good site stands');
  assert.deepEqual(readdirSync(join(folder, 'sites')), beside, 'nothing is left beside it');
}

const STANDS = 'may not be read or written by you\\. Change its permissions, or write another folder\\.';
const stops = (path: string): RegExp => new RegExp(`^The build stopped: .*${path}\\S* ${STANDS} The last good site is unchanged\\.$`, 'm');

test('a read-only output folder', { skip: Boolean(skip), tags: ['slow'] }, () =>
  refused(out, 0o555, new RegExp(`^--out .*out ${STANDS}$`, 'm')),
);
test('an output folder without access', { skip: Boolean(skip), tags: ['slow'] }, () =>
  refused(out, 0o000, new RegExp(`^--out .*out ${STANDS}$`, 'm')),
);
test('a read-only parent of the output folder', { skip: Boolean(skip), tags: ['slow'] }, () =>
  refused(join(folder, 'sites'), 0o555, stops('sites/')),
);
test('a folder that cannot be created', { skip: Boolean(skip), tags: ['slow'] }, () =>
  refused(join(folder, 'sites'), 0o555, stops('sites/'), join(folder, 'sites', 'new', 'out')),
);
test('a read-only project', { skip: Boolean(skip), tags: ['slow'] }, async () => {
  await refused(join(project, '.almanac'), 0o555, stops('\\.almanac'));
});
test('an unreadable file of the club', { skip: Boolean(skip), tags: ['slow'] }, () =>
  refused(
    join(club, 'words', 'autumn.yaml'),
    0o000,
    /^words\/autumn\.yaml:1:1 folder: the content folder: found a file that cannot be read \(EACCES\); write its permissions so that you may read it$/m,
  ),
);
test('an unreadable folder of the club', { skip: Boolean(skip), tags: ['slow'] }, () =>
  refused(
    join(club, 'words'),
    0o000,
    /^words:1:1 folder: the content folder: found a folder that cannot be read \(EACCES\); write its permissions so that you may read it$/m,
  ),
);

test(
  'a page of the old site that may not be deleted: the new one is in place, and the rest goes later',
  { skip: Boolean(skip), tags: ['slow'] },
  async () => {
    const inner = join(out, 'words');
    chmodSync(inner, 0o555);
    const ran = await build();
    assert.equal(ran.code, 0, ran.output);
    assert.doesNotMatch(ran.output, /^\s+at |Error:/m);
    const left = readdirSync(join(folder, 'sites')).filter((name) => name !== 'out');
    assert.ok(
      left.every((name) => /^out\.building-\d+$/.test(name)),
      left.join(', '),
    );
    for (const name of left) chmodSync(join(folder, 'sites', name, 'former', 'words'), 0o755);
    assert.equal((await build()).code, 0);
    assert.deepEqual(readdirSync(join(folder, 'sites')), ['out']);
  },
);

test('the build succeeds when all permissions are restored', { skip: Boolean(skip), tags: ['slow'] }, async () => {
  const ran = await build();
  assert.equal(ran.code, 0, ran.output);
});
