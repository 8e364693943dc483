// npm run bench: the measurements of tests/bench, as a table and as JSON in .almanac. They lie with the tests, which
// nothing of the desk imports, and so run as a program of their own.
import { join } from 'node:path';
import { argumentsOf } from './arguments.ts';
import { projectFolder } from './paths.ts';
import { runChild } from '../../scripts/run-child.mjs';

const { values } = argumentsOf('bench');
const words = [
  ...(values.quick ? ['--quick'] : []),
  ...(values.part ? ['--part', values.part] : []),
  ...(values.record ? ['--record'] : []),
];
const { code } = await runChild(process.execPath, [join(projectFolder, 'tests', 'bench', 'bench.ts'), ...words], {
  cwd: projectFolder,
  stdio: 'inherit',
});
process.exitCode = code;
