/*
 * A table of commas (CSV, RFC 4180) as fields: the names of its columns, and a row for each line below them. Semicolons or
 * tabs part cells as well as commas do, as spreadsheets of several lands write them. Lines `# name: value` above the columns
 * are fields of the whole table. Cells of digits are numbers; everything else stays text. Every cell keeps its place.
 */
import type { Fault } from './fault.ts';
import type { Fields } from './fields.ts';

type Cell = { text: string; line: number; column: number };

export function readTable(path: string, text: string): { fields: Fields; faults: Fault[] } {
  const faults: Fault[] = [];
  const { head, body, firstLine } = splitHead(text);
  const [names = [], ...lines] = cellsOf(path, body, firstLine, faults);
  const columns = names.map(({ text: name }) => name.trim().toLowerCase());
  const whole = lines.filter((cells) => {
    if (cells.length === names.length) return true;
    faults.push({ path, line: cells[0]!.line, column: 1, rule: 'table', field: 'the row', found: `${cells.length} ${cells.length === 1 ? 'cell' : 'cells'} under ${names.length} columns`, write: 'a cell for each column, empty where there is none' });
    return false;
  });
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

/** Lines of cells; empty lines are passed over. */
function cellsOf(path: string, body: string, firstLine: number, faults: Fault[]): Cell[][] {
  const first = body.slice(0, body.search(/\n|$/));
  const parting = ['\t', ';', ','].find((sign) => first.includes(sign)) ?? ',';
  const rows: Cell[][] = [];
  let [cells, from, line, lineStart] = [[] as Cell[], 0, firstLine, 0];
  const place = (): { line: number; column: number } => ({ line, column: from - lineStart + 1 });
  while (from <= body.length) {
    const quoted = body[from] === '"';
    const close = quoted ? closingQuote(body, from) : -1;
    if (quoted && close < 0) {
      faults.push({ path, ...place(), rule: 'table', field: 'a cell', found: 'a quote that is not closed', write: 'another " at its end' });
      return rows;
    }
    const end = endOfCell(body, quoted ? close + 1 : from, parting);
    cells.push({ text: quoted ? body.slice(from + 1, close).replaceAll('""', '"') : body.slice(from, end).trim(), ...place() });
    const within = body.slice(from, end).split('\n').length - 1;
    if (body[end] === parting) {
      from = end + 1;
      line += within;
      continue;
    }
    if (cells.some(({ text }) => text !== '')) rows.push(cells);
    [cells, from, line, lineStart] = [[], end + 1, line + within + 1, end + 1];
  }
  return rows;
}

function closingQuote(body: string, open: number): number {
  for (let at = open + 1; at < body.length; at += 1) {
    if (body[at] !== '"') continue;
    if (body[at + 1] !== '"') return at;
    at += 1;
  }
  return -1;
}

function endOfCell(body: string, from: number, parting: string): number {
  let end = from;
  while (end < body.length && body[end] !== parting && body[end] !== '\n') end += 1;
  return end;
}

const valueOf = (text: string): string | number => (/^-?\d+(?:\.\d+)?$/.test(text) ? Number(text) : text);

function placeIn([key, index, name]: readonly PropertyKey[], { head, names, columns, whole }: { head: Head; names: Cell[]; columns: string[]; whole: Cell[][] }): { line: number; column: number } {
  const cell = key === 'columns' ? names[Number(index ?? 0)] : key === 'rows' && index !== undefined ? whole[Number(index)]?.[Math.max(0, columns.indexOf(String(name)))] : undefined;
  if (cell) return { line: cell.line, column: cell.column };
  return { line: head.find((each) => each.name === key)?.line ?? names[0]?.line ?? 1, column: 1 };
}
