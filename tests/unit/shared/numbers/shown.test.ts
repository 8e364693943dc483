import assert from 'node:assert/strict';
import { test } from 'vitest';
import fc from 'fast-check';
import { setLanguageHere } from '../../../../shared/country/language-here.ts';
import { languages } from '../../../../shared/country/language.ts';
import { formatAgainst, formatNumber, plainDecimal, toDataValue, withoutZeros } from '../../../../shared/numbers/show-number.ts';
import { rows } from '../../../rows.ts';
import { dataValues, shown } from '../../../tables/typed-numbers.ts';

rows('number in print', shown, ({ value, places, digits }, expect) =>
  assert.equal(formatNumber(value, places === undefined ? { digits: digits ?? 1 } : { places }), expect.words),
);
rows('number for machines', dataValues, ({ value }, expect) => assert.equal(toDataValue(value), expect.text));

test('a number beside its limit is printed on its own side', () => {
  assert.equal(formatAgainst(8 / 2.67, 3, 1), '2.996');
  assert.equal(formatAgainst(3, 3, 1), '3.0');
  assert.equal(formatAgainst(2.9, 3, 1), '2.9');
  assert.equal(formatAgainst(3.004, 3, 1), '3.004');
});

test('the marks of thousands and decimals are those of CLDR, in English and in Spanish', () => {
  try {
    for (const language of languages.filter((each) => each !== 'en-ZA')) {
      setLanguageHere(language);
      for (const value of [0.5, 12_345.25, 1_234_567])
        assert.equal(
          formatNumber(value, { places: 2 }),
          new Intl.NumberFormat(language, { minimumFractionDigits: 2, maximumFractionDigits: 2 }).format(value),
          language,
        );
      // A zero that stays would be another number: five, not five hundred thousand.
      assert.equal(withoutZeros(formatNumber(5, { digits: 6 })), '5', language);
      assert.equal(withoutZeros(formatNumber(1.36, { places: 3 })), new Intl.NumberFormat(language).format(1.36), language);
      assert.equal(withoutZeros(formatNumber(1200, { places: 0 })), formatNumber(1200, { places: 0 }), language);
    }
  } finally {
    setLanguageHere('en-US');
  }
});

const finite = fc.double({ min: -1e300, max: 1e300, noNaN: true });

test('printed numbers have no exponent, minus zero, NaN or infinity', () => {
  fc.assert(
    fc.property(finite, fc.nat(6), (value, places) => {
      for (const text of [formatNumber(value, { places }), formatNumber(value, { digits: places + 1 }), toDataValue(value)]) {
        assert.match(text, /^-?[\d,]+(\.\d+)?$/);
        assert.doesNotMatch(text, /^-[0,.]*$/);
      }
    }),
  );
  assert.throws(() => formatNumber(NaN, { places: 1 }), /needs a finite number, got NaN/);
  assert.throws(() => toDataValue(Infinity), /needs a finite number/);
});

test('plain decimal parses to exactly the same number, the data value to 10 digits', () => {
  fc.assert(
    fc.property(finite, (value) => {
      assert.equal(Number(plainDecimal(value)), value === 0 ? 0 : value);
      assert.ok(Math.abs(Number(toDataValue(value)) - value) <= Math.abs(value) * 5.1e-10 + 5e-324);
    }),
  );
});

test('a number beside a limit is never printed on the other side', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 50, noNaN: true }), fc.constantFrom(1, 2, 3, 5), fc.nat(3), (value, limit, places) => {
      assert.equal(Math.sign(Number(formatAgainst(value, limit, places)) - limit), Math.sign(value - limit));
    }),
  );
  fc.assert(
    fc.property(fc.nat(100), fc.integer({ min: 1, max: 3000 }), (mites, bees) => {
      const value = (100 * mites) / bees;
      assert.equal(Number(formatAgainst(value, 3, 1).replaceAll(',', '')) >= 3, value >= 3);
    }),
  );
});
