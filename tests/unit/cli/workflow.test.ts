// The shipped workflows, of this repository and for those of clubs: their steps are the commands of the guide, they publish only what
// passed the check, and mistakes appear beside their lines. The host's own machines are not tested here.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'vitest';
import { parse } from 'yaml';
import { unwrap } from '../../../shared/result.ts';
import { readArguments } from '../../../src/cli/arguments.ts';
import { annotations } from '../../../src/cli/annotations.ts';
import { commands } from '../../../src/cli/commands.ts';
import { projectFolder } from '../../../src/cli/paths.ts';

type Step = { run?: string; env?: Record<string, string>; uses?: string };
type Job = { steps: Step[]; needs?: string; if?: string; permissions?: Record<string, string> };
type Workflow = { on: Record<string, unknown>; permissions: Record<string, string>; jobs: Record<string, Job> };
const workflow = (...path: string[]): Workflow => parse(readFileSync(join(projectFolder, ...path), 'utf8')) as Workflow;
const { jobs } = workflow('.github', 'workflows', 'publish.yml');

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

for (const name of ['one-club.yml', 'several-clubs.yml']) {
  const club = workflow('docs', 'club-repository', name);
  const { build, publish } = club.jobs as { build: Job; publish: Job };
  const steps = Object.values(club.jobs).flatMap((job) => job.steps);

  test(`${name}: only the job that publishes has rights, and it runs no program of ours`, () => {
    assert.deepEqual(Object.keys(club.jobs), ['build', 'publish']);
    assert.deepEqual(club.permissions, { contents: 'read' });
    assert.deepEqual([build.permissions, publish.permissions], [undefined, { pages: 'write', 'id-token': 'write' }]);
    assert.deepEqual(
      publish.steps.filter(({ run }) => run),
      [],
    );
    assert.equal(publish.needs, 'build');
    assert.equal(publish.if, "github.ref == 'refs/heads/main' && github.event_name != 'pull_request'");
    assert.doesNotMatch(JSON.stringify(club), /secrets\./);
  });

  test(`${name}: every action is pinned to a commit, and the generator to a release`, () => {
    const uses = steps.flatMap((step) => (step.uses ? [step.uses] : []));
    assert.equal(uses.length, 4);
    for (const use of uses) assert.match(use, /^actions\/[a-z-]+@[0-9a-f]{40}$/);
    assert.ok(steps.some(({ run }) => run === 'npm install --ignore-scripts'));
  });

  test(`${name}: it runs on each change, and once a month by a valid plan`, () => {
    assert.deepEqual(Object.keys(club.on), ['push', 'pull_request', 'schedule', 'workflow_dispatch']);
    // Minute, hour, day of the month, month, day of the week (POSIX crontab).
    assert.match((club.on.schedule as { cron: string }[])[0]!.cron, /^[0-5]?\d ([01]?\d|2[0-3]) 1 \* \*$/);
  });

  test(`${name}: its commands have valid options`, () => {
    const typed = steps.flatMap(({ run }) => [...(run ?? '').matchAll(/npm run (check|build)(?: -- (.*?))?(?:$| \|\|)/gm)]);
    assert.deepEqual(
      typed.map(([, command]) => command),
      ['check', 'build'],
    );
    for (const [, command, options = ''] of typed) {
      const filled = options
        .replace(/"\/?\$(?:base|\{GITHUB_REPOSITORY#\*\/\})[^"]*"/, '/our-almanac/')
        .replace(/"(?:https:\/\/)?\$(?:site|GITHUB_REPOSITORY_OWNER)[^"]*"/, 'https://club.example')
        .replace('"$(date -u +%F)"', '2026-11-01')
        .replaceAll('$club', 'first-club')
        .replaceAll('"', '');
      assert.doesNotMatch(filled, /\$/);
      const read = readArguments(command as 'check' | 'build', filled.split(' ').filter(Boolean), {});
      assert.ok(read.ok, JSON.stringify(read));
    }
  });
}

test('package.json of a club names this release in one place, and every command', () => {
  const own = JSON.parse(readFileSync(join(projectFolder, 'docs', 'club-repository', 'package.json'), 'utf8'));
  const { version, bin } = JSON.parse(readFileSync(join(projectFolder, 'package.json'), 'utf8'));
  assert.equal(JSON.stringify(own).split(version).length, 2);
  assert.deepEqual(Object.keys(own.dependencies), Object.keys(bin));
  for (const [name, line] of Object.entries(own.scripts)) assert.equal(line, `association-almanac ${name}`);
  assert.deepEqual(
    Object.keys(own.scripts).sort(),
    Object.keys(commands)
      .filter((name) => name !== 'test' && name !== 'bench')
      .sort(),
  );
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
