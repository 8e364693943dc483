// licenses.txt names every package whose code readers are given, with its terms; and which packages run something when installed.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'vitest';
import { projectFolder } from '../../src/cli/paths.ts';
import { licensesFile } from '../../src/integration/licenses.ts';
import { files, importsOf, read as readSource } from '../architecture/tree.ts';
import { builtDemo } from '../setup/built-site.ts';

const packages = join(projectFolder, 'node_modules');
const lock = JSON.parse(readSource('package-lock.json')) as {
  packages: Record<string, { version: string; license?: string; hasInstallScript?: boolean }>;
};
const listed = (text: string): { name: string; version: string; license: string }[] =>
  [...text.split('----------')[0]!.matchAll(/^(\S+) (\d\S*), (.+)$/gm)].map(([, name, version, license]) => ({
    name: name!,
    version: version!,
    license: license!,
  }));

test("every package that the pages' scripts or the worker stand on is named", async () => {
  const { read, folder } = await builtDemo();
  const names = new Set(listed(read('licenses.txt')).map(({ name }) => name));
  const own = files().filter((path) => /^(src\/(calculators|client|service-worker)|shared)\/.*\.ts$/.test(path));
  const used = new Set(
    own
      .flatMap((path) => importsOf(path))
      .filter(({ from, typeOnly }) => !typeOnly && /^[a-z@]/.test(from) && !from.startsWith('node:'))
      .map(({ from }) =>
        from
          .split('/')
          .slice(0, from.startsWith('@') ? 2 : 1)
          .join('/'),
      ),
  );
  assert.ok(used.size >= 3, [...used].join(', '));
  assert.deepEqual(
    [...used].filter((name) => !names.has(name)),
    [],
  );
  // Parts of workbox write their name into what they are bundled into.
  const named = [...read('worker.js').matchAll(/workbox:([a-z-]+):\d/g)].map(([, name]) => `workbox-${name}`);
  assert.ok(named.length >= 3);
  assert.deepEqual(
    named.filter((name) => !names.has(name)),
    [],
  );
  for (const copied of ['timezones-ical-library', 'pagefind']) assert.ok(names.has(copied), copied);
  assert.ok(!readdirSync(folder).includes('shipped.json'));
});

test('each stands there with the version that is installed and its terms word for word; no path of this machine does', async () => {
  const text = (await builtDemo()).read('licenses.txt');
  const all = listed(text);
  assert.ok(all.length >= 5, `${all.length} packages`);
  for (const { name, version, license } of all) {
    const held = lock.packages[`node_modules/${name}`]!;
    assert.deepEqual([version, license], [held.version, held.license], name);
    // The search engine has a folder of terms.
    const terms = join(packages, name, 'LICENSE', name === 'pagefind' ? 'LICENSE' : '');
    assert.ok(text.includes(readFileSync(terms, 'utf8').replace(/\r\n/g, '\n').trim()), name);
  }
  assert.ok(
    text.includes(readSource('src/styles/fonts/OFL.txt').trim()) &&
      /^Atkinson Hyperlegible Next, .* SIL Open Font License 1\.1$/m.test(text),
  );
  assert.doesNotMatch(text, /node_modules|shipped\.json/);
});

test('a package of a scope, and one inside another, are found by their paths; one without terms stops the build', () => {
  const text = licensesFile(
    [
      join(packages, 'workbox-core', '_private', 'logger.js'),
      join(packages, 'workbox-core', 'index.js'),
      join(projectFolder, 'src', 'own.ts'),
    ],
    packages,
  );
  assert.deepEqual(
    listed(text).map(({ name }) => name),
    ['pagefind', 'timezones-ical-library', 'workbox-core'],
  );
  assert.throws(
    () =>
      licensesFile(
        [join(packages, '@types', 'hast', 'nowhere', 'x.js')].map((path) => path.replace('hast', 'none')),
        packages,
      ),
    /ENOENT/,
  );
});

test('only esbuild runs something when it is installed', () => {
  for (const file of ['package-lock.json', 'scripts/newer-node/package-lock.json']) {
    const { packages: held } = JSON.parse(readSource(file)) as typeof lock;
    assert.deepEqual(
      Object.entries(held)
        .filter(([, { hasInstallScript }]) => hasInstallScript)
        .map(([path]) => path.replace(/.*node_modules\//, '')),
      file === 'package-lock.json' ? ['esbuild'] : [],
    );
  }
});
