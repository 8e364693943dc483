// `new club`: two or three short files that check clean, and nothing where an answer is wrong.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, test } from 'vitest';
import { projectFolder } from '../../../../src/cli/paths.ts';
import { readFolder } from '../../../../src/source/folder.ts';
import { answersFile, newClubs, writeNewClub } from '../../../fixtures/new-club.ts';

const folder = mkdtempSync(join(tmpdir(), 'club-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function run(typed: readonly string[], input = ''): [number | null, string, string] {
  const { NODE_ENV: _, ...environment } = process.env;
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(projectFolder, 'src/cli/new.ts'), ...typed], {
    cwd: projectFolder,
    env: { ...environment, INIT_CWD: folder },
    encoding: 'utf8',
    input,
  });
  return [status, stdout, stderr];
}
const club = (...typed: string[]) => run(['club', ...typed]);

test('an answers file makes a club, and what was used is said', () => {
  const [code, out, err] = club('our-club', '--answers', answersFile('kentucky'), '--on', '2026-11-29');
  assert.deepEqual([code, err], [0, '']);
  assert.deepEqual(out.split('\n'), [
    'Wrote our-club/club.yaml, our-club/meetings/2027-01-12-club-meeting.mdx. Everything else comes from the books common, north, us.',
    'Dates of the year: Worked out from the monthly normals of Indianapolis, Indiana, about 175 km from here (1981-2010). The book of the northern half proposes the parts of the year where the normals give no date.',
    'Look at it: npm start -- --content our-club',
    'Build it:   npm run build -- --content our-club --out our-club-site',
    '',
  ]);
  writeNewClub(join(folder, 'same'), 'kentucky');
  assert.deepEqual(readFolder(join(folder, 'our-club')).files, readFolder(join(folder, 'same')).files);
});

for (const name of newClubs)
  test(`${name}: short files without a blank, and no number of a town`, () => {
    const directory = join(folder, name);
    writeNewClub(directory, name);
    const { files } = readFolder(directory);
    assert.ok(files.length <= 3, files.join());
    const texts = files.map((file) => readFileSync(join(directory, file), 'utf8'));
    assert.ok(texts.join('').split('\n').length < 110);
    for (const text of texts) {
      assert.doesNotMatch(text, /: *$(?!\n +\S)/m);
      assert.doesNotMatch(text, /38\.2|-85\.7|example\.org|invented/);
    }
  });

test('nothing is written where an answer is wrong, missing, or the input ends', () => {
  const wrong = join(folder, 'wrong.yaml');
  writeFileSync(wrong, readFileSync(answersFile('devon'), 'utf8').replace('land: GB-DEV', 'land: UK'));
  assert.deepEqual(club('none', '--answers', wrong, '--on', '2026-11-29'), [
    1,
    'wrong.yaml:3:7 answer: land: found "UK"; write GB, the code of the United Kingdom in ISO 3166\n1 fault. Nothing was written.\n',
    '',
  ]);
  // Normals of the wrong half of the world: only the rules on the whole folder see that.
  const upsideDown = readFileSync(answersFile('devon'), 'utf8')
    .replace(/^climate-lows:.*$/m, 'climate-lows: 12 12 10 7 4 2 2 1 3 4 7 10')
    .replace(/^climate-highs:.*$/m, 'climate-highs: 21 21 18 14 10 7 7 7 10 13 16 19');
  writeFileSync(wrong, upsideDown);
  assert.deepEqual(club('none', '--answers', wrong, '--on', '2026-11-29').slice(0, 2), [
    1,
    [
      'club.yaml:28:3 season: season: found build-up from 15 March (a guess), which is not after winter rest from 17 April (monthly normals); write dates of the year in the order of its parts: winter rest, build-up, swarming, main flow, dearth, fall preparation',
      'club.yaml:41:11 climate: climate, maxima: found January as the warmest month in the north; write twelve numbers that begin with January, or the other hemisphere',
      '2 faults. Nothing was written.\n',
    ].join('\n'),
  ]);
  const [code, , err] = run(['club', 'none', '--land', 'NZ-WKO'], 'Fern Flat Bee Club\n');
  assert.deepEqual([code, err], [1, '\nThe answers ended before the last question. Nothing was written.\n']);
  assert.ok(!existsSync(join(folder, 'none')));
});

test('a folder with any content is not changed', () => {
  mkdirSync(join(folder, 'full'));
  writeFileSync(join(folder, 'full', 'mine.txt'), 'mine');
  assert.deepEqual(club('full'), [1, '', 'full already holds files, and was not changed. Write the name of a new folder.\n']);
  assert.deepEqual(club('full/mine.txt'), [1, '', `${join(folder, 'full', 'mine.txt')} is a file. Write the name of a new folder.\n`]);
  assert.deepEqual(club(join(projectFolder, 'content', 'ours')), [
    1,
    '',
    "That folder is inside the demo club's. Write a folder beside the almanac's, such as ../our-club.\n",
  ]);
  mkdirSync(join(folder, 'empty'));
  assert.equal(club('empty', '--answers', answersFile('devon'), '--on', '2026-11-29')[0], 0);
});

for (const [typed, sentence, code = 2] of [
  [['club'], 'club needs a new folder: npm run new -- club ../our-club.'],
  [['club', 'x', '--write'], 'club takes a folder, --land and --answers: npm run new -- club ../our-club.'],
  [['club', 'x', '--land', 'UK'], '--land: found "UK"; write GB, the code of the United Kingdom in ISO 3166.'],
  [['club', 'x', '--answers', 'nothing.yaml'], 'There is no file nothing.yaml. Write its path after --answers.', 1],
  [['article', 'Swarms', '--land', 'NZ'], '--land and --answers are for a club: npm run new -- club ../our-club --answers answers.yaml.'],
] as const)
  test(`new ${typed.join(' ')}`, () => assert.deepEqual(run(typed), [code, '', `${sentence}\n`]));
