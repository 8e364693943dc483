// Runs `npm ci` in a folder and turns each failure into a sentence. npm runs as a JavaScript file under a Node of our choice, because
// under an old Node it silently omits native packages. No install script of any package runs: none is needed, and npm 12 blocks them.
import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { runChild } from './run-child.mjs';
import { whatIsStale } from './stale.mjs';

const noNetwork =
  /\b(ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ECONNRESET|ENETUNREACH|EHOSTUNREACH|ENETDOWN|ETIMEDOUT|ERR_SOCKET_TIMEOUT|ENOTCACHED|FETCH_ERROR|EIDLETIMEOUT)\b/;

const unreachable =
  'The package registry cannot be reached: the first run, and the first after an update, needs a network connection. Connect and run the same command again.';

const flags = [
  '--loglevel=error',
  '--no-audit',
  '--no-fund',
  '--include=dev',
  '--include=optional',
  '--ignore-scripts',
  '--prefer-offline',
  '--fetch-retries=1',
  '--fetch-retry-mintimeout=1000',
];

/** @returns {Promise<string | null>} a sentence with the reason for a failure, or null */
export async function installPackages(folder, node) {
  const npm = findNpm();
  if (!npm) return 'npm was not found. Start the command through npm, as in `npm start`.';
  const { code, errors } = await runChild(node, [npm, 'ci', ...flags], {
    cwd: folder,
    env: environmentFor(node),
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  if (code !== 0) return sentenceFor(errors);
  // npm reports success when an optional package could not be downloaded.
  const stale = whatIsStale(folder);
  return stale && `${unreachable} (npm ended well, but ${stale}.)`;
}

/** The sentence for npm's error output. */
export function sentenceFor(errors) {
  if (noNetwork.test(errors)) return unreachable;
  if (/\bENOSPC\b/.test(errors)) return 'The disk is full: the packages need about 400 MB. Make room and run the same command again.';
  if (/\b(EACCES|EPERM|EROFS)\b/.test(errors))
    return "The packages cannot be written here: this folder, or npm's own store, may not be changed by you. Move the project to a folder of your own and run the same command again.";
  if (/\bEUSAGE\b/.test(errors)) return 'package.json and package-lock.json do not agree. Run `npm install` and keep both files.';
  const said = errors
    .split('\n')
    .map((line) => line.replace(/^npm (error|ERR!) ?/, '').trim())
    .filter(Boolean)
    .slice(0, 3);
  return `npm could not install the packages: ${said.join(' ') || 'it gave no reason'}`;
}

/** The environment for programs under `node`, in which a plain `node` on the path is the same one. */
export function environmentFor(node) {
  const environment = { ...process.env, NODE: node, npm_node_execpath: node, ASTRO_TELEMETRY_DISABLED: '1' };
  const path = Object.keys(environment).find((key) => key.toUpperCase() === 'PATH') ?? 'PATH';
  const separator = process.platform === 'win32' ? ';' : ':';
  environment[path] = [dirname(node), environment[path]].filter(Boolean).join(separator);
  return environment;
}

function findNpm() {
  const beside = dirname(process.execPath);
  return [
    process.env.npm_execpath,
    join(beside, 'node_modules', 'npm', 'bin', 'npm-cli.js'),
    join(beside, '..', 'lib', 'node_modules', 'npm', 'bin', 'npm-cli.js'),
    join(beside, '..', 'share', 'nodejs', 'npm', 'bin', 'npm-cli.js'),
  ].find((path) => path && /npm-cli\.c?js$/.test(path) && existsSync(path));
}
