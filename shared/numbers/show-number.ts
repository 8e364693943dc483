/**
 * Formats a number for print. Numbers are rounded here and nowhere earlier. The marks of thousands and decimals are those of the club's
 * country (Unicode CLDR: 12,345.6 or 12.345,6); there is no exponent and no `-0`. `toDataValue` is for machines: plain decimal, up to 10
 * significant digits, no thousands mark. It rounds the floating-point number, halves away from 0.
 */
import { languageHere } from '../country/language-here.ts';

export type Rounding = { readonly places: number } | { readonly digits: number };

export function formatNumber(value: number, rounding: Rounding): string {
  return withThousands(round(value, rounding));
}

/**
 * A number next to its limit. It gets more decimals where rounding would carry it to the limit or past it, so that 2.996 below a limit of
 * 3 is never printed as 3.00.
 */
export function formatAgainst(value: number, limit: number, places: number): string {
  for (let more = places; more < places + 9; more += 1) {
    const shown = Number(round(value, { places: more }));
    if (Math.sign(shown - limit) === Math.sign(value - limit)) return formatNumber(value, { places: more });
  }
  return withThousands(plainDecimal(value));
}

export function toDataValue(value: number): string {
  return plainDecimal(Number(finite(value).toPrecision(10)));
}

/** The shortest text that parses to the same number, without an exponent. */
export function plainDecimal(value: number): string {
  const [, sign = '', first = '', rest = '', power] = /^(-?)(\d+)(?:\.(\d+))?(?:e([+-]\d+))?$/.exec(String(finite(value))) ?? [];
  if (power === undefined) return value === 0 ? '0' : String(value);
  const digits = first + rest;
  const point = first.length + Number(power);
  if (point <= 0) return `${sign}0.${'0'.repeat(-point)}${digits}`;
  return sign + digits.padEnd(point, '0');
}

function round(value: number, rounding: Rounding): string {
  const plain = 'places' in rounding ? fixed(value, rounding.places) : significant(value, rounding.digits);
  return Number(plain) === 0 ? plain.replace('-', '') : plain;
}

function fixed(value: number, places: number): string {
  return Math.abs(finite(value)) < 1e21 && places <= 100 ? value.toFixed(places) : plainDecimal(value);
}

function significant(value: number, digits: number): string {
  if (finite(value) === 0) return '0';
  const rounded = Number(value.toPrecision(digits));
  const size = Math.floor(Math.log10(Math.abs(rounded)) + 1e-12);
  return fixed(rounded, Math.max(0, digits - 1 - size));
}

function withThousands(plain: string): string {
  const [whole = '', decimals] = plain.split('.');
  const { thousands, decimal } = marksOf(languageHere());
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, thousands);
  return decimals === undefined ? grouped : grouped + decimal + decimals;
}

/** South Africa's clubs write the point, which most of them use in English. */
function marksOf(language: string): { thousands: string; decimal: string } {
  if (language.startsWith('en')) return { thousands: ',', decimal: '.' };
  const parts = new Intl.NumberFormat(language).formatToParts(12_345.6);
  const mark = (type: string): string => parts.find((part) => part.type === type)!.value;
  return { thousands: mark('group'), decimal: mark('decimal') };
}

function finite(value: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`formatNumber: needs a finite number, got ${value}`);
  return value;
}

/** The shortest text of exactly that number, with the marks of the club's country. */
export const exactNumber = (value: number): string => withThousands(plainDecimal(value));

/** A number in plain digits, as a machine or a box has it, with the decimal mark of the club's country. */
export const withMarkHere = (plain: string): string => plain.replace('.', marksOf(languageHere()).decimal);

/** A shown number without the zeros at the end of its decimals. */
export const withoutZeros = (shown: string): string => {
  const { decimal } = marksOf(languageHere());
  return shown.includes(decimal) ? shown.replace(new RegExp(`\\${decimal}?0+$`), '') : shown;
};

/** A number with all its digits, as the country writes it: 29.5 or 29,5. */
export const formatExact = (value: number): string => withoutZeros(formatNumber(value, { digits: 10 }));
