import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { readTypedNumber } from '../../../../shared/numbers/typed-number.ts';
import { readTypedCount } from '../../../../shared/numbers/typed-count.ts';
import { readTypedList } from '../../../../shared/numbers/typed-list.ts';
import { readTypedRows } from '../../../../shared/numbers/typed-rows.ts';
import { plainDecimal } from '../../../../shared/numbers/show-number.ts';
import { rows } from '../../../rows.ts';
import { lists, numbers, pastedRows } from '../../../tables/typed-numbers.ts';

const units = ['kg', 'lb', 'us gal'];

rows('typed number', numbers, ({ text }, expect) => {
  const read = readTypedNumber(text, units);
  if ('reason' in expect) assert.deepEqual(read.ok ? read : { reason: read.reason }, expect);
  else assert.deepEqual(read, { ok: true, value: expect.value, unit: expect.unit ?? '' });
});

rows('typed list', lists, ({ text, mark }, expect) => {
  const read = readTypedList(text, {}, mark);
  if ('values' in expect) assert.deepEqual(read, { ok: true, value: expect.values });
  else assert.deepEqual(read.ok ? read : { reason: read.reason, ...(read.row ? { row: read.row } : {}) }, expect);
});

rows('pasted rows', pastedRows, ({ text, shape }, expect) => {
  const read = readTypedRows(text, shape);
  if ('rows' in expect) assert.deepEqual(read.ok && read.value.map(({ label, numbers }) => [label, ...numbers]), expect.rows);
  else assert.deepEqual(read.ok ? read : { reason: read.reason, ...(read.row ? { row: read.row } : {}) }, expect);
});

test('a count is whole and not below 0', () => {
  assert.deepEqual(readTypedCount('300'), { ok: true, value: 300 });
  assert.deepEqual(readTypedCount('300.0'), { ok: true, value: 300 });
  assert.deepEqual(readTypedCount('3,5'), { ok: false, reason: 'not-whole' });
  assert.deepEqual(readTypedCount('-1'), { ok: false, reason: 'negative' });
  assert.deepEqual(readTypedCount('9/300'), { ok: false, reason: 'not-whole' });
});

/** The only meaning that any reader could give to a text. Any other accepted text would be a wrong number. */
function meanings(text: string): Set<number> {
  const plain = text.replace(/[\s\u2212]/gu, (mark) => (mark === '\u2212' ? '-' : ''));
  const asPoint = Number(plain.replace(',', '.'));
  const asGroups = /^-?0*[1-9]\d{0,2}([.,]\d{3})+$/.test(plain) ? Number(plain.replace(/[.,]/g, '')) : NaN;
  return new Set([asPoint, asGroups].filter((value) => !Number.isNaN(value)).map((value) => (value === 0 ? 0 : value)));
}

test('a text of digits, marks and spaces that two people could read differently is refused', () => {
  const marks = fc
    .array(fc.constantFrom('0', '1', '2', '5', '9', '.', ',', ' ', '-', '\u2212', '+'), { maxLength: 9 })
    .map((parts) => parts.join(''));
  fc.assert(
    fc.property(marks, (text) => {
      const read = readTypedNumber(text);
      if (!read.ok) return;
      const possible = meanings(text.replace('+', ''));
      assert.ok(Number.isFinite(read.value), text);
      assert.equal(possible.size, 1, `${JSON.stringify(text)} was read as ${read.value} of ${[...possible].join(' or ')}`);
      assert.ok(possible.has(read.value), `${JSON.stringify(text)} was read as ${read.value}`);
    }),
    { numRuns: 20_000 },
  );
});

test('no text throws or gives a number that is not finite', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (text) => {
      const read = readTypedNumber(text);
      if (read.ok) assert.ok(Number.isFinite(read.value) && /\d|[\u00bc-\u00be\u2150-\u215e]/u.test(text), JSON.stringify(text));
      readTypedList(text);
      readTypedRows(text, { numbers: 2, least: 1, whole: true, numberedNames: true });
      readTypedRows(text, { numbers: 2, whole: false, numberedNames: false });
    }),
    { numRuns: 5000 },
  );
});

const typable = fc.tuple(fc.integer({ min: -999_999, max: 999_999 }), fc.integer({ min: 0, max: 99 }));

test('a clear number is parsed, with either decimal mark and every kind of space around it', () => {
  const spaces = fc.constantFrom('', ' ', '\u00a0', '\u2009', '\t');
  fc.assert(
    fc.property(typable, spaces, fc.constantFrom('.', ','), ([whole, hundredths], space, mark) => {
      const text = `${whole}${mark}${String(hundredths).padStart(2, '0')}`;
      const value = Number(text.replace(mark, '.'));
      const read = readTypedNumber(`${space}${text}${space}lb`, units);
      assert.deepEqual(read, { ok: true, value: value === 0 ? 0 : value, unit: 'lb' });
    }),
  );
});

test('fractions are their quotient', () => {
  fc.assert(
    fc.property(fc.nat(999), fc.integer({ min: 1, max: 15 }), fc.integer({ min: 2, max: 16 }), (whole, top, bottom) => {
      fc.pre(top < bottom);
      assert.deepEqual(readTypedNumber(`${whole} ${top}/${bottom}`), { ok: true, value: whole + top / bottom, unit: '' });
    }),
  );
});

test('a list is its items, in order, or no list at all', () => {
  const items = fc.array(
    fc.integer({ min: -9999, max: 9999 }).map((number) => number / 4),
    { minLength: 1, maxLength: 24 },
  );
  fc.assert(
    fc.property(items, fc.constantFrom('\n', '\r\n', '\t', ';', ' ; '), (values, mark) => {
      const safe = values.map((value) => plainDecimal(value));
      assert.deepEqual(readTypedList(safe.join(mark)), { ok: true, value: values });
    }),
  );
});
