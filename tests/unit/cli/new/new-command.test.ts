// Output of `new`, and a sentence for each unknown argument.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, test } from 'vitest';
import fc from 'fast-check';
import { unwrap } from '../../../../shared/result.ts';
import { check } from '../../../../src/checks/check.ts';
import { draftOf, write } from '../../../../src/cli/new/draft.ts';
import { nameFor } from '../../../../src/cli/new/file-name.ts';
import { collectionCalled } from '../../../../src/cli/new/kinds.ts';
import { projectFolder } from '../../../../src/cli/paths.ts';
import { readText } from '../../../../src/source/folder.ts';
import { goodClub } from '../../../fixtures/invalid/cases.ts';

const folder = mkdtempSync(join(tmpdir(), 'new-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
cpSync(goodClub, join(folder, 'club'), { recursive: true });

function run(...typed: string[]): { code: number | null; out: string; err: string } {
  const { NODE_ENV: _, ...environment } = process.env;
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(projectFolder, 'src/cli/new.ts'), ...typed], {
    cwd: projectFolder,
    env: { ...environment, INIT_CWD: folder },
    encoding: 'utf8',
  });
  return { code: status, out: stdout, err: stderr };
}

test('a draft is written, and the next step is printed', () => {
  const { code, out, err } = run('meeting', 'Honey: "the" evening', '--content', 'club');
  assert.deepEqual(
    [code, out, err],
    [
      0,
      'Wrote club/meetings/honey-the-evening.mdx.\nFill the blanks, then run npm run check -- --content club. Take out "draft: true" when members may see it.\n',
      '',
    ],
  );
  const text = readFileSync(join(folder, 'club/meetings/honey-the-evening.mdx'), 'utf8');
  assert.match(text, /^title: 'Honey: "the" evening'$/m);
  assert.match(text, /^draft: true$/m);
  rmSync(join(folder, 'club/meetings/honey-the-evening.mdx'));
});

test('an existing file is never overwritten, nor one with a name that a host would treat as equal', () => {
  const path = join(folder, 'club/words/brood.yaml');
  const before = readFileSync(path, 'utf8');
  assert.deepEqual(run('word', 'Brood!', '--content', 'club'), {
    code: 1,
    out: '',
    err: 'words/brood.yaml already exists, and was not changed. Write another title.\n',
  });
  assert.equal(readFileSync(path, 'utf8'), before);
  writeFileSync(join(folder, 'club/words/Bee Space.yaml'), before);
  assert.match(run('word', 'bee space', '--content', 'club').err, /^words\/Bee Space\.yaml already exists/);
  rmSync(join(folder, 'club/words/Bee Space.yaml'));
});

for (const [typed, err, code = 2] of [
  [['chekclist', 'Package day'], 'There is no kind "chekclist"; did you mean checklist?'],
  [
    ['xyzzy', 'a'],
    'There is no kind "xyzzy"; there are: checklist, bulletin, article, meeting, reading, treatment, plant, word, answer, figure, source, caution, sign, notice, counts, drawing, file, sheet, local, club, schemas.',
  ],
  [['meeting'], 'meeting needs a title in quotes: npm run new -- meeting "Swarm season".'],
  [['article', 'Swarm', 'season'], 'Put all the words of the title in quotes: npm run new -- article "Swarm season".'],
  [['article', 'a', '--contents', 'club'], 'There is no option --contents; did you mean --content?'],
  [
    ['article', 'a', '--content', 'nothing'],
    "There is no club.yaml in nothing. Write the club's folder after --content, or begin one: npm run new -- club DIR.",
    1,
  ],
  [['meeting', 'a', '--write'], '--write is for --from: npm run new -- meeting --from table.csv --write.'],
  [['figure', '--from', 'a.csv'], 'A table can only hold meetings or reading, not figures.'],
  [['meeting', '--from', 'a.csv', '--content', 'club'], "There is no file a.csv. Write the table's path after --from.", 1],
] as const) {
  test(`new ${typed.join(' ')}`, () => assert.deepEqual(run(...typed), { code, out: '', err: `${err}\n` }));
}

test('an error of the disk becomes a sentence, and nothing is half written', () => {
  writeFileSync(join(folder, 'club', 'signs'), 'a file where a folder should be');
  assert.deepEqual(run('sign', 'Caps are sunken', '--content', 'club'), {
    code: 1,
    out: '',
    err: 'club/signs cannot be read or written (ENOTDIR). Nothing was changed.\n',
  });
  rmSync(join(folder, 'club', 'signs'));
  const files = [
    { path: 'signs/a.yaml', text: 'a' },
    { path: 'signs/b.yaml', text: 'b' },
  ];
  write(join(folder, 'club'), [files[1]!]);
  assert.throws(() => write(join(folder, 'club'), files), { code: 'EEXIST' });
  assert.deepEqual(readdirSync(join(folder, 'club', 'signs')), ['b.yaml']);
  rmSync(join(folder, 'club', 'signs'), { recursive: true });
});

test('titles without a possible file name are refused in a sentence', () => {
  const pathOrReason = (...[kind, title]: Parameters<typeof draftOf>): string => {
    const drafted = draftOf(kind, title);
    return drafted.ok ? drafted.value[0].path : drafted.reason;
  };
  assert.deepEqual(
    [
      pathOrReason('articles', ' \n '),
      pathOrReason('articles', '🐝🐝'),
      pathOrReason('articles', 'Пчёлы'),
      pathOrReason('words', 'index'),
      pathOrReason('words', 'CON'),
      pathOrReason('cautions', 'climing'),
      pathOrReason('cautions', 'bears'),
      pathOrReason('articles', 'A\u202Eb'),
    ],
    [
      'The title is blank. Write one in quotes: npm run new -- article "Swarm season".',
      '"🐝🐝" has no letter or digit for a file\'s name. Write a title with some of a to z or 0 to 9.',
      '"Пчёлы" has no letter or digit for a file\'s name. Write a title with some of a to z or 0 to 9.',
      '"index" would make "index", which means something else to hosts and some computers. Write a title that makes a longer name.',
      '"CON" would make "con", which means something else to hosts and some computers. Write a title that makes a longer name.',
      'There is no hazard "climing"; did you mean climbing?',
      'A caution is named after its hazard, one of: stings, allergy, smoke, lifting, acids, fumes, alcohol-fire, carbon-dioxide, driving, climbing, disease-spread, infants-honey, fire, honey-as-feed, hot-wax.',
      'The title holds the invisible or broken character U+202E. Write the character that is meant, or nothing.',
    ],
  );
});

for (const [title, name] of [
  ['Package day', 'package-day'],
  ['  Swarms:  who "to" call? ', 'swarms-who-to-call'],
  ['Don’t & do', 'dont-do'],
  ['Königin, naïve Bienen: Ærø, Łódź, straße', 'konigin-naive-bienen-aero-lodz-strasse'],
  ['🐝 Bees 2:1', 'bees-2-1'],
  ['a/b\\c', 'a-b-c'],
  ['½ gallon', '1-2-gallon'],
  ['A'.repeat(90), 'a'.repeat(48)],
  ['one two three four five six seven eight nine ten eleven', 'one-two-three-four-five-six-seven-eight-nine-ten'],
] as const) {
  test(`"${title.slice(0, 40)}" makes ${name}`, () => assert.equal(nameFor(title), name));
}

test('the file contains any title complete, and check reports nothing but the blanks', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 80 }), (title) => {
      const drafted = draftOf('signs', title);
      if (!drafted.ok) return assert.match(drafted.reason, /^[^\n]+\.$/u);
      const [{ path, text }] = drafted.value;
      const faults: never[] = [];
      const entry = readText(path, 'signs', 'x', text, faults);
      assert.deepEqual([faults, (entry!.fields.value as { title: string }).title], [[], title.replace(/\s+/g, ' ').trim()]);
      assert.match(path, /^signs\/[a-z0-9]+(-[a-z0-9]+)*\.yaml$/);
    }),
  );
});

test('a kind has a singular, a plural and a plain word', () =>
  assert.deepEqual(
    ['checklist', 'Checklists', 'forage plant', 'plant', 'pest', 'count'].map((word) => collectionCalled(word)).map(unwrap),
    ['checklists', 'checklists', 'forage', 'forage', 'bulletins', 'counts'],
  ));

test('the club is unchanged', () => {
  assert.deepEqual(check(join(folder, 'club')), []);
  assert.deepEqual(readdirSync(join(folder, 'club'), { recursive: true }).length, readdirSync(goodClub, { recursive: true }).length);
});
