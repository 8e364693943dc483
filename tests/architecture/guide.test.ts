// Documents agree with the tree: the plan names every folder, the dependency table every package, and every command, path and link in a
// document exists.
import assert from 'node:assert/strict';
import { existsSync } from 'node:fs';
import { join, posix } from 'node:path';
import { test } from 'vitest';
import { projectFolder } from '../../src/cli/paths.ts';
import { files, read } from './tree.ts';

const documents = files().filter((path) => /^(README|DEVELOPERS|CHANGELOG)\.md$|^docs\/.+\.md$/.test(path));
const { version, dependencies, devDependencies, scripts } = JSON.parse(read('package.json')) as { version: string } & Record<
  'dependencies' | 'devDependencies' | 'scripts',
  Record<string, string>
>;
const under = (path: string, heading: string): string =>
  read(path)
    .split(/^##? /m)
    .find((part) => part.startsWith(heading)) ?? assert.fail(`no part ${heading} in ${path}`);
const cells = (part: string): string[][] =>
  part
    .split('\n')
    .filter((line) => /^\| (?!---)/.test(line))
    .slice(1)
    .map((line) => line.slice(2, -2).split(' | '));

test('the plan names every folder of the tree, and no other', () => {
  const plan = under('DEVELOPERS.md', 'The plan');
  const named = [...plan.matchAll(/(?:^|\s)([a-z][a-z-]*)\//gm)].map(([, name]) => name!);
  const rooms = new Set(
    files()
      .map((path) => path.split('/'))
      .filter((parts) => parts.length > 1)
      .flatMap(([top, second, third]) =>
        top === 'src' || top === 'shared' ? [top, ...(third ? [second!] : [])] : /^\./.test(top!) ? [] : [top!],
      ),
  );
  assert.deepEqual(
    [...rooms].filter((room) => !named.includes(room)),
    [],
  );
  const inside = new Set(files().flatMap((path) => path.split('/').slice(0, -1)));
  assert.deepEqual(
    named.filter((name) => !inside.has(name)),
    [],
  );
});

test('each package has a reason, and no removed package has one', () => {
  const named = cells(under('docs/dependencies.md', 'Dependencies')).flatMap(([names]) =>
    names!
      .replace(/\((?:tests|bench)\)/, '')
      .split(',')
      .map((name) => name.trim()),
  );
  assert.deepEqual(named.toSorted(), [...Object.keys(dependencies), ...Object.keys(devDependencies)].toSorted());
  assert.equal(new Set(named).size, named.length);
});

/** npm's own commands, which documents may name. */
const ofNpm = ['install', 'ci', 'pack'];

test('every command in a document exists', () => {
  const wrong = documents.flatMap((path) =>
    [...read(path).matchAll(/(?:`|^ {4})npm (?:run )?([a-z:]+)/gm)]
      .filter(([, name]) => !(name! in scripts) && !ofNpm.includes(name!))
      .map(([line]) => `${path}: ${line}`),
  );
  assert.deepEqual(wrong, []);
});

test('every file in a document exists', () => {
  // A superseded decision may name files that were deleted.
  const current = documents.filter((path) => !/^Status: Superseded/m.test(read(path)));
  const wrong = current.flatMap((path) =>
    [...read(path).matchAll(/`(?:node )?((?:src|tests|shared|docs)\/[\w/.-]+)`/g)]
      .filter(([, named]) => !existsSync(join(projectFolder, named!)))
      .map(([, named]) => `${path}: ${named}`),
  );
  assert.deepEqual(wrong, []);
});

/** The fragment of a heading, as Markdown hosts make it. */
const fragmentOf = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^\w -]/g, '')
    .trim()
    .replaceAll(' ', '-');

function brokenLinks(path: string): string[] {
  const text = read(path).replace(/`[^`\n]*`|^ {4}.*$/gm, '');
  return [...text.matchAll(/\]\(([^)\s]+)\)/g)].flatMap(([, to]) => {
    if (/^https?:/.test(to!)) return [];
    const [file = '', fragment] = to!.split('#');
    const target = file === '' ? path : posix.join(posix.dirname(path), file);
    if (!existsSync(join(projectFolder, target))) return [`${path}: ${to}`];
    const fragments = [...read(target).matchAll(/^#+ (.+)$/gm)].map(([, heading]) => fragmentOf(heading!));
    return fragment === undefined || fragments.includes(fragment) ? [] : [`${path}: ${to}`];
  });
}

test('every link between documents leads to an existing file and heading', () => {
  assert.ok(documents.length > 60, `${documents.length} documents`);
  assert.deepEqual(documents.flatMap(brokenLinks), []);
});

test('the index of the guide and that of the decisions name every file', () => {
  for (const folder of ['docs/guide', 'docs/decisions']) {
    const linked = [...read(`${folder}/README.md`).matchAll(/\]\(([\w-]+\.md)\)/g)].map(([, name]) => `${folder}/${name}`);
    const there = files(folder).filter((path) => !path.endsWith('/README.md'));
    assert.deepEqual(linked.toSorted(), there, folder);
  }
});

test('README.md has at most 80 lines, DEVELOPERS.md at most 150', () => {
  for (const [path, most] of [
    ['README.md', 80],
    ['DEVELOPERS.md', 150],
  ] as const)
    assert.ok(read(path).split('\n').length <= most, `${path}: ${read(path).split('\n').length} lines`);
});

test('every decision has a status with a date, and states context, rejected alternatives and consequences', () => {
  const decisions = files('docs/decisions').filter((path) => !path.endsWith('/README.md'));
  assert.ok(decisions.length > 40);
  for (const [at, path] of decisions.entries()) {
    const text = read(path);
    assert.ok(path.startsWith(`docs/decisions/${String(at + 1).padStart(4, '0')}-`), `${path}: its number`);
    assert.deepEqual(
      [...text.matchAll(/^## (.+)$/gm)].map(([, heading]) => heading),
      ['Context', 'Decision', 'Rejected', 'Consequences'],
      path,
    );
    const [, successor, day] =
      /^Status: (?:In force since|Superseded by \[(\d{4})\]\(\1-[\w-]+\.md\)\. Was in force from) (\d{4}-\d\d-\d\d)$/m.exec(text) ??
      assert.fail(`${path}: its status`);
    assert.ok(day && (!successor || Number(successor) > at + 1), `${path}: its successor`);
  }
});

test('the changelog begins with the current version', () => {
  const [newest] = [...read('CHANGELOG.md').matchAll(/^## (\S+), \d{1,2} [A-Z][a-z]+ \d{4}$/gm)].map(([, number]) => number);
  assert.equal(newest, version);
});
