// Packs a release as `association-almanac.tgz`: the files that `npm pack` would pack, with a package.json that names every package of the
// lock file in its exact version. npm reads no lock file inside a package that comes from an address, so without this each
// installation would get the newest packages of its day.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const project = fileURLToPath(new URL('../', import.meta.url));
const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';

/** package.json of the release. Packages that fit only some machines stay optional. One that lies below another keeps its range. */
export function releaseManifest({ scripts: _, devDependencies: __, ...manifest }, lock) {
  const dependencies = {};
  const optionalDependencies = {};
  for (const [place, { version, dev, devOptional, optional, peer }] of Object.entries(lock.packages)) {
    const name = /^node_modules\/((?:@[^/]+\/)?[^/]+)$/.exec(place)?.[1];
    if (name && !dev && !devOptional && !peer) (optional ? optionalDependencies : dependencies)[name] = version;
  }
  return { ...manifest, engines: { node: '>=22.22' }, dependencies, optionalDependencies };
}

/**
 * The paths that a release contains.
 * @returns {string[]}
 */
export const releaseFiles = () =>
  JSON.parse(
    execFileSync(npm, ['pack', '--dry-run', '--json'], { cwd: project, encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] }),
  )[0].files.map(({ path }) => path);

/** Writes the release into a folder and returns its path. */
export function packRelease(folder) {
  const staged = join(project, '.almanac', `pack-${process.pid}`);
  const read = (name) => JSON.parse(readFileSync(join(project, name), 'utf8'));
  try {
    for (const file of releaseFiles()) cpSync(join(project, file), join(staged, file));
    const manifest = releaseManifest(read('package.json'), read('package-lock.json'));
    writeFileSync(join(staged, 'package.json'), `${JSON.stringify(manifest, null, 2)}\n`);
    execFileSync(npm, ['pack', '--silent'], { cwd: staged, stdio: 'ignore' });
    mkdirSync(folder, { recursive: true });
    const packed = join(folder, `${manifest.name}.tgz`);
    rmSync(packed, { force: true });
    cpSync(join(staged, `${manifest.name}-${manifest.version}.tgz`), packed);
    return packed;
  } finally {
    rmSync(staged, { recursive: true, force: true });
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) console.log(packRelease(process.argv[2] ?? project));
