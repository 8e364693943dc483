// npm test [-- PATTERN] and npm run test:long: passes every step, and ends with one line that counts the
// tests. Not zero where a step or a test failed, no test ran, or a test could not run.
import { argumentsOf } from './arguments.ts';
import { findBrowser, launchVariable } from './browser.ts';
import { projectFolder } from './places.ts';
import { runTests } from './run-tests.ts';
import { closingLine } from './tally.ts';

interface Step {
  name: string;
  /** True where it passed. It prints what went wrong. */
  passes: () => Promise<boolean>;
}

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

// The tests come last: their count closes the output.
const steps: Step[] = [{ name: 'tests', passes: testsPass }];

for (const step of steps) {
  if (await step.passes()) continue;
  process.exitCode = 1;
}

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
  if (notRun.length > 0) console.log(`\nNo browser was found, so these did not run (set ALMANAC_BROWSER to one, or install Chromium):\n${notRun.map((path) => `  ${path}`).join('\n')}`);
  else if (!ran) console.log(words[0] ? `\nNo test file has ${words[0]} in its path.` : '\nNo test ran.');
  console.log(`\n${closingLine(tally)}`);
  return ran && tally.failed === 0 && notRun.length === 0;
}
