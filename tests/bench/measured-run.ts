/* Runs a command as a person would and measures it: time on the wall, time of the processors, the most memory it held with all it started, and when it said what. */
import { spawn } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';

export type Run = {
  seconds: number;
  processorSeconds: number;
  /** NaN where there is no /proc to ask. */
  peakMB: number;
  /** What it printed, each line with the second at which it came. */
  lines: { second: number; text: string }[];
};

const LOOK_MS = 50;

/** @throws Error with all it printed when it does not end with 0. */
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

/** One after the other, as one run. */
export const together = (runs: readonly Run[]): Run => ({
  seconds: sum(runs.map(({ seconds }) => seconds)),
  processorSeconds: sum(runs.map(({ processorSeconds }) => processorSeconds)),
  peakMB: Math.max(...runs.map(({ peakMB }) => peakMB)),
  lines: runs.flatMap(({ lines }) => lines),
});

const sum = (numbers: readonly number[]): number => numbers.reduce((all, each) => all + each, 0);

/** Seconds that ended children used, and theirs: the fields cutime and cstime of proc(5), in hundredths. */
function childProcessor(): number {
  if (!existsSync('/proc/self/stat')) return Number.NaN;
  const fields = readFileSync('/proc/self/stat', 'utf8')
    .replace(/^.*\) /, '')
    .split(' ');
  return (Number(fields[13]) + Number(fields[14])) / 100;
}

/** Resident memory of a process and all below it, in MB; 0 for one that has ended, or where there is no /proc. */
function memoryOf(process: number | string): number {
  const own = Number(/^VmRSS:\s+(\d+)/m.exec(readOr(`/proc/${process}/status`))?.[1] ?? 0) / 1024;
  const below = threadsOf(process).flatMap((thread) => readOr(`/proc/${process}/task/${thread}/children`).split(' ').filter(Boolean));
  return own + sum(below.map(memoryOf));
}

// A process may end while we look.
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
