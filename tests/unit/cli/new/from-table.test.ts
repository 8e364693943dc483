// Import of a spreadsheet of meetings or reading: the drafts, every refused cell with row and column, and nothing half done.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, test } from 'vitest';
import fc from 'fast-check';
import { check } from '../../../../src/checks/check.ts';
import { timeMeant } from '../../../../src/cli/new/cells.ts';
import type { Tabled } from '../../../../src/cli/new/columns.ts';
import { bringIn } from '../../../../src/cli/new/from-table.ts';
import { projectFolder } from '../../../../src/cli/paths.ts';
import { formatDiagnostic } from '../../../../src/source/diagnostic.ts';
import { readFolder, readText } from '../../../../src/source/folder.ts';
import { goodClub, withChanges } from '../../../fixtures/invalid/cases.ts';
import { filled } from './fill.ts';

const club = readFolder(goodClub);
const bring = (kind: Tabled, table: string | Uint8Array) =>
  bringIn(kind, 't.csv', typeof table === 'string' ? Buffer.from(table) : table, club);
const faultsOf = (kind: Tabled, table: string | Uint8Array): string[] => bring(kind, table).faults.map(formatDiagnostic);

/** The fields of a file as parsed again. */
function fieldsOf({ path, text }: { path: string; text: string }): Record<string, unknown> {
  const faults: never[] = [];
  const entry = readText(path, path.split('/')[0]!, 'x', text, faults);
  assert.deepEqual(faults, []);
  return Object.fromEntries(Object.entries(entry!.fields.value as object).filter(([, value]) => value !== null));
}

const YARD = 'date,title,start,finish,place\n2026-09-12,Honey evening,19:00,20:30,Alder Grange Hall\n';

for (const [name, table] of [
  ['commas', YARD],
  ['semicolons', YARD.replaceAll(',', ';')],
  ['tabs', YARD.replaceAll(',', '\t')],
  ['a byte-order mark and Windows line ends', `\uFEFF${YARD.replaceAll('\n', '\r\n')}`],
  ['every cell in quotes', YARD.replace(/[^,\n]+/g, '"$&"')],
  ['names as people write them', YARD.replace('date,title,start,finish,place', 'Date:, Subject ,Start time,Ends,Where')],
  ['empty rows and an empty column', `\n${YARD.replace('place', 'place,').replace('Hall', 'Hall,')}\n,,,,,\n`],
  ['seconds in the times', YARD.replace('19:00', '19:00:00').replace('20:30', '20:30:00')],
] as const) {
  test(`a table with ${name} is read`, () => {
    const { files, faults } = bring('meetings', table);
    assert.deepEqual([faults.map(formatDiagnostic), files.map(({ path }) => path)], [[], ['meetings/2026-09-12-honey-evening.mdx']]);
    assert.deepEqual(fieldsOf(files[0]!), {
      title: 'Honey evening',
      day: '2026-09-12',
      start: '19:00',
      finish: '20:30',
      place: 'Alder Grange Hall',
      draft: true,
    });
    assert.deepEqual(files[0]!.lacking, ['summary', 'kind', 'ask', 'yard']);
  });
}

test('lists, yes and no, numbers, choices and words become their values', () => {
  const [meeting] = bring(
    'meetings',
    'day,title,yard,work,bring,kind,draft,words\n2026-09-12,2027,YES,open-hive; smoke,"Veil\nGloves | Tool",Yard Day,no,"First line.\n\nSecond, with <3 mites."\n',
  ).files;
  assert.deepEqual(fieldsOf(meeting!), {
    title: '2027',
    day: '2026-09-12',
    yard: true,
    work: ['open-hive', 'smoke'],
    bring: ['Veil', 'Gloves', 'Tool'],
    kind: 'yard day',
  });
  assert.match(meeting!.text, /\n---\nFirst line\.\n\nSecond, with <3 mites\.\n$/);
  const [book] = bring(
    'reading',
    'Title,Author,Year,ISBN,Library,For,Topics\nNo,,2019,978-0-00-000000-2,Town library,First year,queens;mites\n',
  ).files;
  assert.deepEqual(
    [book!.path, fieldsOf(book!)],
    [
      'reading/no.yaml',
      {
        title: 'No',
        year: 2019,
        isbn: '978-0-00-000000-2',
        lends: 'Town library',
        level: 'first year',
        subjects: ['queens', 'mites'],
        draft: true,
      },
    ],
  );
});

test('imported entries have no fault once the blanks are filled', () => {
  const [meeting] = bring('meetings', YARD).files;
  const text = filled(meeting!.text, { kind: 'meeting' });
  withChanges([{ file: meeting!.path, write: text }], (directory) => assert.deepEqual(check(directory).map(formatDiagnostic), []));
});

test('every refused cell is reported at once, by row and column, with a correction', () => {
  assert.deepEqual(
    faultsOf(
      'meetings',
      `date,title,start,finish,place,weekday,kind,ask,yard,reads
2/3/26,Winter food,7pm,20:30,Hall,,,,maybe,
2027-02-29,,19:00,18:00,Hall,Monday,party,nobody,yes,stings;sting
2027-03-11,Plans,19:00,18:30,Hall,Friday,Meeting,,no,
2027-03-11,plans!,19:00,20:30,Hall,Thursday,meeting,,no,
2026-06-13,Yard day,9:00,,Hall,,,,,
2026-06-14,蜂,,,,,,,,
`,
    ),
    [
      't.csv:2:1 field: row 2, date: found "2/3/26"; write a day such as 2026-04-18',
      't.csv:2:20 field: row 2, start: found "7pm"; write a time of 24 hours, here "19:00"',
      't.csv:2:38 field: row 2, yard: found "maybe"; write yes or no',
      't.csv:3:1 field: row 3, date: found "2027-02-29"; write a day that exists, such as 2026-02-28',
      't.csv:3:12 field: row 3, title: found a blank; write the title, or take the row out',
      't.csv:3:37 field: row 3, kind: found "party"; write one of: meeting, yard day, course, annual meeting, show',
      't.csv:3:43 contact: row 3, ask: found "nobody", a duty that no contact in club.yaml has; write one of: inspector, mentor',
      't.csv:3:50 work: row 3, yard: found true, and no work listed; write a list "work:" with what the hands do, such as open-hive',
      't.csv:3:54 reference: row 3, reads: found "sting", which is not in articles/; write "stings"',
      't.csv:4:24 meeting: row 4, finish: found 18:30, which is not after start, 19:00; write a later time of 24 hours, such as 20:30',
      't.csv:4:35 meeting: row 4, weekday: found Friday, but 2027-03-11 is a Thursday; write Thursday, or the day that is meant',
      't.csv:5:12 same-name: row 5, title: found the day and title of row 4 again; write another day and title, or take the row out',
      't.csv:6:12 same-name: row 6, title: found what meetings/2026-06-13-yard-day.mdx holds already; write another day and title, or take the row out',
      't.csv:6:21 field: row 6, start: found "9:00"; write a time of 24 hours, here "09:00"',
      't.csv:7:12 file-name: row 7, title: found "蜂", which has no letter for a file\'s name; write a title with some of a to z or 0 to 9',
    ],
  );
  assert.deepEqual(faultsOf('reading', 'Title,Author,Year,ISBN\nOne,,19x,978-0-00-000000-3\nTwo,,2019,9.78E+12\nQuiet year,,,\n'), [
    't.csv:2:6 field: row 2, Year: found "19x"; write a year such as 2019',
    't.csv:2:10 field: row 2, ISBN: found "978-0-00-000000-3"; write the ISBN as it is printed: 13 digits, of which one here is wrong',
    't.csv:3:11 field: row 3, ISBN: found "9.78E+12"; write an ISBN of 13 digits',
    't.csv:4:1 same-name: row 4, Title: found what reading/quiet-year.yaml holds already; write another title, or take the row out',
  ]);
});

test('rows are counted as a spreadsheet counts them, also after a cell of two lines', () => {
  assert.deepEqual(faultsOf('meetings', '\ndate,title,words\n2027-01-01,A,"one\ntwo"\n\n1/2/27,B,\n'), [
    't.csv:6:1 field: row 5, date: found "1/2/27"; write a day such as 2026-04-18',
  ]);
});

test('words below a meeting are checked as on any page', () => {
  assert.deepEqual(faultsOf('meetings', 'date,title,words\n2027-01-01,A,See [it](/nowhere/)\n2027-01-02,B,<Figure id="x">\n'), [
    't.csv:2:14 link: row 2, words: found "/nowhere/", which is no page of this almanac; write the address of a page that is there: open it in the preview, and copy what follows the name of the site',
    't.csv:3:14 tag: row 3, words: found a tag that is opened and not closed, closed and not opened, or crosses another mark; write both <Tag> and </Tag> in one sentence, or the short form <Tag ... />',
  ]);
});

for (const [name, kind, table, faults] of [
  [
    'columns that nobody knows',
    'meetings',
    'Dayt,Title,Speaker,,date,Subject\n1,2,3,4,5,6\n',
    [
      't.csv:1:1 column: column 1: found "Dayt"; write "day"',
      't.csv:1:12 column: column 3: found "Speaker"; write one of: title, summary, day, last-day, start, finish, weekday, place, address, district, kind, bring, ask, called-off-by, called-off, yard, work, reads, lists, taught, checked, next-check, by, withdrawn, draft, formerly, words; or take the column out',
      't.csv:1:20 column: column 4: found cells under no name; write a name above them, or take the column out',
      't.csv:1:26 column: column 6: found "Subject" beside "Title", which mean the same; write one of them',
    ],
  ],
  [
    'a list of books "by" somebody',
    'reading',
    'Title,By\nA,B\n',
    ['t.csv:1:7 column: column 2: found "By"; write "author" for who wrote it, or "checked by" for the duty that checked it'],
  ],
  [
    'no names',
    'meetings',
    '2026-01-01,2027\n',
    [
      't.csv:1:1 column: column 1: found "2026-01-01"; write one of: title, summary, day, last-day, start, finish, weekday, place, address, district, kind, bring, ask, called-off-by, called-off, yard, work, reads, lists, taught, checked, next-check, by, withdrawn, draft, formerly, words; or take the column out',
      't.csv:1:12 column: column 2: found "2027"; write one of: title, summary, day, last-day, start, finish, weekday, place, address, district, kind, bring, ask, called-off-by, called-off, yard, work, reads, lists, taught, checked, next-check, by, withdrawn, draft, formerly, words; or take the column out',
    ],
  ],
  [
    'no title',
    'meetings',
    'date,place\n2026-01-01,Hall\n',
    ['t.csv:1:1 column: the first row: found no column "title"; write the names of the columns, such as title,day,start,finish,place'],
  ],
  [
    'nothing below the names',
    'reading',
    'title\n',
    ['t.csv:1:1 table: the file: found no rows below the names of the columns; write a row for each entry'],
  ],
  [
    'nothing at all',
    'reading',
    '',
    ['t.csv:1:1 column: the first row: found no column "title"; write the names of the columns, such as title,author,year'],
  ],
  [
    'a row too short',
    'meetings',
    'date,title\n2026-01-01\n',
    ['t.csv:2:1 table: the row: found 1 cell under 2 columns; write a cell for each column, empty where there is none'],
  ],
] as [string, Tabled, string, string[]][]) {
  test(`a table with ${name} is refused`, () => assert.deepEqual(faultsOf(kind, table), faults));
}

test('a table in another encoding is refused with the way to save it', () => {
  const SAVE = 'write it again, saved from the spreadsheet as CSV with the encoding UTF-8';
  assert.deepEqual(faultsOf('meetings', Buffer.from('date,title\n2027-01-14,Caf\xe9\n', 'latin1')), [
    `t.csv:2:15 encoding: the file: found a letter that is not UTF-8 (the file was saved as Windows-1252 or the like); ${SAVE}`,
  ]);
  assert.deepEqual(faultsOf('meetings', Buffer.from('\uFEFFdate,title\n', 'utf16le')), [
    `t.csv:1:1 encoding: the file: found a file saved as UTF-16; ${SAVE}`,
  ]);
  for (const head of ['504b030414', 'd0cf11e0a1'])
    assert.deepEqual(faultsOf('meetings', Buffer.from(head, 'hex')), [
      `t.csv:1:1 encoding: the file: found a spreadsheet, not a table of commas; ${SAVE}`,
    ]);
});

for (const [typed, time] of [
  ['7pm', '19:00'],
  ['7:30 PM', '19:30'],
  ['12 a.m.', '00:00'],
  ['12pm', '12:00'],
  ['9:00', '09:00'],
  ['19.30', '19:30'],
  ['19h30', '19:30'],
  ['7', null],
  ['25:00', null],
  ['13pm', null],
  ['evening', null],
] as const) {
  test(`a time "${typed}" ${time === null ? 'is not guessed' : `means ${time}`}`, () => assert.equal(timeMeant(typed), time));
}

test('the file contains the words of a table as typed, or a cell is named', () => {
  const words = fc.string({ unit: fc.constantFrom(...'ab Z09"\',;:#-\n\t{}[]<>&*!|%@`é🐝\\~?'), maxLength: 20 });
  const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;
  fc.assert(
    fc.property(words, words, (title, place) => {
      const { files, faults } = bring('meetings', `title,day,place\n${quoted(title)},2027-01-01,${quoted(place)}\n`);
      const plain = (text: string): string => text.replace(/\s+/g, ' ').trim();
      if (faults.length > 0) return assert.match(formatDiagnostic(faults[0]!), /^t\.csv:2:1 [a-z-]+: row 2, title: found /);
      const read = fieldsOf(files[0]!);
      assert.deepEqual([read.title, read.place ?? ''], [plain(title), plain(place)]);
    }),
    { numRuns: 60 },
  );
});

test('the command shows what it would write, writes it on request, and writes nothing with a fault', () => {
  const folder = mkdtempSync(join(tmpdir(), 'table-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  cpSync(goodClub, join(folder, 'club'), { recursive: true });
  const run = (...typed: string[]) => {
    const { NODE_ENV: _, ...environment } = process.env;
    const { status, stdout, stderr } = spawnSync(
      process.execPath,
      [join(projectFolder, 'src/cli/new.ts'), 'meeting', '--content', 'club', '--from', 't.csv', ...typed],
      { cwd: projectFolder, env: { ...environment, INIT_CWD: folder }, encoding: 'utf8' },
    );
    return [status, stdout, stderr];
  };
  const held = (): string[] => readdirSync(join(folder, 'club/meetings')).sort();
  const before = held();
  writeFileSync(join(folder, 't.csv'), `${YARD}2/3/26,Winter food,,,\n`);
  assert.deepEqual(run('--write'), [
    1,
    't.csv:3:1 field: row 3, date: found "2/3/26"; write a day such as 2026-04-18\n1 fault. Nothing was written.\n',
    '',
  ]);
  assert.deepEqual(held(), before);
  writeFileSync(join(folder, 't.csv'), YARD);
  const line = 'meetings/2026-09-12-honey-evening.mdx  2026-09-12  Honey evening\n\n';
  const blank = 'Blank in some or all of them: summary, kind, ask, yard.\n';
  assert.deepEqual(run(), [0, `${line}1 file would be written. Nothing is written yet: add --write.\n${blank}`, '']);
  assert.deepEqual(held(), before);
  assert.deepEqual(run('--write'), [
    0,
    `${line}1 file written. Fill the blanks, then run npm run check -- --content club. Take out "draft: true" when members may see it.\n${blank}`,
    '',
  ]);
  assert.deepEqual(held(), [...before, '2026-09-12-honey-evening.mdx'].sort());
  assert.match(readFileSync(join(folder, 'club/meetings/2026-09-12-honey-evening.mdx'), 'utf8'), /\nday: 2026-09-12\n/);
  assert.equal(run('--write')[0], 1);
});
