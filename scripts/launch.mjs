// Launcher of every npm script: `node scripts/launch.mjs NAME ...` runs src/cli/NAME.ts with the arguments that follow. First it finds a
// new enough Node and makes sure that the packages of the lock file are installed, so that one command is enough after a clone. Plain
// JavaScript for Node 18 and later, without any package, because it runs before the install.
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { nodeToUse } from './newer-node.mjs';
import { environmentFor, installPackages } from './npm.mjs';
import { runChild } from './run-child.mjs';
import { whatIsStale } from './stale.mjs';

const project = fileURLToPath(new URL('../', import.meta.url));
const commands = {
  start: ['start.ts'],
  dev: ['dev.ts'],
  build: ['build.ts'],
  check: ['check.ts'],
  review: ['review.ts'],
  overview: ['overview.ts'],
  base: ['base.ts'],
  withdraw: ['withdraw.ts'],
  new: ['new.ts'],
  bench: ['bench.ts'],
  test: ['test.ts'],
  'test:slow': ['test.ts', '--slow'],
  'test:engines': ['engines.ts'],
};

// Commands for which Node keeps its compiled modules. A build also loads modules that it writes itself, under new names each time, and
// would fill the disk with them.
const keepsCompiled = new Set(['check', 'review', 'overview', 'base']);

// A build gives memory back as soon as it is free: the bundler's (mimalloc) at once, and glibc keeps two pools. Without this a build of
// 5,000 pages took 3.6 GB in place of 2.9 GB, and the same time. Other systems pass over both names.
const givesBack = { MIMALLOC_PURGE_DELAY: '0', MALLOC_ARENA_MAX: '2' };

// With this flag a build can collect what is left over between its parts (src/integration/outputs.ts): 5,000 pages take 0.2 GB less, and
// 1.5 s more.
const collectsWhenAsked = '--expose-gc';

// npm runs a script through a shell. A signal to npm ends only that shell, so its end must be noticed here.
if (process.env.npm_lifecycle_event) await import('./leave-with-parent.mjs');

// In the copy of an installed package, npm has installed the packages, and the commands for developers are not there.
const isInstalled = existsSync(new URL('../installed-from.txt', import.meta.url));

process.exitCode = await launch(process.argv[2], process.argv.slice(3));

async function launch(name, words) {
  if (!Object.hasOwn(commands, name ?? '')) return stop(`There is no command ${name ?? '(none given)'}; there are: ${names().join(', ')}.`);
  const [file, ...first] = commands[name];
  const script = scriptOf(file);
  if (!existsSync(script)) return stop(`The command ${name} is not there: ${file} is missing from src/cli.`);
  const found = await nodeToUse();
  if (found.sentence) return stop(found.sentence);
  const failed = await installIfStale(found.node);
  if (failed) return stop(failed);
  const before = ['--disable-warning=ExperimentalWarning', '--import', new URL('leave-with-parent.mjs', import.meta.url).href];
  if (name === 'build') before.push(collectsWhenAsked);
  const { code } = await runChild(found.node, [...before, script, ...first, ...words], {
    cwd: project,
    env: {
      ...(name === 'build' ? givesBack : {}),
      ...environmentFor(found.node),
      ...(keepsCompiled.has(name) ? { NODE_COMPILE_CACHE: `${project}.almanac/compiled` } : {}),
    },
    stdio: 'inherit',
  });
  return code;
}

/** Those whose files are here. A clone has all of them. */
function names() {
  return Object.keys(commands).filter((name) => !isInstalled || existsSync(scriptOf(commands[name][0])));
}

async function installIfStale(node) {
  if (isInstalled || !whatIsStale(project)) return null;
  console.error('Installing the packages of the lock file (once, and after each update) ...');
  return installPackages(project, node);
}

function scriptOf(file) {
  return fileURLToPath(new URL(`../src/cli/${file}`, import.meta.url));
}

function stop(sentence) {
  console.error(sentence);
  return 1;
}
