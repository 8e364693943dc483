// Cross-process lock: one process after the other, even after one was killed.
import assert from 'node:assert/strict';
import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, test, vi } from 'vitest';
import { withLock } from '../../../src/cli/lock.ts';
import { projectFolder } from '../../../src/cli/paths.ts';

const folder = mkdtempSync(join(tmpdir(), 'in-turn-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const module = JSON.stringify(new URL(`file://${projectFolder}src/cli/lock.ts`).href);

/**
 * A separate process that writes "in" and "out" into the record, with a pause between. A slow one pauses before it removes a stale lock.
 */
function worker(lock: string, record: string, slow = false): Promise<number | null> {
  const hesitate = `import fs from 'node:fs'; import { syncBuiltinESMExports } from 'node:module';
    const own = fs.rmSync; fs.rmSync = (path, given) => {
      if (path === ${JSON.stringify(lock)} && fs.existsSync(path) && fs.readFileSync(path, 'utf8') !== String(process.pid)) Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 300);
      own(path, given);
    }; syncBuiltinESMExports();`;
  const code = `${slow ? hesitate : ''} const { withLock } = await import(${module}); import { appendFileSync } from 'node:fs'; import { setTimeout as wait } from 'node:timers/promises';
    await withLock(${JSON.stringify(lock)}, async () => { appendFileSync(${JSON.stringify(record)}, 'in '); await wait(60); appendFileSync(${JSON.stringify(record)}, 'out '); });`;
  return new Promise((resolve) =>
    spawn(process.execPath, ['--input-type=module', '--eval', code], { stdio: 'inherit' }).on('close', resolve),
  );
}

test('processes that name one file run one after the other', async () => {
  const [lock, record] = [join(folder, 'a', 'one.lock'), join(folder, 'record.txt')];
  assert.deepEqual(await Promise.all(Array.from({ length: 5 }, () => worker(lock, record))), [0, 0, 0, 0, 0]);
  assert.equal(readFileSync(record, 'utf8'), 'in out '.repeat(5));
  assert.equal(existsSync(lock), false);
});

test('the lock of a dead process is taken over, and released when the work fails', async () => {
  const lock = join(folder, 'left.lock');
  const gone = spawn(process.execPath, ['--eval', '']);
  await new Promise((resolve) => gone.on('close', resolve));
  writeFileSync(lock, String(gone.pid));
  assert.equal(await withLock(lock, async () => readFileSync(lock, 'utf8')), String(process.pid));
  await assert.rejects(withLock(lock, async () => { throw new Error('no'); }), /^Error: no$/); // prettier-ignore
  assert.equal(existsSync(lock), false);
});

test('only one process takes over a stale lock, however many wait', async () => {
  const [lock, record] = [join(folder, 'many.lock'), join(folder, 'many.txt')];
  writeFileSync(lock, '999999999');
  assert.deepEqual(await Promise.all(Array.from({ length: 6 }, () => worker(lock, record, true))), [0, 0, 0, 0, 0, 0]);
  assert.equal(readFileSync(record, 'utf8'), 'in out '.repeat(6));
  assert.equal(existsSync(lock), false);
});

test('content that no live process can have written counts as stale: our own id, other words, and nothing at all', async () => {
  for (const [name, left] of [
    ['own', String(process.pid)],
    ['words', 'who?'],
    ['below', '-1'],
    ['empty', ''],
  ] as const) {
    const lock = join(folder, `${name}.lock`);
    writeFileSync(lock, left);
    assert.equal(await withLock(lock, async () => readFileSync(lock, 'utf8')), String(process.pid), name);
    assert.equal(existsSync(lock), false, name);
  }
});

test('the waiting process learns the holder, and a live process keeps its lock', async () => {
  const lock = join(folder, 'alive.lock');
  const other = spawn(process.execPath, ['--eval', 'setTimeout(() => {}, 60000)']);
  writeFileSync(lock, String(other.pid));
  const holders: number[] = [];
  let done = false;
  const mine = withLock(lock, async () => void (done = true), (holder) => holders.push(holder)); // prettier-ignore
  await vi.waitFor(() => assert.deepEqual(holders, [other.pid]), 10_000);
  assert.equal(done, false);
  other.kill('SIGKILL');
  await mine;
  assert.deepEqual([holders.length, done, existsSync(lock)], [1, true, false]);
});
