/*
 * Checks a club against its books. Each book exists, each change finds its entry, each stand-in has a duty, and a real club
 * publishes nothing invented. The rules for where a book's pages hold are in checks/holding.
 */
import { basename } from 'node:path';
import type { Club } from '../schemas/club.ts';
import { collectionNames, collections, type Collection } from '../schemas/collections.ts';
import { booksFolder } from '../source/books-folder.ts';
import { booksIn } from '../source/books.ts';
import type { Diagnostic } from '../source/diagnostic.ts';
import type { Entry, Folder } from '../source/folder.ts';
import { nameOf } from '../source/layers.ts';
import { takenPath, takenText } from '../source/taken.ts';
import { kindOfOverlay } from '../source/overlay.ts';
import { fieldName } from './fields.ts';
import { nearName, nearOrAll } from '../../shared/words/near-name.ts';
import { atField, isDraft } from './place.ts';

export function bookFaults(folder: Folder): Diagnostic[] {
  const { club } = folder;
  return [
    ...idFaults(folder),
    ...(club
      ? [
          ...namedFaults(club),
          ...leftOutFaults(folder, club),
          ...standInFaults(club),
          ...inspectorFaults(folder, club),
          ...inventedFaults(folder, club),
        ]
      : []),
    ...folder.overNothing.map((entry) => nothingBelow(entry, folder)),
    ...renamedFaults(folder),
    ...claimFaults(folder),
    ...(folder.book ? neverFaults(folder) : []),
  ];
}

const faultIn = (entry: Entry, path: PropertyKey[], found: string, write: string): Diagnostic =>
  atField(entry, path, { rule: 'book', field: fieldName(path), found, write });

const fieldOf = (entry: Entry, name: string): unknown => (entry.fields.value as Record<string, unknown> | null | undefined)?.[name];

const listIn = (entry: Entry, name: keyof Club): unknown[] => {
  const value = fieldOf(entry, name);
  return Array.isArray(value) ? (value as unknown[]) : [];
};

/** The id of a book is the name of its folder. */
function idFaults({ directory, book, books }: Folder): Diagnostic[] {
  const read = [...books.map(({ id, entry }) => ({ name: id, entry })), { name: basename(directory), entry: book }];
  return read.flatMap(({ name, entry }) => {
    const id = entry && fieldOf(entry, 'id');
    if (!entry || typeof id !== 'string' || id === name) return [];
    const isTwin = booksIn(booksFolder()).some((each) => each.id === id);
    return [
      faultIn(entry, ['id'], isTwin ? `"${id}", which books/${id} has too` : `"${id}", while its folder is called "${name}"`, `"${name}"`),
    ];
  });
}

/** `books:` names existing books, each once, and needs `land:` beside it. */
function namedFaults(club: Entry): Diagnostic[] {
  const named = listIn(club, 'books');
  const known = booksIn(booksFolder()).map(({ id }) => id);
  const faults = named.flatMap((id, index) => {
    if (typeof id !== 'string') return [];
    if (named.indexOf(id) !== index) return [faultIn(club, ['books', index], `"${id}" twice`, 'it once')];
    if (known.includes(id)) return [];
    return [faultIn(club, ['books', index], `"${id}", a book that does not exist`, nearOrAll(id, known))];
  });
  if (fieldOf(club, 'books') !== undefined && fieldOf(club, 'land') === undefined)
    faults.push(
      faultIn(
        club,
        ['books'],
        'books without "land:"',
        'a line "land:" with a code of ISO 3166, such as NZ or US-OH: it says what of them holds here',
      ),
    );
  return faults;
}

/** Only an entry of a book can be left out, and never a caution. */
function leftOutFaults({ books, files }: Folder, club: Entry): Diagnostic[] {
  const names = new Set(books.flatMap(({ entries }) => entries.map(nameOf)));
  return listIn(club, 'leaves-out').flatMap((name, index) => {
    const at = (found: string, write: string): Diagnostic[] => [faultIn(club, ['leaves-out', index], found, write)];
    if (typeof name !== 'string') return [];
    if (books.length > 0 && /^cautions(?:\/|$)/.test(name))
      return at(`"${name}", which the pages of the books need`, 'nothing; to change a caution, write your own under the same name');
    if (!name.includes('/') || names.has(name)) return [];
    const [collection, id] = name.split('/') as [Collection, string];
    const own = `${name}${collections[collection]?.ending ?? ''}`;
    if (files.includes(own)) return at(`"${name}", a file of the club's own`, `nothing, or take ${own} away`);
    const near = nearName(
      id,
      [...names].flatMap((each) => (each.startsWith(`${collection}/`) ? [each.slice(collection.length + 1)] : [])),
    );
    return at(`"${name}", which is in no book of this club`, near ? `"${collection}/${near}"` : 'the name of an entry of a book');
  });
}

const dutiesOf = (club: Entry): string[] =>
  listIn(club, 'contacts').flatMap((contact) => String((contact as { duty?: unknown } | null)?.duty ?? ''));

/** A sentence without its contact is left out. Those on foulbrood must stay, so a club with books needs an inspector. */
function inspectorFaults({ books }: Folder, club: Entry): Diagnostic[] {
  const standIns = fieldOf(club, 'stands-in');
  const stands = typeof standIns === 'object' && standIns !== null && 'inspector' in standIns;
  if (books.length === 0 || stands || dutiesOf(club).includes('inspector')) return [];
  return [
    faultIn(
      club,
      ['contacts'],
      'no contact with the duty "inspector"',
      'one: the pages on notifiable diseases tell members to call that office',
    ),
  ];
}

function standInFaults(club: Entry): Diagnostic[] {
  const held = fieldOf(club, 'stands-in');
  if (typeof held !== 'object' || held === null) return [];
  const duties = dutiesOf(club);
  return Object.entries(held as Record<string, unknown>).flatMap(([duty, other]) => {
    if (duties.includes(duty))
      return [faultIn(club, ['stands-in', duty], `"${duty}", a duty that a contact has`, 'nothing, or a duty that nobody has')];
    if (typeof other !== 'string' || duties.includes(other)) return [];
    return [faultIn(club, ['stands-in', duty], `"${other}", a duty that no contact in club.yaml has`, nearOrAll(other, duties))];
  });
}

/** Reports a file that changes an entry of a book, where no book has that entry. */
function nothingBelow(entry: Entry, folder: Folder): Diagnostic {
  const name = nameOf(entry);
  const ending = entry.path.slice(entry.path.indexOf('.'));
  const renamed = renamedTo(name, folder);
  const near = nearName(
    name.split('/')[1]!,
    folder.entries.flatMap((each) => (each.collection === entry.collection ? [each.id] : [])),
  );
  const what = { addition: 'words added to', choice: 'a choice of rows of', withdrawal: 'the withdrawal of' }[kindOfOverlay(entry)!];
  return {
    path: entry.path,
    line: 1,
    column: 1,
    rule: 'book',
    field: 'the file',
    found: `${what} ${name}, which ${renamed ? `is called ${renamed} now` : 'no book of this club has'}`,
    write: renamed
      ? `the file as ${renamed}${ending}`
      : near
        ? `the file as ${entry.collection}/${near}${ending}, if that is meant`
        : 'a whole entry, or take the file away',
  };
}

/** Reports an entry that the club took from a book and that the book has renamed. Both would be shown. */
function renamedFaults(folder: Folder): Diagnostic[] {
  return folder.entries.flatMap((entry) => {
    const isTaken = entry.book === undefined && entry.over === undefined && takenText(folder, entry) !== null;
    const renamed = isTaken ? renamedTo(nameOf(entry), folder) : null;
    if (renamed === null) return [];
    const ending = entry.path.slice(entry.path.indexOf('.'));
    return [
      {
        path: entry.path,
        line: 1,
        column: 1,
        rule: 'book',
        field: 'the file',
        found: `what was written over ${nameOf(entry)}, which is called ${renamed} now`,
        write: `the file as ${renamed}${ending}, and ${takenPath(entry)} with it`,
      },
    ];
  });
}

/** The present name of an entry of the books, found by its `formerly:`. */
export function renamedTo(name: string, { entries }: Pick<Folder, 'entries'>): string | null {
  const [collection, id] = name.split('/');
  const held = entries.find((entry) => {
    const former = fieldOf(entry, 'formerly');
    return (
      entry.collection === collection &&
      Array.isArray(former) &&
      former.some((address) => String(address).split('/').filter(Boolean).at(-1) === id)
    );
  });
  return held ? nameOf(held) : null;
}

function claimFaults({ claims, entries }: Folder): Diagnostic[] {
  const rows = claims && fieldOf(claims, 'rows');
  if (!claims || !Array.isArray(rows)) return [];
  const names = new Set(entries.map(nameOf));
  return (rows as { what?: unknown }[]).flatMap(({ what }, index) => {
    if (typeof what !== 'string' || names.has(what)) return [];
    const renamed = renamedTo(what, { entries });
    return [
      faultIn(
        claims,
        ['rows', index, 'what'],
        `"${what}", which is no entry of this almanac`,
        renamed ? `"${renamed}", once it has been compared again` : 'nothing in its place: take the line away',
      ),
    ];
  });
}

/** Fields that no book may hold, since a club never inherits them. */
const NEVER: readonly (readonly [collection: Collection, field: string, why: string])[] = [
  ['reading', 'lends', 'which library lends it'],
  ['forage', 'observed', 'what members saw'],
];

function neverFaults({ entries }: Folder): Diagnostic[] {
  return NEVER.flatMap(([collection, field, why]) =>
    entries
      .filter((entry) => entry.collection === collection && entry.book === undefined && fieldOf(entry, field) !== undefined)
      .map((entry) => faultIn(entry, [field], `${why}, in a book`, "it in a club's own file")),
  );
}

/** Collections whose fields must not say that something is invented. */
const NEVER_INVENTED = new Set<string>(
  collectionNames.filter(
    (name) => !['articles', 'bulletins', 'checklists', 'words', 'signs', 'drawings', 'cautions', 'local'].includes(name),
  ),
);
const INVENTED = /\b(?:invented|made[ -]up)\b/i;

function inventedFaults({ entries }: Folder, club: Entry): Diagnostic[] {
  if (fieldOf(club, 'demonstration') !== false) return [];
  return [club, ...entries.filter(({ collection }) => NEVER_INVENTED.has(collection))]
    .filter((entry) => !isDraft(entry))
    .flatMap((entry) =>
      inventedIn(entry.fields.value, []).map((path) =>
        atField(entry, path, {
          rule: 'invented',
          field: fieldName(path),
          found: path.at(-1) === 'invented' ? 'true' : 'something invented, with "demonstration: false"',
          write: 'what is true, or take it away',
        }),
      ),
    );
}

function inventedIn(value: unknown, path: PropertyKey[]): PropertyKey[][] {
  if (typeof value === 'string') return INVENTED.test(value) && path.at(-1) !== 'withdrawn' ? [path] : [];
  if (value === true) return path.at(-1) === 'invented' ? [path] : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, held]) => inventedIn(held, [...path, Array.isArray(value) ? Number(key) : key]));
}
