// npm run bench: the measurements of tests/bench, as a table and as JSON in .almanac. They are part of the tests, which src/ does not
// import, so they run as a separate program.
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
