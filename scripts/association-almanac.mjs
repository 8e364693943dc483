#!/usr/bin/env node
// Command of the installed package: `association-almanac NAME ...`, or `npx association-almanac NAME ...`. Node strips no types below a
// folder node_modules, and Vite treats what lies there as finished. So the generator runs from a copy in the user's cache, one for each
// release. The copy has links to the packages that npm installed, in the two folders where Node looks for them. Only Node's own modules
// are used here.
import { createHash } from 'node:crypto';
import {
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { homedir } from 'node:os';
import { basename, dirname, join, sep } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { isNewEnough } from './newer-node.mjs';

const installed = realpathSync(fileURLToPath(new URL('../', import.meta.url)));
const { name, version } = JSON.parse(readFileSync(join(installed, 'package.json'), 'utf8'));

if (['--version', '-v'].includes(process.argv[2])) console.log(version);
else if (!isNewEnough(process.versions.node)) {
  // npm leaves out packages that do not fit the running Node, so a newer Node alone would not help.
  console.error(
    `This machine's Node is ${process.versions.node}; the almanac needs 22.22 or newer. Install Node 24, then install the almanac again.`,
  );
  process.exitCode = 1;
} else {
  process.env.INIT_CWD = whereThePersonStands();
  const generator = installed.split(sep).includes('node_modules') ? copyOfGenerator() : installed;
  if (generator) await import(pathToFileURL(join(generator, 'scripts', 'launch.mjs')).href);
}

/** npm runs a script in the folder of its package.json, and passes the folder where the person is. */
function whereThePersonStands() {
  const { npm_package_json: file, INIT_CWD: typed } = process.env;
  return typed && file && dirname(file) === process.cwd() ? typed : process.cwd();
}

function copyOfGenerator() {
  const home = process.env.ALMANAC_HOME || join(cacheFolder(), name);
  try {
    return copiedTo(home);
  } catch (error) {
    console.error(
      `The almanac could not be unpacked into ${home} (${error.code ?? error.message}). Make room there, or name another folder in the variable ALMANAC_HOME.`,
    );
    process.exitCode = 1;
    return null;
  }
}

function copiedTo(home) {
  const files = readdirSync(installed, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(installed.length + 1))
    .filter((file) => !file.split(sep).includes('node_modules'))
    .sort();
  const hash = createHash('sha256').update(installed);
  for (const file of files) hash.update(`\0${file}\0`).update(readFileSync(join(installed, file)));
  const place = join(home, `${version}-${hash.digest('hex').slice(0, 12)}`);
  const generator = join(place, 'generator');
  if (existsSync(generator)) return generator;
  removeFormer(home);
  const making = `${place}.making-${process.pid}`;
  for (const file of files) cpSync(join(installed, file), join(making, 'generator', file));
  writeFileSync(join(making, 'generator', 'installed-from.txt'), installed);
  for (const [packages, link] of [
    [dirname(installed), join(making, 'node_modules')],
    [join(installed, 'node_modules'), join(making, 'generator', 'node_modules')],
  ])
    if (basename(packages) === 'node_modules' && existsSync(packages)) symlinkSync(packages, link, 'junction');
  try {
    renameSync(making, place);
  } catch (error) {
    // Another process was quicker.
    rmSync(making, { recursive: true, force: true });
    if (!existsSync(generator)) throw error;
  }
  return generator;
}

/** Copies of an earlier release in the same place, of an installation that is gone, and of a process that was killed. */
function removeFormer(home) {
  mkdirSync(home, { recursive: true });
  for (const each of readdirSync(home)) {
    const from = join(home, each, 'generator', 'installed-from.txt');
    const maker = /\.making-(\d+)$/.exec(each)?.[1];
    const source = existsSync(from) ? readFileSync(from, 'utf8') : null;
    if (maker ? !isRunning(Number(maker)) : source !== null && (source === installed || !existsSync(source)))
      rmSync(join(home, each), { recursive: true, force: true });
  }
}

function isRunning(process_) {
  try {
    process.kill(process_, 0);
    return true;
  } catch (error) {
    return error.code !== 'ESRCH';
  }
}

function cacheFolder() {
  if (process.platform === 'win32') return process.env.LOCALAPPDATA || join(homedir(), 'AppData', 'Local');
  if (process.platform === 'darwin') return join(homedir(), 'Library', 'Caches');
  return process.env.XDG_CACHE_HOME || join(homedir(), '.cache');
}
