// `new club`: a complete folder, with nothing invented, and no fault once its blanks are filled.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, test } from 'vitest';
import { check } from '../../../../src/checks/check.ts';
import { clubFiles } from '../../../../src/cli/new/club.ts';
import { projectFolder } from '../../../../src/cli/paths.ts';
import { formatDiagnostic } from '../../../../src/source/diagnostic.ts';
import { readFolder } from '../../../../src/source/folder.ts';
import { writeFilledClub } from './filled-club.ts';

const folder = mkdtempSync(join(tmpdir(), 'club-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const demo = readFolder(join(projectFolder, 'content', 'demo-club'));

function run(...typed: string[]): [number | null, string, string] {
  const { NODE_ENV: _, ...environment } = process.env;
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(projectFolder, 'src/cli/new.ts'), 'club', ...typed], {
    cwd: projectFolder,
    env: { ...environment, INIT_CWD: folder },
    encoding: 'utf8',
  });
  return [status, stdout, stderr];
}

test('a club is created, and check names its blanks and nothing else', () => {
  const [code, out, err] = run('our-club');
  assert.deepEqual([code, err], [0, '']);
  assert.equal(
    out,
    `Wrote ${clubFiles(demo).length} files into our-club. Begin with club.yaml; npm run check -- --content our-club lists every blank.\n`,
  );
  const faults = check(join(folder, 'our-club'));
  assert.ok(faults.length > 400, `${faults.length} blanks`);
  assert.deepEqual(
    faults
      .filter(
        ({ found }) =>
          !/^(?:a blank|a heading without words|a box without words|a checklist without a step|fields and no words after them)$/.test(
            found,
          ),
      )
      .map(formatDiagnostic),
    [],
  );
  assert.match(
    faults.map(formatDiagnostic).join('\n'),
    /^figures\/bees-per-pound\.yaml:\d+:\d+ field: checked: found a blank; write the day on which you compared this with its sources, such as 2026-04-18$/m,
  );
});

test("all figures and cautions come with their sources, and without the other club's own statements", () => {
  const made = readFolder(join(folder, 'our-club'));
  const of = (club: typeof demo, collection: string) =>
    new Map(
      club.entries
        .filter((entry) => entry.collection === collection)
        .map(({ id, fields }) => [id, fields.value as Record<string, unknown>]),
    );
  for (const kind of ['figures', 'cautions']) {
    const [there, here] = [of(demo, kind), of(made, kind)];
    assert.deepEqual([...here.keys()].sort(), [...there.keys()].sort());
    for (const [id, fields] of here) {
      assert.deepEqual(
        [fields.checked, fields['next-check'], fields.by, fields.history, fields.ask, fields.more],
        [null, null, 'almanac editor', undefined, undefined, undefined],
        id,
      );
      assert.deepEqual(
        [withoutPlaces(fields.rows), fields.says, fields.sources],
        [withoutPlaces(there.get(id)!.rows), there.get(id)!.says, there.get(id)!.sources],
        id,
      );
      assert.equal('because' in fields, 'because' in there.get(id)!, id);
    }
  }
  for (const [id, fields] of of(made, 'sources'))
    assert.deepEqual(
      { ...fields, opened: undefined, for: undefined },
      { ...of(demo, 'sources').get(id), opened: undefined, for: undefined },
      id,
    );
  assert.deepEqual(
    made.entries.filter(({ collection }) => !['figures', 'cautions', 'sources'].includes(collection)).map(({ path }) => path),
    ['articles/first-article.mdx', 'checklists/first-checklist.mdx', 'meetings/first-meeting.mdx'],
  );
  for (const file of made.files)
    assert.doesNotMatch(
      readFileSync(join(folder, 'our-club', file), 'utf8').replace(/^\s*#.*$/gm, ''),
      /tamarack|alder grange|invented|made up|example\.org|555-01/i,
      file,
    );
});

test('the first page of a kind that the club left out is written, and the line to change is named', () => {
  const { NODE_ENV: _, ...environment } = process.env;
  const { stdout } = spawnSync(process.execPath, [join(projectFolder, 'src/cli/new.ts'), 'word', 'Brood', '--content', 'our-club'], {
    cwd: projectFolder,
    env: { ...environment, INIT_CWD: folder },
    encoding: 'utf8',
  });
  assert.match(stdout, /^Wrote our-club\/words\/brood\.yaml\.\n.*\nTake words out of the list "leaves-out:" in club\.yaml as well\.\n$/);
});

test('the club has no fault once the blanks are filled', () => {
  writeFilledClub(join(folder, 'filled'), demo.directory);
  assert.deepEqual(check(join(folder, 'filled')).map(formatDiagnostic), []);
});

/** A book's rows are read with the place of the book. */
const withoutPlaces = (rows: unknown): unknown => (rows as { for?: unknown }[] | undefined)?.map((row) => ({ ...row, for: undefined }));

test('a withdrawn or unfinished figure is not copied', () => {
  const path = 'figures/bees-per-pound.yaml';
  const withdrawn = {
    ...demo,
    entries: demo.entries.map((entry) =>
      entry.path.endsWith(path)
        ? { ...entry, fields: { ...entry.fields, value: { ...(entry.fields.value as object), withdrawn: '2026-05-14, wrong' } } }
        : entry,
    ),
  };
  assert.ok(clubFiles(demo).some((file) => file.path === path) && !clubFiles(withdrawn).some((file) => file.path === path));
});

test('a folder with any content is not changed', () => {
  mkdirSync(join(folder, 'full'));
  writeFileSync(join(folder, 'full', 'mine.txt'), 'mine');
  assert.deepEqual(run('full'), [1, '', 'full already holds files, and was not changed. Write the name of a new folder.\n']);
  assert.deepEqual(run('full/mine.txt'), [1, '', `${join(folder, 'full', 'mine.txt')} is a file. Write the name of a new folder.\n`]);
  assert.deepEqual(run(join(projectFolder, 'content', 'ours')), [
    1,
    '',
    "That folder is inside the demo club's. Write a folder beside the almanac's, such as ../our-club.\n",
  ]);
  assert.deepEqual(run(), [2, '', 'club needs a new folder: npm run new -- club ../our-club.\n']);
  assert.deepEqual(run('x', '--write'), [2, '', 'club takes only a folder: npm run new -- club ../our-club.\n']);
  mkdirSync(join(folder, 'empty'));
  assert.equal(run('empty')[0], 0);
});
