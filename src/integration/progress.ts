/*
 * Progress of drawing pages: a bar on a terminal, one plain line elsewhere. It counts the written pages. The expected total is that of
 * the last edition.
 */
import { readdirSync } from 'node:fs';

/** Must be ended, with or without a sentence, because a timer runs until then. A second call does nothing. */
export type Progress = { end: (sentence?: string) => void };

/** `expected` is 0 without an earlier edition. Then only the count is shown. */
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

/** Removes the bar where a build stopped early. */
export const endProgress = (): void => running?.end();

/** Folders may appear and disappear during the count. */
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
