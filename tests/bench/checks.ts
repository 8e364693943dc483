/* Duration of `check`: the whole command for the demo club, and clubs of 200 and 5,000 files. Of the demo club also the build. */
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { projectFolder } from '../../src/cli/paths.ts';
import { cacheFile } from '../../src/source/parse-cache.ts';
import { goodClub } from '../fixtures/invalid/cases.ts';
import { bookSeconds } from './builds.ts';
import { writeClub } from './club.ts';
import { measured, type Run } from './measured-run.ts';
import { median, type Row } from './table.ts';

const ROUNDS = 5;

const row = (name: string, measuredAt: number, more: Partial<Row> = {}): Row => ({
  part: 'check',
  name,
  measured: measuredAt,
  unit: 's',
  ...more,
});

export async function checks(quick: boolean): Promise<Row[]> {
  const rows = await checkRows('the demo club', [], { seconds: 4, processor: 3 });
  for (const files of quick ? [200] : [200, 5000]) rows.push(...(await ofClub(files)));
  return [...rows, ...(await demoBuild())];
}

/** Through the launcher, as npm starts it. Warm: a run before has kept what it parsed and compiled. */
async function checkRows(name: string, words: readonly string[], most: { seconds?: number; processor?: number } = {}): Promise<Row[]> {
  const run = (): Promise<Run> => measured(process.execPath, [join('scripts', 'launch.mjs'), 'check', ...words], projectFolder);
  for (const kept of [cacheFile, join(projectFolder, '.almanac', 'compiled')]) rmSync(kept, { recursive: true, force: true });
  const cold = await run();
  const warm: Run[] = [];
  for (let round = 0; round < ROUNDS; round += 1) warm.push(await run());
  const middle = (of: (run: Run) => number): number => median(warm.map(of));
  return [
    row(
      `check, ${name}, warm`,
      middle(({ seconds }) => seconds),
      most.seconds ? { most: most.seconds } : {},
    ),
    row(
      `check, ${name}, warm: processor`,
      middle(({ processorSeconds }) => processorSeconds),
      most.processor ? { most: most.processor } : {},
    ),
    row(`check, ${name}, nothing kept`, cold.seconds, { note: `processor ${cold.processorSeconds.toFixed(2)} s` }),
  ];
}

async function ofClub(files: number): Promise<Row[]> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  try {
    const before = readdirSync(goodClub, { recursive: true, withFileTypes: true }).filter((each) => each.isFile()).length;
    writeClub(folder, files - before);
    return await checkRows(`${files} files`, ['--content', folder]);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function demoBuild(): Promise<Row[]> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  try {
    rmSync(cacheFile, { force: true });
    const run = await measured(
      process.execPath,
      [join(projectFolder, 'src', 'cli', 'build.ts'), '--out', join(folder, 'site')],
      projectFolder,
    );
    const pages = run.lines.flatMap(({ text }) => /^Edition recorded: (\d+) pages/.exec(text)?.[1] ?? [])[0];
    const note = `${pages} pages`;
    return [
      row('the demo club, whole build', run.seconds, { note: `${note}; processor ${run.processorSeconds.toFixed(1)} s` }),
      row('the book of the demo club', bookSeconds(run), { most: 3, note }),
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
