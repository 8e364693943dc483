/*
 * Imports a table of meetings or reading as drafts. The rules of the folder check each row as the entry that it would become, and report
 * at its cell. Fields that the table lacks stay blank in the draft.
 */
import { checkFolder } from '../../checks/check.ts';
import { fieldFaults } from '../../checks/fields.ts';
import { decode } from '../../source/decode.ts';
import { inReadingOrder, type Diagnostic } from '../../source/diagnostic.ts';
import type { Entry, Folder } from '../../source/folder.ts';
import { readCells, type Cell } from '../../source/table.ts';
import { collections } from '../../schemas/collections.ts';
import { timeMeant, valueFrom } from './cells.ts';
import { columnsOf, fieldsOf, NEEDED, WORDS, type Tabled } from './columns.ts';
import { taken, type File } from './draft.ts';
import { nameFor } from './file-name.ts';
import { asEntry, FIRST_OF_WORDS, type Row } from './row-entry.ts';
import { template } from './template.ts';

/** `lacking`: fields that are blank. */
export type Brought = File & { title: string; day: string | undefined; lacking: string[] };

/** Drafts for the rows, or all diagnostics, never both. */
export function bringIn(kind: Tabled, path: string, bytes: Uint8Array, folder: Folder): { files: Brought[]; faults: Diagnostic[] } {
  const refused = unreadable(path, bytes);
  if (refused) return { files: [], faults: [refused] };
  const decoded = decode(path, bytes);
  if (!decoded.ok)
    return { files: [], faults: [{ ...decoded.reason, ...(decoded.reason.found.includes('saved as') ? { write: SAVE } : {}) }] };
  const { names, rows: lines, faults: split } = readCells(path, decoded.value);
  const { fields, faults: unknown } = columnsOf(kind, path, names, lines);
  if (split.length + unknown.length > 0) return { files: [], faults: inReadingOrder([...split, ...unknown]) };
  if (lines.length === 0)
    return {
      files: [],
      faults: [
        {
          path,
          line: 1,
          column: 1,
          rule: 'table',
          field: 'the file',
          found: 'no rows below the names of the columns',
          write: 'a row for each entry',
        },
      ],
    };
  const rows = lines.map((cells) => rowOf(kind, cells, names, fields));
  const files = rows.map((row) => fileOf(kind, row));
  const faults = [
    ...rows.flatMap((row) => blankFaults(kind, path, row)),
    ...ruleFaults(kind, path, rows, folder),
    ...placeFaults(kind, path, rows, files, folder),
  ];
  return faults.length > 0 ? { files: [], faults: inReadingOrder(faults) } : { files: files.flatMap((file) => file ?? []), faults };
}

const SAVE = 'it again, saved from the spreadsheet as CSV with the encoding UTF-8';

/** A spreadsheet's own file: a zip archive, or the older compound file. */
function unreadable(path: string, bytes: Uint8Array): Diagnostic | null {
  const head = [...bytes.subarray(0, 4)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return head === '504b0304' || head === 'd0cf11e0'
    ? { path, line: 1, column: 1, rule: 'encoding', field: 'the file', found: 'a spreadsheet, not a table of commas', write: SAVE }
    : null;
}

function rowOf(kind: Tabled, cells: readonly Cell[], names: readonly Cell[], fields: readonly (string | null)[]): Row {
  const row: Row = { given: {}, cells: new Map(), name: (field) => names[fields.indexOf(field)]!.text.trim(), first: cells[0]! };
  for (const [index, field] of fields.entries()) {
    if (field === null) continue;
    const cell = cells[index]!;
    const value = field === WORDS && kind === 'meetings' ? cell.text.trim() || undefined : valueFrom(cell.text, fieldsOf(kind)[field]!);
    row.cells.set(field, cell);
    if (value !== undefined) row.given[field] = value;
  }
  return row;
}

function fileOf(kind: Tabled, { given }: Row): Brought | null {
  const { [WORDS]: words, ...fields } = given;
  const title = String(given.title ?? '');
  const day = typeof given.day === 'string' ? given.day : undefined;
  const name = nameFor(title);
  if (name === null) return null;
  const draft = given.draft === false ? {} : { draft: true };
  const lacking = Object.entries(fieldsOf(kind)).flatMap(([field, schema]) => (schema.isOptional() || field in given ? [] : [field]));
  const { draft: _, ...rest } = fields;
  return {
    path: `${kind}/${kind === 'meetings' ? `${day}-${name}` : name}${collections[kind].ending}`,
    text: template(kind, { ...rest, ...draft }, typeof words === 'string' ? `${words}\n` : undefined),
    title,
    day,
    lacking,
  };
}

const faultAt = (path: string, row: Row, field: string, message: Pick<Diagnostic, 'rule' | 'found' | 'write'>): Diagnostic => {
  const { line, column, row: number } = row.cells.get(field) ?? row.first;
  return { path, line, column, field: `row ${number}, ${row.name(field)}`, ...message };
};

function blankFaults(kind: Tabled, path: string, row: Row): Diagnostic[] {
  return NEEDED[kind]
    .filter((field) => !(field in row.given))
    .map((field) =>
      faultAt(path, row, field, {
        rule: 'field',
        found: 'a blank',
        write: field === 'day' ? 'a day such as 2026-04-18' : 'the title, or take the row out',
      }),
    );
}

/** No row may become an existing file, or the same file as another row. */
function placeFaults(kind: Tabled, path: string, rows: readonly Row[], files: readonly (Brought | null)[], folder: Folder): Diagnostic[] {
  return rows.flatMap((row, index): Diagnostic[] => {
    const file = files[index];
    if (row.given.title === undefined) return [];
    if (!file)
      return [
        faultAt(path, row, 'title', {
          rule: 'file-name',
          found: `"${String(row.given.title)}", which has no letter for a file's name`,
          write: 'a title with some of a to z or 0 to 9',
        }),
      ];
    const what = kind === 'meetings' ? 'day and title' : 'title';
    const first = files.findIndex((other) => other?.path === file.path);
    if (first < index)
      return [
        faultAt(path, row, 'title', {
          rule: 'same-name',
          found: `the ${what} of row ${rows[first]!.first.row} again`,
          write: `another ${what}, or take the row out`,
        }),
      ];
    const there = taken(folder.directory, file.path);
    return there === undefined
      ? []
      : [
          faultAt(path, row, 'title', {
            rule: 'same-name',
            found: `what ${there} holds already`,
            write: `another ${what}, or take the row out`,
          }),
        ];
  });
}

/** Rules that compare cells of a row, with their cells. They are skipped while one of these is wrong. */
const BETWEEN: Readonly<Record<string, readonly string[]>> = {
  meeting: ['day', 'last-day', 'start', 'finish', 'weekday'],
  review: ['checked', 'next-check', 'by', 'history', 'day', 'last-day'],
  work: ['yard', 'work'],
};

/** The rules of the whole folder, with the rows among its entries. */
function ruleFaults(kind: Tabled, path: string, rows: readonly Row[], folder: Folder): Diagnostic[] {
  const unread: Diagnostic[] = [];
  const named = (row: Row, index: number): Entry => asEntry(kind, `${path}\n${index}`, row, unread);
  const alone = fieldFaults({ ...folder, club: null, entries: rows.map(named) });
  // A mistake in one cell does not hide mistakes in its neighbours.
  const mended = rows.map((row, index) => ({
    ...row,
    given: Object.fromEntries(
      Object.entries(row.given).filter(
        ([field]) => !alone.some((fault) => fault.path === `${path}\n${index}` && fault.field.split(/[ ,]/)[0] === field),
      ),
    ),
  }));
  unread.length = 0;
  const whole = checkFolder({ ...folder, entries: [...folder.entries, ...mended.map(named)] });
  const isHalf = (index: number, compared: readonly string[]): boolean =>
    compared.some(
      (field) => !(field in mended[index]!.given) && (field in rows[index]!.given || NEEDED[kind].some((each) => each === field)),
    );
  const ofRows = (fault: Diagnostic): boolean => fault.path.startsWith(`${path}\n`) && fault.line > 0;
  const found = [
    ...alone,
    ...unread,
    ...whole.filter((fault) => ofRows(fault) && !isHalf(Number(fault.path.split('\n')[1]), BETWEEN[fault.rule] ?? [])),
  ];
  return found.filter(ofRows).map((fault) => {
    const row = rows[Number(fault.path.split('\n')[1])]!;
    const below = fault.line - FIRST_OF_WORDS;
    const field =
      below < 0
        ? [...row.cells.keys()].find((each) => row.cells.get(each)!.line === fault.line && row.cells.get(each)!.column === fault.column)!
        : WORDS;
    const { rule, found: typed, write } = fault;
    const at = faultAt(path, row, field, { rule, found: typed, write: writeIn(field, row, write) });
    return below > 0 ? { ...at, line: at.line + below, column: fault.column } : at;
  });
}

/** Cells have no quotes, and a 12-hour time gets a message with the 24-hour form. */
function writeIn(field: string, row: Row, write: string): string {
  const time = field === 'start' || field === 'finish' ? timeMeant(row.cells.get(field)!.text) : null;
  if (time !== null && /^a time/.test(write)) return `a time of 24 hours, here "${time}"`;
  return write
    .replace(' in quotes or plain', '')
    .replace(/,? in quotes\b/, '')
    .replace(', without quotes or a unit', '')
    .replace('true or false, without quotes', 'yes or no')
    .replace(/^a list: .*$/, 'its parts with ; between them');
}
