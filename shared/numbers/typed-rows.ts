/**
 * Parses pasted rows: one per line, with a name or without, and a fixed count of numbers at the end. A tab, `;`, a comma or blanks separate
 * the columns, mixed too. Numbers stay text for the parsers of single values. Where numbers may have decimals, blanks come before commas,
 * so that `10 1,36` is 10 and 1,36. Blank lines and a heading are skipped. `row` of an error is the line as the reader counts it.
 */
import { ok, err, type Result } from '../result.ts';

export type TypedRowsReason = 'empty' | 'wrong-fields';
export type TypedRow = { readonly label: string; readonly numbers: readonly string[] };

export type RowShape = {
  readonly numbers: number;
  /** The fewest numbers in a row that has a name. */
  readonly least?: number;
  /** Numbers are whole, so a comma always separates. */
  readonly whole: boolean;
  /** A name may be a number too, such as that of a hive. Otherwise one number too many makes the row wrong. */
  readonly numberedNames: boolean;
};

const WHOLE = [/\t/, /;/, /,/, / +/, /[\s;,:/|]+/];
const DECIMAL = [/\t/, /;/, /\s*[x×/]\s*/, /\s+/, /[\s/x×:]+/, /,/, /[\s;,/x×:]+/];

export function readTypedRows(text: string, shape: RowShape): Result<readonly TypedRow[], TypedRowsReason> {
  const lines = text
    .split(/\r\n|\n|\r/u)
    .map((line, at) => ({ line: line.replace(/[\t ;,]+$/u, ''), row: at + 1 }))
    .filter(({ line }) => line.trim() !== '');
  if (lines.length > 1 && isHeading(lines[0]!.line, shape)) lines.shift();
  if (lines.length === 0) return err('empty');
  const rows: TypedRow[] = [];
  for (const { line, row } of lines) {
    const read = readRow(line, shape);
    if (!read) return err('wrong-fields', { row, text: line.trim() });
    rows.push(read);
  }
  return ok(rows);
}

/** A heading has no column that is a number. It may hold digits elsewhere, as in "Bees (about 300)". */
const isHeading = (line: string, shape: RowShape): boolean =>
  !/\d/u.test(line) ||
  (!numbersOf(line, shape) && !/^\s*\d/u.test(line) && ![/\t/, /;/, /,/, / +/].some((split) => cellsOf(line, split).some(isNumber)));

const cellsOf = (line: string, split: RegExp): string[] => line.split(split).map((cell) => cell.trim());

function readRow(line: string, shape: RowShape): TypedRow | undefined {
  // As many columns as asked, one of them wrong: its own box says what is wrong with it.
  const cells = [/\t/, /;/, /,/]
    .map((split) => cellsOf(line, split))
    .find(({ length }) => length === shape.numbers || length === shape.numbers + 1);
  return numbersOf(line, shape) ?? (cells && { label: cells.slice(0, -shape.numbers).join(), numbers: cells.slice(-shape.numbers) });
}

function numbersOf(line: string, { numbers, least = numbers, whole, numberedNames }: RowShape): TypedRow | undefined {
  // "3 lb" is one cell among blanks too.
  const tidy = whole ? line : line.replace(/(\d)\s+(?=(?:lbs?|kg|oz|g)\b)/giu, '$1');
  const all = (whole ? WHOLE : DECIMAL).map((split) => cellsOf(tidy, split));
  for (let count = numbers; count >= least; count -= 1) {
    for (const cells of all) {
      const [names, values] = [cells.slice(0, -count), cells.slice(-count)];
      const isName = numberedNames ? count === numbers || !isNumber(names[0] ?? '') : names.every((name) => !isNumber(name));
      // A row with a number missing has one name before it, so that a wrong number is never part of a name.
      const isEnough = count === numbers || (names.length === 1 && names[0] !== '');
      if (values.length === count && values.every(isNumber) && isName && isEnough)
        return { label: names.join(' ').replace(/[\s;,:]+$/u, ''), numbers: values };
    }
  }
  return undefined;
}

/** With a unit behind it or without. */
const isNumber = (cell: string): boolean => /^[-+−]?[\d.,'’\u00a0\u202f]*[\d½¼¾⅓⅔] ?\p{L}{0,3}\.?$/u.test(cell);
