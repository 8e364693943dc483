/*
 * What a box may hold: how its text is read, how a value stands in the box and in an address, and the sentence for what
 * cannot be read. A box takes what people type; an address only the plain spelling.
 */
import { readAddressNumber, writeAddressNumber } from '../../../shared/address/address-values.ts';
import { plainDecimal } from '../../../shared/numbers/show-number.ts';
import { readTypedCount } from '../../../shared/numbers/typed-count.ts';
import { readTypedNumber } from '../../../shared/numbers/typed-number.ts';
import { accept, refuse, type Outcome, type Refused } from '../../../shared/outcome.ts';

export type Kind<Value> = {
  readonly read: (typed: string) => Outcome<Value, string>;
  readonly readAddress: (text: string) => Outcome<Value, string>;
  readonly show: (value: Value) => string;
  /** Undefined leaves the name out of the address. */
  readonly write: (value: Value) => string | undefined;
  readonly says: (refused: Refused<string>, typed: string) => string;
};

/** A whole number; `what` as in "Write how many bees were in the sample." */
export function count(what: string): Kind<number> {
  return {
    read: readTypedCount,
    readAddress: (text) => {
      const read = readAddressNumber(text);
      return read.ok && !(Number.isInteger(read.value) && read.value >= 0) ? refuse('not-whole') : read;
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
      return read.ok ? accept(read.unit === '' ? read.value : held(units[read.unit]!(read.value))) : read;
    },
    readAddress: readAddressNumber,
    show: boxNumber,
    write: writeAddressNumber,
    says: (refused, typed) => numberWords(refused, typed, what),
  };
}

/** Words as they are, such as a hive's name. */
export const label: Kind<string> = {
  read: (typed) => accept(typed.trim()),
  readAddress: accept,
  show: (text) => text,
  write: (text) => text,
  says: () => '',
};

/** The same, and it may be empty. */
export function optional<Value>(kind: Kind<Value>): Kind<Value | undefined> {
  return {
    ...kind,
    read: (typed) => (typed.trim() === '' ? accept(undefined) : kind.read(typed)),
    show: (value) => (value === undefined ? '' : kind.show(value)),
    write: (value) => (value === undefined ? undefined : kind.write(value)),
  };
}

/** As many digits as a box takes. */
const held = (value: number): number => Number(value.toPrecision(15));

/** A number that a box reads back as itself: three decimals would be taken for thousands. */
export function boxNumber(value: number): string {
  const plain = plainDecimal(held(value));
  return /^-?[1-9]\d{0,2}\.\d{3}$/.test(plain) ? `${plain}0` : plain;
}

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
