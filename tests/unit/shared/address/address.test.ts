import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { readAddress, writeAddress } from '../../../../shared/address/address.ts';
import {
  readAddressNumber,
  readAddressNumbers,
  readAddressRecords,
  writeAddressNumber,
  writeAddressNumbers,
  writeAddressRecords,
} from '../../../../shared/address/address-values.ts';

test('an address from a link is parsed', () => {
  const { values, unknown, repeated } = readAddress('#samples=A:9/300;B:4/310&method=wash&colour=red&method=roll', [
    'samples',
    'method',
    'phase',
  ]);
  assert.deepEqual(
    [...values],
    [
      ['samples', 'A:9/300;B:4/310'],
      ['method', 'wash'],
    ],
  );
  assert.deepEqual(unknown, ['colour']);
  assert.deepEqual(repeated, ['method']);
  assert.deepEqual([...readAddress('', ['a']).values], []);
});

test('a plus is a plus, a bad percent sign stays, and names of built-in properties are not matched', () => {
  assert.equal(readAddress('a=1+1', ['a']).values.get('a'), '1+1');
  assert.equal(readAddress('a=100%', ['a']).values.get('a'), '100%');
  assert.deepEqual(readAddress('__proto__=1&constructor=2', ['a']).unknown, ['__proto__', 'constructor']);
});

test('fully encoded and readable spellings mean the same', () => {
  const known = ['samples'];
  assert.equal(
    readAddress('samples=A%3A9%2F300', known).values.get('samples'),
    readAddress('samples=A:9/300', known).values.get('samples'),
  );
  assert.equal(
    writeAddress([
      ['weights-g', '452,455.5'],
      ['unit', 'us-gal'],
    ]),
    'weights-g=452,455.5&unit=us-gal',
  );
});

test('numbers in an address are stricter than in a form field', () => {
  assert.deepEqual(readAddressNumber('1.5'), { ok: true, value: 1.5 });
  assert.deepEqual(readAddressNumber('1.500'), { ok: true, value: 1.5 });
  assert.deepEqual(readAddressNumber('-0'), { ok: true, value: 0 });
  for (const text of ['1,5', '1 500', '5kg', '1e5', '5.', '+5', '', 'NaN', 'Infinity', '0x10', ' 5'])
    assert.equal(readAddressNumber(text).ok, false, text);
  assert.deepEqual(readAddressNumbers('452,455.5,449'), { ok: true, value: [452, 455.5, 449] });
  assert.deepEqual(readAddressNumbers('452,x'), { ok: false, reason: 'not-a-number', row: 2, text: 'x' });
});

test('records are split at their marks', () => {
  assert.deepEqual(readAddressRecords('A:9/300;B:4/310', [':', '/']), {
    ok: true,
    value: [
      ['A', '9', '300'],
      ['B', '4', '310'],
    ],
  });
  assert.deepEqual(readAddressRecords('10x3;4x2', ['x']), {
    ok: true,
    value: [
      ['10', '3'],
      ['4', '2'],
    ],
  });
  assert.deepEqual(readAddressRecords('40/54;43', ['/']), { ok: false, reason: 'wrong-fields', row: 2, text: '43' });
  assert.deepEqual(readAddressRecords('', ['/']), { ok: false, reason: 'empty' });
});

test('everything that is written parses to itself, labels of any kind included', () => {
  const label = fc.string({ unit: 'grapheme', maxLength: 12 });
  const record = fc.tuple(label, fc.nat(999).map(String), fc.nat(999).map(String)).map((fields) => [...fields]);
  fc.assert(
    fc.property(fc.array(record, { minLength: 1, maxLength: 24 }), fc.string({ unit: 'grapheme' }), (records, free) => {
      const hash = writeAddress([
        ['samples', writeAddressRecords(records, [':', '/'])],
        ['free', free],
      ]);
      const { values } = readAddress(`#${hash}`, ['samples', 'free']);
      assert.deepEqual(readAddressRecords(values.get('samples') ?? '', [':', '/']), { ok: true, value: records });
      assert.equal(values.get('free'), free);
    }),
  );
});

test('numbers and lists of numbers come back from the address unchanged', () => {
  fc.assert(
    fc.property(fc.array(fc.double({ min: -1e12, max: 1e12, noNaN: true }), { minLength: 1 }), (values) => {
      const kept = values.map((value) => (value === 0 ? 0 : value));
      assert.deepEqual(readAddressNumbers(writeAddressNumbers(kept)), { ok: true, value: kept });
      assert.deepEqual(readAddressNumber(writeAddressNumber(kept[0] ?? 0)), { ok: true, value: kept[0] });
    }),
  );
});

test('no address makes the parser throw', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (hash) => {
      const { values } = readAddress(hash, ['a', 'samples']);
      for (const value of values.values()) readAddressRecords(value, [':', '/']);
    }),
  );
});
