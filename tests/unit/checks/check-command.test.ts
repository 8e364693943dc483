/* Output and exit codes of `check` and `review`. */
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'vitest';
import { fileURLToPath } from 'node:url';
import { readFolder } from '../../../src/source/folder.ts';
import { goodClub, withChanges, type Change } from '../../fixtures/invalid/cases.ts';

const project = fileURLToPath(new URL('../../../', import.meta.url));

function run(command: 'check' | 'review', ...args: string[]): { code: number | null; out: string; err: string } {
  const { status, stdout, stderr } = spawnSync(process.execPath, [`src/cli/${command}.ts`, ...args], { cwd: project, encoding: 'utf8' });
  return { code: status, out: stdout, err: stderr };
}

const BARE: Change = { file: 'checklists/package-day.mdx', insteadOf: ' <Task id="thermometer" />', write: '' };
const SLASHES: Change = { file: 'meetings/2026-06-13-yard-day.mdx', insteadOf: 'day: 2026-06-13', write: 'day: 6/13/26' };

const good = readFolder(goodClub);

test('a clean folder: a count and exit 0', () =>
  assert.deepEqual(run('check', '--content', goodClub), { code: 0, out: `No faults in ${good.files.length} files.\n`, err: '' }));

test('a hint is printed and is no fault', () =>
  withChanges(
    [{ file: 'articles/stings.mdx', insteadOf: 'Scrape it off. Seconds count.', write: 'Scrape it off. Seconds count. Some say 85 F.' }],
    (directory) => {
      const { code, out } = run('check', '--content', directory);
      assert.equal(code, 0);
      assert.match(
        out,
        /^hint: articles\/stings\.mdx:\d+:\d+ untagged: the words: found "85 F", a temperature without its source; write .*\nNo faults in \d+ files\.\n$/,
      );
    },
  ));

test('faults: one line each, a count and exit 1', () =>
  withChanges([BARE, SLASHES], (directory) => {
    const { code, out } = run('check', '--content', directory);
    assert.equal(code, 1);
    assert.equal(
      out,
      `checklists/package-day.mdx:33:1 step-id: a step: found a step without a Task id; write <Task id="..." /> at its end; npm run check -- --write-ids does it for you
meetings/2026-06-13-yard-day.mdx:4:6 field: day: found "6/13/26"; write a day such as 2026-04-18
2 faults in 2 files.
`,
    );
  }));

test('JSON: the same, for programs', () =>
  withChanges([SLASHES], (directory) => {
    const { code, out } = run('check', '--content', directory, '--format', 'json');
    assert.equal(code, 1);
    assert.deepEqual(JSON.parse(out), [
      {
        path: 'meetings/2026-06-13-yard-day.mdx',
        line: 4,
        column: 6,
        rule: 'field',
        field: 'day',
        found: '"6/13/26"',
        write: 'a day such as 2026-04-18',
        level: 'fault',
      },
    ]);
  }));

test('json of a clean folder is an empty list', () => assert.equal(run('check', '--content', goodClub, '--format', 'json').out, '[]\n'));

test('ids are written once, and the list is then clean', () =>
  withChanges([BARE], (directory) => {
    const { code, out } = run('check', '--content', directory, '--write-ids');
    assert.deepEqual([code, out], [0, `checklists/package-day.mdx: 1 id written.\nNo faults in ${good.files.length} files.\n`]);
    const path = join(directory, BARE.file);
    assert.match(readFileSync(path, 'utf8'), /or more <Task id="read-the-thermometer-or" \/>/);
    assert.equal(run('check', '--content', directory, '--write-ids').out, `No faults in ${good.files.length} files.\n`);
  }));

test("writing ids keeps a file's byte-order mark and line ends", () =>
  withChanges([{ ...BARE, savedAs: 'UTF-8 with a mark' }], (directory) => {
    const path = join(directory, BARE.file);
    const bare = readFileSync(path, 'utf8').replace(/\r?\n/g, '\r\n');
    writeFileSync(path, bare);
    assert.equal(run('check', '--content', directory, '--write-ids').code, 0);
    const written = readFileSync(path, 'utf8');
    assert.ok(written.startsWith('\uFEFF---\r\n') && !/[^\r]\n/.test(written));
    assert.equal(written.replace(' <Task id="read-the-thermometer-or" />', ''), bare);
  }));

test('--strict needs a day, and a day needs --strict', () => {
  assert.deepEqual(run('check', '--content', goodClub, '--strict'), {
    code: 2,
    out: '',
    err: '--strict needs the day that counts as today: --strict --on 2026-05-01.\n',
  });
  assert.equal(run('check', '--content', goodClub, '--on', '2026-05-01').code, 2);
  assert.equal(run('check', '--content', goodClub, '--strict', '--on', '2026-05-01').code, 0);
  assert.equal(run('check', '--content', goodClub, '--strict', '--on', '2027-02-02').code, 1);
});

test('a missing folder, and a folder that links back into itself, are faults', () => {
  const none = run('check', '--content', join(goodClub, 'none'));
  assert.deepEqual(
    [none.code, none.out],
    [
      1,
      ".:1:1 folder: the content folder: found no such folder; write the path of a club's content folder after --content\n1 fault in 1 file.\n",
    ],
  );
  withChanges([{ file: 'round/a.txt', write: 'x' }], (directory) => {
    symlinkSync(directory, join(directory, 'round', 'back'), 'dir');
    assert.match(
      run('check', '--content', directory).out,
      /^round\/back:1:1 folder: the content folder: found a link that leads back to a folder it lies in; write a real folder, or nothing$/m,
    );
  });
});

test('review lists what is due on a given day, and otherwise reads the clock', () => {
  const { code, out } = run('review', '--content', goodClub, '--on', '2027-02-02');
  assert.equal(code, 0);
  assert.match(out, /^education officer:\n {2}2027-02-01 {2}1 day past {2}articles\/stings\.mdx:11 {2}next-check\n/m);
  assert.equal(run('review', '--content', goodClub).code, 0);
});

test('review names the files that it could not list', () =>
  withChanges([SLASHES], (directory) =>
    assert.match(
      run('review', '--content', directory, '--on', '2026-12-02').out,
      new RegExp(`1 of ${good.entries.length} files could not be listed; npm run check says why\\.\\n$`),
    ),
  ));
