/* `npm run base` on a small club over small books: what it prints, what it writes, and that a wrong word writes nothing. */
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, test } from 'vitest';
import { check } from '../../../src/checks/check.ts';
import { projectFolder } from '../../../src/cli/paths.ts';
import { fingerprint } from '../../../src/integration/fingerprint.ts';
import { formatDiagnostic } from '../../../src/source/diagnostic.ts';
import { goodClub } from '../../fixtures/invalid/cases.ts';
import { books, edit, withClub } from '../source/layered.ts';

const over = mkdtempSync(join(tmpdir(), 'books-'));
cpSync(books, over, { recursive: true });
for (const ending of ['svg', 'yaml']) {
  mkdirSync(join(over, 'common', 'drawings'), { recursive: true });
  cpSync(join(goodClub, 'drawings', `egg.${ending}`), join(over, 'common', 'drawings', `larva.${ending}`));
}
afterAll(() => rmSync(over, { recursive: true, force: true }));

type Ran = { code: number | null; out: string; err: string };
type Club = { directory: string; base: (...typed: string[]) => Ran; read: (path: string) => string };

function inClub(files: Record<string, string>, use: (club: Club) => void): void {
  withClub(
    'US-OH',
    files,
    (directory) =>
      use({
        directory,
        base: (...typed) => run(directory, typed),
        read: (path) => readFileSync(join(directory, path), 'utf8'),
      }),
    over,
  );
}

function run(directory: string, typed: readonly string[]): Ran {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['src/cli/base.ts', ...typed, '--content', directory], {
    cwd: projectFolder,
    encoding: 'utf8',
  });
  return { code: status, out: stdout, err: stderr };
}

const REVIEW = 'checked: 2026-05-01\nnext-check: 2027-05-01\nby: mentor\n';
const SKEP = `word: skep\nmeaning: A basket.\n${REVIEW}`;
const inBook = (path: string): string => readFileSync(join(over, path), 'utf8');

test('without a word: what each book gives, what was changed, what is missing', () =>
  inClub(
    {
      'words/skep.yaml': SKEP,
      'articles/old-comb.add.mdx': `---\n${REVIEW}---\nOurs.\n`,
      'articles/comb.mdx': inBook('common/articles/old-comb.mdx').replace('formerly: [/know-how/comb/]\n', ''),
      '.base/articles/comb.mdx': 'as it was',
      '.base/words/skep.yaml': 'as it was',
    },
    ({ base }) => {
      const { code, out, err } = base();
      assert.deepEqual([code, err], [0, '']);
      for (const part of [
        'Books, the nearest last:\n  common  The common book, edition of November 1, 2026: 3 pages of 7 entries\n',
        '\n  us-oh  The book of Ohio, edition of November 1, 2026: 1 page of 3 entries\n',
        '\nWritten over:\n  words/skep  (its book has changed since: npm run base -- compare words/skep)\n',
        '\nAdded to, or with a choice of your own:\n  articles/old-comb\n',
        '\n  articles/comb  (it is called articles/old-comb there now)\n',
        '\nGaps, for you to fill or to leave:\n  figure swarm-weight\n  swarm-line\n',
        'Over the books: 2 (1 older than its book: words/skep).',
      ])
        assert.ok(out.includes(part), `${part}\nin\n${out}`);
    },
  ));

test('take: a page becomes a draft with an empty review, and its text of now is noted', () =>
  inClub({}, ({ base, directory, read }) => {
    const { code, out, err } = base('take', 'articles/old-comb');
    assert.deepEqual([code, err], [0, '']);
    assert.match(out, /^Wrote articles\/old-comb\.mdx, and .* \.base\/articles\/old-comb\.mdx/);
    assert.match(out, /articles\/old-comb\.add\.mdx\.\n$/);
    const book = inBook('common/articles/old-comb.mdx');
    assert.equal(read('.base/articles/old-comb.mdx'), book);
    assert.equal(
      read('articles/old-comb.mdx'),
      book
        .replace('---\n', '---\ndraft: true\n')
        .replace('checked: 2026-04-18\nnext-check: 2027-04-18\nby: book editor\n', 'checked:\nnext-check:\nby:\n'),
    );
    const held = fingerprint({ directory });
    assert.deepEqual(base('take', 'articles/old-comb'), {
      code: 1,
      out: '',
      err: 'articles/old-comb.mdx already exists. It was not changed.\n',
    });
    assert.equal(fingerprint({ directory }), held);
  }));

test('take: of a figure the choice alone, and of a drawing its lines too', () =>
  inClub({}, ({ base, directory, read }) => {
    assert.equal(base('take', 'figures/swarm-hours').code, 0);
    assert.equal(read('figures/swarm-hours.yaml'), 'follows: us-count\nbecause: \n');
    assert.ok(read('.base/figures/swarm-hours.yaml').startsWith(inBook('common/figures/swarm-hours.yaml')));
    edit(directory, 'figures/swarm-hours.yaml', 'because: ', 'because: It fits us.');
    assert.equal(base('take', 'drawings/larva').code, 0);
    assert.equal(read('drawings/larva.svg'), inBook('common/drawings/larva.svg'));
    assert.equal(read('drawings/larva.yaml'), `draft: true\n${inBook('common/drawings/larva.yaml')}`);
    edit(directory, 'drawings/larva.yaml', 'draft: true\n', '');
    assert.deepEqual(check(directory).map(formatDiagnostic), []);
  }));

test('compare: what the book changed since, and what the club changed', () =>
  inClub({}, ({ base, directory }) => {
    const page = 'common/articles/old-comb.mdx';
    const before = inBook(page);
    try {
      base('take', 'articles/old-comb');
      edit(directory, 'articles/old-comb.mdx', 'Dark comb goes first.', 'Ours goes first.');
      writeFileSync(join(over, page), before.replace('Melt dark comb down.', 'Melt dark comb down in spring.'));
      const { code, out, err } = base('compare', 'articles/old-comb');
      assert.deepEqual([code, err], [0, '']);
      assert.match(out, /changed since .*:\n- summary: Melt dark comb down\.\n\+ summary: Melt dark comb down in spring\.\n\n/);
      assert.match(out, /^- Dark comb goes first\.\n\+ Ours goes first\.$/m);
    } finally {
      writeFileSync(join(over, page), before);
    }
  }));

test('compare: words that were added, a page that nobody took, one of the club, and one of another name now', () =>
  inClub({ 'articles/swarms.add.mdx': `---\n${REVIEW}---\nOurs.\n` }, ({ base, directory }) => {
    writeFileSync(
      join(directory, 'articles/comb.mdx'),
      inBook('common/articles/old-comb.mdx').replace('/know-how/comb/', '/know-how/dark/'),
    );
    const added = base('compare', 'articles/swarms');
    assert.equal(added.code, 0);
    assert.match(added.out, /^\+ Ours\.$/m);
    assert.match(base('compare', 'articles/old-comb').out, /\nYou changed nothing\.\n$/);
    assert.equal(base('compare', 'articles/stings').out, 'No book of yours has articles/stings. It is your own.\n');
    assert.match(
      base('compare', 'articles/comb').out,
      /^No book of yours has articles\/comb any more; it is called articles\/old-comb there now\. /,
    );
  }));

test('checked: a line of claims.csv, which no longer counts when the book changes its text', () =>
  inClub({}, ({ base, directory, read }) => {
    const page = 'common/articles/old-comb.mdx';
    const before = inBook(page);
    try {
      const { code, out } = base('checked', 'articles/old-comb', '--on', '2026-06-01', '--by', 'officer, "diseases"');
      assert.equal(code, 0);
      assert.match(out, /^The officer, "diseases" compared articles\/old-comb on June 1, 2026\. /);
      assert.match(read('claims.csv'), /^what,day,by,hash\narticles\/old-comb,2026-06-01,"officer, ""diseases""",sha256:[0-9a-f]{16}\n$/);
      const held = read('claims.csv');
      assert.deepEqual(base('checked', 'articles/old-comb', '--on', '2026-06-01'), {
        code: 1,
        out: '',
        err: 'claims.csv already says that articles/old-comb was compared on June 1, 2026.\n',
      });
      assert.equal(read('claims.csv'), held);
      assert.match(base().out, /\nCompared by you:\n {2}articles\/old-comb\n/);
      writeFileSync(join(over, page), before.replace('Dark comb', 'Old comb'));
      const { out: changed } = base();
      assert.doesNotMatch(changed, /\nCompared by you:\n/);
      assert.match(changed, /\nCompared by you, but the book has changed since:\n {2}articles\/old-comb\n/);
      assert.equal(base('checked', 'articles/old-comb', '--on', '2026-06-01').code, 0);
      assert.match(base().out, /\nCompared by you:\n {2}articles\/old-comb\n/);
      assert.deepEqual(check(directory).map(formatDiagnostic), []);
    } finally {
      writeFileSync(join(over, page), before);
    }
  }));

test('checked: a table with semicolons keeps them', () =>
  inClub({ 'claims.csv': 'what;day;by;hash\nwords/skep;2026-05-20;mentor;sha256:0\n' }, ({ base, directory }) => {
    assert.equal(base('checked', 'articles/old-comb', '--on', '2026-06-01').code, 0);
    assert.deepEqual(check(directory).map(formatDiagnostic), []);
    assert.match(base().out, /\nCompared by you:\n {2}articles\/old-comb\n/);
  }));

test('a wrong word is answered with a sentence and a code, and nothing is written', { tags: ['slow'] }, () =>
  inClub({ 'club.yaml': 'leaves-out: [words/skep]\n' }, ({ base, directory }) => {
    const held = fingerprint({ directory });
    for (const [typed, code, sentence] of [
      [['tak'], 2, 'base does not know "tak"; did you mean take?'],
      [['fly', 'articles/swarms'], 2, 'base does not know "fly"; there are: take, compare, checked.'],
      [['take'], 2, 'base take needs an entry: npm run base -- take articles/swarms.'],
      [['checked'], 2, 'base checked needs an entry: npm run base -- checked articles/swarms.'],
      [['take', 'swarms'], 1, '"swarms" is not the name of an entry. Write its folder and its name, such as articles/swarms.'],
      [['compare', 'articles/swarmz'], 1, 'There is no articles/swarmz.mdx; did you mean articles/swarms?'],
      [['take', 'articles/stings'], 1, 'articles/stings is already your own.'],
      [['checked', 'articles/stings'], 1, 'articles/stings is your own: its line "checked:" says when you compared it.'],
      [['take', 'words/skep'], 1, 'words/skep is not shown here: it holds elsewhere, or the club leaves it out.'],
      [['checked', 'articles/swarms', '--on', 'today'], 2, '--on takes a day written as 2026-05-01, not today.'],
    ] as const)
      assert.deepEqual(base(...typed), { code, out: '', err: `${sentence}\n` });
    assert.equal(fingerprint({ directory }), held);
    assert.ok(!existsSync(join(directory, '.base')) && !existsSync(join(directory, 'claims.csv')));
  }),
);

test('a folder without a club, and a club without a land, have no books', () => {
  const bare = mkdtempSync(join(tmpdir(), 'bare-'));
  try {
    assert.deepEqual(run(bare, []), { code: 1, out: '', err: "There is no club.yaml here. Write the club's folder after --content.\n" });
    const { code, err } = run(goodClub, ['take', 'articles/swarms']);
    assert.equal(code, 1);
    assert.match(err, /no line "land:", such as land: US-OH\.\n$/);
  } finally {
    rmSync(bare, { recursive: true, force: true });
  }
});
