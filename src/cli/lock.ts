/*
 * One at a time, across processes: a file with the number of the process that is at work. Astro keeps files of its own in
 * the project while it builds, and a finished site takes the place of the one before, so that two at once would mix.
 */
import { closeSync, mkdirSync, openSync, readFileSync, rmSync, writeSync } from 'node:fs';
import { dirname } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';

const STEP_MS = 50;
/** A second. The number follows the making of the file at once: one that stays empty was left by a killed process. */
const EMPTY_STEPS = 20;
/** Ten minutes behind one process: its number may have gone to another program, and nobody here can know. */
const MOST_STEPS = 12_000;

/** The turns of this process. Its number may be that of one that was killed, above all in a container. */
const ours = new Set<string>();

/**
 * Runs `work` when no other process that names the same file does. `waits` is told once, after a second, for whom.
 * Throws with a sentence after ten minutes behind the same process; the turn is never taken from one that is alive.
 */
export async function withLock<Result>(
  lock: string,
  work: () => Promise<Result>,
  waits: (holder: number) => void = () => undefined,
): Promise<Result> {
  mkdirSync(dirname(lock), { recursive: true });
  let last: number | null = null;
  for (let steps = 0; !made(lock);) {
    const holder = holderOf(lock);
    steps = Object.is(holder, last) ? steps + 1 : 0;
    last = holder;
    if (holder === null) continue;
    if (holder === 0 ? steps > EMPTY_STEPS : isGone(lock, holder)) takeAway(lock, holder, steps);
    if (steps === EMPTY_STEPS && holder !== 0) waits(holder);
    if (steps > MOST_STEPS)
      throw new Error(`process ${holder} has been at work for ten minutes. Wait for it; if there is none, delete ${lock}.`);
    await wait(STEP_MS);
  }
  ours.add(lock);
  try {
    return await work();
  } finally {
    ours.delete(lock);
    rmSync(lock, { force: true });
  }
}

/** Makes the file with our number in it; false where it is there. A full disk leaves no empty one. */
function made(lock: string): boolean {
  let file: number;
  try {
    file = openSync(lock, 'wx');
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw error;
  }
  try {
    writeSync(file, String(process.pid));
    return true;
  } catch (error) {
    rmSync(lock, { force: true });
    throw error;
  } finally {
    closeSync(file);
  }
}

/** Number of the process that holds it; 0 while it is being written, NaN where it holds something else, null where it is gone. */
function holderOf(lock: string): number | null {
  try {
    return Number(readFileSync(lock, 'utf8').trim());
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null;
    throw error;
  }
}

function isGone(lock: string, holder: number): boolean {
  if (!Number.isInteger(holder) || holder < 0) return true;
  if (holder === process.pid) return !ours.has(lock);
  try {
    process.kill(holder, 0);
    return false;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'ESRCH';
  }
}

/** Two who find it left must not both take it away: the slower would take that of the quicker. */
function takeAway(lock: string, holder: number, steps: number): void {
  const going = `${lock}.going`;
  if (!made(going)) {
    // Held for a moment only; still there after seconds, it was left itself.
    if (steps % 60 === 59) rmSync(going, { force: true });
    return;
  }
  try {
    if (Object.is(holderOf(lock), holder)) rmSync(lock, { force: true });
  } finally {
    rmSync(going, { force: true });
  }
}
