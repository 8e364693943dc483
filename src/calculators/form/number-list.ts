/*
 * Kind for a box of many numbers: one number per line, such as a column pasted from a spreadsheet. Commas separate them in an address. A
 * first line without digits counts as the heading of the column.
 */
import { readAddressNumbers, writeAddressNumbers } from '../../../shared/address/address-values.ts';
import { readTypedList } from '../../../shared/numbers/typed-list.ts';
import { err, type Result } from '../../../shared/result.ts';
import { numberWords, type Kind } from './kind.ts';
import type { System } from './measures.ts';
import * as words from './rows.en.ts';
import { write } from './text.en.ts';
import { exactly, shownIn, type Measure } from './units.ts';

export type NumberList = {
  /** As in "Write the weights, a line each." */
  readonly what: string;
  /** As in "Weight 3". */
  readonly word: string;
  /** What to write in place of an invalid one, such as "a weight in grams". */
  readonly one: Readonly<Record<System, string>>;
  readonly most: number;
  readonly measure: Measure;
};

export function numberList({ what, word, one, most, measure }: NumberList): Kind<readonly number[]> {
  const held = (read: Result<readonly number[], string>): Result<readonly number[], string> =>
    read.ok && read.value.length > most ? err('too-many', { text: String(read.value.length) }) : read;
  return {
    read: (typed, units) =>
      held(readTypedList(withoutHeading(typed), { ...measure.typed, '': measure.boxes[units].toFixed }, decimalMark())),
    readAddress: (text) => held(readAddressNumbers(text)),
    show: (values, units) => values.map((value) => shownIn(measure, value, units)).join('\n'),
    write: writeAddressNumbers,
    exact: (values) => values.map((value) => exactly(measure, value)).join('\n'),
    says: ({ reason, row, text = '' }, _, units) => {
      if (reason === 'empty' && row === undefined) return write(what);
      if (reason === 'too-many') return words.tooManyNumbers(most, text);
      if (reason === 'comma-list') return words.commaList(word, row!, text, decimalMark());
      return words.inRow(word, row!, numberWords({ ok: false, reason, text }, text, one[units]));
    },
  };
}

/** How the club's country writes decimals, which decides what one comma in a list means. */
function decimalMark(): '.' | ',' {
  return (1.5).toLocaleString(document.documentElement.lang).includes(',') ? ',' : '.';
}

function withoutHeading(typed: string): string {
  const [first = '', ...rest] = typed.split('\n');
  return rest.length > 0 && /\p{L}/u.test(first) && !/\d/.test(first) ? rest.join('\n') : typed;
}
