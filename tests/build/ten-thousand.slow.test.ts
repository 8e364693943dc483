/* Clubs of ten thousand files: check counts them, reports every fault, and finishes. Duration and memory are reported without a limit. */
import assert from 'node:assert/strict';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { test, type TestContext } from 'vitest';
import { filesIn, openWorkshop } from './workshop.ts';
import { runDesk, type Ran } from '../setup/built-site.ts';

const { folder, copy } = openWorkshop();
const COUNT = 10_000;

/** Runs check and returns its duration and its peak memory. */
async function checked(club: string, t: TestContext): Promise<Ran> {
  const watch = join(folder, 'watch.cjs');
  const record = join(folder, 'memory.txt');
  writeFileSync(
    watch,
    `process.on('exit', () => require('node:fs').writeFileSync(${JSON.stringify(record)}, String(process.resourceUsage().maxRSS)));`,
  );
  const began = performance.now();
  const ran = await runDesk('check', ['--content', club], { NODE_OPTIONS: `--require "${watch.replaceAll('\\', '/')}"` });
  void t.annotate(
    `${((performance.now() - began) / 1000).toFixed(1)} s, ${(Number(readFileSync(record, 'utf8')) / 1024).toFixed(0)} MB at most`,
  );
  assert.doesNotMatch(ran.output, /^\s+at |heap|Error:/m);
  return ran;
}

/** A club with so many extra files, of three kinds in turn. */
function grown(name: (index: number) => string = (index) => String(index)): { club: string; files: number } {
  const club = copy('southern');
  const own = (path: string): string => readFileSync(join(club, path), 'utf8');
  const [meeting, article, book] = [own('meetings/2026-10-03-yard-day.mdx'), own('articles/stings.mdx'), own('reading/first-valley.yaml')];
  mkdirSync(join(club, 'reading'), { recursive: true });
  for (let index = 0; index < COUNT; index += 1) {
    const title = `title: One of many, number ${index}`;
    const [path, text] = [
      [`meetings/many-${name(index)}.mdx`, meeting],
      [`articles/many-${name(index)}.mdx`, article],
      [`reading/many-${name(index)}.yaml`, book],
    ][index % 3]!;
    writeFileSync(join(club, path!), text!.replace(/^title: .*/m, title));
  }
  return { club, files: filesIn(club).length };
}

test('ten thousand valid files', { timeout: 300_000, tags: ['slow'] }, async (t) => {
  const { club, files } = grown();
  assert.ok(files > COUNT);
  const { code, output } = await checked(club, t);
  assert.equal(output.trimEnd().split('\n').at(-1), `No faults in ${files} files.`);
  assert.equal(code, 0);
});

test('ten thousand files with a fault each', { timeout: 300_000, tags: ['slow'] }, async (t) => {
  const { club } = grown();
  for (const path of filesIn(club).filter((each) => each.includes('/many-')))
    writeFileSync(join(club, path), readFileSync(join(club, path), 'utf8').replace(/^checked: .*/m, 'checked: 2/3/26'));
  const { code, output } = await checked(club, t);
  const lines = output.trimEnd().split('\n');
  assert.equal(code, 1);
  assert.equal(lines.at(-1), `${COUNT} faults in ${COUNT} files.`);
  assert.equal(
    lines.filter((line) =>
      /^(?:meetings|articles|reading)\/many-\d+\.(?:mdx|yaml):\d+:10 field: checked: found "2\/3\/26"; write /.test(line),
    ).length,
    COUNT,
  );
});

test('ten thousand files whose names differ from others by case alone', { timeout: 300_000, tags: ['slow'] }, async (t) => {
  const { club } = grown((index) => (index % 2 === 0 ? `twin-${index - (index % 6)}` : `TWIN-${index - (index % 6)}`));
  const many = filesIn(club).filter((each) => each.includes('/many-'));
  const { code, output } = await checked(club, t);
  assert.equal(code, 1);
  const twins = new Set(many.map((path) => path.toLowerCase())).size;
  assert.equal(output.split('\n').filter((line) => / same-name: /.test(line)).length, many.length - twins);
  assert.ok(many.length === twins || many.length - twins > 1000, `${many.length} files, ${twins} names`);
});
