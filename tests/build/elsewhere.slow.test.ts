// Reproducible build from a copy of the whole project, in another folder, time zone and language: the same bytes.
import assert from 'node:assert/strict';
import { spawn } from 'node:child_process';
import { cpSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'vitest';
import { projectFolder } from '../../src/cli/paths.ts';
import { contentsOf, openWorkshop } from './workshop.ts';
import { builtDemo } from '../setup/built-site.ts';

const { folder } = openWorkshop();

test('a copy of the project builds the same site', { tags: ['slow'] }, async () => {
  const here = await builtDemo();
  const copy = join(folder, 'another place', 'almanac');
  mkdirSync(copy, { recursive: true });
  for (const name of [
    'src',
    'shared',
    'public',
    'content',
    'astro.config.mjs',
    'tsconfig.json',
    'package.json',
    'package-lock.json',
    'node_modules',
  ])
    cpSync(join(projectFolder, name), join(copy, name), { recursive: true });
  const child = spawn(process.execPath, [join(copy, 'src', 'cli', 'build.ts')], {
    cwd: folder,
    stdio: ['ignore', 'ignore', 'inherit'],
    env: { ...process.env, TZ: 'Pacific/Kiritimati', LANG: 'C', LC_ALL: 'C', INIT_CWD: undefined, NODE_TEST_CONTEXT: undefined },
  });
  assert.equal(await new Promise((resolve) => child.on('close', resolve)), 0);
  const [one, other] = [contentsOf(here.folder), contentsOf(join(copy, 'dist'))];
  assert.ok(one.size > 200);
  assert.deepEqual(
    [...new Set([...one.keys(), ...other.keys()])].filter((path) => one.get(path) !== other.get(path)),
    [],
  );
});
