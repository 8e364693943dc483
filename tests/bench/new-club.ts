/* From an answers file to a built site, in the two commands of the guide, the questions that the terminal asks, and the blanks left. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { foundIn, isBlank } from '../../src/checks/drafts.ts';
import { projectFolder } from '../../src/cli/paths.ts';
import type { Day } from '../../shared/days/day.ts';
import { QUESTIONS } from '../../src/cli/new/questions.ts';
import { readFolder } from '../../src/source/folder.ts';
import { answersFile } from '../fixtures/new-club.ts';
import { measured, type Run } from './measured-run.ts';
import type { Row } from './table.ts';

export async function newClub(): Promise<Row[]> {
  const folder = mkdtempSync(join(tmpdir(), 'new-club-'));
  const [club, site] = [join(folder, 'club'), join(folder, 'site')];
  const run = (command: string, words: readonly string[]): Promise<Run> =>
    measured(process.execPath, [join(projectFolder, 'src', 'cli', command), ...words], projectFolder);
  const row = (name: string, value: number, more: Partial<Row> = {}): Row => ({
    part: 'new-club',
    name,
    measured: value,
    unit: '',
    ...more,
  });
  try {
    const made = await run('new.ts', ['club', club, '--answers', answersFile('waikato')]);
    const { faults, drafts } = foundIn(readFolder(club));
    const built = await run('build.ts', ['--content', club, '--out', site]);
    // In a land whose country's book offers both lines and no station, as the file has it, on a computer of that land.
    const given = { land: 'NZ-WKO', hemisphere: 'south' };
    const context = { today: '2026-11-29' as Day, zone: 'Pacific/Auckland' };
    const asked = QUESTIONS.filter((question) => !question.silent?.(given, context) && (question.asked?.(given) ?? true));
    return [
      row('answers file to a built site', made.seconds + built.seconds, { unit: 's' }),
      row('its build', built.seconds, { unit: 's', most: 30 }),
      row('questions asked', asked.length, { most: 14, note: `in ${new Set(asked.map(({ part }) => part)).size} parts` }),
      row('blanks left', [...faults, ...drafts].filter(isBlank).length, { most: 0 }),
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
