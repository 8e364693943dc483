// Reproducible builds: one input gives the same bytes, wherever and by whomever it is built. Drafts are not in the output.
import assert from 'node:assert/strict';
import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { test } from 'vitest';
import { builtFixture } from '../setup/built-site.ts';
import { contentsOf, filesIn, openWorkshop, unmarked } from './workshop.ts';

const { folder, copy, build } = openWorkshop();

/** The differences between two folders, by file. */
function differences(one: string, other: string, read = contentsOf): string[] {
  const [a, b] = [read(one), read(other)];
  return [...new Set([...a.keys(), ...b.keys()])].filter((path) => a.get(path) !== b.get(path));
}

async function built(content: string, name: string, typed: string[] = [], environment: NodeJS.ProcessEnv = {}): Promise<string> {
  const out = join(folder, 'out', name);
  const ran = await build(content, out, typed, environment);
  assert.equal(ran.code, 0, ran.output);
  return out;
}

test('two clean builds are equal, in other folders, time zones, languages and on other days', { tags: ['slow'] }, async () => {
  const one = await built(copy('hostile'), 'one', [], { TZ: 'Pacific/Kiritimati', LANG: 'C', LC_ALL: 'C' });
  const deep = join(folder, 'a folder with spaces', 'é', 'x');
  mkdirSync(deep, { recursive: true });
  const again = copy('hostile');
  const other = await built(again, join('a deeper', 'two'), [], {
    TZ: 'America/St_Johns',
    LANG: 'tr_TR.UTF-8',
    LC_ALL: 'de_DE.UTF-8',
    TMPDIR: deep,
    COLUMNS: '40',
  });
  assert.ok(filesIn(one).length > 40);
  assert.deepEqual(differences(one, other), []);
});

test('languages with other rules for sorting, case and numbers change nothing', { timeout: 300_000, tags: ['slow'] }, async () => {
  const club = copy('hostile');
  const plain = await built(club, 'plain-words', [], { LANG: 'C', LC_ALL: 'C' });
  // Node follows these variables: German writes 1.000,5, Arabic has its own digits, Estonian sorts z before t, Turkish has two i.
  for (const language of ['tr_TR.UTF-8', 'de_DE.UTF-8', 'ar_EG.UTF-8', 'et_EE.UTF-8']) {
    const other = await built(club, language, [], {
      LANG: language,
      LC_ALL: language,
      LANGUAGE: language.slice(0, 2),
      TZ: 'Asia/Kathmandu',
    });
    assert.deepEqual(differences(plain, other), [], language);
  }
});

test(
  'the order in which files were written, or in which a disk lists them, changes nothing',
  { timeout: 300_000, tags: ['slow'] },
  async () => {
    const club = copy('hostile');
    const plain = await built(club, 'in-order');
    const written = join(folder, 'written-backwards');
    for (const path of filesIn(club).reverse()) {
      mkdirSync(dirname(join(written, path)), { recursive: true });
      copyFileSync(join(club, path), join(written, path));
    }
    const backwards = join(folder, 'backwards.cjs');
    const seen = join(folder, 'listed.txt');
    writeFileSync(
      backwards,
      `
    const fs = require('node:fs'), { syncBuiltinESMExports } = require('node:module');
    let turned = 0;
    const turn = (names) => { turned += 1; return [...names].reverse(); };
    const own = { sync: fs.readdirSync, call: fs.readdir, later: fs.promises.readdir };
    fs.readdirSync = (...given) => turn(own.sync(...given));
    fs.readdir = (...given) => own.call(...given.slice(0, -1), (error, names) => given.at(-1)(error, names && turn(names)));
    fs.promises.readdir = async (...given) => turn(await own.later(...given));
    syncBuiltinESMExports();
    process.on('exit', () => fs.writeFileSync(${JSON.stringify(seen)}, String(turned)));
  `,
    );
    const other = await built(written, 'backwards', [], { NODE_OPTIONS: `--require "${backwards.replaceAll('\\', '/')}"` });
    assert.ok(Number(readFileSync(seen, 'utf8')) > 20, 'folders were listed backwards');
    assert.deepEqual(differences(plain, other), []);
  },
);

test('the test detects a difference', { tags: ['slow'] }, async () => {
  const club = copy('southern');
  const one = await built(club, 'before');
  writeFileSync(
    join(club, 'words', 'autumn.yaml'),
    readFileSync(join(club, 'words', 'autumn.yaml'), 'utf8').replace('March to May here.', 'March to early June here.'),
  );
  const changed = differences(one, await built(club, 'after'), unmarked);
  assert.ok(changed.includes('words/index.html'), changed.join(', '));
  assert.ok(!changed.includes('lists/first-look/index.html'));
});

test('a club saved with a byte-order mark and Windows line ends gives the same pages', { tags: ['slow'] }, async () => {
  const club = copy('hostile');
  const plain = await built(club, 'plain');
  const saved = copy('hostile');
  let files = 0;
  for (const path of filesIn(saved).filter((name) => /\.(mdx|yaml)$/.test(name))) {
    const text = readFileSync(join(saved, path), 'utf8')
      .replace(/^\uFEFF/, '')
      .replace(/\r\n/g, '\n');
    writeFileSync(join(saved, path), `\uFEFF${text.replace(/\n/g, '\r\n')}`);
    files += 1;
  }
  assert.ok(files > 30);
  const windows = await built(saved, 'windows');
  assert.deepEqual(differences(plain, windows, unmarked), []);
});

test('drafts of every kind are in no file, no file name and no packed index of the site', { tags: ['slow'] }, async () => {
  const { folder: site, content } = await builtFixture('hostile');
  const drafts = filesIn(content).filter((path) => readFileSync(join(content, path), 'utf8').includes('draft: true'));
  const kinds = new Set(drafts.map((path) => path.split('/')[0]));
  assert.deepEqual([...kinds].sort(), [
    'articles',
    'bulletins',
    'checklists',
    'figures',
    'forage',
    'meetings',
    'reading',
    'treatments',
    'words',
  ]);
  for (const path of drafts) assert.match(readFileSync(join(content, path), 'utf8'), /quincunx/);
  const contents = contentsOf(site);
  assert.ok(
    [...contents.values()].some((text) => text.includes('Trifolium') || text.includes('odd-prose')),
    'the files were read',
  );
  assert.ok(
    [...contents.keys()].some((path) => path.includes('/fragment/')),
    'the index was read',
  );
  const found = [...contents].filter(([path, text]) => /quincunx|987[,.]?654/i.test(path + text)).map(([path]) => path);
  assert.deepEqual(found, []);
});

test("the edition's day is the requested one, or the newest day in the content, never the clock's", { tags: ['slow'] }, async () => {
  const day = (out: string): string => JSON.parse(readFileSync(join(out, 'edition.json'), 'utf8')).day;
  const home = (out: string): string => readFileSync(join(out, 'index.html'), 'utf8');
  const club = copy('southern');
  const asked = await built(club, 'asked', ['--edition', '2026-12-24']);
  assert.equal(day(asked), '2026-12-24');
  assert.match(home(asked), /Edition of <time datetime="2026-12-24">24\sDecember\s2026\s\([0-9a-f]{6}\)<\/time>/);
  const epoch = await built(club, 'epoch', [], { SOURCE_DATE_EPOCH: '1767225600' });
  assert.equal(day(epoch), '2026-01-01');
  const own = await built(club, 'own');
  assert.equal(day(own), '2026-03-02');
});
