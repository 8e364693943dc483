/*
 * What a box may hold: how its text is read, how a value stands in the box and in an address, and the sentence for what
 * cannot be read. A box takes what people type; an address only the plain spelling.
 */
import { readAddressNumber, writeAddressNumber } from '../../../shared/address/address-values.ts';
import { plainDecimal } from '../../../shared/numbers/show-number.ts';
import { readTypedCount } from '../../../shared/numbers/typed-count.ts';
import { readTypedNumber } from '../../../shared/numbers/typed-number.ts';
import { ok, err, type Result, type Refused } from '../../../shared/result.ts';
import type { System } from './measures.ts';
import { boxNumber, exactly, shownIn, type Measure } from './units.ts';

/** `units` are those the form is in; kinds without a unit pass them over. */
export type Kind<Value> = {
  readonly read: (typed: string, units: System) => Result<Value, string>;
  readonly readAddress: (text: string) => Result<Value, string>;
  readonly show: (value: Value, units: System) => string;
  /** Undefined leaves the name out of the address. */
  readonly write: (value: Value) => string | undefined;
  readonly says: (refused: Refused<string>, typed: string, units: System) => string;
  /** Of what has a unit: a text that is read as this very value in any units. */
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
  };
}

/** Any number. `units` are words that may stand behind it, in lower case, each with the sum to the unit of the label. */
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
  };
}

/**
 * A number with a unit. Without a word behind it, it is in the unit of the box's label; the address has the fixed one.
 * `what` as in "Write what the whole hive weighs, such as 130.", by the units that the form is in.
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
    exact: (value) => exactly(measure, value),
  };
}

/** Words as they are, such as a hive's name. */
export const label: Kind<string> = {
  read: (typed) => ok(typed.trim()),
  readAddress: ok,
  show: (text) => text,
  write: (text) => text,
  says: () => '',
};

/** The same, and it may be empty. */
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

/** As many digits as a box takes. */
const held = (value: number): number => Number(value.toPrecision(15));

/** The sentence for a number that cannot be read. */
export function numberWords({ reason, text }: Refused<string>, typed: string, what: string): string {
  const found = `“${typed}”`;
  switch (reason) {
    case 'empty':
      return `Write ${what}.`;
    case 'ambiguous-mark':
      return `${found} can be read two ways. Write ${typed.replace(/[.,]/, '')}, or ${boxNumber(Number(typed.replace(',', '.').replace(/[^\d.]/g, '')))}.`;
    case 'thousands-mark':
      return `Write ${found} without marks between the thousands.`;
    case 'two-numbers':
      return `${found} is more than one number. Write one.`;
    case 'too-many-digits':
      return `${found} has too many digits.`;
    case 'unknown-unit':
      return `“${text}” cannot be read here. Write ${what}, as a number alone.`;
    case 'not-whole':
      return `${found} is not a whole number. Write ${what}.`;
    case 'negative':
      return `${found} is under 0. Write ${what}.`;
    default:
      return `${found} is not a number. Write ${what}.`;
  }
}
