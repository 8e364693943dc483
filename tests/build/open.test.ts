// The files under /open/: they agree with their schema, with the pages and with the content, and carry no number to ring.
import assert from 'node:assert/strict';
import { beforeAll, test } from 'vitest';
import { readFolder } from '../../src/source/folder.ts';
import { readTable } from '../../src/source/table.ts';
import { openKinds, type OpenKind } from '../../src/schemas/open.ts';
import { wrong } from '../unit/schemas/json-schema.ts';
import { builtDemo, type Built } from '../setup/built-site.ts';

let built: Built;
let club: Record<string, any>;
const of = new Map<string, Map<string, any>>();
beforeAll(async () => {
  built = await builtDemo();
  const folder = readFolder(built.content);
  club = folder.club!.fields.value as Record<string, any>;
  for (const { collection, id, fields } of folder.entries) {
    if (!of.has(collection)) of.set(collection, new Map());
    if ((fields.value as any)?.draft !== true) of.get(collection)!.set(id, fields.value);
  }
});

const json = (name: string): any => JSON.parse(built.read(`open/${name}`));

for (const kind of openKinds) {
  test(`${kind}.json agrees with its schema, and holds every entry once`, () => {
    const file = json(`${kind}.json`);
    assert.equal(file.$schema, `${kind}.schema.json`);
    assert.deepEqual(wrong(json(`${kind}.schema.json`), file, kind), []);
    assert.deepEqual(file[kind].map(({ id }: { id: string }) => id).sort(), [...of.get(kind)!.keys()].sort());
  });

  test(`${kind}.json is of the edition of the pages, and says what decides`, () => {
    const { day, fingerprint } = JSON.parse(built.read('edition.json'));
    const { about } = json(`${kind}.json`);
    assert.deepEqual([about.edition, about.fingerprint, about.demonstration, about.club], [day, fingerprint, true, club.name]);
    assert.match(about.reads, /label, the inspector, the extension service and a doctor decide/);
  });
}

test('the test of schemas sees what is missing, strange or of another type', () => {
  const file = json('signs.json');
  const schema = json('signs.schema.json');
  const [first, ...others] = file.signs;
  const { title, ...without } = first;
  assert.match(wrong(schema, { ...file, signs: [without, ...others] }, 's').join(), /title is missing/);
  assert.match(wrong(schema, { ...file, signs: [{ ...first, title: 7 }] }, 's').join(), /title is number/);
  assert.match(wrong(schema, { ...file, more: 1 }, 's').join(), /more is not in the schema/);
  assert.match(wrong(schema, { ...file, signs: [{ ...first, where: 'attic' }] }, 's').join(), /where is attic/);
  assert.equal(typeof title, 'string');
});

test('no telephone number, mail address or draft is in any file', () => {
  const numbers = club.contacts.flatMap(({ phone, email }: Record<string, string>) => [phone, email]).filter(Boolean);
  assert.ok(numbers.length > 10);
  for (const kind of openKinds) {
    const text = built.read(`open/${kind}.json`);
    for (const number of numbers) assert.ok(!text.includes(number), `${kind}.json: ${number}`);
    assert.doesNotMatch(text, /"(?:draft|withdrawn|formerly)":/);
  }
});

test('every address leads to a page, and to a place on it', () => {
  for (const kind of openKinds.filter((each): each is OpenKind => each !== 'forage')) {
    for (const { address } of json(`${kind}.json`)[kind]) {
      const [path, place] = address.split('#');
      const html = built.read(`${path.slice(1)}index.html`);
      if (place) assert.ok(html.includes(` id="${place}"`), address);
    }
  }
});

test('a bulletin carries its words as its page has them, with the numbers and the names of whom to ask', () => {
  const { parts, signs, law } = json('bulletins.json').bulletins.find(({ id }: { id: string }) => id === 'american-foulbrood');
  assert.deepEqual(parts.map(({ heading }: { heading: string }) => heading).slice(1, 6), [
    'What you see',
    'What looks like it',
    'The field test',
    'What to do today',
    'What not to do',
  ]);
  assert.match(parts[0].words, /call the state apiary inspection office\. A wrong alarm costs nothing\./);
  assert.match(parts[3].words, /A brown thread of 3 to 5 cm \(|A brown thread of [\d.]+ to [\d.]+/);
  assert.ok(signs.length > 5 && law[0].duty === 'inspector');
  assert.doesNotMatch(JSON.stringify(parts), /<\/?[a-z]|&[a-z]+;/);
});

test('figures.csv holds every row of every figure, with unit and source in columns of their own', () => {
  const text = built.read('open/figures.csv');
  assert.ok(text.endsWith('\r\n') && !/[^\r]\n/.test(text));
  const { fields, faults } = readTable('figures.csv', text.replaceAll('\r\n', '\n'));
  assert.deepEqual(faults, []);
  const { columns, rows } = fields.value as { columns: string[]; rows: Record<string, string | number>[] };
  for (const name of [
    'figure',
    'row',
    'followed',
    'value',
    'least',
    'most',
    'unit',
    'place',
    'from',
    'certainty',
    'source_who',
    'source_year',
    'edition',
  ])
    assert.ok(columns.includes(name), name);
  const figures = json('figures.json').figures;
  assert.equal(
    rows.length,
    figures.reduce((sum: number, figure: any) => sum + figure.rows.length, 0),
  );
  assert.ok(rows.length >= 60);
  for (const figure of figures) {
    for (const row of figure.rows) {
      const line = rows.find(
        (each) =>
          each.figure === figure.id &&
          each.row === row.id &&
          each.from === row.from &&
          String(each.phases) === (row.phases ?? []).join(' '),
      );
      assert.ok(line, `${figure.id}/${row.id}`);
      assert.deepEqual(
        [
          line.value === '' ? undefined : line.value,
          line.least === '' ? undefined : line.least,
          line.unit,
          line.followed,
          String(line.source_who),
        ],
        [row.value, row.least, figure.unit, row.followed ? 'yes' : 'no', row.source.who],
      );
    }
  }
});

test('a page lists the files, each with its schema', () => {
  const html = built.read('open/index.html');
  for (const name of [...openKinds.flatMap((kind) => [`${kind}.json`, `${kind}.schema.json`]), 'figures.csv'])
    assert.ok(html.includes(`/open/${name}"`), name);
});

test('pages say what they are where schema.org has a word for it', () => {
  for (const [page, type] of [
    ['pests/varroa/', 'Article'],
    ['lists/mite-count-day/', 'HowTo'],
    ['meetings/2026-05-16-yard-day/', 'Event'],
    ['words/', 'DefinedTermSet'],
    ['treatments/thymol/', 'Article'],
  ] as const) {
    assert.match(built.read(`${page}index.html`), new RegExp(`itemtype="https://schema.org/${type}"`), page);
  }
  const event = built.read('meetings/2026-05-16-yard-day/index.html');
  assert.match(event, /itemprop="startDate" content="2026-05-16T10:00"/);
  assert.match(event, /itemprop="location"/);
});
