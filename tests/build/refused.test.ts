// Refused builds: the reason is a sentence, the exit code is 1 (2 for a mistyped command), and the last good site stays.
import assert from 'node:assert/strict';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { test } from 'vitest';
import { fingerprint } from '../../src/integration/fingerprint.ts';
import { projectFolder } from '../../src/cli/paths.ts';
import { change, openWorkshop } from './workshop.ts';

const { folder, copy, build } = openWorkshop();
const out = join(folder, 'site', 'out');
const first = build(copy('southern'), out);

/** Builds into a folder with a good site: the build is refused, and not a byte of the site changes. */
async function refused(content: string, sentence: RegExp, typed: string[] = [], code = 1): Promise<void> {
  assert.equal((await first).code, 0, (await first).output);
  const before = fingerprint({ out });
  const ran = await build(content, out, typed);
  assert.equal(ran.code, code, ran.output);
  assert.match(ran.output, sentence);
  assert.doesNotMatch(ran.output, /^\s+at .+:\d+:\d+|node:internal|\[object|undefined|AstroError/m);
  assert.equal(fingerprint({ out }), before, 'the last good site stands');
  assert.deepEqual(readdirSync(dirname(out)), ['out'], 'nothing is left beside it');
}

test('a broken date, with its position and a correction', async () => {
  const club = copy('southern');
  change(join(club, 'meetings', '2026-10-03-yard-day.mdx'), 'day: 2026-10-03', 'day: 2026-09-31');
  await refused(
    club,
    /^meetings\/2026-10-03-yard-day\.mdx:4:6 field: day: found "2026-09-31"; write a day that exists, such as 2026-02-28$/m,
  );
});

test('all faults of all files at once, and their number', async () => {
  const club = copy('southern');
  change(join(club, 'articles', 'stings.mdx'), 'subject: people', 'subject: poeple');
  change(join(club, 'articles', 'stings.mdx'), 'Seconds count', 'See [it](/pests/nothing/). Seconds count');
  change(join(club, 'bulletins', 'wasps.mdx'), '## The field test', '## A field test');
  const lines = (await build(club, out)).output
    .trim()
    .split('\n')
    // Other tests build at the same time.
    .filter((line) => !/^(    |Another build)/.test(line));
  assert.deepEqual(
    lines.map((line) => line.replace(/ .*/, '')),
    ['articles/stings.mdx:4:10', 'articles/stings.mdx:13:5', 'bulletins/wasps.mdx:25:1', '3'],
  );
  await refused(club, /^3 faults\. Nothing was built; the last good site is unchanged\.$/m);
});

test('an unknown field, with a similar name', async () => {
  const club = copy('southern');
  change(join(club, 'words', 'autumn.yaml'), 'meaning:', 'meanning:');
  await refused(club, /^words\/autumn\.yaml:2:1 [a-z-]+: meanning: .*meaning/m);
});

test('a page whose tag is not closed', async () => {
  const club = copy('southern');
  change(join(club, 'checklists', 'autumn-feed.mdx'), '<Figure id="winter-honey" />', '<Figure id="winter-honey">');
  await refused(club, /^checklists\/autumn-feed\.mdx:14:17 tag: /m);
});

test('two files whose names differ by case alone', { tags: ['slow'] }, async () => {
  const club = copy('southern');
  writeFileSync(join(club, 'words', 'Autumn.yaml'), readFileSync(join(club, 'words', 'autumn.yaml')));
  // A file system that treats the two as one cannot have the fault.
  if (readdirSync(join(club, 'words')).filter((name) => /^autumn/i.test(name)).length < 2) return;
  await refused(club, /^words\/.*same-name/m);
});

test('a file in another encoding', async () => {
  const club = copy('southern');
  writeFileSync(
    join(club, 'words', 'degree.yaml'),
    Buffer.from('word: degree\nmeaning: 20 \xb0C.\nchecked: 2026-03-02\nnext-check: 2028-02-01\nby: librarian\n', 'latin1'),
  );
  await refused(
    club,
    /^words\/degree\.yaml:2:13 encoding: the file: found a letter that is not UTF-8 .*; write the file again from your editor with the encoding UTF-8$/m,
  );
});

test('an unreadable file', async (t) => {
  const club = copy('southern');
  try {
    symlinkSync(join(club, 'nowhere.yaml'), join(club, 'words', 'lost.yaml'));
  } catch {
    t.skip('this system makes no links');
    return;
  }
  await refused(club, /^words\/lost\.yaml:1:1 .*; write /m);
});

test('an empty folder', async () => {
  const club = join(folder, 'empty');
  mkdirSync(club);
  await refused(
    club,
    /^club\.yaml:1:1 missing-file: the content folder: found an empty folder; write a file club\.yaml with the club's name, place, districts and contacts$/m,
  );
});

test('a missing folder', async () => {
  await refused(join(folder, 'nowhere'), /no such folder; write the path of a club's content folder after --content$/m);
});

test('no club.yaml', async () => {
  const club = copy('southern');
  rmSync(join(club, 'club.yaml'));
  await refused(club, /^club\.yaml:1:1 missing-file: the content folder: found no club\.yaml; write a file club\.yaml/m);
});

test('a missing collection', { tags: ['slow'] }, async () => {
  const club = copy('southern');
  rmSync(join(club, 'bulletins'), { recursive: true });
  await refused(
    club,
    /^bulletins\/:1:1 missing-folder: the folder: found no file in it; write pages in bulletins\/, or "- bulletins" in the list "leaves-out:" of club\.yaml$/m,
  );
});

test("a missing caution that the almanac's own pages need", { tags: ['slow'] }, async () => {
  const club = copy('southern');
  rmSync(join(club, 'cautions', 'alcohol-fire.yaml'));
  await refused(
    club,
    /^cautions\/alcohol-fire\.yaml:1:1 caution: the content folder: found no such file, or a withdrawn one, and a page that every almanac has calls for it; write the file, as in the demo club$/m,
  );
});

test('a mistyped option', async () => {
  const club = copy('southern');
  await refused(club, /^There is no option --baes; did you mean --base\?$/m, ['--baes', '/club/'], 2);
  await refused(club, /^--base takes a path that begins and ends with a slash, as in \/club\/, not club\.$/m, ['--base', 'club'], 2);
  await refused(club, /^--edition takes a day written as 2026-05-01, not 1\.5\.26\.$/m, ['--edition', '1.5.26'], 2);
  await refused(
    club,
    /^--site takes an address without a path, as in https:\/\/club\.example, not club\.example\.$/m,
    ['--site', 'club.example'],
    2,
  );
});

test('an output folder with files that no build made stays as it is', async () => {
  const club = copy('southern');
  const other = join(folder, 'photographs');
  mkdirSync(other);
  writeFileSync(join(other, 'hive.jpg'), 'a picture');
  const ran = await build(club, other);
  assert.deepEqual(
    [ran.code, ran.output],
    [1, `--out ${other} holds files that no build of an almanac made. Empty it, or write another folder.\n`],
  );
  assert.deepEqual(readdirSync(other), ['hive.jpg']);
});

test('an output folder that would replace the club or the almanac', async () => {
  const club = copy('southern');
  const before = fingerprint({ club });
  for (const where of [club, dirname(club), projectFolder, dirname(projectFolder)]) {
    const ran = await build(club, where);
    assert.equal(ran.code, 1, where);
    assert.match(ran.output, /^--out .* holds the club's words or the almanac's own files\. Write a folder of its own, such as dist\.$/m);
  }
  for (const where of [join(club, 'site'), join(projectFolder, 'src', 'site'), join(projectFolder, 'public')]) {
    const ran = await build(club, where);
    assert.equal(ran.code, 1, where);
    assert.match(
      ran.output,
      /^--out .* lies among the club's words or the almanac's own files\. Write a folder of its own, such as dist\.$/m,
    );
  }
  const file = join(folder, 'a-file');
  writeFileSync(file, 'x');
  const ran = await build(club, file);
  assert.deepEqual([ran.code, ran.output], [1, `--out ${file} is a file. Write the name of a folder.\n`]);
  const below = await build(club, join(file, 'out'));
  assert.equal(below.code, 1);
  assert.match(
    below.output,
    /^The build stopped: .*a-file.* is a file, or lies in one, where a folder must be\. Write another folder\. The last good site is unchanged\.\n$/,
  );
  assert.equal(fingerprint({ club }), before);
  assert.ok(existsSync(join(projectFolder, 'package.json')));
});
