// npm test [-- PATTERN] and npm run test:long: reads the code, runs the tests, and ends with one line that counts
// them. Not zero where a reader found something, a test failed, no test ran, or a test could not run.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { argumentsOf } from './arguments.ts';
import { findBrowser, launchVariable } from './browser.ts';
import { projectFolder } from './places.ts';
import { runChild } from './run-child.mjs';
import { runTests } from './run-tests.ts';
import { closingLine } from './tally.ts';

const { values, words } = argumentsOf('test');
const stop = new AbortController();
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) {
  process.once(signal, () => {
    stop.abort();
    // With no listener left, the signal ends this process as it would have.
    setTimeout(() => process.kill(process.pid, signal), 1000);
  });
}

// Tests start commands of their own: they must not hear what this one was told by npm.
for (const key of Object.keys(process.env)) if (key === 'INIT_CWD' || /^npm_/i.test(key)) delete process.env[key];

/** Programs of the project's packages that read the code and run none of it, each with the file of its settings. */
const READERS = [
  { name: 'types', settings: 'tsconfig.json', words: ['typescript/bin/tsc', '--noEmit', '-p', '.'], long: false },
  { name: 'linter', settings: 'eslint.config.js', words: ['eslint/bin/eslint.js', '.'], long: false },
  { name: 'types of pages', settings: 'astro.config.mjs', words: ['astro/bin/astro.mjs', 'check'], long: true },
  { name: 'form', settings: '.prettierrc.json', words: ['prettier/bin/prettier.cjs', '--check', '--log-level', 'warn', '.'], long: true },
  { name: 'nothing unused', settings: 'knip.json', words: ['knip/bin/knip.js'], long: true },
].filter(({ settings, long }) => !words[0] && (values.long || !long) && existsSync(join(projectFolder, settings)));

const runPackage = (file: string, words: string[], stdio: 'inherit' | 'ignore') =>
  runChild(process.execPath, [join(projectFolder, 'node_modules', file), ...words], { cwd: projectFolder, stdio });
// The types of what Astro makes up are written by itself, once.
if (READERS.length > 0 && !existsSync(join(projectFolder, '.astro', 'types.d.ts')))
  await runPackage('astro/bin/astro.mjs', ['sync'], 'ignore');

const codeReads = await Promise.all(
  READERS.map(async ({ name, words: [file, ...rest] }) => {
    const { code } = await runPackage(file!, rest, 'inherit');
    console.log(`${code === 0 ? 'ok  ' : 'no  '} ${name}`);
    return code === 0;
  }),
);

// The tests come last: their count closes the output.
const testsPassed = await testsPass();
if (!testsPassed || codeReads.includes(false)) process.exitCode = 1;

async function testsPass(): Promise<boolean> {
  const { tally, notRun } = await runTests({
    project: projectFolder,
    long: values.long,
    pattern: words[0],
    findBrowser,
    launchVariable,
    output: process.stdout,
    signal: stop.signal,
  });
  const ran = tally.passed + tally.failed > 0;
  if (notRun.length > 0)
    console.log(
      `\nNo browser was found, so these did not run (set ALMANAC_BROWSER to one, or install Chromium):\n${notRun.map((path) => `  ${path}`).join('\n')}`,
    );
  else if (!ran) console.log(words[0] ? `\nNo test file has ${words[0]} in its path.` : '\nNo test ran.');
  console.log(`\n${closingLine(tally)}`);
  return ran && tally.failed === 0 && notRun.length === 0;
}
