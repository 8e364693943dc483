/* CSV tables: their values, accepted forms, and the position of each cell. */
import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { formatDiagnostic } from '../../../src/source/diagnostic.ts';
import { readTable } from '../../../src/source/table.ts';

const read = (text: string) => {
  const { fields, faults } = readTable('t.csv', text);
  return {
    value: fields.value as { columns: string[]; rows: Record<string, unknown>[] } & Record<string, unknown>,
    at: fields.placeOf,
    faults: faults.map(formatDiagnostic),
  };
};

test('columns, rows, numbers and words are parsed', () => {
  const { value, faults } = read('a,b\n1,x\n2.5,-3\n');
  assert.deepEqual(
    [value, faults],
    [
      {
        columns: ['a', 'b'],
        rows: [
          { a: 1, b: 'x' },
          { a: 2.5, b: -3 },
        ],
      },
      [],
    ],
  );
});

for (const [name, sign] of [
  ['commas', ','],
  ['semicolons', ';'],
  ['tabs', '\t'],
] as const) {
  test(`cells separated by ${name}`, () =>
    assert.deepEqual(read(['a', 'b'].join(sign) + '\n' + ['1', '2'].join(sign)).value.rows, [{ a: 1, b: 2 }]));
}

test('quoted cells contain separators and line ends, and a doubled quote is one', () => {
  const { value, faults } = read('a,b\n"x, ""y""\nz",2\n3,4\n');
  assert.deepEqual(
    [value.rows, faults],
    [
      [
        { a: 'x, "y"\nz', b: 2 },
        { a: 3, b: 4 },
      ],
      [],
    ],
  );
});

test('lines with a number sign above the columns are fields of the whole table; empty lines are skipped', () => {
  const { value, at } = read('# title: Counts, all\n\n# only a remark\n# withdrawn: 2026-05-14, wrong ,,,\nA , b\n\n1,2\n,\n3,4\n');
  assert.deepEqual(value, {
    title: 'Counts, all',
    withdrawn: '2026-05-14, wrong',
    columns: ['a', 'b'],
    rows: [
      { a: 1, b: 2 },
      { a: 3, b: 4 },
    ],
  });
  assert.deepEqual(at(['withdrawn']), { line: 4, column: 1 });
  assert.deepEqual(at(['rows', 1, 'b']), { line: 9, column: 3 });
});

test('a day and a time stay text, and so do digits with a sign', () =>
  assert.deepEqual(read('a,b\n2026-05-14,18:30\n1 000,+5\n').value.rows, [
    { a: '2026-05-14', b: '18:30' },
    { a: '1 000', b: '+5' },
  ]));

test('each cell has its line and column, also after a cell of two lines', () => {
  const { at } = read('a,b,c\n"x\ny",22,3\n4,5,6\n');
  assert.deepEqual(
    [at(['columns', 2]), at(['rows', 0, 'a']), at(['rows', 1, 'c'])],
    [
      { line: 1, column: 5 },
      { line: 2, column: 1 },
      { line: 4, column: 5 },
    ],
  );
});

test('columns count characters, not bytes, also in quotes', () => {
  const { at } = read('naïve,Größe,c\n"é ""ü""", 2 ,3\n');
  assert.deepEqual(
    [at(['columns', 2]), at(['rows', 0, 'größe']), at(['rows', 0, 'c'])],
    [
      { line: 1, column: 13 },
      { line: 2, column: 11 },
      { line: 2, column: 15 },
    ],
  );
});

test('an unclosed quote is reported where it opens, and the rows above it stay', () => {
  const { value, faults } = read('a,b\n1,2\n3,"4\n5,6\n');
  assert.deepEqual(
    [value.rows, faults],
    [[{ a: 1, b: 2 }], ['t.csv:3:3 table: a cell: found a quote that is not closed; write another " at its end']],
  );
});

test('an inch sign inside a cell is an ordinary character; text after a closing quote is reported', () => {
  assert.deepEqual(read('a,b\n5" board,6\n').value.rows, [{ a: '5" board', b: 6 }]);
  assert.deepEqual(read('a,b\n"5" board,6\n').faults, [
    't.csv:2:1 table: a cell: found words behind the quote that closes it; write the whole cell in quotes, and each quote inside it twice',
  ]);
});

test('a row of another length is reported and left out', () => {
  const { value, faults } = read('a,b\n1\n1,2,3\n4,5\n');
  assert.deepEqual(value.rows, [{ a: 4, b: 5 }]);
  assert.deepEqual(faults, [
    't.csv:2:1 table: the row: found 1 cell under 2 columns; write a cell for each column, empty where there is none',
    't.csv:3:1 table: the row: found 3 cells under 2 columns; write a cell for each column, empty where there is none',
  ]);
});

test('an empty table has no columns', () => assert.deepEqual(read('').value, { columns: [], rows: [] }));

test('quoted cells come back unchanged', () => {
  const cell = fc.string({ maxLength: 8 }).map((text) => text.replace(/\r/g, ''));
  fc.assert(
    fc.property(fc.array(fc.tuple(cell, cell), { minLength: 1, maxLength: 6 }), (pairs) => {
      const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;
      const text = ['a,b', ...pairs.map((pair) => pair.map(quoted).join(','))].join('\n');
      const { value, faults } = read(text);
      const kept = pairs.filter(([a, b]) => a !== '' || b !== '');
      assert.deepEqual(faults, []);
      assert.deepEqual(
        value.rows.map(({ a, b }) => [String(a), String(b)]),
        kept.map((pair) => pair.map((each) => (/^-?\d+(?:\.\d+)?$/.test(each) ? String(Number(each)) : each))),
      );
    }),
  );
});

test('any text is parsed without an exception', () => {
  fc.assert(
    fc.property(fc.array(fc.constantFrom('a', '1', ',', ';', '\t', '"', '\n', '#', ':', ' ', '-'), { maxLength: 40 }), (signs) => {
      const { value } = read(signs.join(''));
      assert.ok(Array.isArray(value.columns) && Array.isArray(value.rows));
    }),
  );
});
