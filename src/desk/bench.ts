// npm run bench [-- --quick]: measures, and prints what was found; see tests/bench.
import { join } from 'node:path';
import { argumentsOf } from './arguments.ts';
import { projectFolder } from './places.ts';
import { runChild } from './run-child.mjs';

const { values } = argumentsOf('bench');
const { code } = await runChild(process.execPath, ['--disable-warning=ExperimentalWarning', join(projectFolder, 'tests', 'bench', 'bench.ts'), ...(values.quick ? ['--quick'] : [])], { cwd: projectFolder, stdio: 'inherit' });
process.exitCode = code;
