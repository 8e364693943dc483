/* Maps the columns of a table to fields: by the field's own name, or by a plain word for it. */
import { nearName } from '../../../shared/words/near-name.ts';
import type { Diagnostic } from '../../source/diagnostic.ts';
import type { Cell } from '../../source/table.ts';
import { collections } from '../../schemas/collections.ts';
import { inner, type Shaped } from './field-lines.ts';

/** Kinds that a table may import. */
export const TABLED = ['meetings', 'reading'] as const;
export type Tabled = (typeof TABLED)[number];

/** The words below the fields of a page, which are no field. */
export const WORDS = 'words';

const PLAIN: Record<Tabled, Record<string, string>> = {
  meetings: {
    date: 'day',
    subject: 'title',
    topic: 'title',
    meeting: 'title',
    event: 'title',
    about: 'summary',
    description: 'summary',
    'end-date': 'last-day',
    'last-date': 'last-day',
    time: 'start',
    'start-time': 'start',
    begins: 'start',
    from: 'start',
    end: 'finish',
    ends: 'finish',
    'end-time': 'finish',
    'finish-time': 'finish',
    until: 'finish',
    to: 'finish',
    'day-of-the-week': 'weekday',
    where: 'place',
    hall: 'place',
    venue: 'place',
    location: 'place',
    type: 'kind',
    'what-to-bring': 'bring',
    'whom-to-ask': 'ask',
    contact: 'ask',
    reading: 'reads',
    'street-address': 'address',
    checklists: 'lists',
    cancelled: 'called-off',
    canceled: 'called-off',
    learned: 'taught',
    text: WORDS,
    notes: WORDS,
    'checked-by': 'by',
  },
  reading: {
    name: 'title',
    book: 'title',
    writer: 'author',
    authors: 'author',
    published: 'year',
    type: 'kind',
    for: 'level',
    'for-whom': 'level',
    notes: 'worth',
    comment: 'worth',
    'good-for': 'worth',
    library: 'lends',
    'lent-by': 'lends',
    subject: 'subjects',
    topics: 'subjects',
    'isbn-13': 'isbn',
    'checked-by': 'by',
  },
};

/** Columns without which a row is no entry. */
export const NEEDED: Record<Tabled, readonly string[]> = { meetings: ['title', 'day'], reading: ['title'] };

export const fieldsOf = (kind: Tabled): Record<string, Shaped> => (collections[kind].schema as unknown as Shaped).shape!;

/** The field of each column in order, or null for an empty one. */
export function columnsOf(
  kind: Tabled,
  path: string,
  names: readonly Cell[],
  rows: readonly Cell[][],
): { fields: (string | null)[]; faults: Diagnostic[] } {
  // In a list of books "for" is the reader it is meant for; of the almanac's own field the file itself is the place.
  const known = [
    ...Object.entries(fieldsOf(kind)).flatMap(([name, field]) => (inner(field).element?.shape || name === 'for' ? [] : [name])),
    ...(kind === 'meetings' ? [WORDS] : []),
  ];
  const faults: Diagnostic[] = [];
  const seen = new Map<string, string>();
  const fields = names.map((cell, index) => {
    const at = (found: string, write: string): null => (
      faults.push({ path, line: cell.line, column: cell.column, rule: 'column', field: `column ${index + 1}`, found, write }),
      null
    );
    const typed = cell.text.trim();
    if (typed === '')
      return rows.some((row) => row[index]!.text !== '') ? at('cells under no name', 'a name above them, or take the column out') : null;
    const name = typed
      .toLowerCase()
      .replace(/[\s_]+/g, '-')
      .replace(/[:*?.]+$/, '');
    // In a list of books "by" is the author, and in the almanac the person who checked.
    const field = kind === 'reading' && name === 'by' ? undefined : known.includes(name) ? name : PLAIN[kind][name];
    if (field === undefined)
      return at(
        `"${typed}"`,
        kind === 'reading' && name === 'by'
          ? '"author" for who wrote it, or "checked by" for the duty that checked it'
          : nearColumn(kind, name, known),
      );
    const other = seen.get(field);
    seen.set(field, typed);
    return other === undefined ? field : at(`"${typed}" beside "${other}", which mean the same`, 'one of them');
  });
  const lacking = faults.length > 0 ? [] : NEEDED[kind].filter((field) => !seen.has(field));
  return {
    fields,
    faults: [
      ...faults,
      ...lacking.map((field) => ({
        path,
        line: 1,
        column: 1,
        rule: 'column',
        field: 'the first row',
        found: `no column "${field}"`,
        write: `the names of the columns, such as ${NEEDED[kind].join(',')},${kind === 'meetings' ? 'start,finish,place' : 'author,year'}`,
      })),
    ],
  };
}

function nearColumn(kind: Tabled, name: string, known: readonly string[]): string {
  const near = nearName(name, [...known, ...Object.keys(PLAIN[kind])]);
  return near === null ? `one of: ${known.join(', ')}; or take the column out` : `"${near}"`;
}
