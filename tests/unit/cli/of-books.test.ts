/* `review` and `withdraw` where a page is one of a book: its review is for the editors, and its file is never written. */
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { appendFileSync, cpSync, existsSync, mkdtempSync, readFileSync, realpathSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'vitest';
import { projectFolder } from '../../../src/cli/paths.ts';
import { fingerprint } from '../../../src/integration/fingerprint.ts';
import { books, edit, withClub } from '../source/layered.ts';

function run(command: string, ...typed: string[]): { code: number | null; out: string; err: string } {
  const { status, stdout, stderr } = spawnSync(process.execPath, [`src/cli/${command}.ts`, ...typed], {
    cwd: projectFolder,
    encoding: 'utf8',
  });
  return { code: status, out: stdout, err: stderr };
}

/** The club lies in a folder of its own, and the site is built beside it. */
function inClub(use: (directory: string, withdraw: (...typed: string[]) => ReturnType<typeof run>) => void): void {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'of-books-')));
  try {
    withClub('US-OH', {}, (made) => {
      const directory = join(folder, 'club');
      cpSync(made, directory, { recursive: true });
      use(directory, (...typed) => run('withdraw', ...typed, '--content', directory, '--out', join(folder, 'site')));
    });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const REVIEW = 'checked: 2026-05-01\nnext-check: 2027-04-01\nby: mentor\n';

test('review lists what the club wrote, over a book too, and the pages of the books only when asked', () =>
  withClub('US-OH', { 'words/skep.yaml': `word: skep\nmeaning: A basket.\n${REVIEW}` }, (directory) => {
    const own = run('review', '--content', directory, '--on', '2027-04-20');
    const all = run('review', '--content', directory, '--on', '2027-04-20', '--all');
    assert.deepEqual([own.code, own.err, all.code, all.err], [0, '', 0, '']);
    assert.match(own.out, /^ {2}2027-04-01 {2}19 days past {2}words\/skep\.yaml:4 {2}next-check$/m);
    assert.doesNotMatch(own.out, /books\//);
    assert.match(all.out, /^ {2}2027-04-18 {2}2 days past {2}books\/common\/articles\/swarms\.mdx:10 {2}next-check$/m);
    assert.match(all.out, /^ {2}2027-05-03 {2}in 13 days {2}books\/us-oh\/articles\/inspection\.mdx:\d+ {2}next-check$/m);
    assert.doesNotMatch(all.out, /books\/common\/words\/skep/);
    for (const line of own.out.split('\n').filter((text) => text.startsWith('  '))) assert.ok(all.out.includes(line), line);
  }));

test('withdraw writes a file of one line in the club, and the book stays as it was', { tags: ['slow'] }, () =>
  inClub((directory, withdraw) => {
    const held = fingerprint({ books });
    const { code, out, err } = withdraw('articles/old-comb', 'its first sentence can mislead', '--on', '2026-11-30');
    assert.equal(code, 0, err);
    assert.match(out, /^articles\/old-comb\.mdx is withdrawn from November 30, 2026 on: its first sentence can mislead$/m);
    assert.equal(
      readFileSync(join(directory, 'articles/old-comb.mdx'), 'utf8'),
      '---\nwithdrawn: 2026-11-30, its first sentence can mislead\n---\n',
    );
    const page = readFileSync(join(directory, '..', 'site', 'know-how', 'old-comb', 'index.html'), 'utf8');
    assert.match(page, /taken down on November\s30,\s2026/);
    assert.doesNotMatch(page, /Dark comb goes first/);
    assert.equal(fingerprint({ books }), held);
  }),
);

test('a page of a book that is not withdrawn after all leaves neither a file of the club nor a changed book', () =>
  inClub((directory, withdraw) => {
    appendFileSync(join(directory, 'club.yaml'), 'leaves-out: [words/skep]\n');
    edit(directory, 'club.yaml', 'units: us', 'units: ells');
    const held = fingerprint({ books, directory });
    for (const [typed, code, sentence] of [
      [['articles/swarms', 'It can mislead'], 1, /^There is no last good state[\s\S]*^articles\/swarms\.mdx was not withdrawn, /m],
      [['words/skep', 'It can mislead'], 1, /^words\/skep\.yaml is not shown here: it holds elsewhere, or the club leaves it out\.$/m],
      [['articles/swarms'], 2, /^withdraw needs the reason, which readers will see: /],
    ] as const) {
      const ran = withdraw(...typed);
      assert.equal(ran.code, code, ran.err);
      assert.match(ran.err + ran.out, sentence);
      assert.equal(fingerprint({ books, directory }), held);
      assert.ok(!existsSync(join(directory, '..', 'site')));
    }
  }));
