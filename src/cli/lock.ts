/*
 * Cross-process lock, held as a file with a process id. Two builds at once would overwrite each other's output: Astro has working files
 * in the project, and a finished site replaces the one before.
 */
import { closeSync, mkdirSync, openSync, readFileSync, rmSync, writeSync } from 'node:fs';
import { dirname } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';

const STEP_MS = 50;
/** A second. The process id is written right after the file is created, so a file that stays empty belongs to a killed process. */
const EMPTY_STEPS = 20;
/** Ten minutes behind one process. Its id may belong to another program by now, which cannot be detected. */
const MOST_STEPS = 12_000;

/** The locks of this process. Its id may equal that of a killed one, especially in a container. */
const ours = new Set<string>();

/**
 * Runs `work` when no other process holds the lock file. `waits` is called once, after a second, with the process that holds it. Throws
 * with a sentence after ten minutes behind the same process. The lock is never taken from a live process.
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

/** Creates the file with our process id. False where it exists. A full disk leaves no empty file. */
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

/** Process id of the holder: 0 while it is being written, NaN for other content, null where the file is gone. */
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

/** Prevents two processes from both removing a stale lock, because the slower would remove the lock of the quicker. */
function takeAway(lock: string, holder: number, steps: number): void {
  const going = `${lock}.going`;
  if (!made(going)) {
    // This lock is held for a moment only, so one that is still there after seconds is stale itself.
    if (steps % 60 === 59) rmSync(going, { force: true });
    return;
  }
  try {
    if (Object.is(holderOf(lock), holder)) rmSync(lock, { force: true });
  } finally {
    rmSync(going, { force: true });
  }
}
