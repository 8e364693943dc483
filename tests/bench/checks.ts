/* Duration of `check` for the demo club and for clubs of 200 and 5,000 files, and of the book of the demo club. */
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { projectFolder } from '../../src/cli/paths.ts';
import { goodClub } from '../fixtures/invalid/cases.ts';
import { bookSeconds } from './builds.ts';
import { writeClub } from './club.ts';
import { measured, type Run } from './measured-run.ts';
import { median, type Row } from './table.ts';

const ROUNDS = 3;

export async function checks(quick: boolean): Promise<Row[]> {
  const rows: Row[] = [];
  for (const files of quick ? [200] : [200, 5000])
    rows.push({ part: 'check', name: `check, ${files} files`, measured: await checkSeconds(files), unit: 's' });
  return [...rows, ...(await demoCheck()), ...(await demoBook())];
}

async function demoCheck(): Promise<Row[]> {
  const runs: Run[] = [];
  for (let round = 0; round < ROUNDS; round += 1)
    runs.push(await measured(process.execPath, [join(projectFolder, 'src', 'cli', 'check.ts')], projectFolder));
  const name = 'check, the demo club';
  return [
    { part: 'check', name, measured: median(runs.map(({ seconds }) => seconds)), unit: 's', most: 4 },
    {
      part: 'check',
      name: `${name}: processor`,
      measured: median(runs.map(({ processorSeconds }) => processorSeconds)),
      unit: 's',
      most: 3,
    },
  ];
}

async function checkSeconds(files: number): Promise<number> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  try {
    const before = readdirSync(goodClub, { recursive: true, withFileTypes: true }).filter((each) => each.isFile()).length;
    writeClub(folder, files - before);
    const seconds: number[] = [];
    for (let round = 0; round < ROUNDS; round += 1)
      seconds.push(
        (await measured(process.execPath, [join(projectFolder, 'src', 'cli', 'check.ts'), '--content', folder], projectFolder)).seconds,
      );
    return median(seconds);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function demoBook(): Promise<Row[]> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  try {
    const run = await measured(
      process.execPath,
      [join(projectFolder, 'src', 'cli', 'build.ts'), '--out', join(folder, 'site')],
      projectFolder,
    );
    const pages = run.lines.flatMap(({ text }) => /^Edition recorded: (\d+) pages/.exec(text)?.[1] ?? [])[0];
    return [
      { part: 'check', name: 'the demo club, whole build', measured: run.seconds, unit: 's', note: `${pages} pages` },
      { part: 'check', name: 'the book of the demo club', measured: bookSeconds(run), unit: 's', most: 3, note: `${pages} pages` },
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
