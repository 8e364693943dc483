/*
 * A new edition of the books under a club that wrote over two entries, chose a row of a figure, added to one, withdrew one and compared two: no word of
 * the club's is lost, and everything that no longer fits is named.
 */
import assert from 'node:assert/strict';
import { cpSync, mkdtempSync, renameSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'vitest';
import { checkFolder } from '../../../src/checks/check.ts';
import { summaryLines } from '../../../src/checks/summary.ts';
import { formatDiagnostic } from '../../../src/source/diagnostic.ts';
import { readFolder, type Folder } from '../../../src/source/folder.ts';
import { bookEntry, claimFor, hashOf, lapsedClaims } from '../../../src/source/origins.ts';
import { isOlder, takenPath } from '../../../src/source/taken.ts';
import { plainText } from '../../../src/source/prose.ts';
import { books, edit, withClub } from './layered.ts';

const REVIEW = 'checked: 2026-05-01\nnext-check: 2027-05-01\nby: mentor\n';
const page = (title: string, words: string): string =>
  `---\ntitle: ${title}\nsummary: Ours.\nsubject: swarms\nyard: false\nsources: [leaflet]\ncertainty: likely\nask: mentor\n${REVIEW}---\n${words}\n`;

type Club = { files: Record<string, string>; over: string };

/** The club as it stood on the old edition, with what `base` notes of the texts that it took and compared. */
function clubOn(over: string): Club {
  const files: Record<string, string> = {
    'articles/swarms.mdx': page('Swarms', 'Our own swarms.'),
    'articles/old-comb.mdx': page('Old comb', 'Our own comb.'),
    'articles/inspection.add.mdx': `---\n${REVIEW}---\nOurs comes in May of each year.\n`,
    'figures/swarm-hours.yaml': 'follows: hand-book\nbecause: It fits us.\n',
    'words/skep.yaml': 'withdrawn: 2026-05-14, nobody uses it\n',
  };
  const before = withClub('US-OH', {}, (directory) => readFolder(directory), over);
  const entry = (name: string) => before.entries.find(({ collection, id }) => `${collection}/${id}` === name)!;
  for (const name of ['articles/swarms', 'articles/old-comb', 'articles/inspection', 'figures/swarm-hours'])
    files[takenPath(entry(name))] = entry(name).text;
  const claims = ['articles/inspection', 'local/registering-hives'].map(
    (name) => `${name},2026-05-20,mentor,${hashOf(bookEntry(entry(name))!)}`,
  );
  files['claims.csv'] = `what,day,by,hash\n${claims.join('\n')}\n`;
  return { files, over };
}

function newEdition(over: string): void {
  edit(over, 'common/articles/swarms.mdx', 'A swarm hangs still.', 'A swarm hangs still for a while.');
  renameSync(join(over, 'common/articles/old-comb.mdx'), join(over, 'common/articles/dark-comb.mdx'));
  edit(over, 'common/articles/dark-comb.mdx', 'formerly: [/know-how/comb/]', 'formerly: [/know-how/comb/, /know-how/old-comb/]');
  edit(over, 'us/figures/swarm-hours.yaml', 'value: 24', 'value: 26');
  edit(over, 'us-oh/local/registering-hives.mdx', 'the first of June', 'the first of July');
  edit(over, 'common/treatments/thymol.yaml', 'title: Thymol', 'withdrawn: 2026-06-01, its row was wrong\ntitle: Thymol');
}

const found = (folder: Folder, name: string) => folder.entries.find(({ collection, id }) => `${collection}/${id}` === name)!;

test('on its own edition the club has no fault, and its claims hold', () => {
  const { files, over } = clubOn(books);
  withClub(
    'US-OH',
    files,
    (directory) => {
      const folder = readFolder(directory);
      assert.deepEqual(checkFolder(folder).map(formatDiagnostic), []);
      for (const name of ['articles/inspection', 'local/registering-hives'])
        assert.deepEqual(claimFor(folder, found(folder, name)), { day: '2026-05-20', by: 'mentor' }, name);
      assert.ok(!isOlder(folder, found(folder, 'articles/swarms')));
    },
    over,
  );
});

test('on a new edition nothing of the club is lost, and everything is named', () => {
  const over = mkdtempSync(join(tmpdir(), 'books-'));
  try {
    cpSync(books, over, { recursive: true });
    const { files } = clubOn(over);
    newEdition(over);
    withClub(
      'US-OH',
      files,
      (directory) => {
        const folder = readFolder(directory);
        assert.deepEqual(checkFolder(folder).map(formatDiagnostic), [
          'articles/old-comb.mdx:1:1 book: the file: found what was written over articles/old-comb, which is called articles/dark-comb now; write the file as articles/dark-comb.mdx, and .base/articles/old-comb.mdx with it',
        ]);
        assert.equal(plainText(found(folder, 'articles/swarms').tree!), 'Our own swarms.');
        assert.equal(plainText(found(folder, 'articles/old-comb').tree!), 'Our own comb.');
        assert.match(
          plainText(found(folder, 'articles/inspection').tree!),
          /A county inspector may look at them\.In our clubOurs comes in May/,
        );
        assert.equal((found(folder, 'words/skep').fields.value as { withdrawn: string }).withdrawn, '2026-05-14, nobody uses it');
        assert.equal((found(folder, 'treatments/thymol').fields.value as { withdrawn: string }).withdrawn, '2026-06-01, its row was wrong');
        const { rows } = found(folder, 'figures/swarm-hours').fields.value as { rows: { id: string; value?: number }[] };
        assert.equal(rows.find(({ id }) => id === 'us-count')!.value, 26);
        assert.equal((found(folder, 'figures/swarm-hours').fields.value as { follows: string }).follows, 'hand-book');
        assert.deepEqual(claimFor(folder, found(folder, 'articles/inspection')), { day: '2026-05-20', by: 'mentor' });
        assert.equal(claimFor(folder, found(folder, 'local/registering-hives')), null);
        for (const [name, is] of [
          ['articles/swarms', true],
          ['figures/swarm-hours', true],
          ['articles/inspection', false],
        ] as const)
          assert.equal(isOlder(folder, found(folder, name)), is, name);
        assert.deepEqual(lapsedClaims(folder), ['local/registering-hives']);
        assert.deepEqual(summaryLines(folder, '2026-06-01'), [
          'From the books (common, us, us-oh): 2 pages, 2 figures; 0 past their next check, for their editors to do.',
          'Your own: 7 pages. Over the books: 3 (2 older than its book: articles/swarms, figures/swarm-hours). Compared by you: 1 of 2.',
          'Not shown here: 0 entries, 2 rows (for other places). Gaps: 0.',
        ]);
      },
      over,
    );
  } finally {
    rmSync(over, { recursive: true, force: true });
  }
});
