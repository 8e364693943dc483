/*
 * Kinds of values in form fields: how their text is parsed, how a value is written in the box and in the address, and the sentence for an
 * error. A box accepts what people type, and an address only the plain spelling.
 */
import { readAddressNumber, writeAddressNumber } from '../../../shared/address/address-values.ts';
import { plainDecimal } from '../../../shared/numbers/show-number.ts';
import { readTypedCount } from '../../../shared/numbers/typed-count.ts';
import { readTypedNumber } from '../../../shared/numbers/typed-number.ts';
import { ok, err, type Result, type Refused } from '../../../shared/result.ts';
import type { System } from './measures.ts';
import * as words from './text.en.ts';
import { boxNumber, exactly, shownIn, type Measure } from './units.ts';

/** `units` are the units of the form. Kinds without a unit ignore them. */
export type Kind<Value> = {
  readonly read: (typed: string, units: System) => Result<Value, string>;
  readonly readAddress: (text: string) => Result<Value, string>;
  readonly show: (value: Value, units: System) => string;
  /** Undefined omits the name from the address. */
  readonly write: (value: Value) => string | undefined;
  readonly says: (refused: Refused<string>, typed: string, units: System) => string;
  /** What was likely meant, each a text for the box. */
  readonly fixes?: (refused: Refused<string>, typed: string) => readonly string[];
  /** For kinds with a unit: text that parses to exactly this value in any units. */
  readonly exact?: (value: Value) => string;
};

/** A whole number; `what` as in "Write how many bees were in the sample." */
export function count(what: string): Kind<number> {
  return {
    read: readTypedCount,
    readAddress: (text) => {
      const read = readAddressNumber(text);
      return read.ok && !(Number.isInteger(read.value) && read.value >= 0) ? err('not-whole') : read;
    },
    show: plainDecimal,
    write: writeAddressNumber,
    says: (refused, typed) => numberWords(refused, typed, what),
    // A mark in a count can only part thousands.
    fixes: (refused, typed) =>
      numberFixes(refused, typed).filter((fix, at) => readTypedCount(fix).ok && (at === 0 || refused.reason !== 'ambiguous-mark')),
  };
}

/** Any number. `units` are the words allowed after it, in lower case, each with the conversion to the unit of the label. */
export function number(what: string, units: Readonly<Record<string, (value: number) => number>> = {}): Kind<number> {
  const allowed = Object.keys(units);
  return {
    read: (typed) => {
      const read = readTypedNumber(typed, allowed);
      return read.ok ? ok(read.unit === '' ? read.value : held(units[read.unit]!(read.value))) : read;
    },
    readAddress: readAddressNumber,
    show: boxNumber,
    write: writeAddressNumber,
    says: (refused, typed) => numberWords(refused, typed, what),
    fixes: numberFixes,
  };
}

/**
 * A number with a unit. A bare number is in the unit of the label, and the address has a fixed unit. `what` as in "Write what the whole
 * hive weighs, such as 130.", for each system of units.
 */
export function quantity(measure: Measure, what: Readonly<Record<System, string>>): Kind<number> {
  const allowed = Object.keys(measure.typed);
  return {
    read: (typed, units) => {
      const read = readTypedNumber(typed, allowed);
      return read.ok ? ok(read.unit === '' ? measure.boxes[units].toFixed(read.value) : measure.typed[read.unit]!(read.value)) : read;
    },
    readAddress: readAddressNumber,
    show: (value, units) => shownIn(measure, value, units),
    write: writeAddressNumber,
    says: (refused, typed, units) => numberWords(refused, typed, what[units]),
    fixes: numberFixes,
    exact: (value) => exactly(measure, value),
  };
}

/** Plain text, such as the name of a hive. */
export const label: Kind<string> = {
  read: (typed) => ok(typed.trim()),
  readAddress: ok,
  show: (text) => text,
  write: (text) => text,
  says: () => '',
};

/** Plain text that may be empty. */
export function optional<Value>(kind: Kind<Value>): Kind<Value | undefined> {
  const { exact, ...others } = kind;
  return {
    ...others,
    read: (typed, units) => (typed.trim() === '' ? ok(undefined) : kind.read(typed, units)),
    show: (value, units) => (value === undefined ? '' : kind.show(value, units)),
    write: (value) => (value === undefined ? undefined : kind.write(value)),
    ...(exact ? { exact: (value) => (value === undefined ? '' : exact(value)) } : {}),
  };
}

/** The maximum of digits in a box. */
const held = (value: number): number => Number(value.toPrecision(15));

/** What was likely meant by a number that cannot be parsed. A count takes only the whole ones. */
function numberFixes({ reason }: Refused<string>, typed: string): string[] {
  const digits = typed.replace(/[^\d]/g, '');
  const first = /[\d.,]*\d/.exec(typed)?.[0] ?? '';
  switch (reason) {
    case 'ambiguous-mark':
      return [digits, boxNumber(Number(first.replace(',', '.')))];
    case 'thousands-mark':
      return [typed.replace(/[,.'’](?=\d{3}(?!\d))/g, '').replace(/[^\d.,]/g, '')];
    case 'two-numbers':
      return /^\d{1,3}( \d{3})+$/.test(typed) ? [digits] : [first];
    case 'unknown-unit':
      return [first];
    case 'negative':
      return [first];
    default:
      return [];
  }
}

/** The sentence for a number that cannot be parsed. */
export function numberWords({ reason, text }: Refused<string>, typed: string, what: string): string {
  switch (reason) {
    case 'empty':
      return words.write(what);
    case 'ambiguous-mark':
      return words.twoWays(typed, typed.replace(/[.,]/, ''), boxNumber(Number(typed.replace(',', '.').replace(/[^\d.]/g, ''))));
    case 'thousands-mark':
      return words.thousandsMark(typed);
    case 'two-numbers':
      return words.twoNumbers(typed);
    case 'too-many-digits':
      return words.tooManyDigits(typed);
    case 'unknown-unit':
      return words.unknownUnit(text ?? '', what);
    case 'not-whole':
      return words.notWhole(typed, what);
    case 'negative':
      return words.underZero(typed, what);
    default:
      return words.notANumber(typed, what);
  }
}
