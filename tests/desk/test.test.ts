import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { test } from 'node:test';
import { deskFile, smallProject } from './small-project.ts';

const good = "import { test } from 'node:test';\ntest('good', () => {});\n";
const mixed = `${good}test('bad', () => { throw new Error('the reason'); });\ntest('later', { skip: true }, () => {});\n`;

// Runs the test command in a project of its own, outside the runner that runs this file.
function testCommand(files: Record<string, string>, words: string[] = [], own: NodeJS.ProcessEnv = {}) {
  const folder = smallProject(files, { withPackages: true });
  const { NODE_TEST_CONTEXT: _, ...environment } = process.env;
  const { status, stdout } = spawnSync(process.execPath, [deskFile(folder, 'test.ts'), ...words], {
    encoding: 'utf8',
    env: { ...environment, ...own },
  });
  const lines = stdout.trimEnd().split('\n');
  return { status, stdout, last: lines.at(-1) };
}

test('all good: a count alone on the last line, and 0', () => {
  const { status, stdout, last } = testCommand({ 'tests/a.test.ts': good, 'tests/site/b.test.ts': good, 'tests/long/c.test.ts': mixed });
  assert.deepEqual([status, last], [0, '2 passed, 0 failed']);
  assert.match(stdout, /^ok {3}tests\/a\.test\.ts {2}1 test, \d+\.\d s$/m);
});

test('a failure is shown with its reason, and counts', () => {
  const { status, stdout, last } = testCommand({ 'tests/a.test.ts': mixed });
  assert.deepEqual([status, last], [1, '1 passed, 1 failed, 1 skipped']);
  assert.match(stdout, /Error: the reason/);
});

test('the long tests run when asked for', () => {
  const { status, last } = testCommand({ 'tests/a.test.ts': good, 'tests/long/c.test.ts': good }, ['--long']);
  assert.deepEqual([status, last], [0, '2 passed, 0 failed']);
});

test('a file without a test, one that does not load and one that breaks off have failed', () => {
  const { status, last } = testCommand({
    'tests/a.test.ts': 'export {};\n',
    'tests/b.test.ts': 'const = 1;\n',
    'tests/c.test.ts': `${good}process.exit(0);\n`,
    'tests/d.test.ts': good,
  });
  assert.deepEqual([status, last], [1, '1 passed, 3 failed']);
});

test('where no test runs that is said, and is not a good end', () => {
  const { status, stdout } = testCommand({ 'tests/a.test.ts': good }, ['nowhere']);
  assert.deepEqual([status, stdout], [1, '\nNo test file has nowhere in its path.\n\n0 passed, 0 failed\n']);
  assert.equal(testCommand({}).stdout, '\nNo test ran.\n\n0 passed, 0 failed\n');
});

test('without a browser the rest runs, and what did not is named', () => {
  const page =
    "import { openBrowser } from '../src/desk/test-browser.ts';\nimport { test } from 'node:test';\ntest('page', () => openBrowser());\n";
  const { status, stdout, last } = testCommand({ 'tests/a.test.ts': good, 'tests/page.test.ts': page }, [], { ALMANAC_BROWSER: '/absent' });
  assert.deepEqual([status, last], [1, '1 passed, 0 failed']);
  assert.match(stdout, /No browser was found, so these did not run .*:\n {2}tests\/page\.test\.ts\n/);
});
