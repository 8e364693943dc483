// DEVELOPERS.md is true to the tree: its plan names every room, its tables every package and only commands that are there.
import assert from 'node:assert/strict';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'vitest';
import { projectFolder } from '../../src/desk/places.ts';
import { files, read } from './tree.ts';

const guide = read('DEVELOPERS.md');
const { version, dependencies, devDependencies, scripts } = JSON.parse(read('package.json')) as { version: string } & Record<
  'dependencies' | 'devDependencies' | 'scripts',
  Record<string, string>
>;
const under = (heading: string): string =>
  guide.split(/^## /m).find((part) => part.startsWith(heading)) ?? assert.fail(`no part ${heading}`);
const cells = (part: string): string[][] =>
  part
    .split('\n')
    .filter((line) => /^\| (?!---)/.test(line))
    .slice(1)
    .map((line) => line.slice(2, -2).split(' | '));

test('every room of the tree stands in the plan, and the plan names no other', () => {
  const plan = under('The plan of the house');
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

test('each package has its reason, and no reason is left of a package that went', () => {
  const named = cells(under('Dependencies')).flatMap(([names]) =>
    names!
      .replace(/\((?:tests|bench)\)/, '')
      .split(',')
      .map((name) => name.trim()),
  );
  assert.deepEqual(named.toSorted(), [...Object.keys(dependencies), ...Object.keys(devDependencies)].toSorted());
  assert.equal(new Set(named).size, named.length);
});

test('commands and files that it names are there', () => {
  for (const [, name] of guide.matchAll(/`npm (?:run )?([a-z:]+)/g)) assert.ok(name! in scripts, `npm run ${name}`);
  for (const [, path] of guide.matchAll(/`(?:node )?((?:src|tests|shared|content)\/[\w/.-]+)`/g))
    assert.ok(existsSync(join(projectFolder, path!)), `${path} is not there`);
});

test('every decision is dated, and says what was refused or what it costs', () => {
  const decisions = under('Decisions')
    .split('\n\n')
    .slice(1)
    .filter((paragraph) => paragraph.trim());
  assert.ok(decisions.length > 30);
  const days = decisions.map((paragraph) => /^\*\*(\d{4}-\d\d-\d\d)\. /.exec(paragraph)?.[1]);
  assert.deepEqual(
    decisions.filter((paragraph, at) => !days[at] || !/Refused:|Price:/.test(paragraph)),
    [],
  );
  assert.deepEqual(
    days.filter((day, at) => at > 0 && day! < days[at - 1]!),
    [],
  );
});

test('the changelog begins with this version', () => {
  const [newest] = [...read('CHANGELOG.md').matchAll(/^## (\S+), \d{1,2} [A-Z][a-z]+ \d{4}$/gm)].map(([, number]) => number);
  assert.equal(newest, version);
  for (const [, name] of read('CHANGELOG.md').matchAll(/`npm (?:run )?([a-z:]+)/g)) assert.ok(name! in scripts, `npm run ${name}`);
});
