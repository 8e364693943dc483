/*
 * Row of a table as the entry that it would become. Examples fill the fields that the table lacks, so that every rule can check the
 * others.
 */
import type { Diagnostic } from '../../source/diagnostic.ts';
import { readText, type Entry } from '../../source/folder.ts';
import type { Cell } from '../../source/table.ts';
import { fieldsOf, WORDS, type Tabled } from './columns.ts';
import { exampleOf } from './field-lines.ts';
import { nameFor } from './file-name.ts';

/** `given`: the values by field. `cells`: the position of each. `name`: the name above its column. */
export type Row = { given: Record<string, unknown>; cells: Map<string, Cell>; name: (field: string) => string; first: Cell };

/** Placeholder for a cell that the table does not have. */
const NOWHERE = { line: 0, column: 0 };

/** The words begin on this line, so that diagnostics in them are distinct from those in cells. */
export const FIRST_OF_WORDS = 1_000_000;

/** Diagnostics in filled-in examples are on line 0. A tag that cannot be parsed is added to `faults`. */
export function asEntry(kind: Tabled, path: string, row: Row, faults: Diagnostic[]): Entry {
  const { [WORDS]: words, ...given } = row.given;
  const stand = Object.entries(fieldsOf(kind)).flatMap(([field, schema]) =>
    schema.isOptional() || field in given ? [] : [[field, exampleOf(schema)] as const],
  );
  const placeOf = ([field]: readonly PropertyKey[]): { line: number; column: number } =>
    (String(field) in row.given && row.cells.get(String(field))) || NOWHERE;
  return {
    collection: kind,
    id: nameFor(String(given.title ?? '')) ?? 'row',
    path,
    text: '',
    ...page(path, typeof words === 'string' ? words : '', faults),
    fields: { value: { draft: true, ...Object.fromEntries(stand), ...given }, placeOf, placeOfName: placeOf, cut: [] },
  };
}

const EMPTY = '---\n\n---\n';

function page(path: string, words: string, faults: Diagnostic[]): Pick<Entry, 'body' | 'bodyLine' | 'tree'> {
  const unread: Diagnostic[] = [];
  const read = words === '' ? null : readText(`${path}.mdx`, 'meetings', 'row', EMPTY + words, unread);
  faults.push(...unread.map((fault) => ({ ...fault, path, line: FIRST_OF_WORDS + fault.line - read!.bodyLine })));
  return { body: words, bodyLine: FIRST_OF_WORDS, tree: read?.tree ?? null };
}
