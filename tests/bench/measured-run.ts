/*
 * Runs a command as a person would and measures it: wall time, CPU time, peak memory with all child processes, and the time of each
 * output line.
 */
import { spawn } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';

export type Run = {
  seconds: number;
  processorSeconds: number;
  /** NaN where there is no /proc. */
  peakMB: number;
  /** Its output, each line with its time in seconds. */
  lines: { second: number; text: string }[];
};

const LOOK_MS = 50;

/** @throws Error with its output when it does not exit with 0. */
export async function measured(command: string, words: readonly string[], cwd: string): Promise<Run> {
  const before = childProcessor();
  const began = performance.now();
  const child = spawn(command, words, { cwd, env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' }, stdio: ['ignore', 'pipe', 'pipe'] });
  const lines: Run['lines'] = [];
  const since = (): number => (performance.now() - began) / 1000;
  for (const stream of [child.stdout, child.stderr]) {
    stream.setEncoding('utf8').on('data', (said: string) =>
      lines.push(
        ...said
          .split('\n')
          .filter(Boolean)
          .map((text) => ({ second: since(), text })),
      ),
    );
  }
  let peak = 0;
  const timer = setInterval(() => (peak = Math.max(peak, memoryOf(child.pid!))), LOOK_MS);
  const code = await new Promise<number | null>((resolve, reject) => child.on('error', reject).on('close', resolve));
  clearInterval(timer);
  if (code !== 0) throw new Error(`${command} ${words.join(' ')} ended with ${code}:\n${lines.map(({ text }) => text).join('\n')}`);
  return { seconds: since(), processorSeconds: childProcessor() - before, peakMB: peak > 0 ? peak : Number.NaN, lines };
}

/** Combines successive runs to one. */
export const together = (runs: readonly Run[]): Run => ({
  seconds: sum(runs.map(({ seconds }) => seconds)),
  processorSeconds: sum(runs.map(({ processorSeconds }) => processorSeconds)),
  peakMB: Math.max(...runs.map(({ peakMB }) => peakMB)),
  lines: runs.flatMap(({ lines }) => lines),
});

const sum = (numbers: readonly number[]): number => numbers.reduce((all, each) => all + each, 0);

/** CPU seconds of finished children and their own: the fields cutime and cstime of proc(5), in hundredths. */
function childProcessor(): number {
  if (!existsSync('/proc/self/stat')) return Number.NaN;
  const fields = readFileSync('/proc/self/stat', 'utf8')
    .replace(/^.*\) /, '')
    .split(' ');
  return (Number(fields[13]) + Number(fields[14])) / 100;
}

/** Resident memory of a process and its children, in MB. 0 for a finished one, or where there is no /proc. */
function memoryOf(process: number | string): number {
  const own = Number(/^VmRSS:\s+(\d+)/m.exec(readOr(`/proc/${process}/status`))?.[1] ?? 0) / 1024;
  const below = threadsOf(process).flatMap((thread) => readOr(`/proc/${process}/task/${thread}/children`).split(' ').filter(Boolean));
  return own + sum(below.map(memoryOf));
}

// A process may end during the measurement.
function readOr(path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return '';
  }
}

function threadsOf(process: number | string): string[] {
  try {
    return readdirSync(`/proc/${process}/task`);
  } catch {
    return [];
  }
}
