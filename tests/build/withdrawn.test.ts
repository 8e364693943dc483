// Withdrawal of an entry of every kind with one line: no output contains any of it, and a notice replaces its page.
import assert from 'node:assert/strict';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, test } from 'vitest';
import { gunzipSync } from 'node:zlib';
import { strFromU8, unzipSync } from 'fflate';
import { collectionNames } from '../../src/schemas/collections.ts';
import { projectFolder } from '../../src/cli/paths.ts';
import { builtFolder, type Built } from '../setup/built-site.ts';

const WHY = 'its third sentence can mislead';
const LINE = `withdrawn: 2026-11-30, ${WHY}\n`;

/** A word that only this entry contains, in a field that readers see. */
const token = (kind: string): string => `quagga${kind}`;

/** One entry of each kind, and the field that gets the word. */
const entries: Record<string, { file: string; field: RegExp }> = {
  checklists: { file: 'moving-a-hive.mdx', field: /^summary: / },
  bulletins: { file: 'wax-moth.mdx', field: /^summary: / },
  articles: { file: 'records.mdx', field: /^summary: / },
  meetings: { file: '2026-11-12-annual-meeting.mdx', field: /^summary: / },
  reading: { file: 'bees-next-door.yaml', field: /^worth: / },
  treatments: { file: 'thymol.yaml', field: /^summary: / },
  forage: { file: 'aster.yaml', field: /^worth: / },
  words: { file: 'absconding.yaml', field: /^meaning: / },
  answers: { file: 'queen-cells.yaml', field: /^answer: / },
  figures: { file: 'summer-colony-bees.yaml', field: /^ {4}place: / },
  sources: { file: 'charriere-imdorf-1999.yaml', field: /^where: / },
  sheets: { file: 'sting-log.yaml', field: /^summary: / },
  signs: { file: 'brown-thread.yaml', field: /^look: / },
  notices: { file: 'june-meeting-off.yaml', field: /^ {2}- (?=The talk)/ },
  drawings: { file: 'bearding.yaml', field: /^words: / },
};

let built: Built;
let content: string;
beforeAll(async () => {
  content = mkdtempSync(join(tmpdir(), 'withdrawn-'));
  cpSync(join(projectFolder, 'content', 'demo-club'), content, { recursive: true });
  for (const [kind, { file, field }] of Object.entries(entries)) withdraw(own(join(kind, file)), kind, field);
  const counts = join(content, 'counts', '2025.csv');
  writeFileSync(counts, `# ${LINE}${readFileSync(counts, 'utf8')}`);
  built = await builtFolder(content, 'withdrawn', { site: 'https://club.example' });
});
afterAll(() => rmSync(content, { recursive: true, force: true }));

/** The club's file of this name: its own, or a copy of the book's that lies over it. */
function own(path: string): string {
  const folders = ['us-oh', 'us', 'north', 'common'].map((book) => join(projectFolder, 'content', 'books', book));
  for (const name of [path, path.replace(/^(drawings.*)yaml$/, '$1svg')]) {
    if (existsSync(join(content, name))) continue;
    const from = folders.map((folder) => join(folder, name)).find((file) => existsSync(file));
    assert.ok(from, `no book has ${name}`);
    mkdirSync(dirname(join(content, name)), { recursive: true });
    cpSync(from, join(content, name));
  }
  return join(content, path);
}

function withdraw(path: string, kind: string, field: RegExp): void {
  const lines = readFileSync(path, 'utf8').split('\n');
  const at = lines.findIndex((line) => field.test(line));
  assert.ok(at >= 0, `${path} has a line ${field}`);
  lines[at] = lines[at]!.replace(field, (name) => `${name}${token(kind)} `).replace(
    /(: )(quagga\w+ )(["'>].*)$/,
    (_, colon: string, word: string, rest: string) =>
      rest.startsWith('>') ? `${colon}${rest}\n  ${word}` : `${colon}${rest[0]}${word}${rest.slice(1)}`,
  );
  lines.splice(lines[0] === '---' ? 1 : 0, 0, LINE.trimEnd());
  writeFileSync(path, lines.join('\n'));
}

/** Every published file as text, with the search index and the book unpacked. */
const texts = (): { file: string; text: string }[] =>
  readdirSync(built.folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => statSync(join(built.folder, file)).isFile() && !/\.(woff2|wasm|png|jpe?g)$/.test(file))
    .map((file) => {
      const bytes = readFileSync(join(built.folder, file));
      if (file.endsWith('.epub'))
        return {
          file,
          text: Object.values(unzipSync(bytes))
            .map((each) => strFromU8(each))
            .join('\n'),
        };
      return { file, text: (bytes[0] === 0x1f && bytes[1] === 0x8b ? gunzipSync(bytes) : bytes).toString('utf8') };
    });

test('the test covers every kind except cautions, which cannot be withdrawn while a page needs them, and files, which have no page', () => {
  assert.deepEqual([...Object.keys(entries), 'counts', 'cautions', 'local', 'files'].sort(), [...collectionNames].sort());
});

test('no page, list, search, calendar, file or record contains a word of it', () => {
  const all = texts();
  assert.ok(all.length > 150, `${all.length} files`);
  const found = all.flatMap(({ file, text }) =>
    Object.keys(entries)
      .filter((kind) => text.toLowerCase().includes(token(kind)))
      .map((kind) => `${file}: of ${kind}`),
  );
  assert.deepEqual(found, []);
});

test('a row of a withdrawn source is removed too', () => {
  const lines = built.read('open/figures.csv').split('\r\n');
  assert.ok(lines.length > 150);
  assert.deepEqual(
    lines.filter((line) => line.includes('charriere-imdorf-1999')),
    [],
  );
});

test('without the withdrawn counts there is no page of counts', () => assert.ok(!existsSync(join(built.folder, 'counts', 'index.html'))));

for (const place of [
  'lists/moving-a-hive/',
  'pests/wax-moth/',
  'know-how/records/',
  'meetings/2026-11-12-annual-meeting/',
  'treatments/thymol/',
]) {
  test(`/${place} states since when, why and whom to ask, and nothing links to it`, () => {
    const html = built.read(`${place}index.html`);
    assert.match(html, /taken down on November\s30,\s2026/);
    assert.match(html, /Its third sentence can mislead\./);
    assert.match(html, /Who to call/);
    assert.match(html, /<meta name="robots" content="noindex">/);
    assert.doesNotMatch(html, /data-found-as/);
    const record = JSON.parse(built.read('edition.json')) as { pages: Record<string, unknown> };
    assert.ok(!(place in record.pages), 'in the record of the edition');
    assert.ok(!built.read('sitemap.xml').includes(place), 'in the map of the site');
    assert.ok(!built.read('search/index.html').includes(`/${place}"`), 'in the list of all pages');
  });
}

test('a withdrawn meeting is not in the calendar', () => {
  assert.match(built.read('club.ics'), /2026-08-13/);
  assert.doesNotMatch(built.read('club.ics'), /annual-meeting/);
});

test('one page lists all withdrawn entries, with their reasons', () => {
  const html = built.read('withdrawn/index.html');
  for (const kind of [...Object.keys(entries), 'counts']) assert.match(html, new RegExp(`id="${kind}-`), kind);
  assert.equal(html.match(/Its third sentence can mislead\./g)?.length, Object.keys(entries).length + 1);
});

test("the edition's day moves to the day of a withdrawal", () => assert.equal(JSON.parse(built.read('edition.json')).day, '2026-11-30'));
