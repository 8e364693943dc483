/*
 * Parses a CSV table (RFC 4180) to fields: the names of its columns, and one row per line below them. Semicolons and tabs also separate
 * cells, because spreadsheets of several countries write them. Lines `# name: value` above the columns are fields of the whole table.
 * Cells of digits become numbers, and all others stay text. Every cell keeps its position.
 */
import { CsvError, parse, type CastingFunction } from 'csv-parse/sync';
import type { Diagnostic } from './diagnostic.ts';
import type { Fields } from './fields.ts';

const LINE_END = 10;

/** Quoted cells keep their spaces and line ends. `row` counts as a spreadsheet does. All three count from 1. */
export type Cell = { text: string; line: number; column: number; row: number };

export function readTable(path: string, text: string): { fields: Fields; faults: Diagnostic[] } {
  const { head, names, rows: whole, faults } = readCells(path, text);
  const columns = names.map(({ text: name }) => name.trim().toLowerCase());
  const rows = whole.map((cells) => Object.fromEntries(cells.map((cell, index) => [columns[index]!, valueOf(cell.text)])));
  return {
    fields: {
      value: { ...Object.fromEntries(head.map(({ name, value }) => [name, value])), columns, rows },
      placeOf: (keys) => placeIn(keys, { head, names, columns, whole }),
      placeOfName: (keys) => placeIn(keys, { head, names, columns, whole }),
      cut: [],
    },
    faults,
  };
}

/** The cells as typed: the names of the columns, and every row with the same number of cells. */
export function readCells(path: string, text: string): { head: Head; names: Cell[]; rows: Cell[][]; faults: Diagnostic[] } {
  const faults: Diagnostic[] = [];
  const { head, body, firstLine } = splitHead(text);
  const [names = [], ...lines] = cellsOf(path, body, firstLine, faults);
  const rows = lines.filter((cells) => {
    if (cells.length === names.length) return true;
    faults.push({
      path,
      line: cells[0]!.line,
      column: 1,
      rule: 'table',
      field: 'the row',
      found: `${cells.length} ${cells.length === 1 ? 'cell' : 'cells'} under ${names.length} columns`,
      write: 'a cell for each column, empty where there is none',
    });
    return false;
  });
  return { head, names, rows, faults };
}

type Head = { name: string; value: string; line: number }[];

function splitHead(text: string): { head: Head; body: string; firstLine: number } {
  const lines = text.split('\n');
  const head: Head = [];
  let firstLine = 0;
  while (/^\s*(?:#.*)?$/.test(lines[firstLine] ?? 'x')) {
    const [, name, value] = /^\s*#\s*([\w-]+)\s*:\s*(.*?)[\s,;]*$/.exec(lines[firstLine]!) ?? [];
    if (name) head.push({ name, value: value!, line: firstLine + 1 });
    firstLine += 1;
  }
  return { head, body: lines.slice(firstLine).join('\n'), firstLine: firstLine + 1 };
}

/** Lines of cells. Empty lines are skipped. Where the parser fails at a quote, the text before it is still used. */
function cellsOf(path: string, body: string, firstLine: number, faults: Diagnostic[]): Cell[][] {
  const first = body.slice(0, body.search(/\n|$/));
  const bytes = Buffer.from(body);
  const rows: Cell[][] = [];
  // A cell begins after the separator or line end at which the previous cell ended.
  let [from, line, lineStart, above] = [0, firstLine, 0, firstLine - 1];
  const place = (): { line: number; column: number } => ({ line, column: bytes.subarray(lineStart, from).toString().length + 1 });
  const cell: CastingFunction = (text, { bytes: end }): Cell => {
    const read = { text, ...place(), row: above + 1 };
    for (; from <= end; from += 1) if (bytes[from] === LINE_END) [line, lineStart] = [line + 1, from + 1];
    return read;
  };
  const row = (cells: unknown): null => {
    above += 1;
    if ((cells as Cell[]).some(({ text }) => text !== '')) rows.push(cells as Cell[]);
    return null;
  };
  try {
    const delimiter = ['\t', ';', ','].find((sign) => first.includes(sign)) ?? ',';
    parse(bytes, {
      delimiter,
      record_delimiter: '\n',
      trim: true,
      relax_quotes: true,
      relax_column_count: true,
      cast: cell,
      on_record: row,
    });
  } catch (error) {
    faults.push({ path, ...place(), rule: 'table', field: 'a cell', ...explain(error) });
  }
  return rows;
}

function explain(error: unknown): Pick<Diagnostic, 'found' | 'write'> {
  if (!(error instanceof CsvError)) throw error;
  if (error.code === 'CSV_QUOTE_NOT_CLOSED') return { found: 'a quote that is not closed', write: 'another " at its end' };
  return { found: 'words behind the quote that closes it', write: 'the whole cell in quotes, and each quote inside it twice' };
}

const valueOf = (text: string): string | number => (/^-?\d+(?:\.\d+)?$/.test(text) ? Number(text) : text);

function placeIn(
  [key, index, name]: readonly PropertyKey[],
  { head, names, columns, whole }: { head: Head; names: Cell[]; columns: string[]; whole: Cell[][] },
): { line: number; column: number } {
  const cell =
    key === 'columns'
      ? names[Number(index ?? 0)]
      : key === 'rows' && index !== undefined
        ? whole[Number(index)]?.[Math.max(0, columns.indexOf(String(name)))]
        : undefined;
  if (cell) return { line: cell.line, column: cell.column };
  return { line: head.find((each) => each.name === key)?.line ?? names[0]?.line ?? 1, column: 1 };
}
