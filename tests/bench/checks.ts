/* How long `check` takes over clubs of 200 and 5,000 files; and the book of the demo club. */
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { projectFolder } from '../../src/desk/places.ts';
import { goodClub } from '../faulty/cases.ts';
import { bookSeconds } from './builds.ts';
import { writeClub } from './club.ts';
import { measured } from './measured-run.ts';
import { median, type Row } from './table.ts';

const ROUNDS = 3;

export async function checks(quick: boolean): Promise<Row[]> {
  const rows: Row[] = [];
  for (const [files, most] of [
    [200, 1],
    [5000, 8],
  ] as const) {
    if (quick && files > 1000) continue;
    rows.push({ part: 'check', name: `check, ${files} files`, measured: await checkSeconds(files), unit: 's', most });
  }
  return [...rows, ...(await demoBook())];
}

async function checkSeconds(files: number): Promise<number> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  try {
    const before = readdirSync(goodClub, { recursive: true, withFileTypes: true }).filter((each) => each.isFile()).length;
    writeClub(folder, files - before);
    const seconds: number[] = [];
    for (let round = 0; round < ROUNDS; round += 1)
      seconds.push(
        (await measured(process.execPath, [join(projectFolder, 'src', 'desk', 'check.ts'), '--content', folder], projectFolder)).seconds,
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
      [join(projectFolder, 'src', 'desk', 'build.ts'), '--out', join(folder, 'site')],
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
