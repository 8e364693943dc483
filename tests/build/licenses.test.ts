// public/licenses.txt names every package whose code readers are given, with its terms; and which packages run something when installed.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'vitest';
import { projectFolder } from '../../src/cli/paths.ts';
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

/** Packages that readers are given: imported by what runs in the browser, with what those import, and the two that are copied as they come. */
function shipped(): Set<string> {
  const nameOf = (from: string): string =>
    from
      .split('/')
      .slice(0, from.startsWith('@') ? 2 : 1)
      .join('/');
  const found = new Set<string>();
  const add = (name: string): void => {
    if (found.has(name)) return;
    found.add(name);
    const { dependencies = {} } = JSON.parse(readFileSync(join(packages, name, 'package.json'), 'utf8')) as {
      dependencies?: Record<string, string>;
    };
    // Types are no code.
    for (const each of Object.keys(dependencies)) if (!each.startsWith('@types/')) add(each);
  };
  for (const path of files().filter((each) => /^(src\/(calculators|client|paper|service-worker)|shared)\/.*\.ts$/.test(each)))
    for (const { from, typeOnly } of importsOf(path)) if (!typeOnly && /^[a-z@]/.test(from) && !from.startsWith('node:')) add(nameOf(from));
  return found.add('timezones-ical-library').add('pagefind');
}

test("the file names each package in the browser's code, with its installed version and its licence text word for word", async () => {
  const built = await builtDemo();
  const text = built.read('licenses.txt');
  const all = listed(text);
  const names = all.map(({ name }) => name);
  assert.deepEqual(names, [...shipped()].sort());
  assert.ok(names.length >= 5, `${names.length} packages`);
  // Parts of workbox write their name into the bundle.
  const parts = [...built.read('worker.js').matchAll(/workbox:([a-z-]+):\d/g)].map(([, name]) => `workbox-${name}`);
  assert.ok(parts.length >= 3);
  assert.deepEqual(
    parts.filter((name) => !names.includes(name)),
    [],
  );
  for (const { name, version, license } of all) {
    const held = lock.packages[`node_modules/${name}`]!;
    assert.deepEqual([version, license], [held.version, held.license], name);
    // The search engine has a folder of licences.
    const file = readdirSync(join(packages, name)).find((each) => each.toUpperCase() === 'LICENSE')!;
    const terms = join(packages, name, file, name === 'pagefind' ? 'LICENSE' : '');
    assert.ok(text.includes(readFileSync(terms, 'utf8').replace(/\r\n/g, '\n').trim()), `public/licenses.txt lacks the terms of ${name}`);
  }
  assert.ok(
    ['Atkinson Hyperlegible Next', 'Petrona'].every(
      (face) =>
        text.includes(readSource(`src/styles/fonts/OFL-${face.replaceAll(' ', '-')}.txt`).trim()) &&
        new RegExp(`^${face}, .* SIL Open Font License 1\\.1$`, 'm').test(text),
    ),
  );
});

test('only esbuild has an install script', () => {
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
