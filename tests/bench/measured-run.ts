/* Runs a command as a person would and measures it: time on the wall, time of the processors, and the most memory it held, with all it started. */
import { spawn } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';

export type Run = { seconds: number; processorSeconds: number; peakMB: number };

/** Needs /proc for the memory of all that was started; elsewhere the peak is NaN and is left out of the table. */
export async function measured(command: string, words: readonly string[], cwd: string, environment: NodeJS.ProcessEnv = {}): Promise<Run> {
  const began = performance.now();
  const before = childProcessor();
  const child = spawn(command, words, { cwd, env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', ...environment }, stdio: ['ignore', 'pipe', 'pipe'] });
  let output = '';
  for (const stream of [child.stdout, child.stderr]) stream.setEncoding('utf8').on('data', (text: string) => (output += text));
  let peak = 0;
  const timer = setInterval(() => (peak = Math.max(peak, memoryOf(child.pid!))), 40);
  const code = await new Promise<number | null>((resolve, reject) => child.on('error', reject).on('close', resolve));
  clearInterval(timer);
  if (code !== 0) throw new Error(`${command} ${words.join(' ')} ended with ${code}:\n${output}`);
  return { seconds: (performance.now() - began) / 1000, processorSeconds: childProcessor() - before, peakMB: peak > 0 ? peak : Number.NaN };
}

/** Seconds that ended children used, from the fields cutime and cstime of proc(5). */
function childProcessor(): number {
  if (!existsSync('/proc/self/stat')) return Number.NaN;
  const fields = readFileSync('/proc/self/stat', 'utf8').replace(/^.*\) /, '').split(' ');
  return (Number(fields[13]) + Number(fields[14])) / 100;
}

/** Resident memory of a process and all below it, in MB. */
function memoryOf(root: number): number {
  if (!existsSync('/proc')) return 0;
  const parents = new Map<number, number>();
  const sizes = new Map<number, number>();
  for (const name of readdirSync('/proc')) {
    if (!/^\d+$/.test(name)) continue;
    try {
      const status = readFileSync(`/proc/${name}/status`, 'utf8');
      parents.set(Number(name), Number(/^PPid:\s+(\d+)/m.exec(status)?.[1]));
      sizes.set(Number(name), Number(/^VmRSS:\s+(\d+)/m.exec(status)?.[1] ?? 0) / 1024);
    } catch {
      // It ended while we looked.
    }
  }
  const below = (pid: number): boolean => pid === root || (parents.has(pid) && parents.get(pid)! > 1 && below(parents.get(pid)!));
  return [...sizes].filter(([pid]) => below(pid)).reduce((sum, [, size]) => sum + size, 0);
}
