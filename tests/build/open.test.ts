// Data for other programs: figures.csv, and the structured data of pages for search engines.
import assert from 'node:assert/strict';
import { beforeAll, test } from 'vitest';
import { validEntries, type ValidEntries } from '../../src/checks/fields.ts';
import { followedRows } from '../../src/schemas/figures.ts';
import { holdsHere } from '../../src/schemas/where.ts';
import { readFolder } from '../../src/source/folder.ts';
import { readTable } from '../../src/source/table.ts';
import { builtDemo, type Built } from '../setup/built-site.ts';

/** Where the demo club is. A row that holds elsewhere is followed by nobody here. */
const OHIO = { land: 'US-OH', hemisphere: 'north' } as const;

let built: Built;
let content: ValidEntries;
beforeAll(async () => {
  built = await builtDemo();
  content = validEntries(readFolder(built.content));
});

test('figures.csv contains every row of every figure, with columns for unit and source', () => {
  const text = built.read('open/figures.csv');
  assert.ok(text.endsWith('\r\n') && !/[^\r]\n/.test(text));
  const { fields, faults } = readTable('figures.csv', text.replaceAll('\r\n', '\n'));
  assert.deepEqual(faults, []);
  const { columns, rows } = fields.value as { columns: string[]; rows: Record<string, string | number>[] };
  for (const name of ['figure', 'row', 'followed', 'value', 'least', 'most', 'unit', 'place', 'from', 'certainty', 'edition'])
    assert.ok(columns.includes(name), name);
  const who = new Map(content.of.sources.map(({ id, data }) => [id, data.who]));
  const figures = content.of.figures.filter(({ data }) => !data.draft);
  assert.equal(
    rows.length,
    figures.reduce((sum, { data }) => sum + data.rows.length, 0),
  );
  assert.ok(rows.length >= 60);
  for (const { id, data } of figures) {
    for (const row of data.rows) {
      const line = rows.find(
        (each) =>
          each.figure === id && each.row === row.id && each.from === row.from && String(each.phases) === (row.phases ?? []).join(' '),
      );
      assert.ok(line, `${id}/${row.id}`);
      assert.deepEqual(
        [
          line.value === '' ? undefined : line.value,
          line.least === '' ? undefined : line.least,
          line.unit,
          line.followed,
          String(line.source_who),
        ],
        [row.value, row.least, data.unit, holdsHere(row.for ?? 'anywhere', OHIO) && followedRows(data).includes(row.id) ? 'yes' : 'no', who.get(row.source)], // prettier-ignore
      );
    }
  }
  const { day } = JSON.parse(built.read('edition.json')) as { day: string };
  assert.ok(rows.every(({ edition }) => edition === day));
});

test('the table contains no telephone number and no mail address of a contact', () => {
  const text = built.read('open/figures.csv');
  const { contacts } = content.club!.data;
  const numbers = contacts.flatMap(({ phone, email }) => [phone, email].flatMap((each) => each ?? []));
  assert.ok(numbers.length > 10);
  for (const number of numbers) assert.ok(!text.includes(number), number);
});

test('a page links to the table', () => assert.ok(built.read('open/index.html').includes('/open/figures.csv"')));

test('meetings and articles have schema.org data, and no other page has', () => {
  const typeOf = (page: string): string | undefined => /itemtype="https:\/\/schema.org\/(\w+)"/.exec(built.read(`${page}index.html`))?.[1];
  assert.deepEqual(
    ['pests/varroa/', 'treatments/thymol/', 'meetings/2026-05-16-yard-day/', 'lists/mite-count-day/', 'words/', 'who-to-ask/'].map(typeOf),
    ['Article', 'Article', 'Event', undefined, undefined, undefined],
  );
  const event = built.read('meetings/2026-05-16-yard-day/index.html');
  assert.match(event, /itemprop="startDate" content="2026-05-16T10:00"/);
  assert.match(event, /itemprop="location"/);
});
