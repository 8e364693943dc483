/*
 * A thousand file names that people, phones and programs use. Each becomes a page at an address that every host serves, or is refused in
 * a diagnostic, or is a hidden file and ignored. Check never throws, and prints no character that a terminal would obey. Names reserved
 * by Windows: Microsoft Learn, "Naming Files, Paths, and Namespaces".
 */
import assert from 'node:assert/strict';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { afterAll, test } from 'vitest';
import fc from 'fast-check';
import { check } from '../../src/checks/check.ts';
import { formatDiagnostic } from '../../src/source/diagnostic.ts';
import { isPassedOver } from '../../src/source/passed-over.ts';
import { openWorkshop } from './workshop.ts';
import { goodClub } from '../fixtures/invalid/cases.ts';
import { runDesk } from '../setup/built-site.ts';

const { folder, copy, build } = openWorkshop();
const club = mkdtempSync(join(tmpdir(), 'odd-names-'));
cpSync(goodClub, club, { recursive: true });
afterAll(() => rmSync(club, { recursive: true, force: true }));

const RESERVED = ['con', 'prn', 'aux', 'nul', 'com1', 'com9', 'lpt1', 'CON', 'Aux', 'index', 'INDEX', 'nul.txt', 'desktop', 'thumbs'];
const PIECES = [
  'swarm',
  'Swarm',
  'SWARM',
  'a',
  '2026',
  ' ',
  '  ',
  '-',
  '--',
  '_',
  '.',
  '..',
  "'",
  '"',
  '&',
  '%20',
  '%',
  '#',
  '?',
  '*',
  ':',
  '|',
  '<',
  '>',
  '\\',
  '$',
  '~',
  '(1)',
  '[',
  '{',
  ',',
  ';',
  '=',
  '@',
  '!',
  '+',
  'é',
  'e\u0301',
  'Å',
  'A\u030A',
  'ﬁ',
  'İ',
  'ı',
  'ß',
  'ō',
  '蜂',
  'пчела',
  'נחיל',
  'نحل',
  '🐝',
  '👩🏽‍🌾',
  '\u00AD',
  '\u200B',
  '\u200D',
  '\u200F',
  '\u202E',
  '\u2066',
  '\uFEFF',
  '\u00A0',
  '\u2028',
  '\t',
  '\n',
  '\r',
  '\u0007',
  '\u001B[31m',
  '\u007F',
  '\u0085',
  '\u{E0041}',
  '\uFFFD',
];
const odd = fc.array(fc.constantFrom(...PIECES), { minLength: 1, maxLength: 6 }).map((parts) => parts.join(''));
const plain = fc
  .array(fc.constantFrom('swarm', 'yard', 'a', '7', '2026', 'bee'), { minLength: 1, maxLength: 4 })
  .map((parts) => parts.join('-'));
const stem = fc.oneof(
  { weight: 7, arbitrary: odd },
  { weight: 2, arbitrary: plain },
  { weight: 1, arbitrary: fc.constantFrom(...RESERVED) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(fc.constantFrom('long', 'é', '🐝', '-a'), fc.integer({ min: 5, max: 90 }))
      .map(([part, times]) => part.repeat(times)),
  },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', minLength: 1, maxLength: 12 }) },
  { weight: 1, arbitrary: fc.tuple(fc.constantFrom('.', '..', '-', '_', ' ', '~', '~$', '#'), plain).map(([sign, name]) => sign + name) },
  {
    weight: 1,
    arbitrary: fc.tuple(plain, fc.constantFrom('.', ' ', '...', '~', '.mdx', '\u200F', '%00')).map(([name, sign]) => name + sign),
  },
);
const PLACES: readonly ((name: string) => string)[] = [
  (name) => `articles/${name}.mdx`,
  (name) => `articles/${name}.mdx`,
  (name) => `articles/${name}.mdx`,
  (name) => `articles/${name}.MDX`,
  (name) => `articles/${name}`,
  (name) => `words/${name}.yaml`,
  (name) => `drawings/${name}.svg`,
  (name) => `articles/${name}.jpg`,
  (name) => `${name}/stings.mdx`,
  (name) => `${name}`,
  (name) => `articles/${name}/a.mdx`,
];
const path = fc.tuple(stem, fc.constantFrom(...PLACES)).map(([name, place]) =>
  place(
    name
      .replaceAll('/', '∕')
      .replaceAll('\0', '')
      .replace(/\p{Cs}/gu, '\uFFFD'),
  ),
);
const COUNT = 1000;
const paths = [...new Set(fc.sample(path, { numRuns: COUNT * 2, seed: 20261125 }))].slice(0, COUNT);

/** Valid files except for their names. */
const article = readFileSync(join(goodClub, 'articles', 'stings.mdx'), 'utf8')
  .replace(/^title: .*/m, 'title: Another page')
  .replace(/^formerly: .*\n/m, '');
const word = readFileSync(join(goodClub, 'words', 'brood.yaml'), 'utf8').replace(/^word: .*/m, 'word: another word');
const contentOf = (place: string): string => (place.startsWith('words/') ? word : article);

/** False where the disk itself refuses the name, or already has such a file. */
function put(place: string): boolean {
  const file = join(club, place);
  if (place.split('/').some((part) => part === '' || /^\.{1,2}$/.test(part)) || existsSync(file)) return false;
  try {
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, contentOf(place), { flag: 'wx' });
    return true;
  } catch (error) {
    if (['ENAMETOOLONG', 'EILSEQ', 'EINVAL', 'ENOENT', 'EPERM', 'EEXIST', 'ENOTDIR'].includes((error as NodeJS.ErrnoException).code!))
      return false;
    throw error;
  }
}

function take(place: string): void {
  rmSync(join(club, place), { force: true });
  const above = dirname(place);
  if (above !== '.' && !existsSync(join(goodClub, above))) rmSync(join(club, above), { recursive: true, force: true });
}

const FORM = /^.+:\d+:\d+ [a-z-]+: .+: found .+; write .+$/;
/** Control characters, direction marks and invisible characters. */
const OBEYED = /[\p{Cc}\u00AD\u061C\u180E\u200B\u200C\u200E\u200F\u2028-\u202E\u2060-\u2069\uFEFF]|\p{Cs}/u;
const SAFE = /^[a-z0-9]+(?:-[a-z0-9]+)*$/;

function lineIsGood(line: string, place: string): void {
  for (const part of line.split('\n    ')) assert.doesNotMatch(part, OBEYED, JSON.stringify([place, part]));
  assert.match(line.split('\n    ')[0]!, FORM, JSON.stringify(place));
  assert.doesNotMatch(line, /undefined|\[object|NaN/, JSON.stringify(place));
}

const accepted: string[] = [];

test(`${COUNT} odd names, one at a time`, { timeout: 60_000, tags: ['slow'] }, (t) => {
  assert.equal(paths.length, COUNT);
  const count = { refused: 0, accepted: 0, hidden: 0, disk: 0 };
  for (const place of paths) {
    if (!put(place)) {
      count.disk += 1;
      continue;
    }
    const faults = check(club);
    for (const fault of faults) lineIsGood(formatDiagnostic(fault), place);
    if (faults.length > 0) {
      count.refused += 1;
      assert.ok(
        faults.some((fault) => `${place}/`.normalize('NFC').startsWith(`${fault.path.normalize('NFC')}/`)),
        `${JSON.stringify(place)}: ${formatDiagnostic(faults[0]!)}`,
      );
    } else if (place.split('/').some(isPassedOver)) count.hidden += 1;
    else {
      assert.match(basename(place).replace(/\.[^.]*$/, ''), SAFE, JSON.stringify(place));
      if (place.startsWith('articles/')) accepted.push(place);
      count.accepted += 1;
    }
    take(place);
  }
  void t.annotate(JSON.stringify(count));
  assert.ok(count.refused > COUNT / 2 && count.accepted > 20 && count.hidden > 5, JSON.stringify(count));
  assert.deepEqual(check(club), [], 'the club is as it was');
});

test('all of them at once, as the command prints them', { timeout: 60_000, tags: ['slow'] }, async () => {
  const there = paths.filter(put);
  const { code, output } = await runDesk('check', ['--content', club]);
  for (const place of there) take(place);
  assert.equal(code, 1);
  const lines = output.trimEnd().split('\n');
  assert.match(lines.at(-1)!, /^\d+ faults in \d+ files\.$/);
  const faults = lines.slice(0, -1).filter((line) => !line.startsWith('    ') && !line.startsWith('hint: '));
  assert.ok(faults.length > COUNT / 2, `${faults.length} lines`);
  for (const line of faults) lineIsGood(line, line);
  assert.doesNotMatch(output, /^\s+at /m);
});

test('each accepted page is at the address of its name', { timeout: 120_000, tags: ['slow'] }, async () => {
  const southern = copy('southern');
  const names = accepted.map((place) => basename(place, '.mdx'));
  assert.ok(names.length > 10, `${names.length} names`);
  const own = readFileSync(join(southern, 'articles', 'stings.mdx'), 'utf8');
  for (const name of names)
    writeFileSync(join(southern, 'articles', `${name}.mdx`), own.replace(/^title: .*/m, `title: About ${name.replaceAll('-', ' and ')}`));
  const out = join(folder, 'out');
  const ran = await build(southern, out);
  assert.equal(ran.code, 0, ran.output);
  for (const name of names) assert.ok(statSync(join(out, 'know-how', name, 'index.html')).size > 1000, name);
});

test(
  'a name that is no UTF-8 at all is named, not thrown',
  { skip: Boolean(process.platform !== 'linux' && 'this system has no such names'), tags: ['slow'] },
  () => {
    const name = Buffer.concat([Buffer.from(join(club, 'articles', 'sw')), Buffer.from([0xe9, 0xff]), Buffer.from('rm.mdx')]);
    writeFileSync(name, article);
    const lines = check(club).map(formatDiagnostic);
    rmSync(name);
    assert.ok(lines.length > 0);
    for (const line of lines) lineIsGood(line, line);
  },
);
