/*
 * Invented accidents of a webmaster's day, one or two at a time: marks of a merge, a table pasted from a spreadsheet, copied files, links
 * copied from the preview, saves and left-over files of other programs, pairs of planted mistakes. Check names the file and the line, or
 * the words reach a reader whole. The default run is a sample with a fixed seed; the slow one takes many more.
 */
import assert from 'node:assert/strict';
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { describe, test } from 'vitest';
import fc from 'fast-check';
import { check } from '../../../src/checks/check.ts';
import { formatDiagnostic, type Diagnostic } from '../../../src/source/diagnostic.ts';
import { decodedAsBest } from '../../../src/source/decode.ts';
import { readFolder } from '../../../src/source/folder.ts';
import { goodClub, withChanges } from '../../fixtures/invalid/cases.ts';
import { lostFrom } from './lost.ts';

/** Files to write, and what is expected: a fault of some rule at some line, a fault at all, no fault, or either. */
type Accident = {
  what: string;
  write: Record<string, Buffer>;
  expect: 'fault' | 'clean' | 'either' | { rule: string; line: number };
  /** Of a pair. */
  parts?: readonly Accident[];
};

const FILES = readFolder(goodClub).files.filter((file) => /\.(?:mdx|yaml)$/.test(file));
const PAGES = FILES.filter((file) => file.endsWith('.mdx'));
const bytesOf = (file: string): Buffer => readFileSync(join(goodClub, file));
const textOf = (file: string): string => bytesOf(file).toString('utf8');
const share = fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true });
const at = (part: number, length: number): number => Math.floor(part * length);
const written = (what: string, file: string, text: string | Buffer, expect: Accident['expect']): Accident => ({
  what,
  write: { [file]: Buffer.from(text) },
  expect,
});

/** Two versions of some lines, as programs for versions leave them, with and without empty lines, or with half of the marks taken out. */
const merges = fc
  .record({
    file: fc.constantFrom(...FILES),
    from: share,
    to: share,
    base: fc.boolean(),
    gap: fc.constantFrom('', '\n'),
    left: fc.constantFrom('all', 'all', 'all', 'no end', 'no start', 'end alone'),
    ends: fc.constantFrom('\n', '\r\n'),
  })
  .map(({ file, from, to, base, gap, left, ends }): Accident => {
    const lines = textOf(file).split('\n');
    const [first, last] = [at(from, lines.length), at(to, lines.length)].sort((a, b) => a - b) as [number, number];
    const ours = lines.slice(first, last + 1).join('\n');
    const theirs = ours.replace(/[a-z]+/, (word) => `${word}s`);
    const start = left === 'no start' || left === 'end alone' ? '' : `<<<<<<< HEAD\n${gap}`;
    const middle = left === 'end alone' ? '' : `${gap}${base ? `||||||| 3f2a1b0\n${ours}\n` : ''}=======\n${gap}${theirs}\n`;
    const end = left === 'no end' ? '' : `${gap}>>>>>>> theirs\n`;
    const text = [...lines.slice(0, first), `${start}${ours}\n${middle}${end}${lines.slice(last + 1).join('\n')}`].join('\n');
    const line = text.split('\n').findIndex((each) => /^(?:<{7}|\|{7}|>{7})/.test(each)) + 1;
    const expect = line > 0 ? { rule: 'unmerged', line } : ('fault' as const);
    return written(`marks of a merge in ${file}, lines ${first + 1} to ${last + 1}, ${left}`, file, text.replaceAll('\n', ends), expect);
  });

/** Rows and columns with tabs between the cells, at any line. */
const tables = fc
  .record({
    file: fc.constantFrom(...PAGES),
    place: share,
    rows: fc.array(fc.array(fc.constantFrom('Month', 'April', '2', '3.5', 'yes', 'Boxes to add', ''), { minLength: 2, maxLength: 4 }), {
      minLength: 2,
      maxLength: 4,
    }),
    around: fc.constantFrom('\n\n', '\n'),
  })
  .map(({ file, place, rows, around }): Accident => {
    const lines = textOf(file).split('\n');
    const below = lines.indexOf('---', 1) + 1;
    const line = below + at(place, lines.length - below);
    const table = rows.map((cells) => ['x', ...cells.slice(1)].join('\t').replace(/\t+$/, '\tend')).join('\n');
    const text = `${lines.slice(0, line).join('\n')}${around}${table}${around}${lines.slice(line).join('\n')}`;
    return written(`a table with tabs in ${file} at line ${line + 1}: ${JSON.stringify(table)}`, file, text, 'fault');
  });

const COPIES: readonly ((stem: string) => string)[] = [
  (stem) => `${stem} copy`,
  (stem) => `${stem} copy 2`,
  (stem) => `${stem} - Copy`,
  (stem) => `${stem} - Copy (2)`,
  (stem) => `Copy of ${stem}`,
  (stem) => `${stem} (1)`,
  (stem) => `${stem}_2`,
  (stem) => `${stem}-2`,
  (stem) => `${stem}-copy`,
  (stem) => `${stem}-old`,
  (stem) => `${stem}.v2`,
  (stem) => `${stem} (conflicted copy 2026-03-01)`,
  (stem) => `${stem}.sync-conflict-20260301-101500-ABCDEFG`,
  (stem) => stem.toUpperCase(),
];
/** Of pages a second one of the same title is a fault. Other copies are more of the same, which loses nothing. */
const copies = fc
  .tuple(fc.constantFrom(...FILES.filter((file) => file.includes('/'))), fc.constantFrom(...COPIES))
  .map(([file, named]): Accident => {
    const [, stem = '', ending = ''] = /([^/]+)(\.[a-z]+)$/.exec(file)!;
    const copy = `${dirname(file)}/${named(stem)}${ending}`;
    const isTwice = /^(?:articles|bulletins|checklists|meetings|reading|treatments)\//.test(file);
    const isPlain = /^[a-z0-9-]+\.[a-z]+$/.test(basename(copy));
    return written(`${file} copied as ${copy}`, copy, bytesOf(file), isTwice || !isPlain ? 'fault' : 'either');
  });

const HOSTS = [
  'localhost:4321',
  '127.0.0.1:4321',
  '[::1]:4321',
  '0.0.0.0:4321',
  '192.168.1.20:4321',
  '10.0.0.7:4321',
  '172.16.3.4:4321',
  'my-laptop.local:4321',
  'my-laptop:4321',
];
/** An address that was copied from the preview, in words, as it stands, and in fields. */
const previews = fc
  .record({
    scheme: fc.constantFrom('http://', 'https://', ''),
    host: fc.constantFrom(...HOSTS),
    path: fc.constantFrom(
      '/pests/varroa/',
      '/pests/varroa',
      '/',
      '/know-how/nothing/',
      '/pests/varroa/#what-it-is',
      '/files/form.pdf',
      '/sub/pests/varroa/',
    ),
    place: fc.constantFrom('link', 'bare', 'angle', 'more', 'web', 'url', 'site', 'formerly', 'picture'),
  })
  .filter(({ scheme, place }) => scheme !== '' || (place !== 'bare' && place !== 'angle'))
  .map(({ scheme, host, path, place }): Accident => {
    const address = `${scheme}${host}${path}`;
    const into = (file: string, from: string | RegExp, to: string): Accident => {
      const text = textOf(file).replace(from, () => to);
      assert.notEqual(text, textOf(file), `${file} has no ${String(from)}`);
      return written(`${address} as ${place}`, file, text, 'fault');
    };
    const words = (to: string): Accident => into('articles/stings.mdx', 'Scrape it off.', `${to} Scrape it off.`);
    if (place === 'link') return words(`See [the page](${address}).`);
    if (place === 'bare') return words(`See ${address} for more.`);
    if (place === 'angle') return words(`See <${address}> for more.`);
    if (place === 'picture') return words(`\n\n![A mite](${address})\n\n`);
    if (place === 'more') return into('words/brood.yaml', '/know-how/stings/', `"${address}"`);
    if (place === 'web') return into('club.yaml', /^contacts:\n {2}- /m, `contacts:\n  - web: "${address}"\n    `);
    if (place === 'url') return into('sources/leaflet.yaml', /$/, `url: "${address}"\n`);
    if (place === 'site') return into('club.yaml', /^name:/m, `site: "${address}"\nname:`);
    return into('articles/stings.mdx', /^title:/m, `formerly: ["${address}"]\ntitle:`);
  });

const SMART = (text: string): string =>
  text
    .replace(/"([^"\n]*)"/g, '“$1”')
    .replace(/'/g, '’')
    .replace(/ - /g, ' – ')
    .replace(/\.\.\./g, '…');
const SAVES: readonly [name: string, save: (text: string) => Buffer | string, expect: Accident['expect']][] = [
  ['a byte-order mark', (text) => `\uFEFF${text}`, 'clean'],
  ['Windows line ends', (text) => text.replaceAll('\n', '\r\n'), 'clean'],
  ['line ends of old computers', (text) => text.replaceAll('\n', '\r'), 'clean'],
  ['mixed line ends', (text) => text.replace(/\n(?=.*\n)/g, '\r\n'), 'clean'],
  ['both marks and line ends', (text) => `\uFEFF${text.replaceAll('\n', '\r\n')}`, 'clean'],
  ['no line end', (text) => text.replace(/\n+$/, ''), 'clean'],
  ['empty lines at the end', (text) => `${text}\n\n\n`, 'clean'],
  ['spaces at the end of lines', (text) => text.replaceAll('\n', '  \n'), 'either'],
  ['one space at the end of lines', (text) => text.replaceAll('\n', ' \n'), 'clean'],
  ['tabs at the end of lines', (text) => text.replaceAll('\n', '\t\n'), 'either'],
  ['UTF-16, little end first', (text) => Buffer.from(`\uFEFF${text}`, 'utf16le'), 'fault'],
  ['UTF-16, big end first', (text) => Buffer.from(`\uFEFF${text}`, 'utf16le').swap16(), 'fault'],
  ['UTF-16 without a mark', (text) => Buffer.from(text, 'utf16le'), 'fault'],
  ['UTF-16 without a mark, big end first', (text) => Buffer.from(text, 'utf16le').swap16(), 'fault'],
  ['Windows-1252', (text) => Buffer.from(text.replace(/[a-z]\.(?=\s|$)/, '\u00e9.'), 'latin1'), 'fault'],
  ['UTF-8 read as Windows-1252', (text) => text.replace(/[a-z]\.(?=\s|$)/, 'Ã©.'), 'fault'],
  ['spaces that do not break', (text) => text.replace(/(?<=\S) (?=\S)/g, '\u00A0'), 'either'],
  ['one space that does not break', (text) => text.replace(/(?<=[a-z]) (?=[a-z])/, '\u00A0'), 'either'],
  ['curly quotes', SMART, 'either'],
  ['curly quotes round a value', (text) => text.replace(/^([a-z-]+): (\S.*)$/m, '$1: “$2”'), 'either'],
  ['tabs in place of spaces', (text) => text.replace(/^ {2}/gm, '\t'), 'either'],
  ['a page break', (text) => `${text}\f\n`, 'fault'],
  ['an end-of-file mark', (text) => `${text}\u001A`, 'fault'],
  ['a space of no width', (text) => text.replace(/(?<=[a-z]{3})(?=[a-z])/, '\u200B'), 'either'],
  ['a soft hyphen', (text) => text.replace(/(?<=[a-z]{3})(?=[a-z])/, '\u00AD'), 'either'],
  ['a line separator', (text) => text.replace(/(?<=[a-z]) (?=[a-z])/, '\u2028'), 'either'],
  ['nothing', () => '', 'fault'],
  ['zeros after a crash', (text) => Buffer.alloc(text.length), 'fault'],
  ['half of it', (text) => text.slice(0, text.indexOf('\n') + 3), 'either'],
];
const saves = fc.tuple(fc.constantFrom(...FILES), fc.constantFrom(...SAVES)).map(([file, [name, save, expect]]): Accident => {
  const saved = Buffer.from(save(textOf(file)));
  return written(`${file} saved with ${name}`, file, saved, saved.equals(bytesOf(file)) ? 'clean' : expect);
});

/** `*` is the name of a file with its ending, `+` without. */
const DROPPED: readonly [name: string, expect: Accident['expect']][] = [
  ['.DS_Store', 'clean'],
  ['._*', 'clean'],
  ['Thumbs.db', 'clean'],
  ['thumbs.db', 'clean'],
  ['ehthumbs.db', 'clean'],
  ['desktop.ini', 'clean'],
  ['Desktop.ini', 'clean'],
  ['Icon\r', 'clean'],
  ['.directory', 'clean'],
  ['.Trashes/501', 'clean'],
  ['$RECYCLE.BIN/S-1-5-21/desktop.ini', 'clean'],
  ['System Volume Information/IndexerVolumeGuid', 'either'],
  ['__MACOSX/._*', 'clean'],
  ['*~', 'clean'],
  ['#*#', 'clean'],
  ['.#*', 'clean'],
  ['.*.swp', 'clean'],
  ['.~lock.*#', 'clean'],
  ['~$+.docx', 'clean'],
  ['~WRL0001.tmp', 'either'],
  ['*.bak', 'fault'],
  ['+.bak', 'fault'],
  ['*.orig', 'fault'],
  ['*.rej', 'fault'],
  ['*.BACKUP.4711', 'fault'],
  ['*.old', 'fault'],
  ['*.swp', 'fault'],
  ['*.tmp', 'fault'],
  ['*.part', 'fault'],
  ['*.save', 'fault'],
  ['*.txt', 'fault'],
  ['+.docx', 'fault'],
  ['+.lnk', 'fault'],
  ['+.url', 'fault'],
  ['+.html', 'fault'],
  ['+.zip', 'fault'],
  ['+', 'fault'],
];
const drops = fc
  .tuple(fc.constantFrom(...FILES), fc.constantFrom(...DROPPED), fc.boolean())
  .map(([file, [name, expect], isTop]): Accident => {
    const folder = isTop ? '' : file.includes('/') ? `${dirname(file)}/` : '';
    const dropped = folder + name.replace('*', basename(file)).replace('+', basename(file).replace(/\.[a-z]+$/, ''));
    return written(`${dropped} is left behind`, dropped, bytesOf(file), expect);
  });

const ONE = { merges, tables, copies, previews, saves, drops };
const any = fc.oneof(...Object.values(ONE));
/** Two accidents at once in two files: each is answered as it would be alone. */
const pairs = fc
  .tuple(any, any)
  .filter(([a, b]) => stemsOf(a).every((stem) => !stemsOf(b).includes(stem)))
  .map((parts): Accident => {
    const [a, b] = parts;
    return { what: `${a.what} + ${b.what}`, write: { ...a.write, ...b.write }, expect: 'either', parts };
  });

/** A copy depends on what it is a copy of, and every page on club.yaml. */
function stemsOf({ write }: Accident): string[] {
  const known = FILES.map((file) => basename(file).replace(/\.[a-z]+$/, ''));
  return Object.keys(write).flatMap((file) => known.filter((stem) => basename(file).toLowerCase().includes(stem.toLowerCase())));
}

const FORM = /^[^\n]+?:\d+:\d+ [a-z-]+: [^\n]+?: found [^\n]+; write [^\n]+(?:\n {4}[^\n]*)*$/;

/** The club with the files, at the path that `use` gets. */
function withFiles<T>(write: Record<string, Buffer>, use: (directory: string) => T): T {
  const inClub = Object.keys(write).map((file) => ({ file: file.includes('/') ? file : 'club.yaml', savedAs: 'UTF-8 with a mark' }));
  // What is not there yet is made by hand: a change needs the file.
  const known = inClub.filter(({ file }) => FILES.includes(file));
  return withChanges(known, (directory) => {
    try {
      for (const { file } of known) writeFileSync(join(directory, file), bytesOf(file));
      for (const [file, bytes] of Object.entries(write)) {
        mkdirSync(dirname(join(directory, file)), { recursive: true });
        writeFileSync(join(directory, file), bytes);
      }
      return use(directory);
    } finally {
      for (const file of Object.keys(write).filter((each) => !FILES.includes(each))) {
        const top =
          dirname(file) === '.' || readFolder(goodClub).files.some((each) => each.startsWith(`${file.split('/')[0]!}/`))
            ? file
            : file.split('/')[0]!;
        rmSync(join(directory, top), { recursive: true, force: true });
      }
    }
  });
}

/** What is wrong with the answer to an accident, or null. */
function wrongIn(accident: Accident): string | null {
  const { what, write, parts = [accident] } = accident;
  return withFiles(write, (directory) => {
    const faults = check(directory);
    const lines = faults.map(formatDiagnostic);
    const all = (why: string): string => `${what}: ${why}\n    ${lines.join('\n    ') || 'no fault'}`;
    if (lines.some((line) => !FORM.test(line) || /undefined|\[object|NaN/.test(line))) return all('no sentence');
    if (faults.some(({ path, line }) => path in write && line > linesOf(write[path]!))) return all('a line that the file does not have');
    const unanswered = parts.find((part) => !isAnswered(part, faults));
    if (unanswered) return all(`${unanswered.what} should be ${JSON.stringify(unanswered.expect)}`);
    if (faults.length > 0) return null;
    const written = readFolder(directory).entries.filter(({ path, collection }) => path in write && collection !== 'drawings');
    const lost = written.flatMap((entry) => lostFrom(entry) ?? []);
    return lost.length > 0 ? all(lost.join()) : null;
  });
}

function isAnswered({ write, expect }: Accident, faults: readonly Diagnostic[]): boolean {
  const here = faults.filter((fault) =>
    Object.keys(write).some((file) => fault.path === file || file.startsWith(`${fault.path}/`) || sharesName(fault, file)),
  );
  if (expect === 'clean') return here.length === 0;
  if (expect === 'fault') return here.length > 0;
  return expect === 'either' || here.some(({ path, rule, line }) => path in write && rule === expect.rule && line === expect.line);
}

const linesOf = (bytes: Buffer): number => decodedAsBest(bytes).split('\n').length;

/** A copy is named at the original, or the original at the copy. */
const sharesName = ({ path, found }: Diagnostic, file: string): boolean =>
  found.includes(file) || path.toLowerCase() === file.toLowerCase();

function answers(accidents: fc.Arbitrary<Accident>, seed: number, numRuns: number): void {
  const each = new Map(fc.sample(accidents, { seed, numRuns }).map((accident) => [accident.what, accident]));
  assert.equal([...each.values()].flatMap((accident) => wrongIn(accident) ?? []).join('\n'), '');
}

const SEED = 20_261_129;

for (const [name, accidents] of Object.entries({ ...ONE, pairs }) as [string, fc.Arbitrary<Accident>][]) {
  describe(name, () => {
    test('a sample', () => answers(accidents, SEED, 25));
    test('many', { tags: ['slow'], timeout: 300_000 }, () => answers(accidents, SEED + 1, 600));
  });
}
