/*
 * Translations. A file `x.es.mdx` or `x.es.yaml` gives the words of the entry x in another language. Its fields are words alone, and its
 * body has the tags of the original in their order. All else stays that of the original, also the ids of headings, so that addresses stay.
 */
import { createHash } from 'node:crypto';
import type { Heading } from 'mdast';
import { tongues, type Tongue } from '../../shared/country/language.ts';
import { isDay } from '../../shared/days/day.ts';
import type { Spoken } from '../schemas/spoken.ts';
import { textFieldsOf, type TextFields, type Texts } from '../schemas/translations.ts';
import type { Fields } from './fields.ts';
import type { Entry } from './folder.ts';
import { kindOfOverlay, laidOver } from './overlay.ts';
import { headingIds, walk } from './prose.ts';

const NAME = new RegExp(`^(?:([^/]+)/)?([^/.]+)\\.(${tongues.join('|')})\\.(?:mdx|yaml)$`);

/** What a file translates: `articles/swarms.es.mdx`, or the words of a book in `book.es.yaml`. Null for any other file. */
export function translationIn(path: string): { collection: string; id: string; tongue: Tongue } | null {
  const [, collection, id, tongue] = NAME.exec(path) ?? [];
  if (id === undefined || (collection === undefined && id !== 'book')) return null;
  return { collection: collection ?? 'book', id, tongue: tongue as Tongue };
}

/** The entry without what was laid over it, and before it was translated. */
export const baseOf = (entry: Entry): Entry =>
  entry.original ? baseOf(entry.original) : entry.overlays?.length && entry.over ? baseOf(entry.over) : entry;

/** The path of the original: of `articles/swarms.es.mdx` the path `articles/swarms.mdx`. */
export const pathOfOriginal = (path: string): string => path.replace(/\.[a-z]{2}(?=\.[a-z]+$)/, '');

/** The entry in the words of the translation. What was added to a page stays below it. */
export function translated(entry: Entry, translation: Entry): Entry {
  const last = entry.overlays?.at(-1);
  const kind = last && kindOfOverlay(last);
  if (last && kind && entry.over) return laidOver(kind, last, translated(entry.over, translation));
  const fields = textFieldsOf(entry.collection);
  const value = fields ? joined(fields, entry.fields.value, translation.fields.value) : entry.fields.value;
  const isWritten = (path: readonly PropertyKey[]): boolean => valueAt(translation.fields.value, path.slice(0, 1)) !== undefined;
  const placed =
    (method: 'placeOf' | 'placeOfName'): Fields['placeOf'] =>
    (path) =>
      isWritten(path) ? { ...translation.fields[method](path), path: translation.path } : entry.fields[method](path);
  return {
    ...entry,
    fields: { ...entry.fields, value, placeOf: placed('placeOf'), placeOfName: placed('placeOfName') },
    ...(entry.tree && translation.tree
      ? {
          body: translation.body,
          tree: withIdsOf(entry.tree, translation.tree),
          added: { path: translation.path, fromLine: entry.bodyLine, toLine: translation.bodyLine },
        }
      : {}),
    ...(translation.tongue ? { tongue: translation.tongue } : {}),
    translation,
    original: entry,
  };
}

/** Headings keep the ids of the original, which addresses name. */
function withIdsOf(original: NonNullable<Entry['tree']>, tree: NonNullable<Entry['tree']>): NonNullable<Entry['tree']> {
  const ids = [...headingIds(original).values()];
  const copy = structuredClone(tree);
  const headings = [...walk(copy)].filter((node): node is Heading => node.type === 'heading');
  headings.forEach((heading, at) => {
    if (ids[at] !== undefined) heading.data = { ...heading.data, id: ids[at] } as Heading['data'];
  });
  return copy;
}

type Values = Readonly<Record<string, unknown>>;
const isObject = (value: unknown): value is Values => typeof value === 'object' && value !== null && !Array.isArray(value);

/** The fields of the original, with the texts of the translation in their places. */
function joined(fields: TextFields, original: unknown, translation: unknown): unknown {
  if (!isObject(original) || !isObject(translation)) return original;
  const taken = Object.entries(fields).flatMap(([name, texts]) =>
    name in translation && name in original ? [[name, joinedText(texts, original[name], translation[name])] as const] : [],
  );
  return { ...original, ...Object.fromEntries(taken) };
}

function joinedText(texts: Texts, original: unknown, translation: unknown): unknown {
  if (texts === 'by-name') return isObject(original) && isObject(translation) ? { ...original, ...translation } : original;
  if (typeof texts === 'string') return translation;
  if (!isRow(texts)) return joined(texts as TextFields, original, translation);
  if (!Array.isArray(original)) return original;
  return (original as unknown[]).map((row, at) => joined(texts[0], row, rowFor(row, at, translation)?.row));
}

export const isRow = (texts: Texts): texts is readonly [TextFields] => Array.isArray(texts);

/** The translated row of an original one: that of its id, or that at its place where the original has no ids. */
export function rowFor(original: unknown, at: number, translation: unknown): { row: unknown; index: number } | null {
  const rows: unknown[] = Array.isArray(translation) ? translation : [];
  const id = isObject(original) ? original.id : undefined;
  const index = id === undefined ? at : rows.findIndex((row) => isObject(row) && row.id === id);
  return rows[index] === undefined ? null : { row: rows[index], index };
}

export function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (held, key) => (typeof held === 'object' && held !== null ? (held as Record<PropertyKey, unknown>)[key] : undefined),
    value,
  );
}

/** Each text of an entry that a translation gives, with its path: the fields first, then the body. */
export function textsOf(entry: Entry): { path: PropertyKey[]; text: string }[] {
  const fields = textFieldsOf(entry.collection);
  return fields ? textsIn(fields, entry.fields.value, []) : [];
}

function textsIn(texts: Texts, value: unknown, path: PropertyKey[]): { path: PropertyKey[]; text: string }[] {
  if (typeof value === 'string') return texts === 'text' || texts === 'texts' ? [{ path, text: value }] : [];
  if (Array.isArray(value))
    return value.flatMap((each, at) => textsIn(isRow(texts) ? texts[0] : texts === 'texts' ? 'text' : 'names', each, [...path, at]));
  if (!isObject(value)) return [];
  if (texts === 'by-name') return Object.entries(value).flatMap(([name, each]) => textsIn('text', each, [...path, name]));
  if (typeof texts === 'string' || isRow(texts)) return [];
  return Object.entries(texts).flatMap(([name, below]) => textsIn(below as Texts, value[name], [...path, name]));
}

/** Names the text that a translation was made from: a short hash of its words. Dates of review do not count. The letter keeps it a text. */
export const hashOfOriginal = (entry: Entry): string =>
  `t${createHash('sha256')
    .update(JSON.stringify([textsOf(entry), entry.tree ? entry.body : '']))
    .digest('hex')
    .slice(0, 7)}`;

/** What readers are told of the language of an entry. Null where it is in theirs, and was written in it. */
export function spokenOf({ tongue, translation, original }: Entry, theirs: Tongue): Spoken | null {
  if (tongue === undefined || (!translation && tongue === theirs)) return null;
  if (!translation || !original) return { tongue };
  const { checked, by, of } = (translation.fields.value ?? {}) as { checked?: unknown; by?: unknown; of?: unknown };
  return {
    tongue,
    translated: {
      ...(typeof checked === 'string' && isDay(checked) ? { checked } : {}),
      ...(typeof by === 'string' ? { by } : {}),
      isOlder: of !== undefined && of !== hashOfOriginal(original),
    },
  };
}
