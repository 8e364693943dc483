/* npm run test:engines: the journeys of tests/engines in Chromium, Firefox and WebKit, one engine after another, and their table. */
import { join } from 'node:path';
import { argumentsOf } from './arguments.ts';
import { projectFolder } from './paths.ts';
import { runChild } from '../../scripts/run-child.mjs';

const { values } = argumentsOf('test:engines');
if (values.record && values.engine) {
  console.error('--record keeps a whole run: leave out --engine.');
  process.exit(2);
}
// Tests start commands of their own, which must not inherit npm's variables.
for (const key of Object.keys(process.env)) if (key === 'INIT_CWD' || /^npm_/i.test(key)) delete process.env[key];
if (values.record) process.env.ALMANAC_RECORD = '1';
const { code } = await runChild(
  process.execPath,
  [
    join(projectFolder, 'node_modules', 'vitest', 'vitest.mjs'),
    'run',
    '--project=engines',
    '--no-file-parallelism',
    '--reporter=default',
    '--reporter=./tests/engines/results.ts',
    ...(values.engine ? [values.engine] : ['chromium', 'firefox', 'webkit']).map((engine) => `tests/engines/${engine}.test.ts`),
  ],
  { cwd: projectFolder, stdio: 'inherit' },
);
process.exitCode = code;
