// npm start [-- --content DIR]: builds the club where needed, serves it, and prints the address on one line.
import { join } from 'node:path';
import { argumentsOf } from './arguments.ts';
import { openAlmanac } from './open-almanac.ts';
import { chosenOutput, refusal } from './output-folder.ts';
import { projectFolder } from './paths.ts';

const { values } = argumentsOf('start');
// Another club's site stays where it is.
const chosen = chosenOutput(values);
const mayReplace = chosen.ok && refusal({ content: values.content, out: chosen.value }) === null;
const served = await openAlmanac({
  project: projectFolder,
  content: values.content,
  out: mayReplace ? chosen.value : join(projectFolder, '.almanac', 'started'),
  loadBuild: async () => (await import('./build.ts')).build,
  tell: (line) => console.error(line),
});

if (served) {
  // Received twice when typed at the keyboard: once from there and once from the launcher.
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => void served.close());
  console.log(`The almanac is at ${served.address}  (Ctrl-C stops it)`);
} else {
  process.exitCode = 1;
}
