/*
 * How far the drawing of pages is: a bar on a terminal, one plain line elsewhere. Pages are counted where they are written;
 * how many there will be is what the last edition held.
 */
import { readdirSync } from 'node:fs';

/** To be ended, with or without a sentence: until then a timer runs. A second end is nothing. */
export type Progress = { end: (sentence?: string) => void };

/** `expected` 0 where there was no edition before: then only the count is shown. */
export function startProgress(folder: string, expected: number, output: NodeJS.WriteStream = process.stdout): Progress {
  if (!output.isTTY) return { end: (sentence) => void (sentence && output.write(`${sentence}\n`)) };
  const draw = (): void => {
    output.write(`\r${bar(pagesIn(folder), expected)}`);
  };
  let timer: NodeJS.Timeout | undefined = setInterval(draw, 250).unref();
  return (running = {
    end: (sentence) => {
      if (!timer) return;
      clearInterval(timer);
      timer = undefined;
      output.write(`\r${' '.repeat(60)}\r${sentence ? `${sentence}\n` : ''}`);
    },
  });
}

let running: Progress | undefined;

/** Takes the bar away where a build stopped on the way. */
export const endProgress = (): void => running?.end();

/** Folders come and go while they are counted. */
function pagesIn(folder: string): number {
  try {
    return readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.html')).length;
  } catch {
    return 0;
  }
}

/** `Drawing pages  [######........]  93 of about 179` */
export function bar(done: number, expected: number): string {
  if (expected === 0) return `Drawing pages  ${done}`;
  const full = Math.min(24, Math.round((24 * done) / expected));
  return `Drawing pages  [${'#'.repeat(full)}${'.'.repeat(24 - full)}]  ${done} of about ${expected}`;
}
