// The shipped workflow: its steps are the commands of the guide, it publishes only what passed the check, and mistakes appear beside
// their lines. The host's own machines are not tested here.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'vitest';
import { parse } from 'yaml';
import { unwrap } from '../../../shared/result.ts';
import { readArguments } from '../../../src/cli/arguments.ts';
import { annotations } from '../../../src/cli/annotations.ts';
import { projectFolder } from '../../../src/cli/paths.ts';

type Step = { run?: string; env?: Record<string, string>; uses?: string };
type Job = { steps: Step[]; needs?: string; if?: string };
const { jobs } = parse(readFileSync(join(projectFolder, '.github', 'workflows', 'publish.yml'), 'utf8')) as { jobs: Record<string, Job> };

test('every command in it is one of ours, with valid options', () => {
  const { scripts } = JSON.parse(readFileSync(join(projectFolder, 'package.json'), 'utf8')) as { scripts: Record<string, string> };
  const runs = Object.values(jobs).flatMap(({ steps }) => steps.flatMap(({ run }) => (run ? [run] : [])));
  assert.deepEqual(
    runs.map((run) => /^npm run (\w+)/.exec(run)?.[1]),
    ['check', 'build'],
  );
  for (const run of runs) assert.ok(/^npm run (\w+)/.exec(run)![1]! in scripts, run);
  // As the host fills it in: a repository's own folder, and a site with its own domain.
  for (const base of ['/bees', '']) {
    const typed = runs[1]!.split(' -- ')[1]!.replace('"$ORIGIN"', 'https://club.example').replace('"$BASE/"', `${base}/`).split(' ');
    assert.equal(unwrap(readArguments('build', typed, {})).values.base, `${base}/`);
  }
});

test('it publishes only what passed the check, and never a pull request', () => {
  assert.equal(jobs.publish!.needs, 'check');
  assert.match(jobs.publish!.if!, /github\.ref == 'refs\/heads\/main' && github\.event_name != 'pull_request'/);
});

test('a mistake is a sentence beside its line', () => {
  assert.deepEqual(
    annotations(
      [
        {
          path: 'meetings/june.mdx',
          line: 7,
          column: 8,
          rule: 'field',
          field: 'day',
          found: '"2/3/26"',
          write: 'a day such as 2026-04-18, 100 % sure',
        },
      ],
      'content',
    ),
    ['::error file=content/meetings/june.mdx,line=7,col=8,title=field::day: found "2/3/26"; write a day such as 2026-04-18, 100 %25 sure'],
  );
  assert.match(
    annotations([{ path: 'a,b:c.mdx', line: 1, column: 1, rule: 'names', field: 'x', found: 'two\nlines', write: 'one' }], '')[0]!,
    /file=a%2Cb%3Ac\.mdx,.*found two%0Alines/,
  );
});
