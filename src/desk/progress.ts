/*
 * How far the drawing of pages is: a bar on a terminal, one plain line elsewhere. Pages are counted where they are written;
 * how many there will be is what the last edition held.
 */
import { existsSync, readdirSync } from 'node:fs';

export type Progress = { end: (sentence: string) => void };

/** `expected` 0 where there was no edition before: then only the count is shown. */
export function watchPages(folder: string, expected: number, output: NodeJS.WriteStream = process.stdout): Progress {
  if (!output.isTTY) return { end: (sentence) => void output.write(`${sentence}\n`) };
  const draw = (): void => {
    const done = existsSync(folder) ? readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.html')).length : 0;
    output.write(`\r${bar(done, expected)}`);
  };
  const timer = setInterval(draw, 250);
  return {
    end: (sentence) => {
      clearInterval(timer);
      output.write(`\r${' '.repeat(60)}\r${sentence}\n`);
    },
  };
}

/** `Drawing pages  [######........]  93 of about 179` */
export function bar(done: number, expected: number): string {
  if (expected === 0) return `Drawing pages  ${done}`;
  const full = Math.min(24, Math.round((24 * done) / expected));
  return `Drawing pages  [${'#'.repeat(full)}${'.'.repeat(24 - full)}]  ${done} of about ${expected}`;
}
