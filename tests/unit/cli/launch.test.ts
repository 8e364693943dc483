import assert from 'node:assert/strict';
import { spawn, spawnSync, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'vitest';
import { isNewEnough, packageFor } from '../../../scripts/newer-node.mjs';
import { sentenceFor } from '../../../scripts/npm.mjs';
import { projectFolder } from '../../../src/cli/paths.ts';
import { commandFile, smallProject } from './small-project.ts';

// A project of one command with the real launcher.
const withStart = (text: string) => smallProject({ 'src/cli/start.ts': text });

function launch(folder: string, words: string[], npm = '') {
  const { status, stdout, stderr } = spawnSync(process.execPath, [commandFile(folder, 'launch.mjs'), ...words], {
    encoding: 'utf8',
    env: { ...process.env, npm_execpath: npm },
  });
  return { status, stdout, stderr };
}

test('Node versions are accepted or refused', () => {
  const enough = ['18.20.4', '20.20.2', '22.12.0', '22.21.9', '23.11.0', '24.7.0'].map(isNewEnough);
  assert.deepEqual(enough, [false, false, false, false, false, false]);
  assert.deepEqual(['22.22.0', '22.23.2', '24.8.0', '24.18.0', '25.0.0', '26.10.0'].map(isNewEnough), [true, true, true, true, true, true]);
});

test('every package of the newer Node is in its lock file', () => {
  const kinds: [string, string][] = [
    ['linux', 'x64'],
    ['linux', 'arm64'],
    ['darwin', 'x64'],
    ['darwin', 'arm64'],
    ['win32', 'x64'],
    ['win32', 'arm64'],
  ];
  const lock = JSON.parse(readFileSync(join(projectFolder, 'scripts', 'newer-node', 'package-lock.json'), 'utf8')).packages;
  const versions = kinds.map(([platform, arch]) => lock[`node_modules/${packageFor(platform, arch)}`]?.version);
  assert.deepEqual(
    versions,
    kinds.map(() => '22.23.2'),
  );
  assert.equal(packageFor('sunos', 'x64'), undefined);
});

test('arguments, exit code and output of the command pass through', () => {
  const folder = withStart(
    "const words: string[] = process.argv.slice(2);\nconsole.log(words.join('|'), process.env.ASTRO_TELEMETRY_DISABLED);\nprocess.exitCode = 7;\n",
  );
  assert.deepEqual(launch(folder, ['start', '--content', 'a b']), { status: 7, stdout: '--content|a b 1\n', stderr: '' });
});

test('an unknown command gives a sentence', () => {
  const folder = withStart('');
  assert.deepEqual(launch(folder, ['strat']), {
    status: 1,
    stdout: '',
    stderr:
      'There is no command strat; there are: start, dev, build, check, review, overview, base, withdraw, new, bench, test, test:slow, test:engines.\n',
  });
  rmSync(commandFile(folder, 'bench.ts'), { force: true });
  assert.deepEqual(launch(folder, ['bench']), {
    status: 1,
    stdout: '',
    stderr: 'The command bench is not there: bench.ts is missing from src/cli.\n',
  });
});

// Replaces npm: a program that is called like npm and does what the test says.
function afterNpm(does: string) {
  const folder = smallProject({
    'src/cli/start.ts': "console.log('ran');\n",
    'package-lock.json': '{"packages":{"node_modules/one":{"version":"1.0.0"}}}',
    'stand-in/npm-cli.js': `import { mkdirSync, writeFileSync } from 'node:fs';\n${does}\n`,
  });
  return launch(folder, ['start'], join(folder, 'stand-in', 'npm-cli.js'));
}
const installing = 'Installing the packages of the lock file (once, and after each update) ...\n';

test('missing packages are installed first, by `npm ci`, in the project', () => {
  const does = `mkdirSync('node_modules/one', { recursive: true });
    writeFileSync('node_modules/one/package.json', '{}');
    writeFileSync('node_modules/.package-lock.json', process.argv[2] === 'ci' ? '{"packages":{"node_modules/one":{"version":"1.0.0"}}}' : '');`;
  assert.deepEqual(afterNpm(does), { status: 0, stdout: 'ran\n', stderr: installing });
});

test('without a network the command does not run, and one sentence says why', () => {
  const sentence =
    'The package registry cannot be reached: the first run, and the first after an update, needs a network connection. Connect and run the same command again.';
  assert.deepEqual(afterNpm("console.error('npm error code EAI_AGAIN');\nprocess.exitCode = 1;"), {
    status: 1,
    stdout: '',
    stderr: `${installing}${sentence}\n`,
  });
  assert.deepEqual(afterNpm(''), {
    status: 1,
    stdout: '',
    stderr: `${installing}${sentence} (npm ended well, but node_modules/one is not installed.)\n`,
  });
});

const failures: [string, string][] = [
  [
    'npm error code ENOTFOUND\nnpm error network request failed',
    'The package registry cannot be reached: the first run, and the first after an update, needs a network connection. Connect and run the same command again.',
  ],
  ['npm ERR! code EUSAGE\nnpm ERR!', 'package.json and package-lock.json do not agree. Run `npm install` and keep both files.'],
  ['npm error code ENOSPC', 'The disk is full: the packages need about 400 MB. Make room and run the same command again.'],
  ['npm error code E404\nnpm error 404 no such package\n', 'npm could not install the packages: code E404 404 no such package'],
  ['', 'npm could not install the packages: it gave no reason'],
];
for (const [said, expect] of failures) {
  test(`npm said ${JSON.stringify(said.slice(0, 24))}`, () => assert.equal(sentenceFor(said), expect));
}

const waits = "console.log('up', process.pid);\nsetInterval(() => {}, 1000);\n";

async function started(folder: string): Promise<{ launcher: ChildProcess; child: number }> {
  const launcher = spawn(process.execPath, [commandFile(folder, 'launch.mjs'), 'start'], { stdio: ['ignore', 'pipe', 'ignore'] });
  const [first] = await once(launcher.stdout!.setEncoding('utf8'), 'data');
  return { launcher, child: Number(String(first).split(' ')[1]) };
}

async function ends(pid: number): Promise<boolean> {
  for (let tries = 0; tries < 100; tries += 1) {
    try {
      process.kill(pid, 0);
    } catch {
      return true;
    }
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  process.kill(pid, 'SIGKILL');
  return false;
}

const onUnix = { skip: Boolean(process.platform === 'win32' && 'Windows has no such signals') };
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP', 'SIGKILL'] as const) {
  test(`${signal} to the launcher ends its command too`, onUnix, async () => {
    const { launcher, child } = await started(withStart(waits));
    launcher.kill(signal);
    const [code, by] = await once(launcher, 'exit');
    assert.deepEqual([code, by], [null, signal]);
    assert.ok(await ends(child), 'the command still runs');
  });
}

test('a command that ends well on a signal counts as successful', onUnix, async () => {
  const { launcher } = await started(withStart(`process.on('SIGINT', () => process.exit(0));\n${waits}`));
  launcher.kill('SIGINT');
  assert.deepEqual(await once(launcher, 'exit'), [0, null]);
});
