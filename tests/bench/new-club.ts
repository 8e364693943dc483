/* From an answers file to a built site, in the two commands of the guide, and the number of questions that the terminal asks. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { projectFolder } from '../../src/cli/paths.ts';
import { QUESTIONS } from '../../src/cli/new/questions.ts';
import { answersFile } from '../fixtures/new-club.ts';
import { measured, together } from './measured-run.ts';
import type { Row } from './table.ts';

export async function newClub(): Promise<Row[]> {
  const folder = mkdtempSync(join(tmpdir(), 'new-club-'));
  const [club, site] = [join(folder, 'club'), join(folder, 'site')];
  const run = (command: string, words: readonly string[]) =>
    measured(process.execPath, [join(projectFolder, 'src', 'cli', command), ...words], projectFolder);
  try {
    const { seconds } = together([
      await run('new.ts', ['club', club, '--answers', answersFile('waikato')]),
      await run('build.ts', ['--content', club, '--out', site]),
    ]);
    // In a land whose country's book offers both lines and no station, as the file has it.
    const given = { land: 'NZ-WKO', hemisphere: 'south' };
    const asked = QUESTIONS.filter((question) => !question.silent && (question.asked?.(given) ?? true));
    return [
      { part: 'new-club', name: 'answers file to a built site', measured: seconds, unit: 's' },
      {
        part: 'new-club',
        name: 'questions asked',
        measured: asked.length,
        unit: '',
        note: `in ${new Set(asked.map(({ part }) => part)).size} parts`,
      },
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
