// One at a time, across processes: a file with the number of the process that is at work. Astro keeps files of its own in
// the project while it builds, so that two builds at once would each find the other's.
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';

const STEP_MS = 50;
/** A number left behind may have gone to another program: after ten minutes the turn is taken. */
const MOST_STEPS = 12_000;

/** Runs `work` when no other process that names the same file does. */
export async function inTurn<Result>(lock: string, work: () => Promise<Result>): Promise<Result> {
  mkdirSync(dirname(lock), { recursive: true });
  for (let step = 0; !taken(lock); step += 1) {
    if (step >= MOST_STEPS || isLeft(lock)) rmSync(lock, { force: true });
    else await wait(STEP_MS);
  }
  try {
    return await work();
  } finally {
    rmSync(lock, { force: true });
  }
}

function taken(lock: string): boolean {
  try {
    writeFileSync(lock, String(process.pid), { flag: 'wx' });
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw error;
  }
}

/** True where the process that holds it is gone. An empty file is being written. */
function isLeft(lock: string): boolean {
  try {
    const holder = Number(readFileSync(lock, 'utf8'));
    if (holder === 0) return false;
    process.kill(holder, 0);
    return false;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'ESRCH';
  }
}
