/* Preview's answer to an edit: from saving an article's file until a request for its page has the new words. The four side by side. */
import { spawn } from 'node:child_process';
import { appendFileSync } from 'node:fs';
import { articleAt } from './club.ts';
import { NAMES, openSides, SIDES, type Command } from './sides.ts';
import { median, type Row } from './table.ts';

const EDITS = 5;
/** Between two edits, as nobody saves twice in a second. */
const PAUSE_MS = 1000;
const LONGEST_MS = 60_000;

export async function preview(quick: boolean): Promise<Row[]> {
  const rows: Row[] = [];
  for (const pages of quick ? [100] : [100, 1000]) {
    const sides = await openSides(pages);
    for (const side of SIDES) {
      const { ready, answers } = await edited(sides.preview(side), sides.article(side));
      const name = (words: string): string => `${pages} pages: ${words}, ${NAMES[side]}`;
      const row = (words: string, measured: number, note = ''): Row => ({
        part: 'preview',
        name: name(words),
        measured,
        unit: 'ms',
        ...(note ? { note } : {}),
      });
      rows.push(row('start to the first page', ready));
      rows.push(row('an edit to its page', median(answers), `median of ${answers.length}; worst ${Math.max(...answers).toFixed(0)} ms`));
    }
    sides.remove();
  }
  return rows;
}

async function edited({ words, cwd }: Command, article: string): Promise<{ ready: number; answers: number[] }> {
  const began = performance.now();
  const child = spawn(process.execPath, words, {
    cwd,
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', NO_COLOR: '1', FORCE_COLOR: '0' },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const ended = new Promise<void>((resolve) => child.on('close', () => resolve()));
  try {
    const address = await addressOf(child);
    const page = new URL(articleAt(), address).href;
    await until(page, '<h1');
    const ready = performance.now() - began;
    const answers: number[] = [];
    for (let edit = 1; edit <= EDITS; edit += 1) {
      await new Promise((resolve) => setTimeout(resolve, PAUSE_MS));
      const added = `Edited for the ${edit}. time.`;
      const saved = performance.now();
      appendFileSync(article, `\n${added}\n`);
      await until(page, added);
      answers.push(performance.now() - saved);
    }
    return { ready, answers };
  } finally {
    child.kill('SIGTERM');
    await ended;
  }
}

/** The address that the program prints. */
function addressOf(child: ReturnType<typeof spawn>): Promise<string> {
  return new Promise((resolve, reject) => {
    let output = '';
    for (const stream of [child.stdout!, child.stderr!])
      stream.setEncoding('utf8').on('data', (said: string) => {
        output += said;
        const port = /http:\/\/localhost:(\d+)/.exec(output)?.[1];
        if (port) resolve(`http://localhost:${port}/`);
      });
    child.on('close', (code) => reject(new Error(`the preview ended with ${code}:\n${output}`)));
  });
}

/** Asks again and again, one request after the other, as somebody who reloads. */
async function until(page: string, words: string): Promise<void> {
  const began = performance.now();
  while (performance.now() - began < LONGEST_MS) {
    const answer = await fetch(page).catch(() => null);
    if (answer?.ok && (await answer.text()).includes(words)) return;
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
  throw new Error(`${page} never had "${words}"`);
}
