// A release, packed and installed in a club's own repository, away from the project: the commands of its package.json and the steps of the
// shipped workflows. npm installs it where it has the packages or a network. Otherwise the packages of this project are linked.
import assert from 'node:assert/strict';
import { spawn, spawnSync } from 'node:child_process';
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  realpathSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, test } from 'vitest';
import { parse } from 'yaml';
import { packRelease } from '../../scripts/pack.mjs';
import { projectFolder } from '../../src/cli/paths.ts';
import { fixtureFolder, runDesk } from '../setup/built-site.ts';
import { change, contentsOf, filesIn, unmarked } from './workshop.ts';

const work = realpathSync(mkdtempSync(join(tmpdir(), 'release-')));
const repository = join(work, 'our almanac');
const dist = join(repository, 'dist');
const templates = join(projectFolder, 'docs', 'club-repository');
const slow = { tags: ['slow'], timeout: 300_000 };
let before: string[];

/** The person's environment: nothing of the test runner's, and a cache of its own. */
const environment = {
  ...Object.fromEntries(Object.entries(process.env).filter(([name]) => !/^(npm_|INIT_CWD|NODE_ENV|VITEST|ALMANAC_)/i.test(name))),
  ALMANAC_HOME: join(work, 'cache'),
  GITHUB_REPOSITORY: 'our-club/our-almanac',
  GITHUB_REPOSITORY_OWNER: 'our-club',
};

function run(line: string, cwd = repository, more: NodeJS.ProcessEnv = {}): { code: number | null; output: string } {
  const { status, stdout, stderr } = spawnSync('bash', ['--noprofile', '--norc', '-eo', 'pipefail', '-c', line], {
    cwd,
    env: { ...environment, ...more },
    encoding: 'utf8',
  });
  return { code: status, output: `${stdout}${stderr}` };
}

/** Runs the steps of a job one after the other, with the files that the host gives them. Returns the last output. */
function runSteps(steps: readonly string[], more: NodeJS.ProcessEnv = {}): string {
  const file = (name: string): string => join(work, name);
  for (const name of ['env', 'output', 'summary']) writeFileSync(file(name), '');
  const given = { GITHUB_ENV: file('env'), GITHUB_OUTPUT: file('output'), GITHUB_STEP_SUMMARY: file('summary'), ...more };
  for (const step of steps) {
    const set = Object.fromEntries(
      [...readFileSync(file('env'), 'utf8').matchAll(/^(\w+)=(.*)$/gm)].map(([, key, value]) => [key!, value!]),
    );
    succeeds(step, repository, { ...given, ...set });
  }
  assert.match(readFileSync(file('output'), 'utf8'), /^due<<END-OF-REVIEW\n[\s\S]+\nEND-OF-REVIEW\n$/);
  return readFileSync(file('summary'), 'utf8');
}

function succeeds(line: string, cwd?: string, more?: NodeJS.ProcessEnv): string {
  const { code, output } = run(line, cwd, more);
  assert.equal(code, 0, `${line}\n${output}`);
  return output;
}

const copyClub = (name: string, to: string): void => cpSync(fixtureFolder(name), join(repository, to), { recursive: true });
const installed = join(repository, 'node_modules', 'association-almanac');

function install(release: string): string {
  if (run('npm install --ignore-scripts --prefer-offline --no-audit --no-fund --fetch-retries=0').code === 0) return 'npm';
  rmSync(join(repository, 'node_modules'), { recursive: true, force: true });
  mkdirSync(join(repository, 'node_modules', '.bin'), { recursive: true });
  for (const name of readdirSync(join(projectFolder, 'node_modules')).filter((each) => !each.startsWith('.')))
    symlinkSync(join(projectFolder, 'node_modules', name), join(repository, 'node_modules', name), 'junction');
  mkdirSync(installed);
  succeeds(`tar -xzf "${release}" --strip-components=1 -C "${installed}"`);
  const command = join(installed, 'scripts', 'association-almanac.mjs');
  chmodSync(command, 0o755);
  symlinkSync(command, join(repository, 'node_modules', '.bin', 'association-almanac'));
  return 'links';
}

const stepsOf = (name: string): { steps: string[]; env: NodeJS.ProcessEnv } => {
  const { jobs, env = {} } = parse(readFileSync(join(templates, name), 'utf8'));
  const steps: string[] = jobs.build.steps.flatMap(({ run: line }: { run?: string }) => line ?? []);
  assert.match(steps[0]!, /^npm install/);
  return { steps: steps.slice(1), env };
};

describe('an installed release', () => {
  beforeAll(() => {
    mkdirSync(repository);
    const release = packRelease(work);
    const manifest = readFileSync(join(templates, 'package.json'), 'utf8');
    writeFileSync(join(repository, 'package.json'), manifest.replace(/https:[^"]+/, `file:${release}`));
    copyClub('southern', 'our-club');
    console.log(`The release was installed by ${install(release)}.`);
    before = filesIn(installed);
  });
  afterAll(() => rmSync(work, { recursive: true, force: true }));

  test('the steps of the workflow for one club check and publish its folder', slow, () => {
    // The computer's own program says the day, as in the workflow.
    const today = (): string => succeeds('date -u +%F').trim();
    const began = today();
    const summary = runSteps(stepsOf('one-club.yml').steps);
    assert.match(summary, /No faults in[\s\S]*Edition of/);
    const { club, day } = JSON.parse(readFileSync(join(dist, 'edition.json'), 'utf8'));
    assert.equal(club, 'te-awa-mahoe');
    assert.ok([began, today()].includes(day), day);
    assert.match(readFileSync(join(dist, 'changes.xml'), 'utf8'), /https:\/\/our-club\.github\.io\/our-almanac\//);
    assert.match(readFileSync(join(dist, 'index.html'), 'utf8'), /href="\/our-almanac\/club\/"/);
  });

  test('it builds the site that the project builds', slow, async () => {
    succeeds('npm run build');
    const out = join(work, 'from-project');
    const { code, output } = await runDesk('build', ['--content', fixtureFolder('southern'), '--out', out]);
    assert.equal(code, 0, output);
    // The mark is made of the program's files, too, of which a release has fewer.
    const [one, other] = [unmarked(dist), unmarked(out)];
    assert.ok(one.size > 100);
    assert.deepEqual(
      [...new Set([...one.keys(), ...other.keys()])].filter((path) => one.get(path) !== other.get(path)),
      [],
    );
  });

  test('new, review and base work in the folder of the club, and from inside it', slow, () => {
    assert.match(succeeds('npm run new -- meeting "Honey evening"'), /our-club\/meetings\/.*honey-evening\.mdx/);
    assert.match(succeeds('npm run check'), /1 draft/);
    assert.match(succeeds('npm run new -- meeting "Wax evening"', join(repository, 'our-club')), /wax-evening/);
    assert.ok(readdirSync(join(repository, 'our-club', 'meetings')).some((name) => name.includes('wax-evening')));
    succeeds('npm run review -- --on 2026-11-01');
    // The books are those of the release.
    assert.match(succeeds('npm run base -- --content node_modules/association-almanac/content/demo-club'), /common/);
    assert.equal(
      succeeds('npx association-almanac --version').trim(),
      JSON.parse(readFileSync(join(projectFolder, 'package.json'), 'utf8')).version,
    );
  });

  test('a mistake stops the check, and the host shows it at the path in the repository', slow, () => {
    const file = join(repository, 'our-club', 'club.yaml');
    const text = readFileSync(file, 'utf8');
    change(file, 'time-zone:', 'time-zoned:');
    const { code, output } = run('npm run check', repository, { GITHUB_ACTIONS: 'true', GITHUB_WORKSPACE: repository });
    writeFileSync(file, text);
    assert.equal(code, 1, output);
    assert.match(output, /^::error file=our-club\/club\.yaml,line=\d+/m);
  });

  test('a page is withdrawn although another file has a mistake: the last good state outlives an update', slow, () => {
    const [article] = readdirSync(join(repository, 'our-club', 'articles'));
    const faulty = join(repository, 'our-club', 'meetings', 'faulty.mdx');
    writeFileSync(faulty, '---\ntitle: [\n---\n');
    // An update brings other files, so the generator is unpacked again.
    writeFileSync(join(installed, 'CHANGELOG.md'), 'A newer release.\n');
    const output = succeeds(`npm run withdraw -- articles/${article!.replace('.mdx', '')} "its second step can mislead"`);
    assert.match(output, new RegExp(`Upload ${dist} now`));
    rmSync(faulty);
    assert.equal(readdirSync(environment.ALMANAC_HOME).filter((name) => name !== 'last-good').length, 1, 'the former copy is removed');
    assert.ok(existsSync(join(dist, 'withdrawn', 'index.html')));
  });

  test('a second club needs --out: nothing of the first is overwritten', slow, () => {
    copyClub('cold', 'second-club');
    const held = contentsOf(dist);
    const unnamed = run('npm run build');
    assert.equal(unnamed.code, 2);
    assert.match(unnamed.output, /There is no club's folder here, or more than one\. Write it after --content/);
    const { code, output } = run('npm run build -- --content second-club');
    assert.equal(code, 1);
    assert.match(
      output,
      new RegExp(`${dist} holds the site of another club, te-awa-mahoe\\. .* --out ${join(repository, 'site-north-prairie')}`),
    );
    assert.deepEqual(contentsOf(dist), held);
    assert.ok(!existsSync(join(repository, 'site-north-prairie')));
  });

  test('the steps of the workflow for several clubs publish each in its folder', slow, () => {
    rmSync(dist, { recursive: true });
    const { steps } = stepsOf('several-clubs.yml');
    const env = { CLUBS: 'our-club second-club' };
    runSteps(steps, env);
    for (const [club, id] of [
      ['our-club', 'te-awa-mahoe'],
      ['second-club', 'north-prairie'],
    ]) {
      assert.equal(JSON.parse(readFileSync(join(dist, club!, 'edition.json'), 'utf8')).club, id);
      assert.match(readFileSync(join(dist, club!, 'index.html'), 'utf8'), new RegExp(`href="/our-almanac/${club}/club/"`));
      assert.match(readFileSync(join(dist, 'index.html'), 'utf8'), new RegExp(`href="${club}/"`));
    }
    // A mistake in the first club is found, and the second is checked nevertheless.
    const file = join(repository, 'our-club', 'meetings', 'faulty.mdx');
    writeFileSync(file, '---\ntitle: [\n---\n');
    const check = steps.find((step) => step.includes('run --silent check'))!;
    const { code, output } = run(check, repository, { ...env, GITHUB_STEP_SUMMARY: join(work, 'summary') });
    rmSync(file);
    assert.equal(code, 1);
    assert.match(output, /meetings\/faulty\.mdx[\s\S]*No faults in/);
  });

  test('the preview and the local site answer', slow, async () => {
    for (const command of ['dev', 'start'])
      await new Promise<void>((resolve, reject) => {
        const child = spawn('npm', ['run', command, '--', '--content', 'second-club'], {
          cwd: repository,
          env: environment,
          detached: true,
        });
        let output = '';
        let asked = false;
        const read = (text: string): void => {
          output += text;
          const address = /http:\/\/(?:localhost|127\.0\.0\.1):\d+\//.exec(output)?.[0];
          if (!address || asked) return;
          asked = true;
          fetch(address)
            .then(async (answer) => assert.match(await answer.text(), /<h1/))
            .then(resolve, reject)
            .finally(() => process.kill(-child.pid!, 'SIGTERM'));
        };
        for (const stream of [child.stdout, child.stderr]) stream.setEncoding('utf8').on('data', read);
        child.on('close', () => reject(new Error(`${command} ended: ${output}`)));
      });
  });

  test('nothing is written into the installed package', slow, () => {
    assert.deepEqual(filesIn(installed), before);
  });
});
