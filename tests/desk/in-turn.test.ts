import assert from 'node:assert/strict';
import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import { inTurn } from '../../src/desk/in-turn.ts';
import { projectFolder } from '../../src/desk/places.ts';

const folder = mkdtempSync(join(tmpdir(), 'in-turn-'));
const module = JSON.stringify(new URL(`file://${projectFolder}src/desk/in-turn.ts`).href);

/** A process of its own that writes "in" and "out" into the record, with a pause between. */
function worker(lock: string, record: string): Promise<number | null> {
  const code = `import { inTurn } from ${module}; import { appendFileSync } from 'node:fs'; import { setTimeout as wait } from 'node:timers/promises';
    await inTurn(${JSON.stringify(lock)}, async () => { appendFileSync(${JSON.stringify(record)}, 'in '); await wait(60); appendFileSync(${JSON.stringify(record)}, 'out '); });`;
  return new Promise((resolve) => spawn(process.execPath, ['--input-type=module', '--eval', code], { stdio: 'inherit' }).on('close', resolve));
}

test('processes that name one file work one after the other', async () => {
  const [lock, record] = [join(folder, 'a', 'one.lock'), join(folder, 'record.txt')];
  assert.deepEqual(await Promise.all(Array.from({ length: 5 }, () => worker(lock, record))), [0, 0, 0, 0, 0]);
  assert.equal(readFileSync(record, 'utf8'), 'in out '.repeat(5));
  assert.equal(existsSync(lock), false);
});

test('a turn that was left by a process that is gone is taken, and given back when the work fails', async () => {
  const lock = join(folder, 'left.lock');
  const gone = spawn(process.execPath, ['--eval', '']);
  await new Promise((resolve) => gone.on('close', resolve));
  writeFileSync(lock, String(gone.pid));
  assert.equal(await inTurn(lock, async () => readFileSync(lock, 'utf8')), String(process.pid));
  await assert.rejects(inTurn(lock, async () => { throw new Error('no'); }), /^Error: no$/); // prettier-ignore
  assert.equal(existsSync(lock), false);
});
