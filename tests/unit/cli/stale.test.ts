import assert from 'node:assert/strict';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'vitest';
import { whatIsStale } from '../../../scripts/stale.mjs';

const machine = { platform: 'linux', arch: 'x64', libc: 'glibc' };
const expected = {
  '': { name: 'ours' },
  'node_modules/one': { version: '1.0.0', integrity: 'sha512-a' },
  'node_modules/two': { version: '2.0.0', integrity: 'sha512-b', dev: true },
  'node_modules/native-linux': { version: '1.0.0', optional: true, os: ['linux'], cpu: ['x64'], libc: ['glibc'] },
  'node_modules/native-musl': { version: '1.0.0', optional: true, os: ['linux'], cpu: ['x64'], libc: ['musl'] },
  'node_modules/native-mac': { version: '1.0.0', optional: true, os: 'darwin', cpu: 'arm64' },
  'node_modules/not-windows': { version: '1.0.0', optional: true, os: ['!win32'] },
  'node_modules/part-of-another': { version: '1.0.0', optional: true },
};
const names = ['one', 'two', 'native-linux', 'not-windows'];

function project(): { folder: string; installed: Record<string, object>; write: () => void } {
  const folder = mkdtempSync(join(tmpdir(), 'stale-'));
  const installed: Record<string, object> = {};
  writeFileSync(join(folder, 'package-lock.json'), JSON.stringify({ packages: expected }));
  for (const name of names) {
    mkdirSync(join(folder, 'node_modules', name), { recursive: true });
    writeFileSync(join(folder, 'node_modules', name, 'package.json'), '{}');
    installed[`node_modules/${name}`] = expected[`node_modules/${name}` as keyof typeof expected];
  }
  const write = () => writeFileSync(join(folder, 'node_modules', '.package-lock.json'), JSON.stringify({ packages: installed }));
  write();
  return { folder, installed, write };
}

test('packages that npm installed for this machine are not stale', () => {
  assert.equal(whatIsStale(project().folder, machine), null);
});

test('missing packages, or an interrupted install, are stale', () => {
  const { folder } = project();
  writeFileSync(join(folder, 'node_modules', '.package-lock.json'), '{"packa');
  assert.equal(whatIsStale(folder, machine), 'nothing is installed yet');
  rmSync(join(folder, 'node_modules'), { recursive: true });
  assert.equal(whatIsStale(folder, machine), 'nothing is installed yet');
});

const changes: { case: string; change: (installed: Record<string, object>) => void; expect: string }[] = [
  {
    case: 'another version',
    change: (all) => (all['node_modules/one'] = { version: '1.0.1', integrity: 'sha512-a' }),
    expect: 'node_modules/one is another version',
  },
  {
    case: 'other bytes',
    change: (all) => (all['node_modules/two'] = { version: '2.0.0', integrity: 'sha512-c' }),
    expect: 'node_modules/two is another version',
  },
  { case: 'a package missing', change: (all) => delete all['node_modules/two'], expect: 'node_modules/two is not installed' },
  {
    case: "this machine's native package missing",
    change: (all) => delete all['node_modules/native-linux'],
    expect: 'node_modules/native-linux is not installed',
  },
  { case: 'a package too many', change: (all) => (all['node_modules/three'] = {}), expect: 'node_modules/three is not in the lock file' },
];
for (const { case: name, change, expect } of changes) {
  test(`${name} is stale`, () => {
    const { folder, installed, write } = project();
    change(installed);
    write();
    assert.equal(whatIsStale(folder, machine), expect);
  });
}

test('a package whose folder was deleted is stale', () => {
  const { folder } = project();
  rmSync(join(folder, 'node_modules', 'one'), { recursive: true });
  assert.equal(whatIsStale(folder, machine), 'node_modules/one has gone');
});

test('packages copied from another kind of machine are stale', () => {
  assert.equal(
    whatIsStale(project().folder, { platform: 'darwin', arch: 'arm64', libc: undefined }),
    'node_modules/native-mac is not installed',
  );
});
