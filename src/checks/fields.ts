/* Checks every entry's fields against its schema. Each message has the line of the field. */
import type { z } from 'astro/zod';
import { book as bookSchema } from '../schemas/book.ts';
import { claims as claimsSchema } from '../schemas/claims.ts';
import { club as clubSchema, type Club } from '../schemas/club.ts';
import { collections, type Collection } from '../schemas/collections.ts';
import { stations as stationsSchema, type Station } from '../schemas/stations.ts';
import { addition, choice, withdrawal } from '../schemas/overlays.ts';
import { quoted, type Diagnostic } from '../source/diagnostic.ts';
import type { Entry, Folder } from '../source/folder.ts';
import type { Published } from '../source/last-edition.ts';
import type { Day } from '../../shared/days/day.ts';
import { kindOfOverlay, type Overlay } from '../source/overlay.ts';
import { supposed } from './supposed.ts';
import { choiceMeant, dayMeant, ending, plainSigns, requoted } from './corrections.ts';
import { nearName, nearOrAll } from '../../shared/words/near-name.ts';

type Of = { [Name in Collection]: z.infer<(typeof collections)[Name]['schema']> };

/** An entry whose fields match its schema. */
export type ValidEntry<T = unknown> = Entry & { data: T };

/** The folder as rules see it: entries with valid fields, and the ids of all entries. */
export type ValidEntries = {
  folder: Folder;
  club: ValidEntry<Club> | null;
  stations: ValidEntry<{ rows: Station[] }> | null;
  of: { [Name in Collection]: ValidEntry<Of[Name]>[] };
  /** Ids of every entry in a collection, whether its fields are valid or not. */
  ids: { [Name in Collection]: Set<string> };
} & Required<Pick<Given, 'before'>> &
  Pick<Given, 'edition'>;

/** What a folder does not say of itself: the edition's day that was asked for, and the entries of the last edition. */
export type Given = { edition?: Day | undefined; before?: readonly Published[] };

const ALONE: Readonly<Record<string, z.ZodType>> = { club: clubSchema, book: bookSchema, claims: claimsSchema, stations: stationsSchema };
const OVERLAYS: Readonly<Record<Overlay, z.ZodType>> = { addition, choice, withdrawal };

/** Files that only change an entry of a book have schemas of their own. */
const overlaySchemas = new WeakMap<Entry, z.ZodType>();

const schemaOf = (entry: Entry): z.ZodType | null =>
  overlaySchemas.get(entry) ??
  ALONE[entry.collection] ??
  (collections as Record<string, { schema: z.ZodType }>)[entry.collection]?.schema ??
  null;

type Parsed = z.ZodSafeParseResult<unknown> | undefined;
const results = new WeakMap<Entry, Parsed>();

/** The schema's result for an entry, computed once for all callers. */
function parsed(entry: Entry): Parsed {
  if (!results.has(entry)) results.set(entry, schemaOf(entry)?.safeParse(entry.fields.value ?? {}));
  return results.get(entry);
}

/** Every file as it is written: of what is laid over a book's entry the file alone. */
export function writtenIn({ club, book, claims, stations, books, entries, overlays }: Folder): Entry[] {
  for (const entry of overlays) overlaySchemas.set(entry, OVERLAYS[kindOfOverlay(entry)!]);
  const alone = [club, book, claims, stations, ...books.map(({ entry }) => entry)].filter((entry) => entry !== null);
  return [...alone, ...entries.filter((entry) => !entry.overlays?.length), ...overlays];
}

export function fieldFaults(folder: Folder): Diagnostic[] {
  return writtenIn(folder)
    .filter((entry) => entry.fields.value !== undefined)
    .flatMap((entry) => {
      const issues =
        parsed(entry)?.error?.issues.filter(({ path }) => !entry.fields.cut.some((cut) => String(cut.path) === String(path))) ?? [];
      const misspelt = new Set(issues.flatMap((issue) => meantBy(entry, issue)));
      return issues
        .filter(({ path }) => valueAt(entry.fields.value, path) !== undefined || !misspelt.has(String(path)))
        .filter(({ path }) => !isLost(entry, path))
        .flatMap((issue) => faultsOf(entry, issue));
    });
}

/** A value in a line that could not be parsed is not reported as missing too. */
function isLost({ fields }: Entry, path: PropertyKey[]): boolean {
  const value = valueAt(fields.value, path);
  const lost = fields.lost ?? [];
  if (value === undefined) return lost.some(({ text }) => new RegExp(`^[\\s"'-]*${String(path.at(-1))}\\b`).test(text));
  return value === null && lost.some(({ line }) => line === fields.placeOf(path).line + 1);
}

/** The folder as rules see it, with the entries whose fields are valid. */
export const validEntries = (folder: Folder, given: Given = {}): ValidEntries => entriesWith(folder, given, validEntry);

/**
 * The folder with every entry. A malformed value is replaced by a valid one: the first or the last that the field may have. What a rule
 * reports for both does not depend on the malformed value.
 */
export const supposedEntries = (folder: Folder, given: Given, which: 'first' | 'last'): ValidEntries => {
  const ids = validEntries(folder).ids;
  return entriesWith(folder, given, (entry) => validEntry(entry) ?? supposed(entry, schemaOf(entry), which, ids));
};

/** True where an entry has a malformed value. */
export const hasInvalid = (folder: Folder): boolean =>
  [folder.club, folder.stations, ...folder.entries].some((entry) => entry !== null && validEntry(entry) === null);

function entriesWith(folder: Folder, { edition, before = [] }: Given, valid: (entry: Entry) => ValidEntry | null): ValidEntries {
  const names = Object.keys(collections) as Collection[];
  const each = <T>(make: (name: Collection) => T) => Object.fromEntries(names.map((name) => [name, make(name)]));
  return {
    folder,
    edition,
    before,
    club: folder.club ? (valid(folder.club) as ValidEntry<Club> | null) : null,
    stations: folder.stations ? (valid(folder.stations) as ValidEntry<{ rows: Station[] }> | null) : null,
    of: each((name) =>
      folder.entries.filter((entry) => entry.collection === name).flatMap((entry) => valid(entry) ?? []),
    ) as ValidEntries['of'],
    ids: each(
      (name) =>
        new Set([
          ...folder.files.flatMap((path) => new RegExp(`^${name}/([^/.]+)\\.(?:mdx|yaml|csv)$`).exec(path)?.[1] ?? []),
          ...folder.entries.flatMap(({ collection, id, book }) => (book !== undefined && collection === name ? [id] : [])),
        ]),
    ) as ValidEntries['ids'],
  };
}

function validEntry(entry: Entry): ValidEntry | null {
  const result = parsed(entry);
  return result?.success ? { ...entry, data: result.data } : null;
}

/** Fields with a misspelt name, which are therefore not also reported as missing. */
const meantBy = (entry: Entry, issue: z.core.$ZodIssue): string[] =>
  issue.code === 'unrecognized_keys'
    ? issue.keys.map((key) => String([...issue.path, nearName(key, namesAllowed(schemaOf(entry)!, issue.path))]))
    : [];

function faultsOf(entry: Entry, issue: z.core.$ZodIssue): Diagnostic[] {
  const path = issue.path as PropertyKey[];
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => {
      return {
        path: entry.path,
        ...entry.fields.placeOfName([...path, key]),
        rule: 'unknown-field',
        field: fieldName([...path, key]),
        found: `a field "${key}" that is not one of this page's`,
        write: nearOrAll(key, namesAllowed(schemaOf(entry)!, path)),
      };
    });
  }
  const value = valueAt(entry.fields.value, path);
  const missing = value === undefined;
  const place = missing ? entry.fields.placeOfName(path.slice(0, -1)) : entry.fields.placeOf(path);
  const corrected = missing
    ? undefined
    : (requoted(entry, place, value, issue) ??
      plainSigns(entry, place, value, (plain) => (at(schemaOf(entry)!, path) as z.ZodType | undefined)?.safeParse(plain).success === true));
  return [
    {
      path: entry.path,
      ...place,
      rule: missing ? 'missing-field' : 'field',
      field: fieldNameIn(entry, path),
      found: quoted(value),
      write: missing
        ? `a line "${String(path.at(-1))}:" with ${issue.message}`
        : (choiceMeant(value, issue) ?? dayMeant(value, issue) ?? issue.message + ending(value, issue, isOptional(entry, path))),
      ...(corrected === undefined ? {} : { corrected }),
    },
  ];
}

/** `rows.2.value` in words, counted from 1: `rows 3, value`. */
export function fieldName(path: readonly PropertyKey[]): string {
  const named = path.map((key, index) => (typeof key === 'number' ? ` ${key + 1}` : `${index === 0 ? '' : ', '}${String(key)}`)).join('');
  return named || 'the fields';
}

/** In a table a row is named by its line in the file, as editors count. */
export const fieldNameIn = (entry: Entry, path: readonly PropertyKey[]): string =>
  entry.path.endsWith('.csv') && path[0] === 'rows' && path.length > 2
    ? `line ${entry.fields.placeOf(path).line}, ${fieldName(path.slice(2))}`
    : fieldName(path);

export function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (held, key) => (typeof held === 'object' && held !== null ? (held as Record<PropertyKey, unknown>)[key] : undefined),
    value,
  );
}

/** The field names that a schema allows at a path. */
const namesAllowed = (schema: z.ZodType, path: readonly PropertyKey[]): string[] => Object.keys(unwrap(at(schema, path)).shape ?? {});

const isOptional = (entry: Entry, path: readonly PropertyKey[]): boolean =>
  (at(schemaOf(entry)!, path) as { def?: { type: string } } | undefined)?.def?.type === 'optional';

/** The schema of the value at a path. */
export function at(schema: z.ZodType, path: readonly PropertyKey[]): unknown {
  let held: unknown = schema;
  for (const key of path) held = typeof key === 'number' ? unwrap(held).element : unwrap(held).shape?.[String(key)];
  return held;
}

type Shaped = { shape?: Record<string, unknown>; element?: unknown };
function unwrap(schema: unknown): Shaped {
  let held = schema as { unwrap?: () => unknown; def?: { type: string } } & Shaped;
  while (held?.def && ['optional', 'nullable', 'default'].includes(held.def.type) && held.unwrap) held = held.unwrap() as typeof held;
  return held ?? {};
}
